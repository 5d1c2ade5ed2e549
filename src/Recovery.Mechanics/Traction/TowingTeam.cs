using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Several machines that pull one casualty. Immutable.</summary>
public sealed class TowingTeam
{
    private TowingTeam(TeamKind kind, TeamMember[] members)
    {
        Kind = kind;
        Members = Array.AsReadOnly(members);
    }

    /// <summary>Gets how they pull together.</summary>
    public TeamKind Kind { get; }

    /// <summary>Gets the members; in line from the foremost to the one that the casualty hangs on.</summary>
    public IReadOnlyList<TeamMember> Members { get; }

    /// <summary>Gets the angle between the outermost lines; zero in line.</summary>
    public Angle IncludedAngle => Angle.FromRadians(Members.Max(m => m.LineAngle.Radians) - Members.Min(m => m.LineAngle.Radians));

    /// <summary>Makes a team in line: every machine draws the front of the next.</summary>
    /// <param name="members">Two to four machines, the foremost first.</param>
    /// <returns>The team.</returns>
    /// <exception cref="ArgumentNullException">The members are null.</exception>
    /// <exception cref="ArgumentException">Not two to four members, one null, two of one name, or a line at an angle.</exception>
    public static TowingTeam InLine(IEnumerable<TeamMember> members)
    {
        var list = Checked(members);
        if (list.Any(m => m.LineAngle.Radians != 0)) throw new ArgumentException("In line no member has a line at an angle.", nameof(members));
        return new TowingTeam(TeamKind.InLine, list);
    }

    /// <summary>Makes a team side by side, each on its own line.</summary>
    /// <param name="members">Two to four machines with the angles of their lines.</param>
    /// <returns>The team.</returns>
    /// <exception cref="ArgumentNullException">The members are null.</exception>
    /// <exception cref="ArgumentException">Not two to four members, one null, or two of one name.</exception>
    public static TowingTeam SideBySide(IEnumerable<TeamMember> members) => new(TeamKind.SideBySide, Checked(members));

    /// <summary>Makes a team of two on the ends of one strap that runs free through a ring at the casualty's line.</summary>
    /// <param name="first">One machine with the angle of its line.</param>
    /// <param name="second">The other.</param>
    /// <returns>The team.</returns>
    /// <exception cref="ArgumentNullException">A member is null.</exception>
    /// <exception cref="ArgumentException">Both bear one name.</exception>
    public static TowingTeam Equalised(TeamMember first, TeamMember second) => new(TeamKind.Equalised, Checked([Guard.NotNull(first, nameof(first)), Guard.NotNull(second, nameof(second))]));

    /// <summary>Gives the team in words.</summary>
    /// <returns>The members and how they pull.</returns>
    public override string ToString() => string.Join(" + ", Members.Select(m => m.Tower.Machine.Name)) + (Kind == TeamKind.InLine ? " in line" : Kind == TeamKind.SideBySide ? " side by side" : " on an equaliser");

    private static TeamMember[] Checked(IEnumerable<TeamMember> members)
    {
        var list = Guard.NotNull(members, nameof(members)).ToArray();
        if (list.Length is < 2 or > 4) throw new ArgumentException("A team has two to four machines; there were " + Text.Number(list.Length) + ".", nameof(members));
        if (list.Any(m => m is null)) throw new ArgumentException("A member of the team is null.", nameof(members));
        if (list.Select(m => m.Tower.Machine.Name).Distinct(StringComparer.Ordinal).Count() != list.Length) throw new ArgumentException("Two machines of a team bear one name.", nameof(members));
        return list;
    }
}
