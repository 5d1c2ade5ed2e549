using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How an input makes the plan anew: what it is now, how far it can go, and the plan with another value.</summary>
internal sealed class InputEdit
{
    private readonly Func<RecoveryPlan, InputReach> _reach;
    private readonly Func<RecoveryPlan, InputMove, RecoveryPlan> _apply;

    public InputEdit(Func<RecoveryPlan, InputReach> reach, Func<RecoveryPlan, double, RecoveryPlan> set)
    {
        _reach = reach;
        _apply = (p, move) => set(p, move.Of(reach(p)));
    }

    private InputEdit(Func<RecoveryPlan, InputMove, RecoveryPlan> apply, Func<RecoveryPlan, InputReach> reach)
    {
        _reach = reach;
        _apply = apply;
    }

    public InputReach Reach(RecoveryPlan plan) => _reach(plan);

    public RecoveryPlan Apply(RecoveryPlan plan, InputMove move) => _apply(plan, move);

    /// <summary>Edit of the towing machine.</summary>
    public static InputEdit OfTower(Func<RecoveryPlan, Machine, InputReach> reach, Func<Machine, double, Machine> set) =>
        new(p => reach(p, p.Tower.Machine), (p, v) => p.With(p.Tower with { Machine = set(p.Tower.Machine, v) }));

    /// <summary>Edit of a machine ahead of it.</summary>
    public static InputEdit OfAhead(int i, Func<RecoveryPlan, Machine, InputReach> reach, Func<Machine, double, Machine> set) =>
        new(p => reach(p, p.Ahead[i].Tower.Machine), (p, v) => ArrangementInputs.With(p, i, p.Ahead[i].On(p.Ahead[i].Tower with { Machine = set(p.Ahead[i].Tower.Machine, v) })));

    /// <summary>Edit of the stuck machine: factor or difference goes on the machine as it is and on the machine as it sank.</summary>
    public static InputEdit OfStuck(Func<RecoveryPlan, Machine, InputReach> reach, Func<Machine, double, Machine> set) => new(
        (RecoveryPlan p, InputMove move) => p.With(p.Stuck.WithMachines(set(p.Stuck.Machine, move.Of(reach(p, p.Stuck.Machine))), set(p.Stuck.AsFound, move.Of(reach(p, p.Stuck.AsFound))))),
        p => reach(p, p.Stuck.Machine));
}
