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

    public static string? Why(PullDemand demand)
    {
        if (demand.MethodRatio is not { } ratio || (ratio <= Apart && ratio >= 1 / Apart)) return null;
        return ratio > Apart ? RuleAbove(demand) : SoilAbove(demand);
    }

    /// <summary>Which readings lie above the critical value and are taken down to it.</summary>
    public static string Capped(Soil soil, double criticalPascals) =>
        criticalPascals < soil.WeakestRatingConeIndex.Pascals ? "every reading (low, central and high)"
        : criticalPascals < soil.RatingConeIndex.Pascals ? "all but the weakest reading (low and central of the demand)"
        : "the cone index alone (low of the demand; the rating cone index of central stays as it is)";

    private static string RuleAbove(PullDemand demand)
    {
        var stuck = demand.Stuck;
        var known = new List<string>();
        if (stuck.DugSlope is not null) known.Add("that the hole has been dug");
        if (stuck.Seal == Seal.Vented) known.Add("that it is vented");
        if (stuck.BellyFreed) known.Add("that the belly is free");
        if (stuck.MeetsUncutSoil is { } meets && !meets.Any(m => m)) known.Add("that the ruts are open");
        var factor = DepthRule.Factor(demand.DepthClass);
        var rule = "The rule looks at weight and depth alone, here " + (factor == 1 ? "once" : factor == 2 ? "twice" : "three times") + " the weight";
        if (Downhill(demand) is { } help) known.Insert(0, help);
        return rule + (known.Count > 0 ? "; it does not know " + string.Join(" and ", known) + "." : ": a heavy machine in weak ground needs less.");
    }

    /// <summary>What the ground that falls along the pull does; null where the methods would lie as far apart without it.</summary>
    private static string? Downhill(PullDemand demand)
    {
        double grade = demand.Bounds.Central.Grade, level = demand.CentralNewtons - grade;
        return grade < 0 && -grade > Worth * level ? "that the ground falls along the pull, where its own weight takes " + Text.Number(-100 * grade / level, 2) + " % off what would hold it on the level" : null;
    }

    private static string SoilAbove(PullDemand demand)
    {
        var central = demand.CentralNewtons;
        var largest = demand.Terms.OrderByDescending(t => t.Central.Newtons).Take(2).ToList();
        return "The rule looks at weight and depth alone: strong or sealed soil round a light machine holds more. Most of central is " + string.Join(" and ", largest.Select(t => t.Name + " (" + Text.Number(100 * t.Central.Newtons / central, 2) + " %)")) + ".";
    }
}
