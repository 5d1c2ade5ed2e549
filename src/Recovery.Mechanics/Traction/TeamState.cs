using System;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>What the members of a team put into their lines in one state of the ground, and what the casualty gets of it. SI.</summary>
internal sealed class TeamState
{
    private TeamState(int members)
    {
        Line = new double[members];
        Own = new double[members];
        Flats = new CapabilityFlat[members];
    }

    /// <summary>Gets the force in the line of each member; in line, behind it, with all that pull ahead.</summary>
    public double[] Line { get; }

    /// <summary>Gets what each member pulls of itself, before an equaliser holds the stronger one back.</summary>
    public double[] Own { get; }

    /// <summary>Gets the numbers of the members with the lead that pulls them.</summary>
    public CapabilityFlat[] Flats { get; }

    /// <summary>Gets the part along the wanted direction.</summary>
    public double Along { get; private set; }

    /// <summary>Gets the part across it, positive to the left.</summary>
    public double Sideways { get; private set; }

    /// <summary>Puts the state together.</summary>
    /// <param name="team">The team.</param>
    /// <param name="lost">Member that has lost its grip; -1 for none. It pulls nothing; in line it is dragged.</param>
    /// <param name="friction">Friction in the ring of an equaliser.</param>
    /// <param name="pull">Pull of a member with the lead already in its numbers.</param>
    public static TeamState Of(TowingTeam team, int lost, double friction, Func<TowingMachine, CapabilityFlat, double> pull)
    {
        var n = team.Members.Count;
        var state = new TeamState(n);
        double lead = 0;
        for (var i = 0; i < n; i++)
        {
            var member = team.Members[i];
            var flat = CapabilityFlat.From(member.Tower, 0);
            if (team.Kind == TeamKind.InLine) flat = flat.WithLead(member.Tower, lead, member.FrontHeight.Meters);
            state.Flats[i] = flat;
            if (i != lost) state.Line[i] = pull(member.Tower, flat);
            else if (team.Kind == TeamKind.InLine && lead > 0) state.Line[i] = Math.Max(0, Dragged(member.Tower, flat));
            lead = state.Own[i] = state.Line[i];
        }

        if (team.Kind == TeamKind.Equalised)
        {
            double a = state.Line[0], b = state.Line[1], angle = team.IncludedAngle.Radians;
            state.Line[0] = TeamKernel.EqualisedEnd(a, b, friction, angle);
            state.Line[1] = TeamKernel.EqualisedEnd(b, a, friction, angle);
        }

        state.Sum(team);
        return state;
    }

    /// <summary>What is left of a lead behind a machine whose wheels only roll: lead less its resistance and its grade. The wheel model holds the load transfer.</summary>
    private static double Dragged(TowingMachine tower, CapabilityFlat flat)
    {
        var rolling = flat.Rolling();
        var left = CapabilityKernel.Greatest(rolling, rolling.Load, rolling.GradeForce, tower.Soil.WeakestRatingConeIndex.Pascals, 0, BrixiusConstants.Bias, out _, out var residual);
        CapabilityBound.Check("pull behind a machine that is dragged", residual, left);
        return left;
    }

    private void Sum(TowingTeam team)
    {
        if (team.Kind == TeamKind.InLine)
        {
            Along = Line[Line.Length - 1];
            return;
        }

        for (var i = 0; i < Line.Length; i++)
        {
            Along += Line[i] * Math.Cos(team.Members[i].LineAngle.Radians);
            Sideways += Line[i] * Math.Sin(team.Members[i].LineAngle.Radians);
        }
    }
}
