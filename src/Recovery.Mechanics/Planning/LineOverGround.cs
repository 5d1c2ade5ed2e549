using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>The line of a plan over the humps that were measured between the machines.</summary>
/// <remarks>
/// Straight from the attachment to the drawbar, as long as its parts unstretched. What has to climb out of its hole earns no lift of the line over the ground; where the attachment lies behind the second axle, which may stay down, the climb lowers it and counts.
/// </remarks>
internal static class LineOverGround
{
    /// <summary>The sweep over the whole way; null where nothing was measured or the ends of the line are not known.</summary>
    public static ClearanceSweep? Sweep(RecoveryPlan plan) => plan.Site.GroundBetween is { } ground && Missing(plan, ground) is null ? Way(plan, ground).Sweep() : null;

    /// <summary>What keeps the sweep from being worked; null where nothing does.</summary>
    public static Phrase? Missing(RecoveryPlan plan, GroundBetween ground)
    {
        if (plan.Tackle is not null) return PlanningPhrases.TackleLeads.With();
        if (StuckLoads.Place(plan) is null || StuckLoads.HeightOf(plan) is not { } height) return PlanningPhrases.AttachmentMissing.With();
        double at = Behind(plan), span = Span(plan, ground, height);
        if (at < 0 || at > 30) return PlanningPhrases.PastOwnAxle.With();
        if (at > 0 && plan.Stuck.Direction != PullDirection.Rearwards) return PlanningPhrases.AheadOfAxle.With();
        return height > 5 || !(span >= 0.5 && at + span <= 300) ? PlanningPhrases.EndsDoNotFit.With() : null;
    }

    private static LineClearance Way(RecoveryPlan plan, GroundBetween ground)
    {
        var axles = plan.Stuck.Machine.Axles;
        double height = StuckLoads.HeightOf(plan)!.Value, at = Behind(plan), wheelbase = axles[0].Position.Meters - axles[Math.Min(1, axles.Count - 1)].Position.Meters;
        return new LineClearance(Length.FromMeters(height), Length.FromMeters(at + Span(plan, ground, height)), ground.DrawbarHeight, Length.FromMeters(Math.Min(30, Math.Max(0.5, wheelbase))), [])
        {
            Ground = ground.Obstacles,
            AttachmentBehindAxle = Length.FromMeters(at),
            FrontRise = Length.FromMeters(at > wheelbase ? Math.Min(3, LineUnderMachine.Climb(plan)) : 0),
            Advance = ground.Travel,
            RisenAfter = RisenAfter(plan, ground.Travel.Meters),
            Thickness = plan.Site.UnderMachine?.StrapThickness ?? Length.FromMeters(0.02),
        };
    }

    /// <summary>Share of the way on which the machine climbs out, on the steepest slope that counts: what lowers the attachment does so early and stays. A slope of 0 climbs all the way.</summary>
    private static double RisenAfter(RecoveryPlan plan, double travel)
    {
        var share = LineUnderMachine.Climb(plan) / (Math.Tan(plan.Compiled.Stuck.Assumptions.ExitHigh) * travel);
        return share > 0 && share < 1 ? share : 1;
    }

    /// <summary>Distance of the attachment from the front axle, towards the puller.</summary>
    private static double Behind(RecoveryPlan plan)
    {
        var x = plan.Stuck.Machine.Axles[0].Position.Meters - StuckLoads.Place(plan)!.Value;
        return plan.Stuck.Direction == PullDirection.Rearwards ? x : -x;
    }

    /// <summary>Length of the line in plan; not a number where it does not reach from height to height.</summary>
    private static double Span(RecoveryPlan plan, GroundBetween ground, double height)
    {
        double leg = LineUnderMachine.Leg(plan), fall = ground.DrawbarHeight.Meters - height;
        var line = (plan.Rig.Bridle is { } bridle ? UnderMachineKernel.Apex(leg, bridle.SpacingMetres, 0) : leg) + LineUnderMachine.BeyondEye(plan);
        return Math.Sqrt((line * line) - (fall * fall));
    }
}
