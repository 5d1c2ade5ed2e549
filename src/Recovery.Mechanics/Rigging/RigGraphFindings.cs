using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What follows from the check of a rig of any arrangement.</summary>
internal static class RigGraphFindings
{
    public static IReadOnlyList<Finding> Of(RigGraphCheck check)
    {
        var findings = new List<Finding>();
        foreach (var part in check.Graph.Links.Select(l => (RigPart)l.Part).Concat(check.Graph.Nodes.Where(n => n.Joiner is not null).Select(n => n.Joiner!))) OfPart(part, findings);
        foreach (var node in check.Graph.Nodes) OfNode(check.Graph, node, findings);
        RigStrengthFindings.Add(check.Places, check.Outcomes, check.Loads, i => check.Parts[i].Name, false, findings);
        foreach (var attachment in check.Attachments) attachment.AddFindings(findings);
        foreach (var steel in check.SteelOnFreeEnds) findings.Add(new Finding(RiggingFindings.SteelOnFreeEnd, steel));
        return findings.OrderByDescending(f => f.Severity).ToList().AsReadOnly();
    }

    private static void OfPart(RigPart part, List<Finding> findings)
    {
        switch (part)
        {
            case Strap s:
                RigInspection.Of(s.Name, s.Rating, s.Rating.BreakingNewtons, findings);
                GearInspection.AddStrap(s, findings);
                if (s.RejectedFor != StrapCondition.Sound) findings.Add(new Finding(RiggingFindings.Damage, s.Name));
                break;
            case SoftShackle s:
                RigInspection.Of(s.Name, s.Rating, s.Rating.BreakingNewtons, findings);
                GearInspection.AddSoftShackle(s, findings);
                break;
            case SnatchBlock b:
                RigInspection.Of(b.Name, b.Rating, b.Rating.BreakingNewtons, findings);
                break;
            case Shackle s:
                RigInspection.OfShackle(s, findings);
                break;
        }
    }

    private static void OfNode(RigGraph graph, RigNode node, List<Finding> findings)
    {
        if (node.Point is { } point)
        {
            if (point.Kind == AttachmentKind.Unidentified) findings.Add(new Finding(RiggingFindings.AttachmentUnidentified, point.Name));
            else if (point.Forbidden) findings.Add(new Finding(RiggingFindings.AttachmentForbidden, point.Name));
            return;
        }

        var straps = graph.Links.Where(l => l.Touches(node.Name)).ToList();
        var runs = straps.Any(l => l.RunsThrough(node.Name));
        if (node.Joiner is null && !runs) findings.Add(new Finding(RiggingFindings.StrapOnStrap, straps[0].Part.Name));
        // Steel in the middle of an elastic line: straps on it that are not choked round an axle, two of them at least.
        if (node.Joiner is Shackle && straps.Count(l => !l.Part.Choked) > 1) findings.Add(new Finding(RiggingFindings.MetalJoiner, node.Joiner.Name));
    }
}
