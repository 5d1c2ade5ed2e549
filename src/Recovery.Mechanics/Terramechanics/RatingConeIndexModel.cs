using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Go or no-go, motion resistance and drawbar pull on fine-grained soil from the excess of rating cone index over vehicle cone index.</summary>
/// <remarks>
/// <para>RCI_x = RCI - VCI1 in psi; below zero no-go and no number. Towed: R/W between 0.035 + 0.861/(RCI_x + 3.249) and 0.045 + 2.3075/(RCI_x + 6.5) on wheels, the latter on tracks. Drawbar on the level at about 20 % slip, net of motion resistance: X = a + B RCI_x; D/W = X - sqrt(X^2 - C RCI_x).</para>
/// <para>a, B, C by running gear and contact pressure: wheels from 4 psi .3885, .0265, .0358, below .379, .0219, .0257; tracks from 4 psi .4554, .0392, .0526, below .544, .0463, .0702.</para>
/// <para>The two readings of the towed relation conflict and neither is confirmed: the band between them stands, never one of them. At RCI_x 0 it is 0.30 to 0.40: beyond that share of the weight the model has nothing to say. On wheels below 4 psi the towed relation has no support either.</para>
/// <para>Source: NRMM, Rula and Nuttall 1971, Haley et al. 1979 (all constants from memory).</para>
/// </remarks>
public sealed class RatingConeIndexModel : IModel
{
    private RatingConeIndexModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static RatingConeIndexModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Rating cone index (NRMM)";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.ExcessTowed;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("RCI_x", "excess of rating cone index over vehicle cone index", 0, double.PositiveInfinity, "psi", TerramechanicsSources.ExcessTowed),
        new ValidityLimit("CPF", "contact pressure of wheels for the towed relation", 4, double.PositiveInfinity, "psi", TerramechanicsSources.ExcessTowed));

    /// <summary>Gives go or no-go, resistance band and drawbar pull.</summary>
    /// <param name="mobility">Vehicle cone index of the running gear.</param>
    /// <param name="load">Weight on the running gear it belongs to: the axle, or the whole machine, above 0 to 2,000 kN.</param>
    /// <param name="ratingConeIndex">Rating cone index of the critical layer, 0 to 20,000 kPa.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mobility"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RatingConeIndexResult Evaluate(MobilityResult mobility, Force load, Pressure ratingConeIndex)
    {
        Guard.NotNull(mobility, nameof(mobility));
        var weight = Guard.Newtons(load, 1e-3, 2000, nameof(load));
        var excess = Guard.Pascals(ratingConeIndex, 0, 20000, nameof(ratingConeIndex)) - mobility.OnePass.Pascals;
        var pressure = mobility.ContactPressure.Pascals;
        var flags = Validity.Flag(excess / PhysicalConstants.PascalsPerPsi, mobility.IsTracked ? 4 : pressure / PhysicalConstants.PascalsPerPsi);
        if (excess < 0) return new RatingConeIndexResult(this, mobility, excess, weight, null, null, null, flags);
        double a = ExcessIndexKernel.ResistanceReadingA(excess), b = mobility.IsTracked ? a : ExcessIndexKernel.ResistanceReadingB(excess);
        return new RatingConeIndexResult(this, mobility, excess, weight, b, a, ExcessIndexKernel.Drawbar(excess, DrawbarConstants.Of(mobility.IsTracked, pressure)), flags);
    }

    /// <summary>Works the result out step by step.</summary>
    /// <param name="mobility">Vehicle cone index of the running gear.</param>
    /// <param name="load">Weight on the running gear, above 0 to 2,000 kN.</param>
    /// <param name="ratingConeIndex">Rating cone index of the critical layer, 0 to 20,000 kPa.</param>
    /// <returns>The worked steps; the last is the drawbar pull, or the no-go.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="mobility"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(MobilityResult mobility, Force load, Pressure ratingConeIndex)
    {
        var r = Evaluate(mobility, load, ratingConeIndex);
        string excess = Text.Number(r.ExcessPascals / PhysicalConstants.PascalsPerPsi), w = Text.Number(r.Load.Kilonewtons);
        var working = new WorkingBuilder(Name)
            .Step("RCI_x", "rating cone index beyond what the vehicle needs", "RCI - VCI1", Text.Number(ratingConeIndex.Kilopascals) + " - " + Text.Number(mobility.OnePass.Kilopascals) + " kPa", excess + " psi", mobility.Model.Source);
        if (!r.Go) return working.Step("R", "below the vehicle cone index the model has no number", "none", "none", "no-go", Source).Build();
        var c = DrawbarConstants.Of(mobility.IsTracked, mobility.ContactPressure.Pascals);
        var x = Text.Number(c.A + (c.B * r.ExcessPascals / PhysicalConstants.PascalsPerPsi));
        if (!mobility.IsTracked) working.Step("R_low", "motion resistance, lower reading", "W (0.035 + 0.861/(RCI_x + 3.249))", $"{w} (0.035 + 0.861/({excess} + 3.249))", Text.Kilonewtons(r.MotionResistanceLow!.Value.Newtons), Source);
        return working
            .Step("R_high", mobility.IsTracked ? "motion resistance" : "motion resistance, upper reading", "W (0.045 + 2.3075/(RCI_x + 6.5))", $"{w} (0.045 + 2.3075/({excess} + 6.5))", Text.Kilonewtons(r.MotionResistanceHigh!.Value.Newtons), Source)
            .Step("X", "term of the drawbar relation", "a + B RCI_x", $"{Text.Number(c.A)} + {Text.Number(c.B)} x {excess}", x, TerramechanicsSources.ExcessDrawbar)
            .Step("D", "drawbar pull on the level, about 20 % slip", "W (X - sqrt(X^2 - C RCI_x))", $"{w} ({x} - sqrt({x}^2 - {Text.Number(c.C)} x {excess}))", Text.Kilonewtons(r.DrawbarPull!.Value.Newtons), TerramechanicsSources.ExcessDrawbar)
            .Build();
    }

    /// <summary>Gives the motion resistance band of many soils at once: the same kernel over spans.</summary>
    /// <param name="mobility">Vehicle cone index of the running gear.</param>
    /// <param name="ratingConeIndexKilopascals">Rating cone index, 0 to 20,000 kPa, one per soil.</param>
    /// <param name="lowRatio">Receives the lower reading of motion resistance over weight; 0 where it is no-go.</param>
    /// <param name="highRatio">Receives the upper reading; 0 where it is no-go.</param>
    /// <param name="go">Receives whether the soil carries the vehicle; where false both ratios are 0 and mean nothing.</param>
    /// <exception cref="ArgumentNullException"><paramref name="mobility"/> is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void MotionResistance(MobilityResult mobility, ReadOnlySpan<double> ratingConeIndexKilopascals, Span<double> lowRatio, Span<double> highRatio, Span<bool> go)
    {
        Guard.NotNull(mobility, nameof(mobility));
        Guard.SameLength(ratingConeIndexKilopascals.Length, lowRatio.Length, nameof(lowRatio));
        Guard.SameLength(ratingConeIndexKilopascals.Length, highRatio.Length, nameof(highRatio));
        Guard.SameLength(ratingConeIndexKilopascals.Length, go.Length, nameof(go));
        Guard.All(ratingConeIndexKilopascals, 0, 20000, "kPa", nameof(ratingConeIndexKilopascals));
        for (var i = 0; i < go.Length; i++)
        {
            var excess = (ratingConeIndexKilopascals[i] * 1000) - mobility.OnePass.Pascals;
            go[i] = excess >= 0;
            highRatio[i] = go[i] ? ExcessIndexKernel.ResistanceReadingA(excess) : 0;
            lowRatio[i] = !go[i] ? 0 : mobility.IsTracked ? highRatio[i] : ExcessIndexKernel.ResistanceReadingB(excess);
        }
    }
}
