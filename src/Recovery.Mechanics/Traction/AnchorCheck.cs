using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>An anchor against what the demand and what the puller put on it.</summary>
public sealed record AnchorCheck
{
    private readonly double? _line;

    internal AnchorCheck(GroundAnchor anchor, double planning, double imposable, double? line)
    {
        Anchor = anchor;
        FromPlanningHigh = Force.FromNewtons(planning);
        FromImposable = Force.FromNewtons(imposable);
        _line = line;
    }

    /// <summary>Gets the anchor.</summary>
    public GroundAnchor Anchor { get; }

    /// <summary>Gets the load from the planning high of the demand.</summary>
    public Force FromPlanningHigh { get; }

    /// <summary>Gets the load from what the puller can impose.</summary>
    public Force FromImposable { get; }

    /// <summary>Gets the greater of the two: what it must hold.</summary>
    public Force Required => Force.FromNewtons(Math.Max(FromPlanningHigh.Newtons, FromImposable.Newtons));

    /// <summary>Gets the required load over what it holds; null where there is no number for the anchor or it holds nothing.</summary>
    public double? Utilisation => Anchor.Holds is { } holds && holds.Newtons > 0 ? Required.Newtons / holds.Newtons : null;

    /// <summary>Gets whether it holds both loads and nothing about it stops the job.</summary>
    public bool HoldsBoth
    {
        get
        {
            foreach (var finding in Findings)
            {
                if (finding.Severity == Severity.Stop) return false;
            }

            return true;
        }
    }

    /// <summary>Gets the objections, those to the anchor itself first.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var list = new List<Finding>(Anchor.Findings);
            double required = Required.Newtons, holds = Anchor.Holds?.Newtons ?? 0;
            if (Anchor.Holds is not null && required > holds) list.Add(new Finding(AnchorFindings.TooWeak, Anchor.Name, required / 1000, holds / 1000, "kN"));
            else if (Anchor.Holds is not null && required > 0.9 * holds) list.Add(new Finding(AnchorFindings.WithinTenPercent, Anchor.Name, required / 1000, holds / 1000, "kN"));
            if (Anchor is PicketHoldfast) list.Add(new Finding(AnchorFindings.Pickets, Anchor.Name, required / 1000, holds / 1000, "kN", required > holds ? Severity.Stop : Severity.Caution));
            if (_line is { } line && Anchor.Holds is not null && line > holds) list.Add(new Finding(AnchorFindings.LineStronger, Anchor.Name, line / 1000, holds / 1000, "kN"));
            return list.AsReadOnly();
        }
    }

    /// <summary>Gives the check in words, invariant culture.</summary>
    /// <returns>Required, held and utilisation.</returns>
    public override string ToString() => Anchor.Name + " must hold " + Text.Kilonewtons(Required.Newtons, 3) + (Anchor.Holds is { } holds ? ", holds " + Text.Kilonewtons(holds.Newtons, 3) : ", no number");
}
