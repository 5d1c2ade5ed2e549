using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>A whole plan: a stuck machine in its ground, a towing machine on its own, a rig between them, and how the pull is to be done.</summary>
/// <remarks>Immutable; every edit gives a new plan. The design factor policy has to be named: there is no default. The soil under the towing machine takes the remoulding index of the stuck machine's soil where it has none of its own.</remarks>
public sealed class RecoveryPlan
{
    private readonly CompiledPlan _compiled;
    private readonly Extras _extras;

    /// <summary>Makes a plan.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <param name="tower">The towing machine.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="policy">The design factor policy, named.</param>
    /// <param name="procedure">How the pull is to be done, as far as it is declared.</param>
    /// <param name="site">What is known of the place.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public RecoveryPlan(StuckMachine stuck, TowingMachine tower, Rig rig, DesignFactorPolicy policy, PullProcedure procedure, RecoverySite site)
        : this(stuck, tower, rig, policy, procedure, site, new Extras(StandardChecks.All, [], [], null))
    {
    }

    private RecoveryPlan(StuckMachine stuck, TowingMachine tower, Rig rig, DesignFactorPolicy policy, PullProcedure procedure, RecoverySite site, Extras extras, RecoveryPlan? from = null)
    {
        Stuck = Guard.NotNull(stuck, nameof(stuck));
        Guard.NotNull(tower, nameof(tower));
        var soil = tower.Soil.WithRemouldingIndexOf(stuck.Soil);
        Tower = ReferenceEquals(soil, tower.Soil) ? tower : tower with { Soil = soil };
        Guard.NotNull(rig, nameof(rig));
        Policy = DesignFactorPolicy.Chosen(policy, nameof(policy));
        Procedure = Guard.NotNull(procedure, nameof(procedure));
        Site = Guard.NotNull(site, nameof(site));
        Rig = rig.AtYaw(site.LineYaw);
        _extras = extras;
        Checks = extras.Checks;
        FilledIn = extras.FilledIn;
        _compiled = new CompiledPlan(this, from);
    }

    /// <summary>Gets the stuck machine.</summary>
    public StuckMachine Stuck { get; }

    /// <summary>Gets the towing machine.</summary>
    public TowingMachine Tower { get; }

    /// <summary>Gets the rig. Its bridle leans by what the line lies off the direction of the pull, unless its lean was declared.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the design factor policy.</summary>
    public DesignFactorPolicy Policy { get; }

    /// <summary>Gets how the pull is to be done.</summary>
    public PullProcedure Procedure { get; }

    /// <summary>Gets what is known of the place.</summary>
    public RecoverySite Site { get; }

    /// <summary>Gets the checks of this plan, in their order.</summary>
    public IReadOnlyList<IPlanCheck> Checks { get; }

    /// <summary>Gets what whoever made the plan filled in for facts that were not given; listed as still to measure.</summary>
    public IReadOnlyList<Assumption> FilledIn { get; }

    /// <summary>Gets the machines that pull ahead of the towing machine, in line, the foremost first; none unless added.</summary>
    public IReadOnlyList<TeamMember> Ahead => _extras.Ahead;

    /// <summary>Gets the tackle between towing machine and line; null where there is none.</summary>
    public LineTackle? Tackle => _extras.Tackle;

    /// <summary>What was said of the towing machine's own front, by which machines ahead draw it; null where nothing was.</summary>
    internal TeamMember? Front => _extras.Front;

    internal CompiledPlan Compiled => _compiled;

    /// <summary>Gives the plan with another state of the stuck machine.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(StuckMachine stuck) => new(stuck, Tower, Rig, Policy, Procedure, Site, _extras, this);

    /// <summary>Gives the plan with another towing machine.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(TowingMachine tower) => new(Stuck, tower, Rig, Policy, Procedure, Site, _extras, this);

    /// <summary>Gives the plan with another rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(Rig rig) => new(Stuck, Tower, rig, Policy, Procedure, Site, _extras, this);

    /// <summary>Gives the plan with another procedure.</summary>
    /// <param name="procedure">The procedure.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(PullProcedure procedure) => new(Stuck, Tower, Rig, Policy, procedure, Site, _extras, this);

    /// <summary>Gives the plan with other facts of the place.</summary>
    /// <param name="site">The site.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(RecoverySite site) => new(Stuck, Tower, Rig, Policy, Procedure, site, _extras, this);

    /// <summary>Gives the plan with a check of the host's own, after the others.</summary>
    /// <param name="check">The check.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException">The check is null.</exception>
    public RecoveryPlan WithCheck(IPlanCheck check) => new(Stuck, Tower, Rig, Policy, Procedure, Site, _extras with { Checks = Checks.Append(Guard.NotNull(check, nameof(check))).ToList().AsReadOnly() }, this);

    /// <summary>Gives the plan without one of its checks. Leaving out a standard one is itself a finding.</summary>
    /// <param name="name">Name of the check.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentException">There is no such check.</exception>
    public RecoveryPlan WithoutCheck(string name)
    {
        if (!Checks.Any(c => c.Name == name)) throw new ArgumentException("The plan has no check named '" + name + "'.", nameof(name));
        return new(Stuck, Tower, Rig, Policy, Procedure, Site, _extras with { Checks = Checks.Where(c => c.Name != name).ToList().AsReadOnly() }, this);
    }

    /// <summary>Gives the plan with machines that pull ahead of the towing machine, in line, each drawing the front of the next.</summary>
    /// <param name="ahead">The foremost first, at most three; the towing machine's own front height and rating are those of <paramref name="front"/>.</param>
    /// <param name="front">Height and rating of the towing machine's front, by which it is drawn; null takes 0.6 m and no rating.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">Too many machines, two of one name, or a line at an angle.</exception>
    public RecoveryPlan WithAhead(IEnumerable<TeamMember> ahead, TeamMember? front = null) => new(Stuck, Tower, Rig, Policy, Procedure, Site, _extras with { Ahead = Guard.NotNull(ahead, nameof(ahead)).ToList().AsReadOnly(), Front = front }, this);

    /// <summary>Gives the plan with a tackle between towing machine and line, or without.</summary>
    /// <param name="tackle">The tackle; null takes it away.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan WithTackle(LineTackle? tackle) => new(Stuck, Tower, Rig, Policy, Procedure, Site, _extras with { Tackle = tackle }, this);

    /// <summary>Gives the plan with a list of what was filled in for facts that were not given.</summary>
    /// <param name="filledIn">The assumptions, each with what it would change.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    public RecoveryPlan WithFilledIn(IEnumerable<Assumption> filledIn) => new(Stuck, Tower, Rig, Policy, Procedure, Site, _extras with { FilledIn = Guard.NotNull(filledIn, nameof(filledIn)).ToList().AsReadOnly() }, this);

    /// <summary>Works the plan out and checks it.</summary>
    /// <returns>The assessment.</returns>
    public Assessment Assess() => Assessment.Of(this);

    internal TowingTeam? Team => Ahead.Count == 0 ? null : TowingTeam.InLine(Ahead.Append(new TeamMember(Tower) { FrontHeight = _extras.Front?.FrontHeight ?? Length.FromMeters(0.6), FrontRating = _extras.Front?.FrontRating }));

    /// <summary>Gives the plan in words, invariant culture.</summary>
    /// <returns>Stuck machine, towing machine, rig and procedure.</returns>
    public override string ToString() => Stuck + "; pulled by " + (Ahead.Count > 0 ? string.Join(", ", Ahead.Select(m => m.Tower)) + " ahead of " : string.Empty) + Tower + "; " + (Tackle is { } tackle ? tackle + "; " : string.Empty) + Rig + "; " + Procedure;

    private sealed record Extras(IReadOnlyList<IPlanCheck> Checks, IReadOnlyList<Assumption> FilledIn, IReadOnlyList<TeamMember> Ahead, LineTackle? Tackle)
    {
        public TeamMember? Front { get; init; }
    }
}
