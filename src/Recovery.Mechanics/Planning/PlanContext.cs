using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A plan with what has been worked out for it: what the checks look at.</summary>
public sealed class PlanContext
{
    internal PlanContext(RecoveryPlan plan, PullDemand demand, PullCapability capability, in PullAvailable available, LineLoads? loads, RigCheck? rig)
    {
        Plan = plan;
        Demand = demand;
        Capability = capability;
        Available = available;
        Loads = loads;
        Rig = rig;
    }

    /// <summary>Gets the plan.</summary>
    public RecoveryPlan Plan { get; }

    /// <summary>Gets the demand.</summary>
    public PullDemand Demand { get; }

    /// <summary>Gets the capability.</summary>
    public PullCapability Capability { get; }

    /// <summary>Gets several machines in line; null where one pulls alone.</summary>
    public TeamPull? Team => Plan.Compiled.Team;

    /// <summary>Gets what comes to the line.</summary>
    internal PullAvailable Available { get; }

    /// <summary>Gets the line loads; null where the strength of a strap in the line is not known.</summary>
    public LineLoads? Loads { get; }

    /// <summary>Gets the rig check; null where the line loads are not known.</summary>
    public RigCheck? Rig { get; }
}
