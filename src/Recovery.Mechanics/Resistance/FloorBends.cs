using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>The floors at which a sum can bend downwards. Between two of them it is a sum of terms that bend upwards or not at all, so its greatest value lies on one of them or at an end.</summary>
/// <remarks>
/// <para>Over the floor a sum has loads that change with what the belly carries in proportion to it, shear and drag in proportion to it, and the wheel model, a parabola of the load; the larger of two such bends upwards again. Downwards bend only: what the belly carries (its share by area), its adhesion (the cap),
/// the soil ahead of a wheel (the lesser of face and step) and the uplift (the least of seal, cavitation and what each axle can bear).</para>
/// </remarks>
internal static class FloorBends
{
    /// <summary>Room that the floors of a machine need.</summary>
    public static int Most(int axles) => 3 + (3 * axles) + (axles * (axles - 1) / 2);

    /// <summary>Writes the bends of one state that lie between two floors; returns how many.</summary>
    public static int Of(DemandFlat f, in DemandState s, double from, double to, Span<double> floors)
    {
        var n = 0;
        double area = f.BellyArea, changeOver = UnderbodyKernel.ChangeOverFloor(f.Weight, area, f.WheelArea);
        Inside(changeOver, from, to, floors, ref n);
        Inside(BuriedWheelKernel.AdhesionCapPascals / f.AdhesionFactor, from, to, floors, ref n);
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (!f.Buried[i] || f.Dug || (s.Meets & (1 << i)) == 0 || !(f.Load[i] > 0) || double.IsInfinity(f.Step[i]) || !(f.Step[i] > 0)) continue;
            // The step takes over where the wheel still carries face/step; up to the change-over the belly carries N_c s A.
            var left = FaceKernel.Resistance(f.Face, f.Width[i], f.Diameter[i], f.Sinkage[i], s.Wall, f.UnitWeight) * f.Count[i] / (f.Step[i] * f.Load[i]);
            var floor = f.BellyLoadLeaving(i, left) / (UnderbodyKernel.BearingFactor * area);
            if (floor < changeOver) Inside(floor, from, to, floors, ref n);
        }

        if (s.Sealed && s.Uplift > 0) Uplift(f, s, area, from, to, floors, ref n);
        return n;
    }

    /// <summary>Where what limits the uplift changes: seal, cavitation, and the spare bearing of each axle over its share, a line over the floor. Where an axle begins to have some to spare the sum bends upwards.</summary>
    private static void Uplift(DemandFlat f, in DemandState s, double area, double from, double to, Span<double> floors, ref int n)
    {
        double overburden = f.UnitWeight * f.BellyImmersion, cavitates = (BreakoutKernel.SuctionLimitPascals + overburden) / (s.Uplift * UnderbodyKernel.BearingFactor), rate = s.Uplift * UnderbodyKernel.BearingFactor * area;
        Inside(cavitates, from, to, floors, ref n);
        var most = SuctionKernel.Uplift(s.Uplift, cavitates, area, overburden);
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (!(f.UpliftShare[i] > 0)) continue;
            Line(f, i, out var at, out var slope);
            Inside(at / (rate - slope), from, to, floors, ref n);
            Inside((most - at) / slope, from, to, floors, ref n);
            for (var k = 0; k < i; k++)
            {
                if (!(f.UpliftShare[k] > 0)) continue;
                Line(f, k, out var other, out var otherSlope);
                Inside((other - at) / (slope - otherSlope), from, to, floors, ref n);
            }
        }
    }

    /// <summary>Spare bearing of an axle over its share of the uplift: value at no strength, and slope over the floor.</summary>
    private static void Line(DemandFlat f, int axle, out double at, out double slope)
    {
        var none = DemandKernel.Bearing(f, axle, 0);
        at = (none - f.Load[axle]) / f.UpliftShare[axle];
        slope = (DemandKernel.Bearing(f, axle, 1) - none) / f.UpliftShare[axle];
    }

    /// <summary>Not a number and the infinities are not between two floors.</summary>
    private static void Inside(double floor, double from, double to, Span<double> floors, ref int n)
    {
        if (floor > from && floor < to) floors[n++] = floor;
    }
}
