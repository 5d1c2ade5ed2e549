using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Raises the pull in four stages up to the least of what the weakest part may carry and what the puller can hold.</summary>
internal static class StageList
{
    private static readonly double[] Shares = [0.25, 0.5, 0.75, 1];

    public static IReadOnlyList<PullStage> Of(Assessment assessment, Wording wording)
    {
        if (assessment.Loads is not { } loads || Top(assessment) is not { } top) return [];
        var stages = new List<PullStage>(Shares.Length);
        for (var i = 0; i < Shares.Length; i++)
        {
            double load = Shares[i] * top, share = load / Sustains(assessment);
            stages.Add(new PullStage(i + 1, load, share, assessment.Plan.Tackle?.Parts ?? 1, load / loads.Input.Stiff, load / (loads.Input.Stiff * loads.Input.BeddedFactor), load / loads.Input.Soft, Action(assessment, i, share, wording), wording.Say(Hold(assessment, i))));
        }

        return stages.AsReadOnly();
    }

    /// <summary>Tension at the high of what is sustained on the line.</summary>
    public static double Sustains(Assessment a) => a.Available.High * a.Plan.Compiled.Tension;

    /// <summary>Tells whether the puller and not the gear ends the stages.</summary>
    public static bool PullerLimits(Assessment a) => Top(a) >= Sustains(a);

    /// <summary>The load of the last stage: the steady pull whose peak the whole rig admits, at most the high of what is sustained; none where the take-up alone is too much.</summary>
    public static double? Top(Assessment assessment) =>
        assessment.Rig?.AdmissiblePull is { Newtons: > 0 } admissible ? Math.Min(admissible.Newtons, Math.Min(assessment.Loads!.Output.Steady, Sustains(assessment))) : null;

    private static string Action(Assessment a, int stage, double share, Wording w)
    {
        var limit = w.Say("stage.share", Text.Number(100 * share, 2));
        if (stage > 0) return w.Say(stage < Shares.Length - 1 ? "stage.next" : "stage.last", limit);
        return w.Say("stage.first", a.Plan.Procedure.LockedGear is { } locked ? w.Say("stage.gear", w.Display.Speed(locked.MetersPerSecond)) : w.Say("stage.gear-lowest"), limit);
    }

    private static string Hold(Assessment a, int stage) => stage switch
    {
        0 => "hold.first",
        1 => "hold.second",
        2 => "hold.third",
        _ => a.Demand.Stuck.DugSlope is null ? "hold.last" : "hold.last-dug",
    };
}
