using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Raises the pull in four stages up to the least of what the weakest part may carry and what the puller can hold.</summary>
internal static class StageList
{
    private static readonly double[] Shares = [0.25, 0.5, 0.75, 1];

    public static IReadOnlyList<PullStage> Of(Assessment assessment, Display display)
    {
        if (assessment.Loads is not { } loads || Top(assessment) is not { } top) return [];
        var stages = new List<PullStage>(Shares.Length);
        for (var i = 0; i < Shares.Length; i++)
        {
            double load = Shares[i] * top, share = load / loads.Output.Steady;
            stages.Add(new PullStage(i + 1, load, share, load / loads.Input.Stiff, load / loads.Input.Soft, Action(assessment, i, share, display), Hold(assessment, i)));
        }

        return stages.AsReadOnly();
    }

    /// <summary>The load of the last stage: the rated and full-factor pull of the weakest part, at most what the puller can hold.</summary>
    public static double? Top(Assessment assessment) =>
        assessment.Rig?.AdmissiblePull is { } admissible ? Math.Min(admissible.Newtons, assessment.Loads!.Output.Steady) : null;

    private static string Action(Assessment a, int stage, double share, Display display)
    {
        var limit = "to about " + Text.Number(100 * share, 2) + " % of what the puller can hold";
        if (stage > 0) return (stage < Shares.Length - 1 ? "raise the throttle in one small step, " : "raise the throttle in one last small step and hold it, ") + limit;
        var gear = a.Plan.Procedure.LockedGear is { } locked ? "in the gear of " + display.Speed(locked.MetersPerSecond) + ", kept engaged" : "in the lowest gear";
        return "creep " + gear + ", until the line is just taut, then raise the throttle a little, " + limit;
    }

    private static string Hold(Assessment a, int stage) => stage switch
    {
        0 => "stop; from a distance and from the side look at every part, the attachments and the way of the line",
        1 => "stop; read the tape; has anything turned, slipped or begun to fray?",
        2 => "stop; read the tape; has the machine risen, and does the line still clear it?",
        _ => a.Demand.Stuck.DugSlope is null ? "if it does not move now, slack off, dig and lighten; never pull harder" : "if it does not move now, slack off, dig again and lighten; never pull harder",
    };
}
