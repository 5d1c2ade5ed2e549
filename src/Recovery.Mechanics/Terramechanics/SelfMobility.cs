using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The self-mobility number: the cone index at which the wheels of a machine just move it, by any wheel model.</summary>
/// <remarks>
/// <para>The greatest sum of net traction of the driven wheels at one common slip, less the resistance of the others at none, equals the force along the ground that is to be met. On full wheel loads, slip at most 0.30 unless said (judgement): unlimited slip is optimistic in every model.</para>
/// <para>A bracketed root in the logarithm of the index between 1 and 20,000 kPa, with its residual. It is the index that the model is fed with: on fine-grained soil the rating cone index.</para>
/// <para>The models differ: for one 30 t machine they say 164 to 378 kPa.</para>
/// </remarks>
public static class SelfMobility
{
    private const double LowestPascals = CriticalIndexKernel.LowestPascals;
    private const double HighestPascals = CriticalIndexKernel.HighestPascals;

    /// <summary>Finds the critical cone index.</summary>
    /// <param name="model">The wheel model.</param>
    /// <param name="wheels">All wheels of the machine, set by set; their own cone index does not enter.</param>
    /// <param name="force">Force along the ground to be met besides, -5,000 to 5,000 kN: on a grade W sin of it, positive uphill. None unless said.</param>
    /// <param name="slipLimit">Greatest slip, 0.01 to 1; 0.30 unless said.</param>
    /// <returns>The critical cone index with its residual, or why there is none.</returns>
    /// <exception cref="ArgumentNullException">Model or wheels are null.</exception>
    /// <exception cref="ArgumentException">There are no wheels.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="SolverException">The root is bracketed and was not found.</exception>
    public static SelfMobilityResult Find(IWheelModel model, IReadOnlyList<WheelSet> wheels, Force? force = null, Ratio? slipLimit = null)
    {
        Guard.NotNull(model, nameof(model));
        CheckWheels(wheels);
        double wanted = force is { } f ? Guard.Newtons(f, -5000, 5000, nameof(force)) : 0, limit = LimitOf(slipLimit);
        var firm = SelfMobilityKernel.Best(model, wheels, HighestPascals, limit, out _, out var drives);
        if (!drives) return new SelfMobilityResult(model, IsDriven(wheels) ? ComparisonBuilder.NoTraction : "no wheel is driven");
        if (!(firm >= wanted)) return new SelfMobilityResult(model, "no soil up to 20,000 kPa is firm enough");
        var soft = SelfMobilityKernel.Best(model, wheels, LowestPascals, limit, out _, out _);
        if (soft > wanted) return new SelfMobilityResult(model, "it moves itself on any soil from 1 kPa on");
        var root = SelfMobilityKernel.Critical(model, wheels, wanted, limit, LowestPascals, HighestPascals);
        var index = Math.Exp(root.Value);
        var net = SelfMobilityKernel.Best(model, wheels, index, limit, out var slip, out _);
        return new SelfMobilityResult(model, index, slip, net - wanted, root.Calls);
    }

    /// <summary>Gives the greatest net traction of the wheels on their own soil at a slip up to a limit: what is left to pull with, negative where they do not move the machine.</summary>
    /// <param name="model">The wheel model.</param>
    /// <param name="wheels">All wheels of the machine, set by set, each on its soil.</param>
    /// <param name="slipLimit">Greatest slip, 0.01 to 1; 0.30 unless said.</param>
    /// <returns>The net traction; null where no wheel drives or a wheel is immobile.</returns>
    /// <exception cref="ArgumentNullException">Model or wheels are null.</exception>
    /// <exception cref="ArgumentException">There are no wheels.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force? NetTraction(IWheelModel model, IReadOnlyList<WheelSet> wheels, Ratio? slipLimit = null)
    {
        Guard.NotNull(model, nameof(model));
        CheckWheels(wheels);
        var net = SelfMobilityKernel.Best(model, wheels, null, LimitOf(slipLimit), out _, out var drives);
        return drives && !double.IsNaN(net) ? Force.FromNewtons(net) : null;
    }

    internal static void CheckWheels(IReadOnlyList<WheelSet> wheels)
    {
        Guard.NotNull(wheels, nameof(wheels));
        if (wheels.Count == 0) throw new ArgumentException("wheels must hold at least one set.", nameof(wheels));
        foreach (var set in wheels) Guard.NotNull(set, nameof(wheels));
    }

    internal static bool IsDriven(IReadOnlyList<WheelSet> wheels)
    {
        foreach (var set in wheels)
        {
            if (set.Driven) return true;
        }

        return false;
    }

    private static double LimitOf(Ratio? slipLimit) => slipLimit is { } limit ? Guard.Fraction(limit, 0.01, 1, nameof(slipLimit)) : CriticalIndexKernel.PlanningSlip;
}
