using System;
using System.Linq;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Resistance;

public class ResistanceKernelTests
{
    [Theory]
    [CheckRows("resistance", "face-rankine")]
    public void Face_matches(CheckRow row) => row.Matches(("P", BuriedWheelKernel.Face(row.Si("b"), row.Si("z"), row.Si("s_u"), row.Si("gamma"))));

    [Theory]
    [CheckRows("resistance", "suction")]
    public void Suction_matches(CheckRow row) => row.Matches(("S_h", BuriedWheelKernel.Suction(row.Si("b"), row.Si("z"), row.Si("s_u"))));

    [Theory]
    [CheckRows("resistance", "segment")]
    public void Segment_matches(CheckRow row) => row.Matches(("A_seg", BuriedWheelKernel.SegmentArea(2 * row.Si("r"), row.Si("z"))));

    [Theory]
    [CheckRows("resistance", "contact")]
    public void Contact_matches(CheckRow row) => row.Matches(("B", BuriedWheelKernel.ContactLength(row.Si("D"), row.Si("z"))));

    [Theory]
    [CheckRows("resistance", "rigid-step")]
    public void Rigid_step_matches(CheckRow row) => row.Matches(("F_over_W", BuriedWheelKernel.RigidStepRatio(2, row.Si("z_over_r"))));

    [Theory]
    [CheckRows("resistance", "ramp")]
    public void Ramp_matches(CheckRow row) => row.Matches(("F_over_W", Math.Sin(Math.Atan(1 / row.Si("n")))));

    [Theory]
    [CheckRows("resistance", "grade")]
    public void Grade_matches(CheckRow row)
    {
        var level = PullDemand.Estimate(ReferenceMachines.StuckHarvester());
        var tilted = ReferenceMachines.StuckHarvester() with { Grade = Recovery.Mechanics.Ground.Grade.FromAngle(Angle.FromRadians(row.Si("theta"))) };
        row.Matches(("R_over_W", PullDemand.Estimate(tilted).Terms.Single(t => t.Key == "grade").Central.Newtons / level.Stuck.Machine.Weight.Newtons));
    }

    [Theory]
    [CheckRows("resistance", "grade-force")]
    public void Grade_force_matches(CheckRow row)
    {
        var tilted = PullDemand.Estimate(ReferenceMachines.StuckHarvester() with { Grade = Recovery.Mechanics.Ground.Grade.FromPercent(row.Printed("grade")) });
        row.Matches(("Fg", tilted.Terms.Single(t => t.Key == "grade").Central.Newtons / tilted.Stuck.Machine.Weight.Newtons * row.Si("W")));
    }

    [Theory]
    [CheckRows("resistance", "machine-step")]
    public void Rigid_step_of_the_machine_matches(CheckRow row)
    {
        double front = BuriedWheelKernel.RigidStepRatio(row.Si("d1"), row.Si("z")), rear = BuriedWheelKernel.RigidStepRatio(row.Si("d2"), row.Si("z")), sum = (front * row.Si("N1")) + (rear * row.Si("N_rear"));
        row.Matches(("front_F_over_W", front), ("rear_F_over_W", rear), ("F", sum), ("F_over_W", sum / row.Si("W")));
    }

    [Theory]
    [CheckRows("resistance", "dug-exit")]
    public void Digging_replaces_a_steeper_exit_alone(CheckRow row)
    {
        var stuck = ReferenceMachines.StuckHarvester();
        if (row.Si("slope_low") == row.Si("slope_high")) stuck = stuck with { ExitSlope = Angle.FromRadians(Math.Atan(row.Si("slope_low"))) };
        var a = CompiledStuckMachine.From(stuck.Dug(Angle.FromRadians(Math.Atan(row.Si("dug_slope")))), Recovery.Mechanics.Machines.Suspension.Equalised).Assumptions;
        row.Matches(("low", Math.Tan(a.ExitLow)), ("central", Math.Tan(a.ExitCentral)), ("high", Math.Tan(a.ExitHigh)));
    }

    [Theory]
    [CheckRows("resistance", "depth-rule")]
    public void Depth_rule_matches(CheckRow row)
    {
        var depth = row.Word("depth_class") switch { "wheel" => DepthClass.Hub, "fender" => DepthClass.Fender, _ => DepthClass.Cab };
        var weight = Force.FromNewtons(row.Si("W"));
        row.Matches(("R", DepthRule.Resistance(depth, weight).Newtons));
        Assert.Equal(Recovery.Mechanics.Provenance.Standing.FromMemory, DepthRule.Explain(depth, weight).Standing);
    }

    [Theory]
    [CheckRows("resistance", "literal-composition")]
    public void The_literal_sums_are_a_special_case(CheckRow row)
    {
        var f = DemandRows.Flat(row, Enumerable.Repeat((int)row.Si("wheels"), 1).ToArray(), [row.Si("b")], [row.Si("d")], [row.Si("W")], [1], bellyLoad: false);
        // One strength, level exit, no load on the belly, no wheel model beside: the belly's drag is added by itself.
        var belly = row.Si("L_belly") > 0 ? UnderbodyKernel.Drag(row.Si("L_belly"), row.Si("w_belly"), row.Si("z_belly"), row.Si("s_u"), row.Si("gamma"), row.Si("alpha")) : 0;
        var s = new DemandState { Wall = row.Si("s_u"), Floor = row.Si("s_u"), Index = 1e12, Rho = row.Si("rho") };
        double Sum(DemandState state, out DemandTerms t)
        {
            DemandKernel.Compose(f, state, out t);
            return t.Total - t.Climb + belly;
        }

        var vented = Sum(s, out var open);
        s.Meets = 1;
        var free = Sum(s, out _);
        s.Sealed = true;
        var sealedSum = Sum(s, out _);
        s.Locked = true;
        row.Matches(("vented", vented - open.Side), ("free", free), ("sealed", sealedSum), ("locked", Sum(s, out _)));
    }

    [Theory]
    [CheckRows("resistance", "composition")]
    public void The_whole_composition_matches_term_by_term(CheckRow row)
    {
        var belly = row.Has("u1");
        var f = DemandRows.Flat(row, [2, 2, 2], [row.Si("b1"), row.Si("b2"), row.Si("b3")], [row.Si("d1"), row.Si("d2"), row.Si("d3")], [row.Si("N1"), row.Si("N2"), row.Si("N3")], belly ? [row.Si("u1"), row.Si("u2"), row.Si("u3")] : [0, 0, 0], bellyLoad: belly);
        var facing = row.Word("facing");
        var s = new DemandState
        {
            Wall = row.Si("s_w"),
            Floor = row.Si("s_f"),
            Index = row.Si("CI_model"),
            Rho = row.Si("rho", 0),
            Locked = row.Word("locked") == "true",
            Uplift = row.Si("f"),
            Sealed = row.Si("f") > 0,
            Exit = Math.Atan(row.Si("slope")),
            Meets = facing == "all" ? 7 : facing == "axle3" ? 4 : 0,
        };
        DemandKernel.Compose(f, s, out var t);
        (string, double)[] terms =
        [
            ("roll", t.Roll), ("base", t.Base), ("side", t.Side), ("face", t.Face), ("suct", t.Suction), ("model", t.Model), ("belly", t.Belly), ("lift", t.Lift), ("climb", t.Climb), ("grade", t.Grade), ("total", t.Total),
        ];
        row.Matches(belly ? [("W_b", t.BellyLoad), ("S_v", t.UpliftHeld), ("S_d", t.UpliftDeveloped), .. terms] : terms);
    }
}
