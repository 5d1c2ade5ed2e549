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
        foreach (var bound in demand.Basis)
            w.Item("- ", (bound.Bound == DemandBound.Low ? "low: " : bound.Bound == DemandBound.High ? "high: " : "central: ") + bound.How + ".");
        var goesOn = demand.Sustained;
        w.Paragraph("That is the first movement. Once wheels and belly have broken loose " + w.Display.Force(goesOn.LowNewtons) + ", " + w.Display.Force(goesOn.CentralNewtons) + " and " + w.Display.Force(goesOn.HighNewtons) + " go on holding it (low, central, high).");
        var stuck = demand.Stuck;
        if (stuck.AnyWheelBuried)
        {
            ForceBand soft = demand.WithConeFactor(20), strong = demand.WithConeFactor(10);
            w.Paragraph("Sensitivity, not on top: with a cone factor of 20 central would be " + w.Display.Force(soft.CentralNewtons) + " and the high " + w.Display.Force(soft.HighNewtons) + ", with 10 " + w.Display.Force(strong.CentralNewtons) + " and " + w.Display.Force(strong.HighNewtons) + ".");
            if (stuck.DugSlope is null)
            {
                var others = demand.ByFaceMethod();
                w.Paragraph("Soil ahead of the wheels by " + demand.FaceMethod.Name + "; the other published methods would make central " + w.Display.Force(others.Min(o => o.CentralTotal.Newtons)) + " to " + w.Display.Force(others.Max(o => o.CentralTotal.Newtons)) + ".");
            }
        }

        if (stuck.Belly is not null && stuck.Seal != Seal.Vented && demand.AxleBearings is { Count: > 0 } bearings)
        {
            w.Table(["floor bears under, " + w.Display.ForceUnit, "low", "central", "high", "load"], bearings.Select(b => (IReadOnlyList<string>)[b.Name, w.Display.Cell(b.Bears.LowNewtons), w.Display.Cell(b.Bears.CentralNewtons), w.Display.Cell(b.Bears.HighNewtons), w.Display.Cell(b.Load.Newtons)]).ToList());
            w.Paragraph("Load is with the belly let go: an axle that carries more than the floor bears goes deeper once the belly is free.");
        }

        if (demand.Compiled.Flat.Grade > 0 && demand.DepthRuleNewtons > 0) w.Paragraph("Mire and grade are summed here; the handbook takes the larger alone.");
    }

    /// <summary>What its own axles grip, and what lightening does to the soil it would need.</summary>
    public static void Grip(ReportBuilder w, PullDemand demand)
    {
        var self = SelfRecovery.Estimate(demand.Stuck);
        w.Paragraph(self.Statement);
        w.Table(["axles on the load beside the belly, " + w.Display.ForceUnit, "grip", "ask", "net"], self.Axles.Select(a => (IReadOnlyList<string>)[a.Name + (a.Driven ? string.Empty : ", not driven") + (a.InRange ? string.Empty : " (not credited)"), w.Display.Cell(a.GrossTraction.Newtons), w.Display.Cell(a.MotionResistance.Newtons), w.Display.Cell(a.NetTraction.Newtons)]).ToList());
        var steps = self.Steps();
        if (self.CriticalConeIndex is not { } now || steps.Count == 0) return;
        w.Paragraph("On wheels that roll it would move itself in its present state on a cone index of " + w.Display.Pressure(now.Pascals) + ". What lightening does to that number:");
        foreach (var step in steps)
            w.Item("- ", step.Name + ": " + (step.CriticalConeIndex is { } index ? w.Display.Pressure(index.Pascals) : "no soil would do") + (step.Remark.Length > 0 ? ", " + step.Remark : string.Empty) + ".");
    }
}
