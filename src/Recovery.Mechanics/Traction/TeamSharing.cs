using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>How the members of a team share a pull at one speed over the ground.</summary>
internal static class TeamSharing
{
    private const double OneGear = 1;

    public static IReadOnlyList<TeamShare>? Find(TowingTeam team, double wanted)
    {
        var n = team.Members.Count;
        var wheels = new double[n];
        double fastest = 0;
        for (var i = 0; i < n; i++)
        {
            wheels[i] = team.Members[i].WheelSpeed?.MetersPerSecond ?? OneGear;
            fastest = Math.Max(fastest, wheels[i]);
        }

        if (!(At(0).Along >= wanted)) return null;
        var speed = BracketedRoot.Find("speed of the team", v => At(v).Along - wanted, 0, fastest, 0.1);
        return List(team, At(speed), wheels, speed);

        TeamState At(double v)
        {
            var i = 0;
            return TeamState.Of(team, -1, 0, (tower, flat) => Own(tower, flat, Slip(wheels[i++], v), out _));
        }
    }

    private static double Slip(double wheelSpeed, double groundSpeed) => Math.Min(1, Math.Max(0, 1 - (groundSpeed / wheelSpeed)));

    /// <summary>Greatest pull at slip up to a limit, the lead included; a machine that is drawn along adds nothing.</summary>
    private static double Own(TowingMachine tower, CapabilityFlat flat, double slip, out double reached)
    {
        var pull = CapabilityKernel.Greatest(flat, flat.Load, flat.GradeForce, tower.Soil.RatingConeIndex.Pascals, slip, BrixiusConstants.Bias, out reached, out var residual);
        CapabilityBound.Check("pull of a member", residual, pull);
        return pull;
    }

    private static IReadOnlyList<TeamShare> List(TowingTeam team, TeamState state, double[] wheels, double speed)
    {
        var list = new List<TeamShare>(state.Line.Length);
        for (var i = 0; i < state.Line.Length; i++)
        {
            var tower = team.Members[i].Tower;
            double line = state.Line[i], lead = team.Kind == TeamKind.InLine && i > 0 ? state.Line[i - 1] : 0, slip;
            Own(tower, state.Flats[i], Slip(wheels[i], speed), out slip);
            if (team.Kind == TeamKind.Equalised)
            {
                // The strap holds the stronger one back; the weaker one gives its most, which rounding may put out of reach.
                var held = CapabilityKernel.SlipAt(state.Flats[i], tower.Soil.RatingConeIndex.Pascals, line, BrixiusConstants.Bias, out var residual);
                CapabilityBound.Check("slip of a member", residual, line);
                if (held >= 0) slip = held;
            }

            list.Add(new TeamShare(tower.Machine.Name, line - lead, line, line - lead > 0 ? slip : 0));
        }

        return list.AsReadOnly();
    }
}
