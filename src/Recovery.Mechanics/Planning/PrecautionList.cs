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
        Dig(plan.Stuck, list);
        Machines(assessment, list);
        Rig(assessment, list);
        Pull(assessment, list);
        return list.Build();
    }

    private static void Lighten(RecoveryPlan plan, PrecautionBuilder list)
    {
        var machine = plan.Stuck.Machine;
        foreach (var load in machine.Loads)
        {
            if (load.Kind == LoadKind.Payload) list.AddAs("unload:" + load.Name, "unload", GeneralSources.Trade, [load.Name], "unload", []);
            if (load.Kind == LoadKind.Detachable) list.AddAs("detach:" + load.Name, "detach", GeneralSources.Trade, [load.Name], "detach", []);
        }

        if (machine.Axles.Any(a => a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals)) list.Add("deflate", GeneralSources.Trade);
    }

    private static void Dig(StuckMachine stuck, PrecautionBuilder list)
    {
        if (!stuck.AnyWheelBuried && stuck.Belly is null) return;
        if (stuck.DugSlope is null || stuck.Belly is not null)
        {
            list.Add("dig-dangers", PlanningSources.DigFirst);
            list.Add("leaks", GeneralSources.Trade);
        }

        if (stuck.AnyWheelBuried && stuck.DugSlope is null) list.Add("dig", PlanningSources.DigFirst);
        if (stuck.Belly is not null) list.Add("belly", GeneralSources.Trade);
        else if (stuck.AnyWheelBuried && stuck.Seal != Seal.Vented) list.Add("vent", GeneralSources.Trade);
    }

    private static void Machines(Assessment a, PrecautionBuilder list)
    {
        var stuck = a.Plan.Stuck;
        var display = list.Wording.Display;
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
