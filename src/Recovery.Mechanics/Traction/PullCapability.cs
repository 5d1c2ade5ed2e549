using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What a towing machine sustains on its ground, and the most it can put into a line. Two numbers, never exchanged.</summary>
/// <remarks>
/// <para>Sustained: P = sum over wheels of net traction - W sin(theta) at slip up to 0.30, Brixius bias constants, wheel loads with the load that P transfers; low and central on the rating cone index (weakest and typical reading), high on the cone index;
/// then the least of that, power eta P_e/v - W sin(theta), nose lift W_f L/max(h_e, h_cg) and the rating of the hitch.</para>
/// <para>Imposable: the greatest net pull over slip 0 to 1, radial constants, on the cone index of the firmest ground it may stand on, or 1.02 W where a hard surface is in reach, plus W sin of a downhill in reach. Rating, power and a careful driver do not lower it. Moving to firmer ground raises it.</para>
/// <para>Sustained is set against the demand, imposable against the gear. The wheel model is a soil model fitted to wheel loads up to about 60 kN; bias constants are the cautious side for the first, radial ones for the second.</para>
/// <para>Source: wheel model Brixius (secondary), two pulls and slip limit judgement, hard-surface ratio secondary, nose statics derived with levels by judgement.</para>
/// </remarks>
public sealed class PullCapability
{
    private readonly CapabilityFlat _flat;
    private readonly Bound _low;
    private readonly Bound _central;
    private readonly Bound _high;

    private PullCapability(TowingMachine tower, CapabilityFlat flat, Bound low, Bound central, Bound high, double imposable)
    {
        Tower = tower;
        _flat = flat;
        _low = low;
        _central = central;
        _high = high;
        ImposableNewtons = imposable;
    }

    /// <summary>Gets the towing machine.</summary>
    public TowingMachine Tower { get; }

    /// <summary>Gets the pull it sustains, along the ground.</summary>
    public ForceBand Sustained => ForceBand.FromNewtons(_low.Pull, _central.Pull, _high.Pull);

    /// <summary>Gets the most it can put into a line, along the ground.</summary>
    public Force Imposable => Force.FromNewtons(ImposableNewtons);

    /// <summary>Gets the slip at the central sustained traction.</summary>
    public Ratio Slip => Ratio.FromDecimalFractions(_central.Slip);

    /// <summary>Gets what limits the central sustained pull.</summary>
    public PullLimit LimitedBy => _central.Limit;

    /// <summary>Gets the central traction limit.</summary>
    public Force TractionLimit => Force.FromNewtons(_central.Traction);

    /// <summary>Gets the power limit at the stated speed; null where engine power is not known.</summary>
    public Force? PowerLimit => Finite(PowerNewtons(Tower, _flat));

    /// <summary>Gets the nose-lift limit.</summary>
    public Force NoseLimit => Force.FromNewtons(CapabilityKernel.NoseLift(_flat));

    /// <summary>Gets the rating of the hitch; null where it is not known.</summary>
    public Force? RatingLimit => Tower.HitchRating;

    /// <summary>Gets what was filled in because it was not declared.</summary>
    public IReadOnlyList<Assumption> Assumptions => Tower.Soil.RemouldingIndexIsAssumed ? [CapabilityAssumptions.RemouldingIndex] : [];

    internal double ImposableNewtons { get; }

    internal double LowNewtons => _low.Pull;

    internal double CentralNewtons => _central.Pull;

    internal double HighNewtons => _high.Pull;

    internal CapabilityFlat Flat => _flat;

    /// <summary>Estimates what a towing machine pulls with a level line.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <returns>The capability.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tower"/> is null.</exception>
    public static PullCapability Estimate(TowingMachine tower) => Estimate(tower, Angle.Zero);

    /// <summary>Estimates what a towing machine pulls with an inclined line.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="linePitch">Angle by which the line falls from the hitch towards the casualty, -45 to 45 degrees; a falling line loads the wheels.</param>
    /// <returns>The capability.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tower"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static PullCapability Estimate(TowingMachine tower, Angle linePitch)
    {
        Guard.NotNull(tower, nameof(tower));
        return Estimate(tower, CapabilityFlat.From(tower, Guard.Radians(linePitch, -45, 45, nameof(linePitch))));
    }

    internal static PullCapability Estimate(TowingMachine tower, CapabilityFlat flat)
    {
        double other = Math.Min(PowerNewtons(tower, flat), Math.Min(CapabilityKernel.NoseLift(flat), tower.HitchRating?.Newtons ?? double.PositiveInfinity));
        var low = Bound.At(tower, flat, tower.Soil.WeakestRatingConeIndex.Pascals, other);
        var central = Bound.At(tower, flat, tower.Soil.RatingConeIndex.Pascals, other);
        var high = Bound.At(tower, flat, tower.Soil.ConeIndex.Pascals, other);
        return new PullCapability(tower, flat, low, central, high, Impose(tower, flat));
    }

    /// <summary>Gives the pull over slip on the typical rating cone index, bias constants, load transfer included.</summary>
    /// <param name="points">Number of points, evenly over slip 0 to <paramref name="greatestSlip"/>, 2 to 1,000.</param>
    /// <param name="greatestSlip">Greatest slip, above 0 to 1.</param>
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
            curve.Add(new SlipPoint(slip, CapabilityKernel.AtSlip(_flat, Tower.Soil.RatingConeIndex.Pascals, slip, BrixiusConstants.Bias)));
        }

        return curve.AsReadOnly();
    }

    /// <summary>Gives the share of what holds the leading end down that is used up, the greater of just moving off and the line at a force: 1 is lift.</summary>
    /// <param name="lineForce">Greatest force in the line along the ground, 0 to 5,000 kN.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public double NoseRatio(Force lineForce) => NoseRatio(Guard.Newtons(lineForce, 0, 5000, nameof(lineForce)));

    /// <summary>Works out the central sustained pull step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain() => CapabilityAssumptions.Explain(this);

    /// <summary>Gives the capability in one line, invariant culture.</summary>
    /// <returns>Sustained and imposable pull.</returns>
    public override string ToString() => "sustains " + Sustained + " (" + LimitedBy + "), can impose " + Text.Kilonewtons(ImposableNewtons, 3);

    internal double NoseRatio(double lineNewtons) => Math.Max(CapabilityKernel.NoseRatio(_flat, ImposableNewtons, 0), CapabilityKernel.NoseRatio(_flat, ImposableNewtons, lineNewtons));

    private static double Impose(TowingMachine tower, CapabilityFlat flat)
    {
        // On level ground or facing downhill: an uphill grade where it stands takes nothing off, because it may stand elsewhere.
        var index = Math.Max(tower.FirmestConeIndex?.Pascals ?? 0, tower.Soil.ConeIndex.Pascals);
        var pull = CapabilityKernel.Greatest(flat, index, 1, BrixiusConstants.Radial, out _, out _) + Math.Max(0, flat.GradeForce);
        if (tower.HardSurfaceInReach) pull = Math.Max(pull, (CapabilityKernel.HardSurfaceRatio * flat.Weight) + Math.Max(0, -flat.GradeForce));
        return pull + (flat.Weight * Math.Max(0, Math.Sin(tower.DownhillInReach.Radians) - Math.Max(0, -flat.GradeForce / flat.Weight)));
    }

    private static double PowerNewtons(TowingMachine tower, CapabilityFlat flat) =>
        tower.EnginePower is { } power ? Math.Max(0, (tower.Efficiency.DecimalFractions * (double)power.Watts / tower.PullSpeed.MetersPerSecond) - flat.GradeForce) : double.PositiveInfinity;

    private static Force? Finite(double newtons) => double.IsInfinity(newtons) ? null : Force.FromNewtons(newtons);

    private readonly struct Bound(double traction, double pull, double slip, PullLimit limit)
    {
        public double Traction { get; } = traction;

        public double Pull { get; } = pull;

        public double Slip { get; } = slip;

        public PullLimit Limit { get; } = limit;

        public static Bound At(TowingMachine tower, CapabilityFlat flat, double coneIndexPascals, double other)
        {
            var traction = CapabilityKernel.Greatest(flat, coneIndexPascals, CriticalIndexKernel.PlanningSlip, BrixiusConstants.Bias, out var slip, out _);
            if (traction <= other) return new Bound(traction, traction, slip, PullLimit.Traction);
            var limit = tower.HitchRating is { } rating && rating.Newtons <= other ? PullLimit.Rating : CapabilityKernel.NoseLift(flat) <= other ? PullLimit.NoseLift : PullLimit.Power;
            return new Bound(traction, Math.Max(0, other), slip, limit);
        }
    }
}
