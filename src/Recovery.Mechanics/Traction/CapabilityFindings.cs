using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>Objections to a towing machine taken by itself.</summary>
internal static class CapabilityFindings
{
    /// <summary>Share of the weight below which the low bound says that the machine can hardly move itself (judgement).</summary>
    public const double BogShare = 0.10;

    public static IReadOnlyList<Finding> For(PullCapability c)
    {
        var list = new List<Finding>();
        var name = c.Tower.Machine.Name;
        list.AddRange(c.NoseMargin(c.Imposable).Findings);
        if (c.OverturnLimit is not null) list.AddRange(c.SideMargin(c.Imposable).Findings);
        if (c.LowBound.Of(PullLimit.Traction)!.Value.Newtons < BogShare * c.Flat.Weight) list.Add(new Finding(TractionFindings.PullerMayBog, name, BogShare * c.Flat.Weight / 1000, c.LowBound.Of(PullLimit.Traction)!.Value.Kilonewtons, "kN"));
        if (c.Tower.HitchRating is { } rating && rating.Newtons < c.ImposableNewtons) list.Add(new Finding(TractionFindings.HitchRatingExceeded, name, c.ImposableNewtons / 1000, rating.Kilonewtons, "kN"));
        AddHitching(c, list);
        if (c.LimitedBy == PullLimit.Power) list.Add(new Finding(TractionFindings.PowerLimited, name, c.TractionLimit.Kilonewtons, c.CentralNewtons / 1000, "kN"));
        return list.AsReadOnly();
    }

    /// <summary>Adds what the drawbar itself objects to, its category and what comes down on it, and tyres softer than the wheel model was fitted to.</summary>
    public static void AddHitching(PullCapability c, List<Finding> list)
    {
        var name = c.Tower.Machine.Name;
        TerramechanicsFindings.AddDeflection(list, name, c.Flat.GreatestDeflection);
        if (c.Tower.DrawbarCategory is { } category && c.Tower.EnginePower is { } engine && (double)engine.Watts > (double)DrawbarCategories.GreatestPower(category).Watts)
            list.Add(new Finding(TowingFindings.DrawbarBelowPower, name, (double)engine.Watts / 1000, (double)DrawbarCategories.GreatestPower(category).Watts / 1000, "kW"));
        if (c.Tower.HitchVerticalRating is { } vertical && c.ImposableNewtons * c.Flat.DownPerPull > vertical.Newtons)
            list.Add(new Finding(TowingFindings.DrawbarVertical, name, c.ImposableNewtons * c.Flat.DownPerPull / 1000, vertical.Kilonewtons, "kN"));
    }
}
