using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What a towing machine sustains by a wheel model of the caller's choice, load transfer solved with the pull.</summary>
/// <remarks>
/// <para>P = sum over driven wheels NT(load, s) - sum over undriven wheels MR(load, 0) - W sin(theta), wheel loads with what P transfers; the greatest over slip up to 0.30, then the least of that, power, nose lift and rating. Low and central on the rating cone index of the weakest and the typical reading, high on the cone index.</para>
/// <para>P in kN along the ground, W weight, theta grade, s slip. The range is that of the model; the flags of the wheels at the central pull are passed on. Where a model says that a wheel is immobile there is no number.</para>
/// <para>Decisions rest on <see cref="PullCapability"/> with the bias constants of Brixius. This stands beside it to show how far the published laws lie apart: on soft ground Gee-Clough is the most optimistic, Wismer-Luth is optimistic at high slip.</para>
/// <para>Source: that of the model; composition judgement. Immutable.</para>
/// </remarks>
public sealed class ModelPull
{
    private readonly ModelPullSolver _solver;
    private readonly double? _low;
    private readonly double? _high;

    private ModelPull(TowingMachine tower, IWheelModel model, double pitchRadians)
    {
        Tower = tower;
        Model = model;
        _solver = new ModelPullSolver(tower, model, CapabilityFlat.From(tower, pitchRadians));
        _low = Limited(tower.Soil.WeakestRatingConeIndex.Pascals, out _, out _, out _);
        var central = Limited(tower.Soil.RatingConeIndex.Pascals, out var slip, out var limit, out var traction);
        _high = Limited(tower.Soil.ConeIndex.Pascals, out _, out _, out _);
        LimitedBy = limit;
        if (central is not { } pull) return;
        Central = Force.FromNewtons(pull);
        TractionLimit = Force.FromNewtons(traction);
        Slip = Ratio.FromDecimalFractions(slip);
        Flags = _solver.Flags(tower.Soil.RatingConeIndex.Pascals, Math.Max(0, traction), slip);
    }

    /// <summary>Gets the towing machine.</summary>
    public TowingMachine Tower { get; }

    /// <summary>Gets the wheel model.</summary>
    public IWheelModel Model { get; }

    /// <summary>Gets the central sustained pull; null where the model has no number there.</summary>
    public Force? Central { get; }

    /// <summary>Gets the band of the sustained pull; null where the model has no number at one of its ends.</summary>
    public ForceBand? Sustained => _low is { } low && Central is { } central && _high is { } high ? ForceBand.FromNewtons(Math.Min(low, central.Newtons), central.Newtons, Math.Max(high, central.Newtons)) : null;

    /// <summary>Gets the central traction limit; null where the model has no number.</summary>
    public Force? TractionLimit { get; }

    /// <summary>Gets the slip at that limit; null where the model has no number.</summary>
    public Ratio? Slip { get; }

    /// <summary>Gets what limits the central pull.</summary>
    public PullLimit LimitedBy { get; }

    /// <summary>Gets the limits of the model that its wheels left at the central pull, each once.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; } = [];

    /// <summary>Estimates with a level line.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="model">The wheel model.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="SolverException">Pull and load transfer could not be solved together.</exception>
    public static ModelPull Estimate(TowingMachine tower, IWheelModel model) => Estimate(tower, model, Angle.Zero);

    /// <summary>Estimates with an inclined line.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="model">The wheel model.</param>
    /// <param name="linePitch">Angle by which the line falls from the hitch towards the casualty, -40 to 40 degrees.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <exception cref="SolverException">Pull and load transfer could not be solved together.</exception>
    public static ModelPull Estimate(TowingMachine tower, IWheelModel model, Angle linePitch) =>
        new(Guard.NotNull(tower, nameof(tower)), Guard.NotNull(model, nameof(model)), Guard.Radians(linePitch, -40, 40, nameof(linePitch)));

    /// <summary>Gives the pull at a slip on the typical rating cone index; null where the model has no number. Negative where the machine does not move even itself.</summary>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The pull, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slip is outside its range.</exception>
    public Force? AtSlip(Ratio slip) => _solver.AtSlip(Tower.Soil.RatingConeIndex.Pascals, Guard.Fraction(slip, 0, 1, nameof(slip))) is { } pull ? Force.FromNewtons(pull) : null;

    /// <summary>Gives the least slip at which a wanted pull is reached on the typical rating cone index; null where it is out of reach or the model has no number.</summary>
    /// <param name="pull">Wanted pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>The slip, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public Ratio? SlipAt(Force pull) => _solver.SlipAt(Tower.Soil.RatingConeIndex.Pascals, Guard.Newtons(pull, 0, 5000, nameof(pull))) is { } slip ? Ratio.FromDecimalFractions(slip) : null;

    /// <summary>Gives the pull over slip; points where the model has no number are left out.</summary>
    /// <param name="points">Number of points, evenly over slip 0 to <paramref name="greatestSlip"/>, 2 to 1,000.</param>
    /// <param name="greatestSlip">Greatest slip, 0.01 to 1.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public IReadOnlyList<SlipPoint> Curve(int points, Ratio greatestSlip)
    {
        Guard.Count(points, 2, 1000, nameof(points));
        var last = Guard.Fraction(greatestSlip, 0.01, 1, nameof(greatestSlip));
        var curve = new List<SlipPoint>(points);
        for (var i = 0; i < points; i++)
        {
            var slip = last * i / (points - 1);
            if (_solver.AtSlip(Tower.Soil.RatingConeIndex.Pascals, slip) is { } pull) curve.Add(new SlipPoint(slip, pull));
        }

        return curve.AsReadOnly();
    }

    /// <summary>Gives the pull in one line, invariant culture.</summary>
    /// <returns>Model and sustained pull.</returns>
    public override string ToString() => Model.Name + ": " + (Central is { } pull ? Text.Kilonewtons(pull.Newtons, 3) + " (" + LimitedBy + ")" : "immobile, no number") + (Flags.Count == 0 ? string.Empty : ", outside its range");

    private double? Limited(double index, out double slip, out PullLimit limit, out double traction)
    {
        limit = PullLimit.Traction;
        traction = 0;
        if (_solver.Greatest(index, CriticalIndexKernel.PlanningSlip, out slip) is not { } best) return null;
        traction = Math.Max(0, best);
        var flat = _solver.Flat;
        return CapabilityKernel.Sustained(traction, flat.PowerLimit, flat.NoseLimit, flat.SideLimit, flat.RatingLimit, out limit);
    }
}
