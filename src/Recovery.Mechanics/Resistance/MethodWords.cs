using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Says why the handbook rule and the soil model lie apart.</summary>
internal static class MethodWords
{
    /// <summary>Ratio from which a reason is owed.</summary>
    public const double Apart = 2;

    public static string? Why(PullDemand demand)
    {
        if (demand.MethodRatio is not { } ratio || (ratio <= Apart && ratio >= 1 / Apart)) return null;
        return ratio > Apart ? RuleAbove(demand) : SoilAbove(demand);
    }

    private static string RuleAbove(PullDemand demand)
    {
        var stuck = demand.Stuck;
        var known = new List<string>();
        if (stuck.DugSlope is not null) known.Add("that the hole has been dug");
        if (stuck.Seal == Seal.Vented) known.Add("that it is vented");
        if (stuck.BellyFreed) known.Add("that the belly is free");
        if (stuck.MeetsUncutSoil is { } meets && !meets.Any(m => m)) known.Add("that the ruts are open");
        var factor = DepthRule.Factor(demand.DepthClass);
        return "The rule looks at weight and depth alone, here " + (factor == 1 ? "once" : factor == 2 ? "twice" : "three times") + " the weight"
            + (known.Count > 0 ? "; it does not know " + string.Join(" and ", known) + "." : ": a heavy machine in weak ground needs less.");
    }

    private static string SoilAbove(PullDemand demand)
    {
        var central = demand.CentralNewtons;
        var largest = demand.Terms.OrderByDescending(t => t.Central.Newtons).Take(2).ToList();
        return "The rule looks at weight and depth alone: strong or sealed soil round a light machine holds more. Most of central is " + string.Join(" and ", largest.Select(t => t.Name + " (" + Text.Number(100 * t.Central.Newtons / central, 2) + " %)")) + ".";
    }
}
