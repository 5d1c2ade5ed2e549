using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Rigging;

/// <summary>The shackle of the worked rig, the gear and stretch that belong to its levels, and what counts as a run-up.</summary>
public class WorkedLevelRowTests
{
    private static RigCheck Worked(bool? secondPull = null)
    {
        var rig = ReferenceRigs.Worked();
        return RigCheck.Of(rig, DesignFactorPolicy.SlowPull, ReferenceRigs.Loads(rig, secondPull));
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-shackle")]
    public void The_shackle_of_a_leg_under_each_load(CheckRow row)
    {
        var shackle = Worked().Parts.Single(p => p.Kind == PlaceKind.Shackle);
        var loads = row.SiList("F").Select(f => f * shackle.Share).ToList();
        // The library counts working load limit x peak over steady as the rated check: it is the same limit.
        var limits = row.SiList("F").Select(f => PartialFactorModel.Instance.ShacklePeak(((Shackle)shackle.Part).Rating.WorkingLoad!.Value, f / row.Si("F_steady"), shackle.Strength!.Value, ((Shackle)shackle.Part).ProofLoad).Newtons).ToList();
        row.MatchesList("load", loads);
        row.MatchesList("limit", limits);
        row.MatchesList("utilisation", loads.Zip(limits, (load, limit) => load / limit).ToList());
        row.MatchesList("R_over_F", loads.Select(load => shackle.Strength!.Value.Newtons / load).ToList());
        // What the check itself makes of the procedure: the greater of its two utilisations.
        Assert.Equal(0.701300532, Math.Max(shackle.RatedUtilisation!.Value, shackle.PeakUtilisation!.Value), 1e-7);
        Assert.Equal(loads[1], shackle.Procedure.Newtons, 1e-6 * loads[1]);
    }

    [Theory]
    [CheckRows("rigging-load-path", "rig-gear-and-stretch")]
    public void Gear_and_stretch_that_belong_to_a_line_pull(CheckRow row)
    {
        double[] pulls = row.SiList("F");
        row.MatchesList("v_t", pulls.Select(f => TakeUpKernel.GearSpeedLimit(f, row.Si("P"), row.Si("k_stiff"), row.Si("m"))).ToList());
        row.MatchesList("x_stiff", pulls.Select(f => f / row.Si("k_stiff")).ToList());
        row.MatchesList("x_soft", pulls.Select(f => f / row.Si("k_soft")).ToList());
        // The floor and the full factors of the whole rig are the first two of the row.
        var check = Worked(secondPull: false);
        foreach (var (kind, i) in new[] { (RigLevelKind.Floor, 0), (RigLevelKind.FullFactors, 1) })
        {
            var level = check.Levels.Single(l => l.Kind == kind);
            Assert.Equal(pulls[i], level.LineLoad.Newtons, 1e-7 * pulls[i]);
            Assert.Equal(TakeUpKernel.GearSpeedLimit(pulls[i], row.Si("P"), row.Si("k_stiff"), row.Si("m")), level.Gear!.Value.MetersPerSecond, 1e-6);
            Assert.Equal(pulls[i] / row.Si("k_stiff"), level.Stretch.Least.Meters, 1e-6);
            Assert.Equal(pulls[i] / row.Si("k_soft"), level.Stretch.Greatest.Meters, 1e-6);
        }
    }

    [Theory]
    [CheckRows("rigging-load-path", "run-up")]
    public void Slack_taken_up_at_speed_is_a_run_up_unless_in_a_locked_gear(CheckRow row)
    {
        string[] locked = row.Word("locked_gear").Split('|');
        row.MatchesWord("run_up", string.Join("|", Enumerable.Range(0, locked.Length).Select(i => Procedure(locked[i] == "true", row.SiList("slack")[i], row.SiList("v")[i]).IsRunUp ? "true" : "false")));
    }

    private static PullProcedure Procedure(bool locked, double slack, double speed) => locked
        ? PullProcedure.DrawnTautInGear(Speed.FromMetersPerSecond(speed)) with { Slack = Length.FromMeters(slack) }
        : PullProcedure.Undeclared with { Slack = Length.FromMeters(slack), ApproachSpeed = Speed.FromMetersPerSecond(speed) };
}
