using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Any wheel model over many wheels at once, on plain numbers.</summary>
/// <remarks>The models of this library use the same kernels as their typed calls, without allocation. A model of the host's own is asked wheel by wheel through its typed call.</remarks>
public static class WheelBatch
{
    /// <summary>Gives motion resistance and net traction of many wheels of one size.</summary>
    /// <param name="model">The wheel model.</param>
    /// <param name="coneIndexKilopascals">Cone index fed to the model, above 0 to 20,000 kPa, one per wheel.</param>
    /// <param name="loadKilonewtons">Dynamic wheel load, above 0 to 500 kN, one per wheel.</param>
    /// <param name="sectionWidthMetres">Section width b of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter d of all wheels, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection ratio of all wheels, 0.0005 to 0.6.</param>
    /// <param name="slip">Slip of all wheels, 0 to 1.</param>
    /// <param name="motionResistanceKilonewtons">Receives the motion resistance, kN; 0, without meaning, where the outcome is <see cref="WheelOutcome.Immobile"/>.</param>
    /// <param name="netTractionKilonewtons">Receives the net traction, kN; 0, without meaning, where <paramref name="hasTraction"/> is false.</param>
    /// <param name="outcomes">Receives what the model says of each wheel.</param>
    /// <param name="hasTraction">Receives whether there is a net traction: false where the wheel does not drive or the model gives none.</param>
    /// <exception cref="ArgumentNullException">The model is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public static void Evaluate(
        IWheelModel model,
        ReadOnlySpan<double> coneIndexKilopascals,
        ReadOnlySpan<double> loadKilonewtons,
        double sectionWidthMetres,
        double overallDiameterMetres,
        double deflectionRatio,
        double slip,
        Span<double> motionResistanceKilonewtons,
        Span<double> netTractionKilonewtons,
        Span<WheelOutcome> outcomes,
        Span<bool> hasTraction)
    {
        Guard.NotNull(model, nameof(model));
        var count = coneIndexKilopascals.Length;
        Guard.SameLength(count, loadKilonewtons.Length, nameof(loadKilonewtons));
        Guard.SameLength(count, motionResistanceKilonewtons.Length, nameof(motionResistanceKilonewtons));
        Guard.SameLength(count, netTractionKilonewtons.Length, nameof(netTractionKilonewtons));
        Guard.SameLength(count, outcomes.Length, nameof(outcomes));
        Guard.SameLength(count, hasTraction.Length, nameof(hasTraction));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        Guard.All(loadKilonewtons, 1e-3, 500, "kN", nameof(loadKilonewtons));
        GuardWheel(sectionWidthMetres, overallDiameterMetres, deflectionRatio);
        Guard.Range(slip, 0, 1, string.Empty, nameof(slip));
        for (var i = 0; i < count; i++)
        {
            var flat = Flat(model, coneIndexKilopascals[i] * 1000, sectionWidthMetres, overallDiameterMetres, deflectionRatio, loadKilonewtons[i] * 1000, slip);
            motionResistanceKilonewtons[i] = flat.Outcome == WheelOutcome.Immobile ? 0 : loadKilonewtons[i] * flat.Resistance;
            netTractionKilonewtons[i] = flat.HasTraction ? loadKilonewtons[i] * flat.Net : 0;
            outcomes[i] = flat.Outcome;
            hasTraction[i] = flat.HasTraction;
        }
    }

    /// <summary>The size of wheel that all batches accept.</summary>
    internal static void GuardWheel(double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio)
    {
        Guard.Range(sectionWidthMetres, 0.05, 2, "m", nameof(sectionWidthMetres));
        Guard.Range(overallDiameterMetres, 0.2, 4, "m", nameof(overallDiameterMetres));
        Guard.Range(deflectionRatio, WheelOnSoil.LeastDeflectionRatio, 0.6, string.Empty, nameof(deflectionRatio));
    }

    /// <summary>One wheel of any model as plain numbers.</summary>
    internal static WheelFlat Flat(IWheelModel model, double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        if (model is IFlatWheelModel flat) return flat.At(coneIndexPascals, widthMetres, diameterMetres, deflectionRatio, loadNewtons, slip);
        var wheel = new WheelOnSoil(Length.FromMeters(widthMetres), Length.FromMeters(diameterMetres), Ratio.FromDecimalFractions(deflectionRatio), Force.FromNewtons(loadNewtons), Pressure.FromPascals(coneIndexPascals));
        var result = model.Evaluate(wheel, Ratio.FromDecimalFractions(slip));
        return new WheelFlat(result.Outcome, result.Numeric, result.MotionResistanceRatio ?? 0, result.GrossTractionRatio ?? 0, result.NetTractionRatio ?? 0, result.NetTractionRatio is not null);
    }
}
