#if NET
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Recovery.Mechanics.Provenance;

/// <summary>Doubles in a vector of 512 bits.</summary>
internal readonly struct Lanes512(Vector512<double> v) : ILanes<Lanes512>
{
    private readonly Vector512<double> _v = v;

    public static int Count => Vector512<double>.Count;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator +(Lanes512 a, Lanes512 b) => new(a._v + b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator -(Lanes512 a, Lanes512 b) => new(a._v - b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator *(Lanes512 a, Lanes512 b) => new(a._v * b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 operator /(Lanes512 a, Lanes512 b) => new(a._v / b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Read(ref double source, nuint offset) => new(Vector512.LoadUnsafe(ref source, offset));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Sqrt(Lanes512 a) => new(Vector512.Sqrt(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Log(Lanes512 a) => new(Vector512.Log(a._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Min(Lanes512 a, Lanes512 b) => new(Vector512.MinNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Max(Lanes512 a, Lanes512 b) => new(Vector512.MaxNative(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Fused(Lanes512 a, Lanes512 b, Lanes512 c) => new(Vector512.MultiplyAddEstimate(a._v, b._v, c._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Above(Lanes512 a, Lanes512 b) => new(Vector512.GreaterThan(a._v, b._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 And(Lanes512 a, Lanes512 b) => new(a._v & b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Or(Lanes512 a, Lanes512 b) => new(a._v | b._v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Select(Lanes512 mask, Lanes512 whereSet, Lanes512 otherwise) => new(Vector512.ConditionalSelect(mask._v, whereSet._v, otherwise._v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AllSet(Lanes512 mask) => Vector512.EqualsAll(mask._v.AsInt64(), Vector512<long>.AllBitsSet);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lanes512 Scale(Lanes512 a, Lanes512 shifted) => new((a._v.AsInt64() + (shifted._v.AsInt64() << 52)).AsDouble());

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Write(ref double target, nuint offset) => _v.StoreUnsafe(ref target, offset);
}
#endif
