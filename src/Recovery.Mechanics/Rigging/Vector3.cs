using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Three doubles, SI.</summary>
internal readonly record struct Vector3(double X, double Y, double Z)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3 operator *(double k, Vector3 a) => new(k * a.X, k * a.Y, k * a.Z);

    public double Dot(Vector3 b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);
}
