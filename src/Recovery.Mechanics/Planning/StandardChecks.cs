using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>The checks that every plan is put through, in their order: contradictions, ground and mire, tyres, pull, procedure, rig as it looks, rig under load, attachments, way of the line, slope and direction, people, standing of the numbers.</summary>
public static class StandardChecks
{
    /// <summary>Gets the standard checks in their order.</summary>
    public static IReadOnlyList<IPlanCheck> All { get; } = Array.AsReadOnly<IPlanCheck>(
    [
        new Check("contradictions", Contradictions),
        new Check("mire", Mire),
        new Check("tyres", Tyres),
        new Check("pull", Pull),
        new Check("procedure", Procedure),
        new Check("rig as it looks", static (c, f) => RigInspection.Add(c.Plan.Rig, f)),
        new Check("rig under load", RigUnderLoad),
        new Check("attachments", Attachments),
        new Check("way of the line", WayOfTheLine),
        new Check("slope and direction", SlopeAndDirection),
        new Check("people", People),
        new Check("standing", Standing),
    ]);

    private static void Contradictions(PlanContext c, List<Finding> findings)
    {
        var plan = c.Plan;
        if (plan.Rig.Casualty.Kind == AttachmentKind.FrontAxle && plan.Stuck.Direction == PullDirection.Forwards && plan.Site.UnderMachine is not null)
            findings.Add(new Finding(PlanningFindings.Contradiction, PlanningPhrases.ForwardsUnder.With()));
        if (plan.Procedure.LockedGear is { } gear && plan.Procedure.ApproachSpeed is { } approach && approach.MetersPerSecond > gear.MetersPerSecond)
            findings.Add(new Finding(PlanningFindings.Contradiction, PlanningPhrases.ApproachFaster.With(Text.With(approach.MetersPerSecond * 3.6, "km/h", 3), Text.With(gear.MetersPerSecond * 3.6, "km/h", 3))));
        if (plan.Tower.HitchRating is { } rating && plan.Rig.Drawbar.WorkingLoad is { } working && Math.Abs(rating.Newtons - working.Newtons) > 1)
            findings.Add(new Finding(PlanningFindings.Contradiction, PlanningPhrases.TwoRatings.With(Text.Kilonewtons(rating.Newtons, 3), Text.Kilonewtons(working.Newtons, 3))));
        Lean(plan, findings);
    }

    /// <summary>A declared fall of the line and the measured heights of its ends are one fact; level is what nobody declared.</summary>
    private static void Pitch(RecoveryPlan plan, LineClearance way, List<Finding> findings)
    {
        const double Same = 2 * Math.PI / 180;
        double declared = plan.Site.LinePitch.Radians, measured = Math.Atan2(way.DrawbarHeight.Meters - way.AttachmentHeight.Meters, way.DrawbarDistance.Meters - way.AttachmentBehindAxle.Meters);
        if (Math.Abs(declared) < 1e-9 || Math.Abs(declared - measured) <= Same) return;
        findings.Add(new Finding(PlanningFindings.Contradiction, PlanningPhrases.TwoFalls.With(Text.With(plan.Site.LinePitch.Degrees, "deg", 3), Text.With(measured * 180 / Math.PI, "deg", 3))));
    }

    /// <summary>The lean of a bridle and the angle of the line off the direction of the pull are one fact.</summary>
    private static void Lean(RecoveryPlan plan, List<Finding> findings)
    {
        const double Same = Math.PI / 180;
        if (plan.Rig.Bridle is not { DeclaredLean: { } lean } bridle || Math.Abs(Math.Abs(lean.Radians) - Math.Abs(plan.Site.LineYaw.Radians)) <= Same) return;
        findings.Add(new Finding(PlanningFindings.Contradiction, PlanningPhrases.TwoLeans.With(bridle.Name, Text.With(Math.Abs(lean.Degrees), "deg", 3), Text.With(Math.Abs(plan.Site.LineYaw.Degrees), "deg", 3))));
    }

    private static void Mire(PlanContext c, List<Finding> findings)
    {
        c.Demand.AddFindings(findings);
        var plan = c.Plan;
        var beside = plan.Stuck.Soil.RemouldingTest;
        beside?.AddFindings(PlanningPhrases.SoilBeside, plan.Stuck.Machine.Name, findings);
        Tested(plan.Tower, beside, findings);
        for (var i = 0; i < plan.Ahead.Count; i++) Tested(plan.Ahead[i].Tower, beside, findings);
    }

    /// <summary>What the test of a puller's soil says; nothing twice where it is the test beside the stuck machine.</summary>
    private static void Tested(TowingMachine tower, RemouldingTest? beside, List<Finding> findings)
    {
        if (tower.Soil.RemouldingTest is { } test && !test.Equals(beside)) test.AddFindings(PlanningPhrases.SoilUnder, tower.Machine.Name, findings);
    }

    private static void Tyres(PlanContext c, List<Finding> findings)
    {
        AddTyres(c.Plan.Stuck.Machine, c.Plan.Stuck.DrivesItsWheels && c.Plan.Stuck.Direction == PullDirection.Rearwards, findings);
        AddTyres(c.Plan.Tower.Machine, c.Plan.Tower.Direction == PullDirection.Rearwards, findings);
    }

    private static void AddTyres(Machine machine, bool backs, List<Finding> findings)
    {
        foreach (var axle in machine.Axles)
        {
            if (axle.Tyre.IsOutsideItsLimits) findings.AddRange(axle.Tyre.InflationFindings("tyres of the " + axle.Name + " of the " + machine.Name));
            if (backs && axle.Driven && axle.TyresThatBite(PullDirection.Rearwards) == 0) findings.Add(new Finding(MachinesFindings.LugsBackwards, axle.Name + " of the " + machine.Name));
        }
    }

    private static void Pull(PlanContext c, List<Finding> findings)
    {
        const double Stop = ChoiceFindings.WillNot, Undecided = ChoiceFindings.Undecided;
        var name = c.Plan.Tower.Machine.Name;
        double demand = c.Demand.CentralNewtons, sustained = c.Available.Central;
        var together = c.Team?.Team.ToString() ?? name;
        if (sustained < Stop * demand) findings.Add(new Finding(TractionFindings.WillNotMove, together, demand / 1000, sustained / 1000, "kN"));
        else if (sustained < Undecided * demand) findings.Add(new Finding(TractionFindings.Undecided, together, demand / 1000, sustained / 1000, "kN"));
        else if (c.Available.Low < c.Demand.HighNewtons) findings.Add(new Finding(TractionFindings.BandsOverlap, together, c.Demand.HighNewtons / 1000, c.Available.Low / 1000, "kN"));
        if (sustained >= Undecided * demand && sustained < Near * Undecided * demand) findings.Add(new Finding(PlanningFindings.NearLimit, PlanningPhrases.SustainedPull.With(together), Undecided * demand / 1000, sustained / 1000, "kN"));
        if (c.Capability.LowNewtons < CapabilityFindings.BogShare * c.Capability.Flat.Weight) findings.Add(new Finding(TractionFindings.PullerMayBog, name, CapabilityFindings.BogShare * c.Capability.Flat.Weight / 1000, c.Capability.LowNewtons / 1000, "kN"));
        if (c.Capability.LimitedBy == PullLimit.Power) findings.Add(new Finding(TractionFindings.PowerLimited, name, c.Capability.TractionLimit.Newtons / 1000, c.Capability.CentralNewtons / 1000, "kN"));
        if (c.Plan.Tackle is { } tackle) Tackle(c, tackle, findings);
        if (c.Team is { } team)
        {
            findings.AddRange(team.FindingsAt(c.Loads is { } pulled ? TeamLineKernel.Peak(pulled.Output.Steady, pulled.Output.Procedure) : 1));
            return;
        }

        var nose = c.Capability.NoseRatio(AtHitch(c.Loads, c.Available));
        if (nose > NoseKernel.Caution)
            findings.Add(new Finding(nose >= 1 ? TractionFindings.NoseLift : TractionFindings.NoseLight, name, nose * c.Capability.Flat.NoseMoment / 1000, c.Capability.Flat.NoseMoment / 1000, "kN m"));
        else if (nose > NoseKernel.Caution / Near) findings.Add(new Finding(PlanningFindings.NearLimit, PlanningPhrases.Nose.With(name), NoseKernel.Caution * c.Capability.Flat.NoseMoment / 1000, nose * c.Capability.Flat.NoseMoment / 1000, "kN m"));
        if (c.Plan.Tower.HitchRating is { } limit && c.Available.AtHitch <= limit.Newtons && c.Available.AtHitch > limit.Newtons / Near) findings.Add(new Finding(PlanningFindings.NearLimit, PlanningPhrases.Hitch.With(name), limit.Kilonewtons, c.Available.AtHitch / 1000, "kN"));
        if (c.Plan.Tower.HitchRating is { } rating && c.Available.AtHitch > rating.Newtons)
            findings.Add(new Finding(TractionFindings.HitchRatingExceeded, name, c.Available.AtHitch / 1000, rating.Newtons / 1000, "kN"));
        CapabilityFindings.AddHitching(c.Capability, findings);
    }

    /// <summary>A pass by less than this factor says so (judgement).</summary>
    private const double Near = RigStrengthFindings.Near;

    /// <summary>Force at the hitch of the towing machine at the procedure peak; a tackle divides that of the line.</summary>
    internal static double AtHitch(LineLoads? loads, in PullAvailable available) => loads is null ? available.AtHitch : loads.Output.Procedure / available.Advantage;

    private static void Tackle(PlanContext c, LineTackle tackle, List<Finding> findings)
    {
        var subject = tackle.Called;
        double anchor = c.Available.AtHitch * (tackle.Parts - 1), planning = c.Demand.PlanningHigh.Newtons;
        if (c.Available.Central < planning) findings.Add(new Finding(PlanningFindings.TackleShort, subject, planning / 1000, c.Available.Central / 1000, "kN"));
        if (tackle.AnchorHolds is not { } holds) findings.Add(new Finding(PlanningFindings.TackleAnchorUnknown, subject, anchor / 1000, unit: "kN"));
        else if (holds.Newtons < anchor) findings.Add(new Finding(PlanningFindings.TackleAnchorGives, subject, anchor / 1000, holds.Kilonewtons, "kN"));
        if (tackle.BlockRating is not { } rating) findings.Add(new Finding(PlanningFindings.TackleBlocksUnknown, subject, c.Available.Imposable / 1000, unit: "kN"));
        else if (rating.Newtons < c.Available.Imposable) findings.Add(new Finding(PlanningFindings.TackleBlocksExceeded, subject, c.Available.Imposable / 1000, rating.Kilonewtons, "kN"));
    }

    private static void Procedure(PlanContext c, List<Finding> findings)
    {
        if (c.Plan.Procedure.IsRunUp) findings.Add(new Finding(LinesFindings.RunUp, "line"));
        if (c.Loads is not { } loads) return;
        if (!c.Plan.Procedure.IsDeclared) findings.Add(new Finding(LinesFindings.ProcedureUndeclared, "line", loads.Output.Procedure / 1000, loads.Output.Steady / 1000, "kN"));
        if (loads.GearObjection() is { } objection) findings.Add(objection);
        foreach (var part in c.Plan.Rig.LineParts)
        {
            if (part is Strap { Fibre: Fibre.Nylon, IsWet: true, Measured: null } strap) findings.Add(new Finding(LinesFindings.WetAsDry, strap.Name));
        }
    }

    private static void RigUnderLoad(PlanContext c, List<Finding> findings)
    {
        if (c.Rig is not { } rig) return;
        rig.AddFindings(findings);
        FailureAnalysis.AddSteel(rig, findings);
    }

    private static void Attachments(PlanContext c, List<Finding> findings)
    {
        if (c.Loads is { } loads) RigInspection.AddAttachmentLoads(c.Plan.Rig, loads, findings);
    }

    private static void WayOfTheLine(PlanContext c, List<Finding> findings)
    {
        var plan = c.Plan;
        if (plan.Site.GroundBetween is { } ground) OverGround(plan, ground, findings);
        if (plan.Rig.Casualty.Kind != AttachmentKind.FrontAxle || plan.Stuck.Direction != PullDirection.Rearwards) return;
        if (plan.Site.UnderMachine is not { } way)
        {
            if (plan.Stuck.Belly is not null) findings.Add(new Finding(LinesFindings.FoulsMachine, LinesPhrases.BellyUnmeasured.With()));
            else findings.Add(new Finding(LinesFindings.GeometryUnknown, plan.Stuck.Machine.Name));
            return;
        }

        way.AddFindings(LineUnderMachine.Leg(plan), plan.Rig.Bridle?.SpacingMetres ?? 0, LineUnderMachine.BeyondEye(plan), plan.Stuck.Belly?.Width.Meters, LineUnderMachine.Climb(plan), findings);
    }

    private static void OverGround(RecoveryPlan plan, GroundBetween ground, List<Finding> findings)
    {
        if (LineOverGround.Missing(plan, ground) is { } missing) findings.Add(new Finding(LinesFindings.GeometryUnknown, PlanningPhrases.HumpsUnchecked.With(missing)));
        else
        {
            var sweep = LineOverGround.Sweep(plan)!;
            findings.AddRange(sweep.Findings());
            Pitch(plan, sweep.Way, findings);
        }
    }

    private static void SlopeAndDirection(PlanContext c, List<Finding> findings)
    {
        var plan = c.Plan;
        var name = plan.Stuck.Machine.Name;
        var slope = -plan.Compiled.Stuck.Flat.Weight * plan.Compiled.Stuck.Flat.GradeSine;
        if (slope > 0)
        {
            double soft = RollingAway.Holds(plan, plan.Stuck.Soil.RatingConeIndex.Pascals), firm = RollingAway.HoldsOnFirmest(plan);
            if (slope > soft) findings.Add(new Finding(PlanningFindings.RunsAway, name, slope / 1000, soft / 1000, "kN", plan.Site.FreedMachineHeld ? Severity.Caution : Severity.Stop));
            else if (slope > firm) findings.Add(new Finding(PlanningFindings.MayRunAway, name, slope / 1000, firm / 1000, "kN"));
        }

        var tension = c.Available.Imposable * plan.Compiled.Tension;
        double pitch = plan.Site.LinePitch.Radians, yaw = Math.Abs(plan.Site.LineYaw.Radians);
        if (Math.Abs(pitch) > PlanKernel.Mentioned) findings.Add(new Finding(PlanningFindings.LineInclined, (pitch > 0 ? PlanningPhrases.Lifts : PlanningPhrases.Presses).With(), Math.Abs(SidePullKernel.Vertical(tension, pitch)) / 1000, unit: "kN"));
        if (yaw <= PlanKernel.Mentioned) return;
        var machine = plan.Tower.Machine;
        // The puller feels its own line: a tackle multiplies behind it.
        var own = c.Available.AtHitch * plan.Compiled.Tension;
        double sideways = SidePullKernel.Sideways(own, pitch, yaw), track = machine.NarrowestTrack;
        var lifts = SidePullKernel.Sideways(SidePullKernel.Overturning(machine.WeightNewtons, 0, machine.CentreZ, track, plan.Tower.HitchHeight.Meters, pitch, yaw), pitch, yaw);
        findings.Add(new Finding(PlanningFindings.Sideways, machine.Name, sideways / 1000, lifts / 1000, "kN", SidePullKernel.MomentUsed(machine.WeightNewtons, 0, machine.CentreZ, track, sideways, plan.Tower.HitchHeight.Meters, SidePullKernel.Vertical(own, pitch)) >= 1 ? Severity.Stop : Severity.Caution));
    }

    private static void People(PlanContext c, List<Finding> findings)
    {
        if (c.Plan.Site.PeopleInLine == true) findings.Add(new Finding(PlanningFindings.PeopleInLine, PlanningPhrases.LineOfPull.With()));
        else if (c.Plan.Site.PeopleInLine is null) findings.Add(new Finding(PlanningFindings.PeopleUnknown, PlanningPhrases.LineOfPull.With()));
        findings.Add(new Finding(PlanningFindings.CabOnLine, c.Plan.Tower.Machine.Name));
        if (c.Plan.Site.StuckMachineOccupied || c.Plan.Stuck.DrivesItsWheels) findings.Add(new Finding(PlanningFindings.CabOnLine, c.Plan.Stuck.Machine.Name));
    }

    // Said of nearly every plan, so made once.
    private static readonly Phrase FromMemory = PlanningPhrases.FromMemory.With(), FromMemoryWithRule = PlanningPhrases.FromMemoryWithRule.With();

    private static void Standing(PlanContext c, List<Finding> findings) =>
        findings.Add(new Finding(PlanningFindings.FromMemory, c.Demand.DepthRuleNewtons > 0 ? FromMemoryWithRule : FromMemory));

    private sealed class Check(string name, Action<PlanContext, List<Finding>> inspect) : IPlanCheck
    {
        public string Name { get; } = name;

        public void Inspect(PlanContext context, IList<Finding> findings)
        {
            if (findings is List<Finding> list)
            {
                inspect(context, list);
                return;
            }

            var own = new List<Finding>();
            inspect(context, own);
            foreach (var finding in own) findings.Add(finding);
        }

        public override string ToString() => Name;
    }
}
