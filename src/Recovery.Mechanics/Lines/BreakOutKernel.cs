using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Linear take-up on a casualty that sticks until its static resistance and then slides against its kinetic one, once. SI.</summary>
/// <remarks>Source: <see cref="LinesSources.BreakOutTwoMass"/> (derived).</remarks>
internal static class BreakOutKernel
{
    /// <summary>Speed of the puller at break-out: sqrt(v^2 + (2 P Rs/k - Rs^2/k)/m1); not a number where the held peak does not reach Rs.</summary>
    public static double SpeedAtBreakOut(double pull, double stiffness, double pullerMass, double speed, double staticResistance) =>
        Math.Sqrt((speed * speed) + (((2 * pull * staticResistance) - (staticResistance * staticResistance)) / (stiffness * pullerMass)));

    /// <summary>Load at which both would be drawn along together: Fs = (P m2 + Rk m1)/(m1 + m2).</summary>
    public static double StaticOffset(double pull, double pullerMass, double casualtyMass, double kineticResistance) =>
        ((pull * casualtyMass) + (kineticResistance * pullerMass)) / (pullerMass + casualtyMass);

    /// <summary>Greatest force: Fs + sqrt((Rs - Fs)^2 + k mu v1^2).</summary>
    public static double Peak(double offset, double staticResistance, double stiffness, double reducedMass, double speedAtBreakOut)
    {
        var d = staticResistance - offset;
        return offset + Math.Sqrt((d * d) + (stiffness * reducedMass * speedAtBreakOut * speedAtBreakOut));
    }

    /// <summary>Time from first taut to break-out: [ph + asin((Rs - P)/(k A))]/w.</summary>
    public static double TimeToBreakOut(double pull, double stiffness, double pullerMass, double speed, double staticResistance)
    {
        double w = Math.Sqrt(stiffness / pullerMass), x = pull / stiffness, y = speed / w, amplitude = Math.Sqrt((x * x) + (y * y));
        return (Math.Atan2(x, y) + Math.Asin((staticResistance - pull) / (stiffness * amplitude))) / w;
    }

    /// <summary>Time from break-out to the greatest force: [pi/2 + atan2((Fs - Rs)/k, v1/W)]/W.</summary>
    public static double TimeFromBreakOutToPeak(double offset, double staticResistance, double stiffness, double reducedMass, double speedAtBreakOut)
    {
        var w = Math.Sqrt(stiffness / reducedMass);
        return ((Math.PI / 2) + Math.Atan2((offset - staticResistance) / stiffness, speedAtBreakOut / w)) / w;
    }
}
