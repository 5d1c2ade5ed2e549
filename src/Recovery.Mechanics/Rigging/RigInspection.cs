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
            var part = rig.Parts[i];
            switch (part)
            {
                case Strap strap:
                    Of(strap.Name, strap.Rating, strap.Rating.BreakingNewtons, findings);
                    GearInspection.AddStrap(strap, findings);
                    if (strap.RejectedFor != StrapCondition.Sound) findings.Add(new Finding(RiggingFindings.Damage, strap.Name));
                    if (i + 1 < rig.Parts.Count && rig.Parts[i + 1] is Strap) findings.Add(new Finding(RiggingFindings.StrapOnStrap, strap.Name));
                    break;
                case Bridle bridle:
                    Of(bridle.Name, bridle.Strap.Rating, bridle.Strap.Rating.BreakingNewtons, findings);
                    GearInspection.AddStrap(bridle.Strap, findings);
                    if (bridle.Strap.RejectedFor != StrapCondition.Sound) findings.Add(new Finding(RiggingFindings.Damage, bridle.Name));
                    if (i + 1 < rig.Parts.Count && rig.Parts[i + 1] is Strap) findings.Add(new Finding(RiggingFindings.StrapOnStrap, bridle.Name));
                    BridleInspection.Add(bridle, findings);
                    break;
                case Chain chain:
                    Of(chain.Name, chain.Rating, chain.Rating.BreakingNewtons, findings);
                    GearInspection.AddChain(chain, findings);
                    if (IsMetalJoiner(rig, i)) findings.Add(new Finding(RiggingFindings.MetalJoiner, chain.Name));
                    break;
                case WireRope wire:
                    Of(wire.Name, wire.Rating, wire.Rating.BreakingNewtons, findings);
                    GearInspection.AddWireRope(wire, findings);
                    if (IsMetalJoiner(rig, i)) findings.Add(new Finding(RiggingFindings.MetalJoiner, wire.Name));
                    break;
                case SoftShackle soft:
                    Of(soft.Name, soft.Rating, soft.Rating.BreakingNewtons, findings);
                    GearInspection.AddSoftShackle(soft, findings);
                    break;
                case Shackle shackle:
                    OfShackle(rig, i, shackle, findings);
                    break;
            }
        }

        OfAttachment(rig.Drawbar, findings);
        OfAttachment(rig.Casualty, findings);
    }

    internal static void Of(string name, Rating rating, double? breaking, List<Finding> findings)
    {
        if (rating.Kind == RatingKind.Unknown) findings.Add(new Finding(RiggingFindings.RatingUnknown, name));
        else if (rating.Kind == RatingKind.ProofLoad && breaking is null) findings.Add(new Finding(RiggingFindings.ProofLoadOnly, name));
        else if (breaking is null) findings.Add(new Finding(RiggingFindings.BreakingUnknown, name));
        else if (rating.Kind == RatingKind.LashingCapacity) findings.Add(new Finding(RiggingFindings.LashingGear, name));
    }

    private static void OfShackle(Rig rig, int i, Shackle shackle, List<Finding> findings)
    {
        OfShackle(shackle, findings);
        if (IsMetalJoiner(rig, i)) findings.Add(new Finding(RiggingFindings.MetalJoiner, shackle.Name));
    }

    internal static void OfShackle(Shackle shackle, List<Finding> findings)
    {
        Of(shackle.Name, shackle.Rating, shackle.BreakingNewtons, findings);
        if (shackle.Damaged) findings.Add(new Finding(RiggingFindings.Damage, shackle.Name));
        if (GearInspection.OfLoad(shackle) is { } load) findings.Add(load);
        if (GearInspection.OfSize(shackle) is { } size) findings.Add(size);
        if (shackle.Pin == ShacklePin.Screw) findings.Add(new Finding(RiggingFindings.ScrewPin, shackle.Name));
    }

    /// <summary>Steel with an elastic strap on either side, before or at the bridle.</summary>
    public static bool IsMetalJoiner(Rig rig, int i)
    {
        var end = rig.BridleIndex < 0 ? rig.Parts.Count : rig.BridleIndex + 1;
        if (i >= end) return false;
        bool before = false, after = false;
        for (var k = 0; k < end; k++)
        {
            if (rig.Parts[k] is not (Strap or Bridle)) continue;
            before |= k < i;
            after |= k > i;
        }

        return before && after;
    }

    private static void OfAttachment(AttachmentPoint point, List<Finding> findings)
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
