using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Holding power of a log buried across the line of pull, by mean depth, slope of the line and soil.</summary>
/// <remarks>
/// <para>HP = table(mean depth, slope) x soil factor, on the bearing face. L = F/(HP D_f) + trench width; F = HP D_f (L - trench width). C = (H + D_D) run.</para>
/// <para>HP in kPa; mean depth D_D 0.914 to 2.134 m (3 to 7 ft); slope of the line 1:1 to 1:4, given as the run for one of rise; D_f log diameter or face of a timber, L length in m; F load in kN; H height of the upper end of the line above the ground.
/// Soil factors 5 rock or hardpan, 1 loam, 0.5 fine-grained or wet sandy.</para>
/// <para>Between the entries linear (judgement; up to some 3 % high, because holding power rises more than in proportion to depth). Shallower than the table there is no number; deeper and flatter keeps the last entry, flagged; steeper than 1:1 goes over to a column for a pull straight up (from memory), flagged.</para>
/// <para>The bearing face must be undisturbed and undercut by 15 degrees, the soil as named to that depth. The holding power is used as an allowable value against the breaking strength of the line. In a field that bogs harvesters take the wet factor.</para>
/// <para>Source: US Army TM 5-5420-278-10 p. 22 Table 9, the table of FM 5-125 (primary); column straight up FM 5-125 (from memory).</para>
/// </remarks>
public sealed class DeadmanModel : IModel
{
    private DeadmanModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static DeadmanModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Deadman";

    /// <inheritdoc/>
    public Source Source => AnchorSources.Deadman;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("D_D", "mean depth", DeadmanKernel.LeastDepth - 1e-9, DeadmanKernel.GreatestDepth + 1e-9, "m", AnchorSources.Deadman),
        new ValidityLimit("run", "run of the line for one of rise", 1, DeadmanKernel.FlattestRun, string.Empty, AnchorSources.Deadman));

    /// <summary>Gives the factor of a soil on the holding power of loam.</summary>
    /// <param name="soil">The soil.</param>
    /// <returns>5, 1 or 0.5.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The soil is not one of the defined values.</exception>
    public static double SoilFactor(DeadmanSoil soil) => Guard.Defined(soil, soil is >= DeadmanSoil.Loam and <= DeadmanSoil.RockOrHardpan, nameof(soil)) switch
    {
        DeadmanSoil.RockOrHardpan => DeadmanKernel.RockFactor,
        DeadmanSoil.FineGrainedOrWetSand => DeadmanKernel.WetFactor,
        _ => 1,
    };

    /// <summary>Gives the holding power.</summary>
    /// <param name="meanDepth">Depth of the middle of the log below the ground, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise: 3 for 1:3; 0 (straight up) to 100.</param>
    /// <param name="soil">The soil down to that depth.</param>
    /// <returns>The holding power with its flags.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public DeadmanHolding HoldingPower(Length meanDepth, double slopeRun, DeadmanSoil soil)
    {
        double depth = Guard.Metres(meanDepth, 0.1, 6, nameof(meanDepth)), run = Guard.Range(slopeRun, 0, 100, string.Empty, nameof(slopeRun));
        var factor = SoilFactor(soil);
        var loam = DeadmanKernel.HoldingPower(depth, run);
        return new DeadmanHolding(loam < 0 ? null : loam, factor, Validity.Flag(depth, run));
    }

    /// <summary>Gives the place of the deadman behind the upper end of the line.</summary>
    /// <param name="lineHeight">Height of the upper end of the line above the ground, 0 to 5 m.</param>
    /// <param name="meanDepth">Mean depth of the log, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise, 1 to 4.</param>
    /// <returns>The horizontal distance; at 1 and 4 its least and greatest.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length Distance(Length lineHeight, Length meanDepth, double slopeRun) => Length.FromMeters(DeadmanKernel.Distance(
        Guard.Metres(lineHeight, 0, 5, nameof(lineHeight)), Guard.Metres(meanDepth, 0.1, 6, nameof(meanDepth)), Guard.Range(slopeRun, 1, DeadmanKernel.FlattestRun, string.Empty, nameof(slopeRun))));

    /// <summary>Works the holding power out step by step.</summary>
    /// <param name="meanDepth">Mean depth of the log, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise, 0 to 100.</param>
    /// <param name="soil">The soil.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length meanDepth, double slopeRun, DeadmanSoil soil)
    {
        var holding = HoldingPower(meanDepth, slopeRun, soil);
        var working = new WorkingBuilder(Name);
        var place = "depth " + Text.With(meanDepth.Meters, "m") + ", slope 1:" + Text.Number(slopeRun);
        if (holding.Loam is not { } loam || holding.Power is not { } power) return working.Step("HP_loam", "holding power in loam: none, shallower than the table", "table", place, "none", Source).Build();
        return working
            .Step("HP_loam", "holding power in loam", "table(D_D, run)", place, Text.Kilopascals(loam.Pascals), slopeRun < 1 ? AnchorSources.DeadmanStraightUp : Source)
            .Step("HP", "holding power in this soil", "HP_loam x factor", Text.Number(loam.Kilopascals) + " x " + Text.Number(holding.SoilFactor), Text.Kilopascals(power.Pascals), Source)
            .Build();
    }
}
