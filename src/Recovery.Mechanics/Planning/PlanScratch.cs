using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>Working memory of one thread for one plan: what the plan kernel writes into, so that it allocates nothing.</summary>
internal sealed class PlanScratch
{
    public PlanScratch(PlanNumbers numbers)
    {
        Stuck = numbers.Compiled.Stuck.Flat.Copy();
        Straight = numbers.Compiled.StuckOnStraightFrame?.Flat.Copy();
        Places = (RigPlace[])numbers.Compiled.Places.Clone();
        Outcomes = new RigOutcome[Places.Length];
        Team = numbers.Team is { } team ? new TeamScratch(team) : null;
        Factors = new double[numbers.Factors];
        for (var i = 0; i < Factors.Length; i++) Factors[i] = 1;
    }

    public DemandFlat Stuck { get; }

    public DemandFlat? Straight { get; }

    public TeamScratch? Team { get; }

    public RigPlace[] Places { get; }

    public RigOutcome[] Outcomes { get; }

    /// <summary>One factor for every number; 1 where nothing scatters.</summary>
    public double[] Factors { get; }
}
