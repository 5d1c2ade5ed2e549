using System;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>The whole-machine sum, once: one state in, the terms out. No allocation, no units, no exceptions.</summary>
internal static class DemandKernel
{
    /// <summary>Share of side adhesion that a turning wheel mobilises (judgement).</summary>
    public const double SideTurning = 0.5;

    /// <summary>Sums one state.</summary>
    public static void Compose(DemandFlat f, in DemandState s, out DemandTerms t)
    {
        t = default;
        t.LimitingAxle = -1;
        t.Floor = s.Floor;
        t.Locked = s.Locked;
        var area = f.BellyArea;
        t.BellyLoad = UnderbodyKernel.Carried(f.Weight, area, f.WheelArea, s.Floor);
        if (area > 0)
        {
            t.Belly = UnderbodyKernel.Drag(f.BellyLength, f.BellyWidth, f.BellyImmersion, s.Floor, f.UnitWeight, f.AdhesionFactor);
            if (s.Sealed && s.Uplift > 0) Uplift(f, s, area, ref t);
        }

        for (var i = 0; i < f.Count.Length; i++) Axle(f, s, i, f.Carry(i, t.BellyLoad), ref t);
        if (f.AnyBuried) t.Climb = f.Weight * s.ExitSine;
        t.Grade = f.Weight * f.GradeSine;
    }

    private static void Axle(DemandFlat f, in DemandState s, int i, double carry, ref DemandTerms t)
    {
        int count = f.Count[i];
        double load = f.Load[i] * carry / count, b = f.Width[i], z = f.Sinkage[i];
        var model = load > 0 ? load * BrixiusKernel.MotionResistanceRatio(s.Index * f.NumericPerPascal[i] / carry, 0, BrixiusConstants.Radial) : 0;
        var locked = s.Locked && f.Braked[i];
        var shear = locked ? BuriedWheelKernel.Base(b, f.Contact[i], s.Floor) : 0;
        if (!f.Buried[i])
        {
            if (shear > model) t.Base += count * shear;
            else t.Model += count * model;
            return;
        }

        var roll = locked ? 0 : s.Rho * load;
        var side = f.SidesDug ? 0 : BuriedWheelKernel.Side(f.Segment[i], s.Wall, f.AdhesionFactor, locked ? 1 : SideTurning);
        double face = 0, suction = 0;
        if (!f.Dug)
        {
            if ((s.Meets & (1 << i)) != 0) face = Math.Min(FaceKernel.Resistance(f.Face, b, f.Diameter[i], z, s.Wall, f.UnitWeight), f.StepForce(i, load));
            if (s.Sealed) suction = BuriedWheelKernel.Suction(b, z, s.Wall) * (1 - s.VentedShare);
        }

        if (model > roll + shear + side + face + suction)
        {
            t.Model += count * model;
            t.ModelGoverns |= 1 << i;
            return;
        }

        t.Roll += count * roll;
        t.Base += count * shear;
        t.Side += count * side;
        t.Face += count * face;
        t.Suction += count * suction;
    }

    private static void Uplift(DemandFlat f, in DemandState s, double area, ref DemandTerms t)
    {
        t.UpliftHeld = SuctionKernel.Uplift(s.Uplift, s.Floor, area, f.UnitWeight * f.BellyImmersion);
        var developed = t.UpliftHeld;
        for (var i = 0; i < f.Count.Length; i++)
        {
            // All axles stand on the one floor that the machine's standing was worked back to, with the same chords: a rolling axle limits like a buried one.
            if (!(f.UpliftShare[i] > 0)) continue;
            var spare = Math.Max(0, Bearing(f, i, s.Floor) - f.Load[i]);
            if (spare / f.UpliftShare[i] >= developed) continue;
            developed = spare / f.UpliftShare[i];
            t.LimitingAxle = i;
        }

        t.UpliftDeveloped = developed;
        // On rolling wheels alone it stands in a rut and not in a hole: nothing rises, so the uplift goes into the pull as little as the climb does.
        if (f.AnyBuried) t.Lift = developed * s.ExitSine;
    }

    /// <summary>What the floor bears under all wheels of an axle.</summary>
    public static double Bearing(DemandFlat f, int axle, double floor) =>
        f.Count[axle] * BuriedWheelKernel.Bearing(f.Width[axle], f.Contact[axle], f.Sinkage[axle], floor, f.UnitWeight, UnderbodyKernel.BearingFactor);
}
