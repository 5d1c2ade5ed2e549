using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Turning parts seen from the line. SI in, SI out.</summary>
/// <remarks>Derived from the balance of energy (<see cref="Provenance.GeneralSources.Statics"/>); no constant of its own.</remarks>
internal static class RotatingKernel
{
    /// <summary>Mass that turning parts stand for at the wheels: (J_e i^2 + J_w)/r^2.</summary>
    public static double EquivalentMass(double engineInertia, double wheelInertia, double ratio, double radius) => ((engineInertia * ratio * ratio) + wheelInertia) / (radius * radius);

    /// <summary>The same for one part from its speed of rotation and the road speed of that gear, i/r being the one over the other.</summary>
    public static double EquivalentMass(double inertia, double radiansPerSecond, double metresPerSecond) => EquivalentMass(inertia, 0, radiansPerSecond, metresPerSecond);

    /// <summary>Energy at a speed: m v^2/2.</summary>
    public static double Energy(double mass, double speed) => 0.5 * mass * speed * speed;

    /// <summary>Peak in a linear line that stops a mass while a steady pull acts, taken up at a speed: P + v sqrt(k m).</summary>
    public static double Peak(double pull, double mass, double speed, double stiffness) => pull + (speed * Math.Sqrt(stiffness * mass));
}
