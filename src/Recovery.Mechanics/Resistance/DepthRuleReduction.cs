using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The handbook mire resistance after the reductions that the handbook gives, and after none that it does not.</summary>
public sealed record DepthRuleReduction
{
    internal DepthRuleReduction(double estimate, double factor, string reason)
    {
        Estimate = Force.FromNewtons(estimate);
        Factor = factor;
        Reduced = Force.FromNewtons(estimate * factor);
        Reason = reason;
    }

    /// <summary>Gets the resistance before any reduction.</summary>
    public Force Estimate { get; }

    /// <summary>Gets what is left of it, 0.5 to 1 (from memory).</summary>
    public double Factor { get; }

    /// <summary>Gets the resistance after the reduction.</summary>
    public Force Reduced { get; }

    /// <summary>Gets why that much and no more.</summary>
    public string Reason { get; }

    /// <summary>Gets the source of the reductions.</summary>
    public Source Source => ResistanceSources.DepthRuleReductions;

    /// <summary>Gives the reduction in one line, invariant culture.</summary>
    /// <returns>Both forces and the reason.</returns>
    public override string ToString() => Text.Kilonewtons(Estimate.Newtons, 3) + " to " + Text.Kilonewtons(Reduced.Newtons, 3) + ": " + Reason;
}
