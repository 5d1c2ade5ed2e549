using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>One arrangement of what is on the farm, against one demand.</summary>
public sealed record PullOption
{
    internal PullOption(string name, PullOptionKind kind, ForceBand capacity, double imposable, double centralDemand, IReadOnlyList<Finding> findings)
    {
        Name = name;
        Kind = kind;
        Capacity = capacity;
        Imposable = Force.FromNewtons(imposable);
        Utilisation = capacity.CentralNewtons > 0 ? centralDemand / capacity.CentralNewtons : null;
        Findings = findings;
        Outcome = PullOutcome.CanDo;
        foreach (var finding in findings)
        {
            if (finding.Severity == Severity.Stop) Outcome = PullOutcome.Cannot;
            else if (finding.Id == TractionFindings.Undecided.Id && Outcome == PullOutcome.CanDo) Outcome = PullOutcome.Undecided;
        }
    }

    /// <summary>Gets the arrangement in words.</summary>
    public string Name { get; }

    /// <summary>Gets its kind.</summary>
    public PullOptionKind Kind { get; }

    /// <summary>Gets what reaches the casualty, along the ground, handbook friction of the tackle taken off.</summary>
    public ForceBand Capacity { get; }

    /// <summary>Gets the most that it can put into the casualty and the gear there, no friction taken off.</summary>
    public Force Imposable { get; }

    /// <summary>Gets central demand over central capacity; null where it gives nothing.</summary>
    public double? Utilisation { get; }

    /// <summary>Gets the advantage of the tackle; 1 without.</summary>
    public int Advantage { get; init; } = 1;

    /// <summary>Gets fall line at the planning high over effort; null without a tackle. 1 and more does not hold.</summary>
    public double? TackleUtilisation { get; init; }

    /// <summary>Gets the check of the anchor of the tackle; null without.</summary>
    public AnchorCheck? Anchor { get; init; }

    /// <summary>Gets the check of what holds the winch; null without.</summary>
    public AnchorCheck? Holder { get; init; }

    /// <summary>Gets whether it can.</summary>
    public PullOutcome Outcome { get; }

    /// <summary>Gets the reasons and the cautions.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gets what was filled in about machines and anchors because it was not declared, each once.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; init; } = [];

    /// <summary>Gives the option in one line, invariant culture.</summary>
    /// <returns>Name, outcome and utilisation.</returns>
    public override string ToString() => Name + ": " + (Outcome == PullOutcome.CanDo ? "can do it" : Outcome == PullOutcome.Undecided ? "undecided" : "cannot") + (Utilisation is { } u ? ", uses " + Text.Number(u, 2) : string.Empty);
}
