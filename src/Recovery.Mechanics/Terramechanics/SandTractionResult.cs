using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Gross traction of a wheel on sand. There is no motion resistance in this set, so no net traction either.</summary>
public sealed record SandTractionResult
{
    internal SandTractionResult(double gradientPascalsPerMetre, double numeric, double grossRatio, double loadNewtons, IReadOnlyList<ValidityFlag> flags)
    {
        GradientKilopascalsPerMetre = gradientPascalsPerMetre / 1000;
        Numeric = numeric;
        GrossTractionRatio = grossRatio;
        GrossTraction = Force.FromNewtons(grossRatio * loadNewtons);
        Flags = flags;
    }

    /// <summary>Gets the cone index gradient with depth, kPa/m.</summary>
    public double GradientKilopascalsPerMetre { get; }

    /// <summary>Gets the sand numeric N_s.</summary>
    public double Numeric { get; }

    /// <summary>Gets gross traction over load.</summary>
    public double GrossTractionRatio { get; }

    /// <summary>Gets the gross traction.</summary>
    public Force GrossTraction { get; }

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Numeric and gross traction ratio.</returns>
    public override string ToString() => "sand numeric " + Text.Number(Numeric, 3) + ", gross traction " + Text.Number(GrossTractionRatio, 3) + " of the load" + (Flags.Count == 0 ? string.Empty : ", outside its range");
}
