using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>One bound of what a towing machine sustains: the limits, the one that governs and the margin to the others.</summary>
public sealed record PullBound
{
    private readonly CapabilityFlat _flat;
    private readonly CapabilityBound _bound;

    internal PullBound(CapabilityFlat flat, CapabilityBound bound)
    {
        _flat = flat;
        _bound = bound;
    }

    /// <summary>Gets the cone index fed to the model.</summary>
    public Pressure ConeIndex => Pressure.FromPascals(_bound.ConeIndex);

    /// <summary>Gets the pull it sustains: the least of the limits.</summary>
    public Force Pull => Force.FromNewtons(_bound.Pull);

    /// <summary>Gets the slip at the traction limit.</summary>
    public Ratio Slip => Ratio.FromDecimalFractions(_bound.Slip);

    /// <summary>Gets the limit that governs.</summary>
    public PullLimit LimitedBy => _bound.Limit;

    /// <summary>Gives one of the limits; null where the fact behind it is not known.</summary>
    /// <param name="limit">Which limit.</param>
    /// <returns>The limit.</returns>
    public Force? Of(PullLimit limit) => Finite(Newtons(limit));

    /// <summary>Gives a limit over the pull: 1 for the one that governs, above 1 for what is in hand at the others; null where the limit is not known or the machine does not pull.</summary>
    /// <param name="limit">Which limit.</param>
    /// <returns>The margin.</returns>
    public double? Margin(PullLimit limit) => _bound.Pull > 0 && !double.IsInfinity(Newtons(limit)) ? Newtons(limit) / _bound.Pull : null;

    /// <summary>Gives the bound in words, invariant culture.</summary>
    /// <returns>Pull and governing limit.</returns>
    public override string ToString() => Text.Kilonewtons(_bound.Pull) + ", " + _bound.Limit + " on " + Text.Kilopascals(_bound.ConeIndex);

    internal static Force? Finite(double newtons) => double.IsInfinity(newtons) ? null : Force.FromNewtons(newtons);

    private double Newtons(PullLimit limit) => limit switch
    {
        PullLimit.Traction => _bound.Traction,
        PullLimit.Power => _flat.PowerLimit,
        PullLimit.NoseLift => _flat.NoseLimit,
        PullLimit.Rating => _flat.RatingLimit,
        PullLimit.Overturn => _flat.SideLimit,
        _ => throw new ArgumentOutOfRangeException(nameof(limit), "limit is not one of the defined values."),
    };
}
