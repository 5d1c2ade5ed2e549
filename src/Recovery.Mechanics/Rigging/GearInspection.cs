using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is wrong with a single piece of gear whatever the load.</summary>
internal static class GearInspection
{
    /// <summary>What acts on a strap beyond wetness and a choke.</summary>
    public static void AddStrap(Strap strap, List<Finding> findings)
    {
        if (!strap.IsPlain) findings.AddRange(strap.Strength.Findings);
    }

    /// <summary>A soft shackle.</summary>
    public static void AddSoftShackle(SoftShackle soft, List<Finding> findings)
    {
        if (soft.Damaged) findings.Add(new Finding(RiggingFindings.Damage, soft.Name));
        findings.AddRange(soft.Strength.Findings);
    }

    /// <summary>A chain.</summary>
    public static void AddChain(Chain chain, List<Finding> findings)
    {
        findings.Add(new Finding(GearFindings.ChainUsed, chain.Name));
        if (chain.Damaged) findings.Add(new Finding(RiggingFindings.Damage, chain.Name));
        findings.AddRange(chain.Strength.Findings);
    }

    /// <summary>A wire rope.</summary>
    public static void AddWireRope(WireRope wire, List<Finding> findings)
    {
        if (wire.Damaged) findings.Add(new Finding(RiggingFindings.Damage, wire.Name));
        findings.AddRange(wire.Strength.Findings);
    }

    /// <summary>How a shackle is loaded.</summary>
    public static Finding? OfLoad(Shackle shackle)
    {
        if (shackle.TwoLegs is { } legs)
            return shackle.LimitShare == 0 ? new Finding(GearFindings.ShackleLegsTooWide, shackle.Name, ShackleKernel.WidestLegs, HitchKernel.Degrees(legs.Radians), "deg") : null;
        return shackle.LimitShare == 0 || (shackle.Pin == ShacklePin.RoundPin && shackle.OffAxis.Radians > 0) ? new Finding(RiggingFindings.ShackleOffAxis, shackle.Name) : null;
    }

    /// <summary>A shackle of which the size alone is known.</summary>
    public static Finding? OfSize(Shackle shackle)
    {
        if (shackle.Rating.Kind != RatingKind.Unknown || shackle.BodyDiameter is not { } body) return null;
        var limits = ShackleSizes.LimitsOf(body);
        return new Finding(GearFindings.ShackleSizeOnly, shackle.Name, limits[limits.Count - 1].WorkingLoadLimit.Newtons / 1000, limits[0].WorkingLoadLimit.Newtons / 1000, "kN");
    }
}
