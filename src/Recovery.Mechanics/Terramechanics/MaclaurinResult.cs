using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>What Maclaurin's relations give for one wheel.</summary>
public sealed record MaclaurinResult
{
    internal MaclaurinResult(double meanMaximumPressurePascals, double numeric, double rutMetres, double resistanceRatio, double loadNewtons, IReadOnlyList<ValidityFlag> flags)
    {
        MeanMaximumPressure = Pressure.FromPascals(meanMaximumPressurePascals);
        Numeric = numeric;
        RutDepth = Length.FromMeters(rutMetres);
        MotionResistanceRatio = resistanceRatio;
        MotionResistance = Force.FromNewtons(resistanceRatio * loadNewtons);
        Flags = flags;
    }

    /// <summary>Gets the mean maximum pressure MMP.</summary>
    public Pressure MeanMaximumPressure { get; }

    /// <summary>Gets the limiting cone index 1.85 MMP: below it the wheel is not expected to get through.</summary>
    public Pressure LimitingConeIndex => Pressure.FromPascals(MaclaurinKernel.LimitFactor * MeanMaximumPressure.Pascals);

    /// <summary>Gets the vehicle cone index for one pass by the mean maximum pressure, 2.53 + 1.35 MMP in psi (Priddy 1999, reported; the unit is assumed): beside the one from the mobility index.</summary>
    public Pressure OnePass => Pressure.FromPascals(MaclaurinKernel.OnePass(MeanMaximumPressure.Pascals));

    /// <summary>Gets cone index over mean maximum pressure.</summary>
    public double Numeric { get; }

    /// <summary>Gets whether the cone index reaches the limiting one.</summary>
    public bool Go => Numeric >= MaclaurinKernel.LimitFactor;

    /// <summary>Gets the rut depth of one pass.</summary>
    public Length RutDepth { get; }

    /// <summary>Gets motion resistance over load (from memory, third digit uncertain).</summary>
    public double MotionResistanceRatio { get; }

    /// <summary>Gets the motion resistance.</summary>
    public Force MotionResistance { get; }

    /// <summary>Gets the limits that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Limiting cone index, go or no-go, rut.</returns>
    public override string ToString() =>
        "limiting cone index " + Text.Kilopascals(LimitingConeIndex.Pascals) + (Go ? ", go" : ", no-go") + ", rut " + Text.With(RutDepth.Meters, "m", 3) + (Flags.Count == 0 ? string.Empty : ", outside its range");
}
