using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Traction;

/// <summary>Objections to several machines pulling together.</summary>
internal static class TeamPullFindings
{
    /// <param name="pull">The team.</param>
    /// <param name="peak">Peak of the line over the steady load: the nose is looked at up to there.</param>
    public static IReadOnlyList<Finding> For(TeamPull pull, double peak)
    {
        var list = new List<Finding>();
        var team = pull.Team;
        var name = team.ToString();
        list.Add(new Finding(TeamFindings.NotTogether, name));
        var included = team.IncludedAngle.Degrees;
        if (included > 60) list.Add(new Finding(TeamFindings.AngleWide, name, included > 120 ? 120 : 60, included, "deg", included > 120 ? Severity.Stop : Severity.Caution));
        var off = Math.Abs(pull.OffDirection.Degrees);
        if (off > TeamFindings.OffDegrees) list.Add(new Finding(TeamFindings.OffDirection, name, TeamFindings.OffDegrees, off, "deg"));
        for (var i = 0; i < team.Members.Count; i++)
        {
            var member = team.Members[i];
            var machine = member.Tower.Machine.Name;
            var line = pull.ImposableState.Line[i];
            if (team.Kind == TeamKind.InLine && i > 0)
            {
                var ahead = pull.ImposableState.Line[i - 1];
                if (member.FrontRating is not { } rating) list.Add(new Finding(TeamFindings.FrontPoint, machine, ahead / 1000, double.NaN, "kN"));
                else if (rating.Newtons < ahead) list.Add(new Finding(TeamFindings.FrontPointExceeded, machine, ahead / 1000, rating.Kilonewtons, "kN"));
            }

            if (member.Tower.HitchRating is { } hitch && hitch.Newtons < line) list.Add(new Finding(TractionFindings.HitchRatingExceeded, machine, line / 1000, hitch.Kilonewtons, "kN"));
            list.AddRange(new NoseMargin(machine, pull.ImposableState.Flats[i], pull.ImposableState.Own[i], line * peak).Findings);
            list.Add(new Finding(TeamFindings.OneLosesGrip, machine, pull.Sustained.CentralNewtons / 1000, pull.Losing(i).Remaining.CentralNewtons / 1000, "kN"));
        }

        return list.AsReadOnly();
    }
}
