using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The bridle's way under the machine of a plan.</summary>
internal static class LineUnderMachine
{
    /// <summary>Length of one leg with its axle strap; a choked strap reaches half its length. Without a bridle 0: the line runs straight from the axle.</summary>
    public static double Leg(RecoveryPlan plan)
    {
        if (plan.Rig.Bridle is not { } bridle) return 0;
        var leg = bridle.Strap.Length.Meters / 2;
        for (var i = plan.Rig.BridleIndex + 1; i < plan.Rig.Parts.Count; i++)
        {
            leg += plan.Rig.Parts[i].LineMetres / (plan.Rig.Parts[i] is Strap { Choked: true } ? 2 : 1);
        }

        return leg;
    }

    /// <summary>Length of the line from the eye of the bridle to the drawbar.</summary>
    public static double BeyondEye(RecoveryPlan plan) => plan.Rig.LineMetres;

    /// <summary>How far the front axle rises on the way out: the deepest sinkage.</summary>
    public static double Climb(RecoveryPlan plan)
    {
        double climb = 0;
        foreach (var sinkage in plan.Stuck.Sinkage) climb = Math.Max(climb, sinkage.Meters);
        return climb;
    }

    /// <summary>Clearance of every low part; empty where the way was not measured or does not run under the machine.</summary>
    public static IReadOnlyList<UnderMachineClearance> Clearances(RecoveryPlan plan) =>
        plan.Site.UnderMachine is { } way ? way.Clearances(Leg(plan), plan.Rig.Bridle?.SpacingMetres ?? 0, BeyondEye(plan)) : [];
}
