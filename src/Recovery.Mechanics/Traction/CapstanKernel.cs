using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Friction of a wrap. SI in, SI out.</summary>
/// <remarks>Source: <see cref="WinchSources.Capstan"/> (derived); no constant of its own.</remarks>
internal static class CapstanKernel
{
    /// <summary>Tension ratio over a wrap: exp(mu beta), whatever the radius.</summary>
    public static double Ratio(double friction, double wrapRadians) => Math.Exp(friction * wrapRadians);

    /// <summary>Wrap that a ratio needs: ln(ratio)/mu.</summary>
    public static double Wrap(double friction, double ratio) => Math.Log(ratio) / friction;
}
