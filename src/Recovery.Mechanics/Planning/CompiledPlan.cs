using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A plan as plain numbers, made once when the plan is made: what the kernels read.</summary>
internal sealed class CompiledPlan
{
    /// <summary>Makes the numbers of a plan; what it shares with the plan it was edited from is taken over.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="from">The plan it was edited from; null where it is made anew.</param>
    public CompiledPlan(RecoveryPlan plan, RecoveryPlan? from)
    {
        if (from is not null && ReferenceEquals(from.Stuck, plan.Stuck))
        {
            (Stuck, StuckOnStraightFrame) = (from.Compiled.Stuck, from.Compiled.StuckOnStraightFrame);
        }
        else
        {
            Stuck = CompiledStuckMachine.From(plan.Stuck, plan.Stuck.Machine.Resolve(Suspension.Undeclared));
            StuckOnStraightFrame = plan.Stuck.Machine.SuspensionMatters ? CompiledStuckMachine.From(plan.Stuck, Suspension.StraightFrame) : null;
        }

        if (from is not null && ReferenceEquals(from.Tower, plan.Tower) && ReferenceEquals(from.Site, plan.Site))
        {
            (Tower, Capability) = (from.Compiled.Tower, from.Compiled.Capability);
        }
        else
        {
            Tower = CapabilityFlat.From(plan.Tower, plan.Site.LinePitch.Radians, plan.Site.LineYaw.Radians);
            Capability = PullCapability.Estimate(plan.Tower, Tower);
        }

        if (from is not null && ReferenceEquals(from.Rig, plan.Rig) && ReferenceEquals(from.Policy, plan.Policy))
        {
            (Line, Places) = (from.Compiled.Line, from.Compiled.Places);
        }
        else
        {
            Line = plan.Rig.Line;
            Places = RigPlaces.From(plan.Rig, plan.Policy, plan.Rig.WearAndTwist);
        }

        Tension = plan.Site.Tension;
        Team = plan.Team is { } team ? TeamPull.Estimate(team) : null;
        Tackle = plan.Tackle;
        Procedure = plan.Procedure.Through(Tackle?.Parts ?? 1);
        double mass = plan.Tower.Machine.MassKilograms, turning = plan.Procedure.RotatingMass.Kilograms;
        foreach (var member in plan.Ahead) mass += member.Tower.Machine.MassKilograms;
        if (Tackle is { } tackle)
        {
            mass *= tackle.Parts * tackle.Parts;
            turning *= tackle.Parts * tackle.Parts;
        }

        if (Line is { } line) LineInput = LineLoads.InputOf(0, mass, turning, line, Procedure, Bedded(plan.Rig), FacesDownhill(plan));
    }

    public CompiledStuckMachine Stuck { get; }

    public CompiledStuckMachine? StuckOnStraightFrame { get; }

    public CapabilityFlat Tower { get; }

    /// <summary>What the puller has: it turns on the puller and the slope of its line alone.</summary>
    public PullCapability Capability { get; }

    public ElasticLine? Line { get; }

    /// <summary>Several machines in line; null where one pulls alone.</summary>
    public TeamPull? Team { get; }

    public LineTackle? Tackle { get; }

    /// <summary>The procedure as the line feels it: through a tackle its speeds are divided by the parts.</summary>
    public PullProcedure Procedure { get; }

    public RigPlace[] Places { get; }

    /// <summary>Tension of the line over the force along the ground.</summary>
    public double Tension { get; }

    /// <summary>Input of the line loads, its pull still open.</summary>
    public LineLoadInput LineInput { get; }

    /// <summary>Central demand alone, N: what a search over sets of measures compares.</summary>
    public double CentralDemand(StuckMachine stuck)
    {
        var state = DemandBounds.CentralState(Stuck.Assumptions, stuck.Wheels == WheelMotion.Locked);
        DemandKernel.Compose(Stuck.Flat, state, out var terms);
        if (StuckOnStraightFrame is not { } straight) return terms.Total;
        DemandKernel.Compose(straight.Flat, DemandBounds.CentralState(straight.Assumptions, stuck.Wheels == WheelMotion.Locked), out var other);
        return System.Math.Max(terms.Total, other.Total);
    }

    /// <summary>Whether any puller may stand facing downhill: no gear then holds the load to its rule.</summary>
    private static bool FacesDownhill(RecoveryPlan plan)
    {
        if (Downhill(plan.Tower)) return true;
        foreach (var member in plan.Ahead)
        {
            if (Downhill(member.Tower)) return true;
        }

        return false;
    }

    private static bool Downhill(TowingMachine tower) => tower.Grade.Radians < 0 || tower.DownhillInReach.Radians > 0;

    private static double Bedded(Rig rig)
    {
        double factor = 1;
        foreach (var part in rig.LineParts) factor = System.Math.Max(factor, part is Strap strap ? Strap.MaterialOf(strap.Fibre).BeddedFactor : 1);
        return factor;
    }
}
