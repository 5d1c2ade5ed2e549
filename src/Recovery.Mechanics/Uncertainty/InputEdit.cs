using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How an input makes the plan anew: what it is now, how far it can go, and the plan with another value.</summary>
internal sealed class InputEdit
{
    private readonly Func<RecoveryPlan, InputReach> _reach;
    private readonly Func<RecoveryPlan, double, RecoveryPlan> _apply;

    public InputEdit(Func<RecoveryPlan, InputReach> reach, Func<RecoveryPlan, double, RecoveryPlan> set)
    {
        _reach = reach;
        _apply = (p, f) => set(p, reach(p).At(f));
    }

    private InputEdit(Func<RecoveryPlan, double, RecoveryPlan> apply, Func<RecoveryPlan, InputReach> reach)
    {
        _reach = reach;
        _apply = apply;
    }

    public InputReach Reach(RecoveryPlan plan) => _reach(plan);

    public RecoveryPlan Apply(RecoveryPlan plan, double factor) => _apply(plan, factor);

    /// <summary>Edit of the towing machine.</summary>
    public static InputEdit OfTower(Func<Machine, InputReach> reach, Func<Machine, double, Machine> set) =>
        new(p => reach(p.Tower.Machine), (p, v) => p.With(p.Tower with { Machine = set(p.Tower.Machine, v) }));

    /// <summary>Edit of the stuck machine: the factor goes on the machine as it is and on the machine as it sank.</summary>
    public static InputEdit OfStuck(Func<RecoveryPlan, Machine, InputReach> reach, Func<Machine, double, Machine> set) => new(
        (RecoveryPlan p, double f) => p.With(p.Stuck.WithMachines(set(p.Stuck.Machine, reach(p, p.Stuck.Machine).At(f)), set(p.Stuck.AsFound, reach(p, p.Stuck.AsFound).At(f)))),
        p => reach(p, p.Stuck.Machine));
}
