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
        foreach (var part in check.Graph.Links.Select(l => l.Part).Concat(check.Graph.Nodes.Where(n => n.Joiner is not null).Select(n => n.Joiner!))) RigInspection.OfPart(part, findings);
        foreach (var node in check.Graph.Nodes) OfNode(check.Graph, node, findings);
        for (var i = 0; i < check.Graph.Links.Count; i++)
        {
            if (check.IncludedRadians(i) is { } included) BridleInspection.Add(check.Graph.Links[i], included, findings);
        }

        foreach (var steel in MetalJoiners.Of(check.Graph)) findings.Add(new Finding(RiggingFindings.MetalJoiner, steel));
        if (IsLowStretch(check.Graph)) findings.Add(new Finding(GearFindings.LowStretch, check.Graph.Links[0].Part.Name));
        RigStrengthFindings.Add(check.Places, check.Outcomes, check.Loads, i => check.Parts[i].Called, false, findings);
        foreach (var attachment in check.Attachments) attachment.AddFindings(findings);
        // Without the list of failures nobody knows how fast.
        foreach (var steel in check.SteelOnFreeEnds) findings.Add(check.Failures.Count > 0 ? FailureAnalysis.SteelFinding(check.Failures, steel) : new Finding(RiggingFindings.SteelOnFreeEnd, steel));
        return findings.OrderByDescending(f => f.Severity).ToList().AsReadOnly();
    }

    private static void OfNode(RigGraph graph, RigNode node, List<Finding> findings)
    {
        if (node.Point is { } point)
        {
            RigInspection.OfAttachment(point, findings);
            return;
        }

        var lines = graph.Links.Where(l => l.Touches(node.Name)).ToList();
        var runs = lines.Any(l => l.RunsThrough(node.Name));
        if (node.Joiner is null)
        {
            if (lines.Any(l => l.IsSteel) && lines.Any(l => !l.IsSteel)) findings.Add(new Finding(GearFindings.SteelInEye, lines.First(l => l.IsSteel).Part.Name));
            else if (!runs && !lines[0].IsSteel) findings.Add(new Finding(RiggingFindings.StrapOnStrap, lines[0].Part.Name));
        }
    }

    /// <summary>Whether nothing of the rig stretches much.</summary>
    private static bool IsLowStretch(RigGraph graph) => !graph.Links.Any(l => l.Part.StretchesMuch);
}
