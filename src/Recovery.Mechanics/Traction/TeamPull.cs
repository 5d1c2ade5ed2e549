using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What several machines sustain together, the most they can impose, how they share a pull and what is left when one loses its grip.</summary>
/// <remarks>
/// <para>Side by side: along = sum P_i cos(a_i), across = sum P_i sin(a_i). Equaliser: both ends carry T = min(P_1, P_2), the pull 2 T cos(theta/2) points along the bisector; the stronger machine gives no more than the weaker one.
/// In line: P_k = NT_k(loads with P_k behind and P_(k-1) ahead) + P_(k-1) - W_k sin(theta), each limited by its power, nose and hitch, which carries the sum.</para>
/// <para>Angles in radians, forces in kN along the ground. The most they can impose takes friction 0.30 in the ring of the equaliser, where it lets the stronger end pull harder than the weaker one holds.</para>
/// <para>Sharing: one speed v over the ground; slip s_i = 1 - v/v_i with v_i the speed of the wheels in the gear of each. The faster-geared machine pulls first and slips most. Grip alone; power is left out.</para>
/// <para>No credit for pulling at one moment: until all pull, one machine has it all. Source: statics (derived), limits judgement. Immutable.</para>
/// </remarks>
public sealed class TeamPull
{
    private readonly TeamState _low;
    private readonly TeamState _central;
    private readonly TeamState _high;
    private readonly TeamState _imposable;

    private TeamPull(TowingTeam team)
    {
        Team = team;
        _low = State(team, -1, t => t.Soil.WeakestRatingConeIndex.Pascals);
        _central = State(team, -1, t => t.Soil.RatingConeIndex.Pascals);
        _high = State(team, -1, t => t.Soil.ConeIndex.Pascals);
        _imposable = TeamState.Of(team, -1, TeamKernel.EqualiserFriction, Most);
    }

    /// <summary>Gets the team.</summary>
    public TowingTeam Team { get; }

    /// <summary>Gets what they sustain along the wanted direction.</summary>
    public ForceBand Sustained => ForceBand.FromNewtons(_low.Along, _central.Along, _high.Along);

    /// <summary>Gets the most that the casualty and the gear where all lines meet can get, all pulling at once: the resultant.</summary>
    public Force Imposable => Force.FromNewtons(Math.Sqrt((_imposable.Along * _imposable.Along) + (_imposable.Sideways * _imposable.Sideways)));

    /// <summary>Gets the part across the wanted direction at central, positive to the left.</summary>
    public Force Sideways => Force.FromNewtons(_central.Sideways);

    /// <summary>Gets the angle of the pull off the wanted direction at central.</summary>
    public Angle OffDirection => Angle.FromRadians(TeamKernel.Off(_central.Along, _central.Sideways));

    /// <summary>Gets the force in the line of each member at central; in line, behind it.</summary>
    public IReadOnlyList<Force> LineForces => Forces(_central);

    /// <summary>Gets the most that can come into the line of each member; in line, behind it.</summary>
    public IReadOnlyList<Force> LineForcesImposable => Forces(_imposable);

    /// <summary>Gets the objections to pulling so.</summary>
    public IReadOnlyList<Finding> Findings => FindingsAt(1);

    internal TeamState ImposableState => _imposable;

    /// <summary>Estimates what a team pulls with level lines.</summary>
    /// <param name="team">The team.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">The team is null.</exception>
    public static TeamPull Estimate(TowingTeam team) => new(Guard.NotNull(team, nameof(team)));

    /// <summary>Gives what is left when one member loses its grip.</summary>
    /// <param name="member">Its place among the members, from 0.</param>
    /// <returns>The rest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such member.</exception>
    public TeamLoss Losing(int member)
    {
        Guard.Count(member, 0, Team.Members.Count - 1, nameof(member));
        TeamState low = State(Team, member, t => t.Soil.WeakestRatingConeIndex.Pascals), central = State(Team, member, t => t.Soil.RatingConeIndex.Pascals), high = State(Team, member, t => t.Soil.ConeIndex.Pascals);
        return new TeamLoss(Team.Members[member].Tower.Machine.Name, ForceBand.FromNewtons(low.Along, central.Along, high.Along), central.Sideways, TeamKernel.Off(central.Along, central.Sideways));
    }

    /// <summary>Gives how the members share a wanted pull on their typical rating cone index, bias constants; null where they do not reach it.</summary>
    /// <param name="wanted">Pull along the wanted direction, 0.1 to 10,000 kN.</param>
    /// <returns>The shares in the order of the members, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    /// <exception cref="SolverException">The common speed was not found.</exception>
    public IReadOnlyList<TeamShare>? Shares(Force wanted) => TeamSharing.Find(Team, Guard.Newtons(wanted, 0.1, 10000, nameof(wanted)));

    /// <summary>Works the central pull out step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Sustained pull of " + Team);
        var terms = new List<string>(Team.Members.Count);
        for (var i = 0; i < Team.Members.Count; i++)
        {
            var member = Team.Members[i];
            working.Step("P_" + Text.Number(i + 1), "line of " + member.Tower.Machine.Name + (Team.Kind == TeamKind.InLine && i > 0 ? ", with what draws it ahead" : string.Empty), "least of its limits", "central", Text.Kilonewtons(_central.Line[i]), TractionSources.TwoPulls);
            terms.Add(Text.Number(_central.Line[i] / 1000) + " cos(" + Text.Number(member.LineAngle.Degrees, 3) + " deg)");
        }

        return working.Step("P", "along the wanted direction", Team.Kind == TeamKind.InLine ? "line of the last" : "sum(P_i cos a_i)", Team.Kind == TeamKind.InLine ? "as above" : string.Join(" + ", terms), Text.Kilonewtons(_central.Along), TeamFindings.Together).Build();
    }

    /// <summary>The objections where the line peaks at a multiple of its steady load.</summary>
    internal IReadOnlyList<Finding> FindingsAt(double peak) => TeamPullFindings.For(this, peak);

    /// <summary>Gives the pull in one line, invariant culture.</summary>
    /// <returns>Sustained and imposable pull.</returns>
    public override string ToString() => Team + ": sustain " + Sustained + ", can impose " + Text.Kilonewtons(Imposable.Newtons, 3);

    private static TeamState State(TowingTeam team, int lost, Func<TowingMachine, double> index) => TeamState.Of(team, lost, 0, (tower, flat) => CapabilityBound.At(flat, index(tower)).Pull);

    private static double Most(TowingMachine tower, CapabilityFlat flat)
    {
        var most = ImposableKernel.Imposable(flat, flat.FirmestIndex, flat.HardFriction, flat.DownhillSine, out _, out _, out var residual);
        CapabilityBound.Check("imposable pull", residual, most);
        return most;
    }

    private static IReadOnlyList<Force> Forces(TeamState state)
    {
        var list = new Force[state.Line.Length];
        for (var i = 0; i < list.Length; i++) list[i] = Force.FromNewtons(state.Line[i]);
        return Array.AsReadOnly(list);
    }
}
