using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>The handbook reckoning of a tackle: a tenth of the load resistance for every sheave.</summary>
/// <remarks>
/// <para>R_t = 0.10 R n; FLF = (R + R_t)/MA; DLF = FLF x parts that the dead line holds. R load resistance in kN, n sheaves, MA advantage.</para>
/// <para>Against the efficiency form it asks 11 to 27 % too much of a twofold purchase: the cautious side for a winch, the wrong one for an anchor, which is computed without friction and against the stall pull.</para>
/// <para>Source: form US Army TB 9-2350-292-10, tenth a sheave Navy Steelworker Vol. 2 (both primary); dead-line rule from memory.</para>
/// </remarks>
public static class TackleRule
{
    /// <summary>Gets the share of the load resistance that a sheave adds.</summary>
    public static Ratio FrictionPerSheave => Ratio.FromDecimalFractions(TackleKernel.HandbookFriction);

    /// <summary>Gives the tackle resistance.</summary>
    /// <param name="load">Load resistance, 0.001 to 10,000 kN.</param>
    /// <param name="sheaves">Sheaves, not blocks, 0 to 24.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force Resistance(Force load, int sheaves) => Force.FromNewtons(TackleKernel.Resistance(Load(load), Sheaves(sheaves), TackleKernel.HandbookFriction));

    /// <summary>Gives load and tackle resistance together.</summary>
    /// <param name="load">Load resistance, 0.001 to 10,000 kN.</param>
    /// <param name="sheaves">Sheaves, not blocks, 0 to 24.</param>
    /// <returns>The total.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force Total(Force load, int sheaves) => Force.FromNewtons(Load(load) + TackleKernel.Resistance(Load(load), Sheaves(sheaves), TackleKernel.HandbookFriction));

    /// <summary>Gives the fall-line force: what the winch or machine must pull.</summary>
    /// <param name="load">Load resistance, 0.001 to 10,000 kN.</param>
    /// <param name="sheaves">Sheaves, not blocks, 0 to 24.</param>
    /// <param name="mechanicalAdvantage">Parts of line on the load, 1 to 100.</param>
    /// <returns>The force.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force FallLine(Force load, int sheaves, double mechanicalAdvantage) => Force.FromNewtons(TackleKernel.FallLine(
        Load(load), Sheaves(sheaves), TackleKernel.HandbookFriction, Guard.Range(mechanicalAdvantage, 1, 100, string.Empty, nameof(mechanicalAdvantage))));

    /// <summary>Gives the force in a dead line that holds several parts of the fall line.</summary>
    /// <param name="fallLine">Fall-line force, 0 to 10,000 kN; the stall pull for sizing gear.</param>
    /// <param name="parts">Parts of the fall line that it holds, 1 to 24.</param>
    /// <returns>The force.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force DeadLine(Force fallLine, int parts) => Force.FromNewtons(Guard.Newtons(fallLine, 0, 10000, nameof(fallLine)) * Guard.Count(parts, 1, 24, nameof(parts)));

    /// <summary>Works the fall line out step by step.</summary>
    /// <param name="load">Load resistance, 0.001 to 10,000 kN.</param>
    /// <param name="sheaves">Sheaves, 0 to 24.</param>
    /// <param name="mechanicalAdvantage">Advantage, 1 to 100.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Working Explain(Force load, int sheaves, double mechanicalAdvantage)
    {
        Force fall = FallLine(load, sheaves, mechanicalAdvantage), total = Total(load, sheaves);
        string r = Text.Number(load.Kilonewtons);
        return new WorkingBuilder("Tackle by the handbook")
            .Step("R_t", "tackle resistance", "0.10 R n", "0.1 x " + r + " x " + Text.Number(sheaves), Text.Kilonewtons(total.Newtons - load.Newtons), TackleSources.TenPercent)
            .Step("R_tot", "total resistance", "R + R_t", r + " + " + Text.Number((total.Newtons - load.Newtons) / 1000), Text.Kilonewtons(total.Newtons), TackleSources.Steps)
            .Step("FLF", "fall-line force", "R_tot/MA", Text.Number(total.Kilonewtons) + "/" + Text.Number(mechanicalAdvantage), Text.Kilonewtons(fall.Newtons), TackleSources.Steps)
            .Build();
    }

    private static double Load(Force load) => Guard.Newtons(load, 0.001, 10000, nameof(load));

    private static int Sheaves(int sheaves) => Guard.Count(sheaves, 0, 24, nameof(sheaves));
}
