using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is wrong with a single piece of gear whatever the load.</summary>
internal static class GearInspection
{
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
