using System;

namespace Recovery.Mechanics.Lines;

/// <summary>A linear elastic line, once. SI in, SI out.</summary>
/// <remarks>Source: <see cref="LinesSources.Spring"/> (derived).</remarks>
internal static class ElasticKernel
{
    /// <summary>Stiffness k = EA/L.</summary>
    public static double Stiffness(double axialStiffnessNewtons, double lengthMetres) => axialStiffnessNewtons / lengthMetres;

    /// <summary>Stretch F/k.</summary>
    public static double Stretch(double forceNewtons, double stiffness) => forceNewtons / stiffness;

    /// <summary>Stored energy F^2/(2 k).</summary>
    public static double Energy(double forceNewtons, double stiffness) => forceNewtons * forceNewtons / (2 * stiffness);

    /// <summary>Two lines one after the other, 1/k = 1/k1 + 1/k2.</summary>
    public static double InSeries(double first, double second) => first * second / (first + second);

    /// <summary>Wave speed in unstretched coordinates, sqrt(EA/m').</summary>
    public static double WaveSpeed(double axialStiffnessNewtons, double massPerMetre) => Math.Sqrt(axialStiffnessNewtons / massPerMetre);

    /// <summary>Impedance sqrt(EA m').</summary>
    public static double Impedance(double axialStiffnessNewtons, double massPerMetre) => Math.Sqrt(axialStiffnessNewtons * massPerMetre);

    /// <summary>Included angle of a strap of length L whose middle runs through an eye, anchors w apart: 2 asin(w/L).</summary>
    public static double RunningBridleAngle(double lengthMetres, double anchorSpacing) => 2 * Math.Asin(anchorSpacing / lengthMetres);

    /// <summary>Stiffness along the pull of one strap whose middle runs through an eye, 4 cos^2(theta/2) EA/L.</summary>
    public static double RunningBridleStiffness(double axialStiffnessNewtons, double lengthMetres, double includedAngleRadians)
    {
        var c = Math.Cos(includedAngleRadians / 2);
        return 4 * c * c * axialStiffnessNewtons / lengthMetres;
    }

    /// <summary>How far a line reaches that is laid as a basket, from its ends to what it lies round: half its length along the pull.</summary>
    public static double BasketReach(double lengthMetres, double radians) => 0.5 * lengthMetres * Math.Cos(radians);

    /// <summary>Fraction recovered where loading goes as (eps/em)^n and unloading as ((eps - ep)/(em - ep))^q: (n + 1)/(q + 1) (1 - ep/em).</summary>
    public static double RecoveredFraction(double loadingExponent, double unloadingExponent, double setOverStrain) =>
        (loadingExponent + 1) / (unloadingExponent + 1) * (1 - setOverStrain);
}
