using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The Brixius equations over many soils or many wheels at once, in the vectors of the processor where it has them, with the same answers as <see cref="BrixiusModel"/> to 1e-12.</summary>
/// <remarks>All elements are checked before anything is written. No allocation. Formula, range, bias and sources are those of <see cref="BrixiusModel"/>; out of range there is no flag here: a batch gives the value alone.</remarks>
public sealed class BrixiusBatch
{
    private readonly BrixiusConstants _constants;

    private BrixiusBatch(BrixiusModel model, BrixiusConstants constants)
    {
        Model = model;
        _constants = constants;
    }

    /// <summary>Gets the batch with the constants of bias-ply tyres: the cautious side for what a machine sustains.</summary>
    public static BrixiusBatch Bias { get; } = new(BrixiusModel.Bias, BrixiusConstants.Bias);

    /// <summary>Gets the batch with the constants of radial tyres: the cautious side for what a machine can impose on a rig.</summary>
    public static BrixiusBatch Radial { get; } = new(BrixiusModel.Radial, BrixiusConstants.Radial);

    /// <summary>Gets the model, with its range and sources.</summary>
    public BrixiusModel Model { get; }

    /// <summary>Gives the net traction of wheels.</summary>
    /// <param name="coneIndexKilopascals">Cone index fed to the model, 0.001 to 20,000 kPa, one an element.</param>
    /// <param name="loadKilonewtons">Dynamic wheel load, 0.001 to 500 kN: one an element, or one for all.</param>
    /// <param name="sectionWidthMetres">Section width b, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter d, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection over section height, 0.0005 to 0.6.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <param name="netTractionKilonewtons">Receives the net traction, kN; may be the span of the cone index.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void NetTraction(ReadOnlySpan<double> coneIndexKilopascals, ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio, double slip, Span<double> netTractionKilonewtons) =>
        Fill(coneIndexKilopascals, loadKilonewtons, sectionWidthMetres, overallDiameterMetres, deflectionRatio, slip, net: true, netTractionKilonewtons, nameof(netTractionKilonewtons));

    /// <summary>Gives the motion resistance of wheels.</summary>
    /// <param name="coneIndexKilopascals">Cone index fed to the model, 0.001 to 20,000 kPa, one an element.</param>
    /// <param name="loadKilonewtons">Dynamic wheel load, 0.001 to 500 kN: one an element, or one for all.</param>
    /// <param name="sectionWidthMetres">Section width b, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter d, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection over section height, 0.0005 to 0.6.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <param name="motionResistanceKilonewtons">Receives the motion resistance, kN; may be the span of the cone index.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void MotionResistance(ReadOnlySpan<double> coneIndexKilopascals, ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio, double slip, Span<double> motionResistanceKilonewtons) =>
        Fill(coneIndexKilopascals, loadKilonewtons, sectionWidthMetres, overallDiameterMetres, deflectionRatio, slip, net: false, motionResistanceKilonewtons, nameof(motionResistanceKilonewtons));

    /// <summary>Gives the model in words.</summary>
    /// <returns>The name of the model.</returns>
    public override string ToString() => Model.Name + ", batch";

    private void Fill(ReadOnlySpan<double> coneIndex, ReadOnlySpan<double> load, double b, double d, double dh, double slip, bool net, Span<double> result, string name)
    {
        Guard.SameLength(coneIndex.Length, result.Length, name);
        if (load.Length != 1) Guard.SameLength(coneIndex.Length, load.Length, "loadKilonewtons");
        Guard.All(coneIndex, 1e-3, 20000, "kPa", "coneIndexKilopascals");
        Guard.All(load, 1e-3, 500, "kN", "loadKilonewtons");
        WheelBatch.GuardWheel(b, d, dh);
        Guard.Range(slip, 0, 1, string.Empty, nameof(slip));
        if (coneIndex.Length == 0) return;
        var shape = BrixiusKernel.Numeric(1, b, d, dh, 1);
#if NET
        if (BrixiusLanes.Fill(coneIndex, load, shape, slip, _constants, net, result)) return;
#endif
        for (var i = 0; i < coneIndex.Length; i++)
        {
            var w = load[load.Length == 1 ? 0 : i];
            var numeric = coneIndex[i] * shape / w;
            result[i] = w * (net ? BrixiusKernel.NetTractionRatio(numeric, slip, _constants) : BrixiusKernel.MotionResistanceRatio(numeric, slip, _constants));
        }
    }
}
