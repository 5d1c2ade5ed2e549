using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;

namespace Recovery.Mechanics.Planning;

/// <summary>The parts of the report on how the demand arises and on self-recovery.</summary>
internal static class AssessmentReportMire
{
    /// <summary>How each bound arises, and what stands beside.</summary>
    public static void Basis(ReportBuilder w, PullDemand demand)
    {
        foreach (var bound in demand.Basis) w.Item("- ", w.Say(bound.Bound == DemandBound.Low ? "demand.bound-low" : bound.Bound == DemandBound.High ? "demand.bound-high" : "demand.bound-central", bound.Said(w.Wording.Language.Find)));
        var goesOn = demand.Sustained;
        if (!goesOn.Equals(demand.Total)) w.Paragraph("demand.first-movement", w.Display.Force(goesOn.LowNewtons), w.Display.Force(goesOn.CentralNewtons), w.Display.Force(goesOn.HighNewtons));
        var stuck = demand.Stuck;
        if (stuck.AnyWheelBuried)
        {
            ForceBand soft = demand.WithConeFactor(20), strong = demand.WithConeFactor(10);
            w.Paragraph("demand.cone-factor", w.Display.Force(soft.CentralNewtons), w.Display.Force(soft.HighNewtons), w.Display.Force(strong.CentralNewtons), w.Display.Force(strong.HighNewtons));
            if (stuck.DugSlope is null)
            {
                var others = demand.ByFaceMethod();
                w.Paragraph("demand.face-methods", demand.FaceMethod.Name, w.Display.Force(others.Min(o => o.CentralTotal.Newtons)), w.Display.Force(others.Max(o => o.CentralTotal.Newtons)));
            }
        }

        if (stuck.Belly is not null && stuck.Seal != Seal.Vented && demand.AxleBearings is { Count: > 0 } bearings)
        {
            w.Table([w.Say("demand.floor-header", w.Display.ForceUnit), w.Say("low"), w.Say("central"), w.Say("high"), w.Say("demand.floor-load")], bearings.Select(b => (IReadOnlyList<string>)[b.Name, w.Display.Cell(b.Bears.LowNewtons), w.Display.Cell(b.Bears.CentralNewtons), w.Display.Cell(b.Bears.HighNewtons), w.Display.Cell(b.Load.Newtons)]).ToList());
            w.Paragraph("demand.floor-key");
        }

        if (demand.ByFrame is [var linked, var straight])
            w.Paragraph("demand.frames", w.Display.Force(linked.Total.LowNewtons), w.Display.Force(linked.Total.CentralNewtons), w.Display.Force(linked.Total.HighNewtons), w.Display.Force(straight.Total.LowNewtons), w.Display.Force(straight.Total.CentralNewtons), w.Display.Force(straight.Total.HighNewtons));
        if (demand.Compiled.Flat.Grade > 0 && demand.DepthRuleNewtons > 0) w.Paragraph("demand.grade-summed");
    }

    /// <summary>What the height of the pull moves between the axles.</summary>
    public static void Loads(ReportBuilder w, StuckLoads loads)
    {
        w.Paragraph("demand.height", w.Display.Force(loads.Pull.Newtons), w.Display.Length(loads.Height.Meters, 2));
        w.Table([w.Say("demand.height-header", w.Display.ForceUnit), w.Say("demand.height-before"), w.Say("demand.height-pulled")], loads.Before.Axles.Select((axle, i) => (IReadOnlyList<string>)[axle.Name, w.Display.Cell(loads.Before.Newtons[i]), w.Display.Cell(loads.Pulled.Newtons[i])]).ToList());
    }

    /// <summary>What its own axles grip, and what each step does to the soil it would need.</summary>
    public static void Grip(ReportBuilder w, PullDemand demand)
    {
        var self = SelfRecovery.Estimate(demand.Stuck);
        w.Paragraph("self.statement", w.Wording.Say(self.Words));
        if (self.NetTraction is { } net && self.Holding is { } hold) w.Paragraph("self.balance", w.Display.Force(net.LowNewtons), w.Display.Force(net.CentralNewtons), w.Display.Force(net.HighNewtons), w.Display.Force(hold.LowNewtons), w.Display.Force(hold.CentralNewtons), w.Display.Force(hold.HighNewtons));
        w.Table([w.Say("self.header", w.Display.ForceUnit), w.Say("self.grip"), w.Say("self.ask"), w.Say("self.net")], self.Axles.Select(a => (IReadOnlyList<string>)[Named(w, a), w.Display.Cell(a.GrossTraction.Newtons), w.Display.Cell(a.MotionResistance.Newtons), w.Display.Cell(a.NetTraction.Newtons)]).ToList());
        var steps = self.Steps();
        if (self.CriticalConeIndex is not { } now || steps.Count == 0) return;
        w.Paragraph("self.now", w.Display.Pressure(now.Pascals), w.Display.Force(self.Demand.CentralNewtons));
        foreach (var step in steps) w.Item("- ", Step(w, self, step));
    }

    /// <summary>One step: the index after it, why it did not move, what it takes to tow the machine where that changed, and what can be said where that changed.</summary>
    private static string Step(ReportBuilder w, SelfRecovery self, SelfRecoveryStep step)
    {
        const double Changed = 500;
        var index = step.CriticalConeIndex is { } critical ? w.Display.Pressure(critical.Pascals) : w.Say("self.no-soil");
        var said = step.Why is { } why ? w.Say("self.step-remark", w.Wording.Say(step.Called), index, w.Wording.Say(why)) : w.Say("self.step", w.Wording.Say(step.Called), index);
        if (Math.Abs(step.HoldsChange.Newtons) >= Changed) said += " " + w.Say("self.step-holds", w.Display.Force(step.Holds.Newtons));
        if (step.Outlook == self.Outlook) return said;
        return said + " " + w.Say(step.Outlook switch
        {
            SelfRecoveryOutlook.MovesItself => "self.step-moves",
            SelfRecoveryOutlook.Held => "self.step-held",
            _ => "self.step-undecided",
        });
    }

    private static string Named(ReportBuilder w, AxleTraction a)
    {
        var name = a.Driven ? a.Name : w.Say("self.not-driven", a.Name);
        return a.InRange ? name : w.Say("self.not-credited", name);
    }
}
