using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A whole plan: a stuck machine in its ground, a towing machine on its own, a rig between them, and how the pull is to be done.</summary>
/// <remarks>Immutable; every edit gives a new plan. The design factor policy has to be named: there is no default. The soil under the towing machine takes the remoulding index of the stuck machine's soil where it has none of its own.</remarks>
public sealed class RecoveryPlan
{
    private readonly CompiledPlan _compiled;

    /// <summary>Makes a plan.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <param name="tower">The towing machine.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="policy">The design factor policy, named.</param>
    /// <param name="procedure">How the pull is to be done, as far as it is declared.</param>
    /// <param name="site">What is known of the place.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public RecoveryPlan(StuckMachine stuck, TowingMachine tower, Rig rig, DesignFactorPolicy policy, PullProcedure procedure, RecoverySite site)
        : this(stuck, tower, rig, policy, procedure, site, StandardChecks.All)
    {
    }

    private RecoveryPlan(StuckMachine stuck, TowingMachine tower, Rig rig, DesignFactorPolicy policy, PullProcedure procedure, RecoverySite site, IReadOnlyList<IPlanCheck> checks)
    {
        Stuck = Guard.NotNull(stuck, nameof(stuck));
        Guard.NotNull(tower, nameof(tower));
        var soil = tower.Soil.WithRemouldingIndexOf(stuck.Soil);
        Tower = ReferenceEquals(soil, tower.Soil) ? tower : tower with { Soil = soil };
        RemouldingIndexBorrowed = !ReferenceEquals(soil, tower.Soil);
        Rig = Guard.NotNull(rig, nameof(rig));
        Policy = Guard.NotNull(policy, nameof(policy));
        Procedure = Guard.NotNull(procedure, nameof(procedure));
        Site = Guard.NotNull(site, nameof(site));
        Checks = checks;
        _compiled = new CompiledPlan(this);
    }

    /// <summary>Gets the stuck machine.</summary>
    public StuckMachine Stuck { get; }

    /// <summary>Gets the towing machine.</summary>
    public TowingMachine Tower { get; }

    /// <summary>Gets the rig.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the design factor policy.</summary>
    public DesignFactorPolicy Policy { get; }

    /// <summary>Gets how the pull is to be done.</summary>
    public PullProcedure Procedure { get; }

    /// <summary>Gets what is known of the place.</summary>
    public RecoverySite Site { get; }

    /// <summary>Gets the checks of this plan, in their order.</summary>
    public IReadOnlyList<IPlanCheck> Checks { get; }

    internal bool RemouldingIndexBorrowed { get; }

    internal CompiledPlan Compiled => _compiled;

    /// <summary>Gives the plan with another state of the stuck machine.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(StuckMachine stuck) => new(stuck, Tower, Rig, Policy, Procedure, Site, Checks);

    /// <summary>Gives the plan with another towing machine.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(TowingMachine tower) => new(Stuck, tower, Rig, Policy, Procedure, Site, Checks);

    /// <summary>Gives the plan with another rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(Rig rig) => new(Stuck, Tower, rig, Policy, Procedure, Site, Checks);

    /// <summary>Gives the plan with another procedure.</summary>
    /// <param name="procedure">The procedure.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(PullProcedure procedure) => new(Stuck, Tower, Rig, Policy, procedure, Site, Checks);

    /// <summary>Gives the plan with other facts of the place.</summary>
    /// <param name="site">The site.</param>
    /// <returns>The plan.</returns>
    public RecoveryPlan With(RecoverySite site) => new(Stuck, Tower, Rig, Policy, Procedure, site, Checks);

    /// <summary>Gives the plan with a check of the host's own, after the others.</summary>
    /// <param name="check">The check.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentNullException">The check is null.</exception>
    public RecoveryPlan WithCheck(IPlanCheck check) => new(Stuck, Tower, Rig, Policy, Procedure, Site, Checks.Append(Guard.NotNull(check, nameof(check))).ToList().AsReadOnly());

    /// <summary>Gives the plan without one of its checks. Leaving out a standard one is itself a finding.</summary>
    /// <param name="name">Name of the check.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentException">There is no such check.</exception>
    public RecoveryPlan WithoutCheck(string name)
    {
        if (!Checks.Any(c => c.Name == name)) throw new ArgumentException("The plan has no check named '" + name + "'.", nameof(name));
        return new(Stuck, Tower, Rig, Policy, Procedure, Site, Checks.Where(c => c.Name != name).ToList().AsReadOnly());
    }

    /// <summary>Works the plan out and checks it.</summary>
    /// <returns>The assessment.</returns>
    public Assessment Assess() => Assessment.Of(this);

    /// <summary>Gives the plan in words, invariant culture.</summary>
    /// <returns>Stuck machine, towing machine, rig and procedure.</returns>
    public override string ToString() => Stuck + "; pulled by " + Tower + "; " + Rig + "; " + Procedure;
}
