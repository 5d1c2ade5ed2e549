using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The sources that went into an assessment.</summary>
internal static class SourceList
{
    public static IReadOnlyList<Source> Of(Assessment a)
    {
        var sources = new List<Source>();
        Take(a.Demand.Explain());
        Take(a.Capability.Explain());
        Add(GroundSources.RemouldingLimits);
        foreach (var term in a.Demand.Terms) Add(term.Source);
        if (a.Demand.DepthRule.Newtons > 0) Add(Resistance.ResistanceSources.DepthRule);
        if (a.Loads is { } loads) Take(loads.Explain());
        foreach (var part in a.Plan.Rig.Parts)
        {
            if (part is Strap strap) Take(strap.Explain());
            if (part is Chain chain) Take(chain.Strength.Explain());
            if (part is WireRope wire) Take(wire.Strength.Explain());
            if (part is not Strap && part.Elastic is { } elastic) Add(elastic.Source);
            if (part is Bridle bridle)
            {
                Take(bridle.Strap.Explain());
                Take(bridle.Explain());
            }
        }

        if (a.Rig is not null) Add(RiggingSources.PartialFactors);
        foreach (var finding in a.Findings) Add(finding.Source);
        foreach (var assumption in a.Assumptions) Add(assumption.Source);
        return sources.AsReadOnly();

        void Take(Working working)
        {
            foreach (var step in working.Steps) Add(step.Source);
        }

        void Add(Source source)
        {
            if (!sources.Contains(source)) sources.Add(source);
        }
    }
}
