using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Says why the handbook rule and the soil model lie apart.</summary>
internal static class MethodWords
{
    /// <summary>Ratio from which a reason is owed (judgement).</summary>
    public const double Apart = 2;

    /// <summary>Share of the demand on the level from which a falling ground is named (judgement).</summary>
    private const double Worth = 0.1;

    public static Phrase? Why(PullDemand demand)
    {
        if (demand.MethodRatio is not { } ratio || (ratio <= Apart && ratio >= 1 / Apart)) return null;
        return ratio > Apart ? RuleAbove(demand) : SoilAbove(demand);
    }

    // Said of nearly every plan, so made once.
    private static readonly Phrase EveryReading = MethodPhrases.EveryReading.With(), AllButWeakest = MethodPhrases.AllButWeakest.With(), IndexAlone = MethodPhrases.IndexAlone.With();

    /// <summary>Which readings lie above the critical value and are taken down to it.</summary>
    public static Phrase Capped(Soil soil, double criticalPascals) =>
        criticalPascals < soil.WeakestRatingConeIndex.Pascals ? EveryReading : criticalPascals < soil.RatingConeIndex.Pascals ? AllButWeakest : IndexAlone;

    private static Phrase RuleAbove(PullDemand demand)
    {
        var stuck = demand.Stuck;
        var known = new List<Phrase>();
        if (stuck.DugSlope is not null) known.Add(MethodPhrases.HoleDug.With());
        if (stuck.Seal == Seal.Vented) known.Add(MethodPhrases.IsVented.With());
        if (stuck.BellyFreed) known.Add(MethodPhrases.BellyFree.With());
        if (stuck.MeetsUncutSoil is { } meets && !meets.Any(m => m)) known.Add(MethodPhrases.RutsOpen.With());
        var factor = DepthRule.Factor(demand.DepthClass);
        var times = (factor == 1 ? MethodPhrases.Once : factor == 2 ? MethodPhrases.Twice : MethodPhrases.ThreeTimes).With();
        if (Downhill(demand) is { } help) known.Insert(0, help);
        return known.Count > 0 ? MethodPhrases.RuleKnows.With(times, MethodPhrases.Both(known)) : MethodPhrases.RuleHeavy.With(times);
    }

    /// <summary>What the ground that falls along the pull does; null where the methods would lie as far apart without it.</summary>
    private static Phrase? Downhill(PullDemand demand)
    {
        double grade = demand.Bounds.Central.Grade, level = demand.CentralNewtons - grade;
        return grade < 0 && -grade > Worth * level ? MethodPhrases.GroundFalls.With(Text.Number(-100 * grade / level, 2)) : null;
    }

    private static Phrase SoilAbove(PullDemand demand)
    {
        var central = demand.CentralNewtons;
        var largest = demand.Terms.OrderByDescending(t => t.Central.Newtons).Take(2).ToList();
        return MethodPhrases.SoilAbove.With(MethodPhrases.Both(largest.ConvertAll(t => MethodPhrases.Share.With(t.Called, Text.Number(100 * t.Central.Newtons / central, 2)))));
    }
}
