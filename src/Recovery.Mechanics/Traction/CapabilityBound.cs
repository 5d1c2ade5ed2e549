using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>One end of the band of what a machine sustains.</summary>
internal readonly struct CapabilityBound
{
    private CapabilityBound(double coneIndex, double traction, double pull, double slip, PullLimit limit)
    {
        ConeIndex = coneIndex;
        Traction = traction;
        Pull = pull;
        Slip = slip;
        Limit = limit;
    }

    public double ConeIndex { get; }

    public double Traction { get; }

    public double Pull { get; }

    public double Slip { get; }

    public PullLimit Limit { get; }

    public static CapabilityBound At(CapabilityFlat flat, double coneIndexPascals)
    {
        var traction = CapabilityKernel.Traction(flat, coneIndexPascals, out var slip, out var residual);
        Check("sustained traction", residual, traction);
        var pull = CapabilityKernel.Sustained(traction, flat.PowerLimit, flat.NoseLimit, flat.SideLimit, flat.RatingLimit, out var limit);
        return new CapabilityBound(coneIndexPascals, traction, pull, slip, limit);
    }

    /// <summary>Refuses a pull whose equation was not solved.</summary>
    public static void Check(string what, double residual, double pull)
    {
        if (!(Math.Abs(residual) <= CapabilityKernel.AcceptedResidual)) throw new SolverException(what, 0, pull, residual, 80);
    }
}
