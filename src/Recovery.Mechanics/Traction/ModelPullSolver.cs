using System;
using System.Collections.Generic;
using MathNet.Numerics;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Solves pull and load transfer together for any wheel model. SI inside.</summary>
internal sealed class ModelPullSolver(TowingMachine tower, IWheelModel model, CapabilityFlat flat)
{
    private const int Grid = 12;

    public CapabilityFlat Flat => flat;

    /// <summary>Pull at a slip; null where a wheel is immobile. Below zero it is what the machine lacks to move itself.</summary>
    public double? AtSlip(double index, double slip)
    {
        if (Net(index, 0, slip) is not { } standing) return null;
        if (!(standing > 0)) return standing;
        var immobile = false;
        double upper = standing;
        for (var i = 0; i < 12 && Left(upper) > 0; i++) upper *= 2;
        try
        {
            return BracketedRoot.Find("pull by " + model.Name, Left, 0, upper, CapabilityKernel.AcceptedResidual);
        }
        catch (SolverException) when (immobile)
        {
            // The pull puts so much load on a wheel that the model has no number for it.
            return null;
        }

        double Left(double pull)
        {
            if (Net(index, pull, slip) is { } net) return net - pull;
            immobile = true;
            return -flat.Weight - pull;
        }
    }

    /// <summary>Greatest pull over slip up to a limit; null where the model has no number at any slip looked at.</summary>
    public double? Greatest(double index, double slipLimit, out double slip)
    {
        slip = 0;
        var best = -1;
        double? greatest = null;
        for (var i = 1; i <= Grid; i++)
        {
            if (AtSlip(index, slipLimit * i / Grid) is not { } pull || (greatest is { } so && pull <= so)) continue;
            greatest = pull;
            best = i;
        }

        if (best < 0) return null;
        slip = slipLimit * best / Grid;
        if (best == Grid) return greatest;
        var refined = FindMinimum.OfScalarFunctionConstrained(s => -(AtSlip(index, s) ?? -flat.Weight), slipLimit * (best - 1) / Grid, slipLimit * (best + 1) / Grid, 1e-9, 200);
        if (AtSlip(index, refined) is not { } at || at < greatest) return greatest;
        slip = refined;
        return at;
    }

    /// <summary>Least slip at which a pull is reached; null where it is not.</summary>
    public double? SlipAt(double index, double pull)
    {
        if (Greatest(index, 1, out var best) is not { } most || most < pull) return null;
        if (Net(index, pull, 0) is { } still && still >= pull) return 0;
        // At that pull the loads are fixed and one equation in the slip remains.
        return BracketedRoot.Find("slip by " + model.Name, s => (Net(index, pull, s) ?? -flat.Weight) - pull, 0, best, CapabilityKernel.AcceptedResidual);
    }

    /// <summary>Limits of the model that its wheels leave, each once.</summary>
    public IReadOnlyList<ValidityFlag> Flags(double index, double pull, double slip)
    {
        var flags = new List<ValidityFlag>();
        for (var i = 0; i < flat.Load.Length; i++)
        {
            if (Wheel(i, index, pull) is not { } wheel) continue;
            foreach (var flag in model.Evaluate(wheel, Ratio.FromDecimalFractions(flat.Driven[i] ? slip : 0)).Flags)
            {
                if (!flags.Exists(f => ReferenceEquals(f.Limit, flag.Limit))) flags.Add(flag);
            }
        }

        return flags.AsReadOnly();
    }

    private double? Net(double index, double pull, double slip)
    {
        double sum = -flat.GradeForce;
        for (var i = 0; i < flat.Load.Length; i++)
        {
            if (Wheel(i, index, pull) is not { } wheel) continue;
            var result = model.Evaluate(wheel, Ratio.FromDecimalFractions(flat.Driven[i] ? slip : 0));
            if ((flat.Driven[i] ? result.NetTractionRatio : -result.MotionResistanceRatio) is not { } ratio) return null;
            sum += ratio * wheel.Load.Newtons * flat.Count[i];
        }

        return sum;
    }

    private WheelOnSoil? Wheel(int axle, double index, double pull)
    {
        var share = CapabilityKernel.Share(flat, flat.Load, pull);
        var load = (flat.Load[axle] + (flat.LoadPerPull[axle] * pull)) * share / flat.Count[axle];
        if (!(load > 1)) return null;
        var tyre = tower.Machine.Axles[axle].Tyre;
        var deflection = Math.Min(0.6, tyre.DeflectionRatio(flat.Load[axle] / flat.Count[axle]));
        return new WheelOnSoil(tyre.SectionWidth, tyre.OverallDiameter, Ratio.FromDecimalFractions(deflection), Force.FromNewtons(load), Pressure.FromPascals(index));
    }
}
