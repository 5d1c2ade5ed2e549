using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>The ends of a demand over the floor: machines of two to four axles on either frame, before and after unloading, the belly anywhere or at no known place, every law of the soil ahead.</summary>
public class FloorBendTests
{
    private const int Floors = 2000, Parts = 12;

    private const double Room = 1e-8;

    [Property(MaxTest = 250)]
    public Property No_floor_of_two_thousand_lies_outside_the_bounds() => Prop.ForAll(Machines(), stuck => Frames(stuck).All(frame => Holds(CompiledStuckMachine.From(stuck, frame))));

    /// <summary>What makes the high exact: between two neighbours of the list a sum never bends downwards. A bend that the list leaves out shows here even where it is not the highest.</summary>
    [Property(MaxTest = 1500)]
    public Property Between_two_listed_floors_no_sum_bends_downwards() => Prop.ForAll(Machines(), stuck => Frames(stuck).All(frame =>
    {
        var compiled = CompiledStuckMachine.From(stuck, frame);
        var a = compiled.Assumptions;
        return !(a.Strength.FloorHigh > a.Strength.FloorLow) || new[] { DemandBounds.LowState(a), DemandBounds.HighState(a, locked: false), DemandBounds.HighState(a, locked: true) }.All(s => BendsUpwards(compiled.Flat, s, a.Strength.FloorLow, a.Strength.FloorHigh));
    }));

    private static IEnumerable<Suspension> Frames(StuckMachine stuck) => stuck.Machine.Axles.Count > 2 ? [Suspension.Equalised, Suspension.StraightFrame] : [Suspension.Equalised];

    private static bool Holds(CompiledStuckMachine compiled)
    {
        var (flat, a) = (compiled.Flat, compiled.Assumptions);
        DemandBounds.Evaluate(flat, a, out var bounds);
        DemandState low = DemandBounds.LowState(a), turning = DemandBounds.HighState(a, locked: false), locked = DemandBounds.HighState(a, locked: true);
        double most = Room * Math.Abs(bounds.High.Total), least = Room * Math.Abs(bounds.Low.Total);
        for (var i = 0; i <= Floors; i++)
        {
            low.Floor = turning.Floor = locked.Floor = a.Strength.FloorLow + ((a.Strength.FloorHigh - a.Strength.FloorLow) * i / Floors);
            DemandKernel.Compose(flat, low, out var l);
            DemandKernel.Compose(flat, turning, out var t);
            DemandKernel.Compose(flat, locked, out var s);
            if (t.Total > bounds.High.Total + most || (a.Turning != true && s.Total > bounds.High.Total + most) || l.Total < bounds.Low.Total - least) return false;
        }

        return true;
    }

    private static bool BendsUpwards(DemandFlat flat, DemandState state, double from, double to)
    {
        var listed = new double[FloorBends.Most(flat.Count.Length)];
        var n = FloorBends.Of(flat, state, from, to, listed);
        double[] floors = [from, .. listed.Take(n).OrderBy(f => f), to];
        double At(double floor)
        {
            state.Floor = floor;
            DemandKernel.Compose(flat, state, out var terms);
            return terms.Total;
        }

        for (var i = 1; i < floors.Length; i++)
        {
            double left = floors[i - 1], step = (floors[i] - left) / Parts, before = At(left), here = At(left + step);
            for (var k = 2; k <= Parts; k++)
            {
                var next = At(left + (k * step));
                if (before + next - (2 * here) < -Room * Math.Abs(here)) return false;
                (before, here) = (here, next);
            }
        }

        return true;
    }

    private static Arbitrary<StuckMachine> Machines() => (
        from n in Gen.Choose(2, 4)
        from gaps in Gen.Choose(12, 60).ArrayOf(3)
        from duals in Gen.Choose(1, 2).ArrayOf(4)
        from width in Gen.Choose(30, 100).ArrayOf(4)
        from diameter in Gen.Choose(100, 210).ArrayOf(4)
        from driven in Gen.Elements(true, false).ArrayOf(4)
        from braked in Gen.Elements(true, true, false).ArrayOf(4)
        from sunk in Gen.Choose(0, 70).ArrayOf(4)
        from body in Gen.Choose(2, 20)
        from cargo in Gen.Choose(1, 30)
        from at in Gen.Choose(5, 95).ArrayOf(2)
        from unloaded in Gen.Elements(true, false)
        from ci in Gen.Choose(80, 2500)
        from ri in Gen.Choose(30, 100)
        from adhesion in Gen.Choose(20, 100)
        from belly in Gen.Choose(5, 45).ArrayOf(3)
        from middle in Gen.Choose(-90, 40)
        from known in Gen.Elements(true, true, false)
        from face in Gen.Elements(FaceMethod.Undrained.Where(m => !m.HoldsSuction).ToArray())
        from wheels in Gen.Elements(WheelMotion.Undeclared, WheelMotion.Undeclared, WheelMotion.Turning, WheelMotion.Locked)
        from seal in Gen.Elements(Seal.Undeclared, Seal.Sealed, Seal.Vented, Seal.PartVented)
        from exit in Gen.Choose(-10, 40)
        from grade in Gen.Choose(-8, 8)
        from dug in Gen.Choose(0, 9)
        let place = Enumerable.Range(0, n).Select(i => -gaps.Take(i).Sum() / 10.0).ToArray()
        let axles = Enumerable.Range(0, n).Select(i => new Axle("axle " + (char)('a' + i), M(place[i]), 2 * duals[i], Tyre(width[i] / 100.0, diameter[i] / 100.0, 0.3, 0.2), driven[i], M(2.4)) { Braked = braked[i] }).ToArray()
        let machine = new Machine("any", axles, [new NamedLoad("body", Mass.FromTonnes(body), M(place[n - 1] * at[0] / 100.0), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(cargo), M(place[n - 1] * at[1] / 100.0), M(2), LoadKind.Payload)])
        let soil = Soil.FromConeIndex(KPa(ci), Frac(ri / 100.0)) with { DeclaredAdhesionFactor = Frac(adhesion / 100.0) }
        let stuck = new StuckMachine(machine, soil, Enumerable.Range(0, n).Select(i => M(Math.Min(sunk[i], diameter[i]) / 100.0)), PullDirection.Rearwards)
        {
            Belly = new Belly(M(belly[0] / 10.0), M(Math.Min(belly[1], 40) / 20.0), M(belly[2] / 100.0)) { Middle = known ? M(middle / 10.0) : null },
            FaceMethod = face,
            Wheels = wheels,
            Seal = seal,
            ExitSlope = exit > 0 ? Angle.FromDegrees(exit) : null,
            Grade = Grade.FromPercent(grade),
        }
        let after = unloaded ? stuck.Without("cargo") : stuck
        select dug == 0 && after.AnyWheelBuried ? after.Dug(Angle.FromDegrees(8)) : after).ToArbitrary();
}
