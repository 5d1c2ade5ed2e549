using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is wrong with a rig whatever the load: unknown ratings, damage, steel in the line, wrong attachments. No factor rescues any of it.</summary>
internal static class RigInspection
{
    public static void Add(Rig rig, List<Finding> findings)
    {
        for (var i = 0; i < rig.Parts.Count; i++)
        {
            OfPart(rig.Parts[i], findings);
            switch (rig.Parts[i])
            {
                case Strap or Bridle:
                    if (i + 1 < rig.Parts.Count && rig.Parts[i + 1] is Strap) findings.Add(new Finding(RiggingFindings.StrapOnStrap, rig.Parts[i].Name));
                    if (rig.Parts[i] is Bridle bridle) BridleInspection.Add(bridle, findings);
                    break;
                case Chain or WireRope:
                    OfSteelLine(rig, i, findings);
                    break;
                case SnatchBlock or Shackle:
                    OfSteelJoiner(rig, i, findings);
                    break;
            }
        }

        if (IsLowStretch(rig)) findings.Add(new Finding(GearFindings.LowStretch, rig.LineParts[0].Name));

        OfAttachment(rig.Drawbar, findings);
        OfAttachment(rig.Casualty, findings);
    }

    /// <summary>What is wrong with one part wherever it stands: its rating, its damage, what acts on it.</summary>
    internal static void OfPart(RigPart part, List<Finding> findings)
    {
        switch (part)
        {
            case Strap strap:
                OfStrap(strap.Name, strap, findings);
                break;
            case Bridle bridle:
                OfStrap(bridle.Name, bridle.Strap, findings);
                break;
            case Chain chain:
                Of(chain.Name, chain.Rating, chain.Rating.BreakingNewtons, findings);
                GearInspection.AddChain(chain, findings);
                break;
            case WireRope wire:
                Of(wire.Name, wire.Rating, wire.Rating.BreakingNewtons, findings);
                GearInspection.AddWireRope(wire, findings);
                break;
            case SoftShackle soft:
                Of(soft.Name, soft.Rating, soft.Rating.BreakingNewtons, findings);
                GearInspection.AddSoftShackle(soft, findings);
                break;
            case SnatchBlock block:
                Of(block.Name, block.Rating, block.Rating.BreakingNewtons, findings);
                break;
            case Shackle shackle:
                OfShackle(shackle, findings);
                break;
            default:
                findings.Add(NotInspected(part));
                break;
        }
    }

    /// <summary>A kind of part that nobody wrote an inspection for: what is not looked at never passes.</summary>
    internal static Finding NotInspected(RigPart part) => new(RiggingFindings.RatingUnknown, part.Name);

    private static void OfStrap(string name, Strap strap, List<Finding> findings)
    {
        Of(name, strap.Rating, strap.Rating.BreakingNewtons, findings);
        GearInspection.AddStrap(strap, findings);
        if (strap.RejectedFor != StrapCondition.Sound) findings.Add(new Finding(RiggingFindings.Damage, name));
    }

    private static void Of(string name, Rating rating, double? breaking, List<Finding> findings)
    {
        if (rating.Kind == RatingKind.Unknown) findings.Add(new Finding(RiggingFindings.RatingUnknown, name));
        else if (rating.Kind == RatingKind.ProofLoad && breaking is null) findings.Add(new Finding(RiggingFindings.ProofLoadOnly, name));
        else if (breaking is null) findings.Add(new Finding(RiggingFindings.BreakingUnknown, name));
        else if (rating.Kind == RatingKind.LashingCapacity) findings.Add(new Finding(RiggingFindings.LashingGear, name));
    }

    /// <summary>Whether nothing in the line stretches much.</summary>
    private static bool IsLowStretch(Rig rig)
    {
        for (var i = 0; i < rig.LineParts.Count; i++)
        {
            if (rig.LineParts[i].StretchesMuch) return false;
        }

        return true;
    }

    /// <summary>A chain or wire rope: between straps it joins them; beside one that stretches it is thrown by it; bare in its eye it cuts it.</summary>
    private static void OfSteelLine(Rig rig, int i, List<Finding> findings)
    {
        var name = rig.Parts[i].Name;
        if (MetalJoiners.Joins(rig, i)) findings.Add(new Finding(RiggingFindings.MetalJoiner, name));
        else if (IsThrown(rig, i)) findings.Add(new Finding(RiggingFindings.SteelOnFreeEnd, name));
        if ((i > 0 && rig.Parts[i - 1] is Strap or Bridle) || (i + 1 < rig.Parts.Count && rig.Parts[i + 1] is Strap or Bridle)) findings.Add(new Finding(GearFindings.SteelInEye, name));
    }

    /// <summary>A shackle or block: with straps on both sides it joins them; between a strap and a chain or wire rope it is thrown with that.</summary>
    private static void OfSteelJoiner(Rig rig, int i, List<Finding> findings)
    {
        if (MetalJoiners.Joins(rig, i)) findings.Add(new Finding(RiggingFindings.MetalJoiner, rig.Parts[i].Name));
        else if (IsThrown(rig, i)) findings.Add(new Finding(RiggingFindings.SteelOnFreeEnd, rig.Parts[i].Name));
    }

    /// <summary>Steel in the line with line on both its sides, or that is line itself, and a strap on one.</summary>
    private static bool IsThrown(Rig rig, int i)
    {
        var end = rig.BridleIndex < 0 ? rig.Parts.Count : rig.BridleIndex + 1;
        if (i >= end) return false;
        bool strap = false, before = rig.Parts[i].IsLine, after = before;
        for (var k = 0; k < end; k++)
        {
            if (!rig.Parts[k].IsLine && rig.Parts[k] is not Bridle) continue;
            strap |= rig.Parts[k] is Strap or Bridle;
            before |= k < i;
            after |= k > i;
        }

        return strap && before && after;
    }

    private static void OfShackle(Shackle shackle, List<Finding> findings)
    {
        Of(shackle.Name, shackle.Rating, shackle.BreakingNewtons, findings);
        if (shackle.Damaged) findings.Add(new Finding(RiggingFindings.Damage, shackle.Name));
        if (GearInspection.OfLoad(shackle) is { } load) findings.Add(load);
        if (GearInspection.OfSize(shackle) is { } size) findings.Add(size);
        if (shackle.Pin == ShacklePin.Screw) findings.Add(new Finding(RiggingFindings.ScrewPin, shackle.Name));
    }

    internal static void OfAttachment(AttachmentPoint point, List<Finding> findings)
    {
        if (point.Kind == AttachmentKind.Unidentified) findings.Add(new Finding(RiggingFindings.AttachmentUnidentified, point.Name));
        else if (point.Forbidden) findings.Add(new Finding(RiggingFindings.AttachmentForbidden, point.Name));
    }

    /// <summary>Loads at the two attachments against their published numbers.</summary>
    public static void AddAttachmentLoads(Rig rig, Lines.LineLoads loads, List<Finding> findings)
    {
        AttachmentLoad.OfDrawbar(rig, loads.Output).AddFindings(findings);
        AttachmentLoad.OfCasualty(rig, loads.Output).AddFindings(findings);
    }
}
