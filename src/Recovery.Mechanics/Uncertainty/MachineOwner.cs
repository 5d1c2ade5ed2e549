using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Whose machine an input belongs to: how it is named, read and put back into the plan.</summary>
internal sealed class MachineOwner
{
    private MachineOwner(string whose, string prefix, string inWords, Machine machine, Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> edit)
    {
        Whose = whose;
        Prefix = prefix;
        InWords = inWords;
        Machine = machine;
        Edit = edit;
    }

    /// <summary>Gets the beginning of its keys.</summary>
    public string Whose { get; }

    /// <summary>Gets what stands before the name of a part in a key; empty where the beginning tells the machine.</summary>
    public string Prefix { get; }

    /// <summary>Gets what follows the name of a part in a title; empty likewise.</summary>
    public string InWords { get; }

    /// <summary>Gets the machine in the plan that the inputs are listed for.</summary>
    public Machine Machine { get; }

    /// <summary>Gets what makes an edit of the machine.</summary>
    public Func<Func<RecoveryPlan, Machine, InputReach>, Func<Machine, double, Machine>, InputEdit> Edit { get; }

    /// <summary>Gets how deep the tyres of an axle stand.</summary>
    public Func<RecoveryPlan, int, double> Sunk { get; private set; } = static (_, _) => 0;

    /// <summary>Gets the place behind which no axle may stand.</summary>
    public Func<RecoveryPlan, double> Behind { get; private set; } = static _ => -30;

    /// <summary>The stuck machine, as it is and as it sank.</summary>
    public static MachineOwner Stuck(RecoveryPlan plan) => new("stuck", string.Empty, string.Empty, plan.Stuck.Machine, InputEdit.OfStuck) { Sunk = static (p, axle) => p.Stuck.Sinkage[axle].Meters };

    /// <summary>The towing machine.</summary>
    public static MachineOwner Tower(RecoveryPlan plan) => new("tower", string.Empty, string.Empty, plan.Tower.Machine, InputEdit.OfTower) { Behind = static p => Hitch(p.Tower) };

    /// <summary>A machine ahead of it.</summary>
    public static MachineOwner Ahead(RecoveryPlan plan, int i)
    {
        var name = plan.Ahead[i].Tower.Machine.Name;
        return new("ahead", name + "/", " of the " + name + " ahead", plan.Ahead[i].Tower.Machine, (reach, set) => InputEdit.OfAhead(i, reach, set)) { Behind = p => Hitch(p.Ahead[i].Tower) };
    }

    private static double Hitch(Traction.TowingMachine tower) => tower.Direction == PullDirection.Forwards ? tower.HitchPosition.Meters : -30;
}
