using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The precautions that this plan calls for, in the order of the work: read, agree, lighten, dig, prepare both machines, rig, clear the place, take up, pull, afterwards.</summary>
internal static class PrecautionList
{
    public static IReadOnlyList<Precaution> Of(Assessment assessment, Wording wording)
    {
        var plan = assessment.Plan;
        var list = new PrecautionBuilder(wording);
        list.Add("manual", GeneralSources.Trade, plan.Stuck.Machine.Name, plan.Tower.Machine.Name);
        list.Add("command", GeneralSources.Trade);
        Lighten(plan, list);
        Dig(assessment, list);
        Machines(assessment, list);
        Rig(assessment, list);
        Pull(assessment, list);
        return list.Build();
    }

    private static void Lighten(RecoveryPlan plan, PrecautionBuilder list)
    {
        var machine = plan.Stuck.Machine;
        foreach (var load in plan.Stuck.AsFound.Loads)
        {
            var off = Taken.IsOff(plan.Stuck, load);
            if (load.Kind == LoadKind.Payload) list.AddAs("unload:" + load.Name, "unload", GeneralSources.Trade, [load.Name], off ? "counted-on" : "unload", []);
            if (load.Kind == LoadKind.Detachable) list.AddAs("detach:" + load.Name, "detach", GeneralSources.Trade, [load.Name], off ? "counted-on" : "detach", []);
        }

        if (Taken.Deflated(plan.Stuck)) list.AddAs("deflate", "deflate-done", GeneralSources.Trade, [], "deflate", []);
        else if (machine.Axles.Where((a, i) => !plan.Stuck.IsBuried(i) && a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals).Any()) list.Add("deflate", GeneralSources.Trade);
    }

    private static void Dig(Assessment a, PrecautionBuilder list)
    {
        var stuck = a.Plan.Stuck;
        var digs = stuck.DugSlope is not null || stuck.BellyFreed || stuck.SidesDug;
        if (!stuck.AnyWheelBuried && stuck.Belly is null && !digs) return;
        list.Add("dig-dangers", PlanningSources.DigFirst);
        list.Add("leaks", GeneralSources.Trade);
        if (stuck.DugSlope is { } slope) list.AddAs("dig", "dig-done", PlanningSources.DigFirst, [Text.Number(1 / System.Math.Tan(System.Math.Max(slope.Radians, 1e-3)), 2)], "counted-on", []);
        else if (stuck.AnyWheelBuried) list.AddAs("dig", "dig", PlanningSources.DigFirst, [], "dig", [list.Wording.Display.Force(System.Math.Max(0, a.Demand.CentralNewtons - PullDemand.Estimate(stuck.Dug(CompiledStuckMachine.OfferedRamp)).CentralNewtons))]);
        if (stuck.SidesDug) list.AddAs("dig-sides", "dig-sides", PlanningSources.DigFirst, [], "counted-on", []);
        if (stuck.BellyFreed) list.AddAs("belly", "belly-freed", GeneralSources.Trade, [], "belly-freed", []);
        else if (stuck.Belly is not null && stuck.Seal != Seal.Vented) list.Add("belly", GeneralSources.Trade);
        if (stuck.Seal == Seal.Vented && (stuck.AnyWheelBuried || stuck.Belly is not null)) list.AddAs("vent", "vent", GeneralSources.Trade, [], "counted-on", []);
        else if (stuck.AnyWheelBuried && stuck.Belly is null && stuck.DugSlope is null) list.Add("vent", GeneralSources.Trade);
    }

    private static void Machines(Assessment a, PrecautionBuilder list)
    {
        var stuck = a.Plan.Stuck;
        var display = list.Wording.Display;
        if (stuck.Grade.Radians < 0) list.AddAs("stuck-downhill", "stuck-downhill", GeneralSources.Trade, [], "stuck-downhill", []);
        if (stuck.DrivesItsWheels) list.AddAs("stuck-machine", "stuck-drives", GeneralSources.Trade, [], "stuck-drives", []);
        else if (stuck.Wheels == WheelMotion.Turning) list.AddAs("stuck-machine", "stuck-rolls", GeneralSources.Trade, [], "stuck-turning", []);
        else list.AddAs("stuck-machine", "stuck-rolls", GeneralSources.Trade, [], "stuck-locked", [display.Force(a.Demand.CentralLocked.Newtons), display.Force(a.Demand.CentralNewtons)]);
        list.Add("steering", GeneralSources.Trade);
        if (stuck.Machine.Axles.Concat(a.Plan.Tower.Machine.Axles).Any(x => x.Tyres > 2)) list.Add("duals", GeneralSources.Trade);
        if (a.Team is not null) list.Add("team", GeneralSources.Trade);
        if (a.Capability.LowNewtons < 0.25 * a.Capability.Flat.Weight) list.Add("route", GeneralSources.Trade);
    }

    private static void Rig(Assessment a, PrecautionBuilder list)
    {
        var rig = a.Plan.Rig;
        list.Add("between", PlanningSources.PeopleBetween);
        if (rig.Drawbar.Kind == AttachmentKind.Drawbar) list.Add("hitch", PlanningSources.HitchLow);
        if (rig.Casualty.Kind == AttachmentKind.FrontAxle) list.Add("axle-straps", GeneralSources.Trade);
        if (rig.Bridle is not null) list.Add("bridle", GeneralSources.Trade);
        if (rig.Parts.Any(p => p is Shackle)) list.Add("shackles", GeneralSources.Trade);
        if (a.Loads is not null) list.Add("zero-mark", GeneralSources.Trade);
        list.AddAs("mass", a.Plan.Site.MassOnLine ? "mass-there" : "mass", GeneralSources.Trade, [], a.Plan.Site.MassOnLine ? "mass-there" : "mass", []);
    }

    private static void Pull(Assessment a, PrecautionBuilder list)
    {
        list.Add("cab", PlanningSources.LineVictims);
        list.Add("people", PlanningSources.LineVictims);
        list.AddAs("line-taut", "line-taut", GeneralSources.Trade, [], a.Plan.Site.UnderMachine is null ? "line-taut-unmeasured" : "line-taut", []);
        if (a.Loads is { } loads) list.AddAs("creep", "creep", GeneralSources.Trade, [], "creep", [list.Wording.Display.Force(loads.Output.Careless)]);
        else list.AddAs("creep", "creep", GeneralSources.Trade, [], "creep-unknown", []);
        var downhill = a.Findings.Any(f => f.Id == PlanningFindings.RunsAway.Id || f.Id == PlanningFindings.MayRunAway.Id);
        list.AddAs("runs-on", "runs-on", GeneralSources.Trade, [], downhill ? "runs-on-downhill" : "runs-on", []);
        list.Add("afterwards", GeneralSources.Trade);
    }
}
