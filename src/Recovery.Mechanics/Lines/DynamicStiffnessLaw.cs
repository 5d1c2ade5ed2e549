using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Relative stiffness of a bedded rope for small cycles about a mean load: EA/MBS = c + b L_m, L_m in percent of breaking strength.</summary>
/// <remarks>For small cycles only; a pull from slack to peak is softer. Source: published mooring-line fits, basis of OMAE2025-156384 (reported).</remarks>
public sealed record DynamicStiffnessLaw
{
    internal DynamicStiffnessLaw(LineKind kind, double constant, double slope, double quasiStatic)
    {
        Kind = kind;
        Constant = constant;
        SlopePerPercent = slope;
        QuasiStatic = quasiStatic;
    }

    /// <summary>Gets the kind of rope.</summary>
    public LineKind Kind { get; }

    /// <summary>Gets c.</summary>
    public double Constant { get; }

    /// <summary>Gets b, per percent of mean load.</summary>
    public double SlopePerPercent { get; }

    /// <summary>Gets the quasi-static reference value of the same fits.</summary>
    public double QuasiStatic { get; }

    /// <summary>Gets the source.</summary>
    public Source Source => LinesSources.MooringFits;

    /// <summary>Gives the relative stiffness at a mean load.</summary>
    /// <param name="meanLoad">Mean load over breaking strength, 0 to 0.7.</param>
    /// <returns>EA over breaking strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public double At(Ratio meanLoad) => Constant + (SlopePerPercent * 100 * Guard.Fraction(meanLoad, 0, 0.7, nameof(meanLoad)));

    /// <summary>Gives it over the quasi-static value.</summary>
    /// <param name="meanLoad">Mean load over breaking strength, 0 to 0.7.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public double OverQuasiStatic(Ratio meanLoad) => At(meanLoad) / QuasiStatic;

    /// <summary>Gives the law in words, invariant culture.</summary>
    /// <returns>Kind and law.</returns>
    public override string ToString() => Kind + ": EA/MBS = " + Text.Number(Constant) + " + " + Text.Number(SlopePerPercent) + " L_m %";
}
