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
/// then the least of that, power eta P_e/v - W sin(theta), nose lift W_f L/max(h_e, h_cg), overturning sideways where the line runs off the centre line (<see cref="SidePull"/>), and the rating of the hitch.</para>
/// <para>Imposable: the greatest net pull over slip 0 to 1, radial constants, on the cone index of the firmest ground it may stand on, or the hard-surface branch (1.02 of the load on driven axles) where a road or a yard is in reach, plus W sin of a downhill in reach. Rating, power and a careful driver do not lower it. Moving to firmer ground raises it.</para>
/// <para>Sustained is set against the demand, imposable against the gear. The wheel model is a soil model fitted to wheel loads up to about 60 kN; bias constants are the cautious side for the first, radial ones for the second.</para>
/// <para>Source: wheel model Brixius (secondary), two pulls and slip limit judgement, hard-surface ratio secondary, nose statics derived with levels by judgement.</para>
/// </remarks>
public sealed class PullCapability
{
    private readonly CapabilityFlat _flat;
    private readonly CapabilityBound _low;
    private readonly CapabilityBound _central;
    private readonly CapabilityBound _high;
    private readonly double _imposableWheelForce;

    private PullCapability(TowingMachine tower, CapabilityFlat flat)
    {
        Tower = tower;
        _flat = flat;
        _low = CapabilityBound.At(flat, tower.Soil.WeakestRatingConeIndex.Pascals);
        _central = CapabilityBound.At(flat, tower.Soil.RatingConeIndex.Pascals);
        _high = CapabilityBound.At(flat, tower.Soil.ConeIndex.Pascals);
        ImposableNewtons = ImposableKernel.Imposable(flat, flat.FirmestIndex, flat.HardFriction, flat.DownhillSine, out _imposableWheelForce, out var slip, out var residual);
        CapabilityBound.Check("imposable pull", residual, ImposableNewtons);
        ImposableSlip = Ratio.FromDecimalFractions(slip);
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

    /// <summary>Gets the slip at which it can impose the most: 1 on a hard surface. The maximum is flat, a tenth of slip either side changes it by less than one per cent.</summary>
    public Ratio ImposableSlip { get; }

    /// <summary>Gets the low bound: rating cone index of the weakest reading.</summary>
    public PullBound LowBound => new(_flat, _low);

    /// <summary>Gets the central bound: rating cone index of the typical reading.</summary>
    public PullBound CentralBound => new(_flat, _central);

    /// <summary>Gets the high bound: cone index of the typical reading.</summary>
    public PullBound HighBound => new(_flat, _high);

    /// <summary>Gets the central traction limit.</summary>
    public Force TractionLimit => Force.FromNewtons(_central.Traction);

    /// <summary>Gets the pull over weight of the most it can impose.</summary>
    public double ImposableOverWeight => ImposableNewtons / _flat.Weight;

    /// <summary>Gets the power limit at the stated speed; null where engine power is not known.</summary>
    public Force? PowerLimit => PullBound.Finite(_flat.PowerLimit);

    /// <summary>Gets the nose-lift limit.</summary>
    public Force NoseLimit => Force.FromNewtons(_flat.NoseLimit);

    /// <summary>Gets the pull along the ground at which its line, off the centre line, would turn it over sideways on ground without a side slope; null for a line straight behind it.</summary>
    public Force? OverturnLimit => PullBound.Finite(_flat.SideLimit);

    /// <summary>Gets the rating of the hitch; null where it is not known.</summary>
    public Force? RatingLimit => Tower.HitchRating;

    /// <summary>Gets what was filled in because it was not declared.</summary>
    public IReadOnlyList<Assumption> Assumptions => CapabilityAssumptions.List(Tower);

    /// <summary>Gets the objections to this machine as a puller, on its own: nose, a line across it, grip to move itself, hitch rating, power.</summary>
    public IReadOnlyList<Finding> Findings => CapabilityFindings.For(this);

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
    /// <param name="linePitch">Angle by which the line falls from the hitch towards the casualty, -40 to 40 degrees; a falling line loads the wheels.</param>
    /// <returns>The capability.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tower"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static PullCapability Estimate(TowingMachine tower, Angle linePitch) => Estimate(tower, linePitch, Angle.Zero);

    /// <summary>Estimates what a towing machine pulls with a line that is inclined and runs off its centre line; overturning sideways is then one of the limits.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="linePitch">Angle by which the line falls from the hitch towards the casualty, -40 to 40 degrees; a falling line loads the wheels.</param>
    /// <param name="lineYaw">Angle of the line off the direction of the pull, -45 to 45 degrees; its side does not matter.</param>
    /// <returns>The capability, along the direction of the pull.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tower"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public static PullCapability Estimate(TowingMachine tower, Angle linePitch, Angle lineYaw)
    {
        Guard.NotNull(tower, nameof(tower));
        return Estimate(tower, CapabilityFlat.From(tower, Guard.Radians(linePitch, -40, 40, nameof(linePitch)), Guard.Radians(lineYaw, -45, 45, nameof(lineYaw))));
    }

    internal static PullCapability Estimate(TowingMachine tower, CapabilityFlat flat) => new(tower, flat);

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
            curve.Add(new SlipPoint(slip, AtSlip(slip)));
        }

        return curve.AsReadOnly();
    }

    /// <summary>Gives the least slip at which a wanted pull is reached on the typical rating cone index, bias constants; null where it is out of reach at any slip. Above 0.30 it is not sustained: the wheels dig.</summary>
    /// <param name="pull">Wanted pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>The slip, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public Ratio? SlipAt(Force pull)
    {
        var wanted = Guard.Newtons(pull, 0, 5000, nameof(pull));
        var slip = CapabilityKernel.SlipAt(_flat, Tower.Soil.RatingConeIndex.Pascals, wanted, BrixiusConstants.Bias, out var residual);
        CapabilityBound.Check("slip at a pull", residual, wanted);
        return slip < 0 ? null : Ratio.FromDecimalFractions(slip);
    }

    /// <summary>Gives the tractive efficiency (1 - s) NT/GT on the typical rating cone index, bias constants, grade left out.</summary>
    /// <param name="slip">Slip, 0.01 to 1.</param>
    /// <returns>The efficiency; zero where the net traction is not positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slip is outside its range.</exception>
    public double TractiveEfficiency(Ratio slip)
    {
        var s = Guard.Fraction(slip, 0.01, 1, nameof(slip));
        double pull = AtSlip(s), net = pull + _flat.GradeForce;
        return net > 0 ? (1 - s) * net / CapabilityKernel.Gross(_flat, Tower.Soil.RatingConeIndex.Pascals, pull, s, BrixiusConstants.Bias) : 0;
    }

    /// <summary>Gives the sustained pull on many cone indices at once, all limits included: the same kernel over spans.</summary>
    /// <param name="coneIndexKilopascals">Cone index fed to the model, above 0 to 20,000 kPa, one per case.</param>
    /// <param name="pullKilonewtons">Receives the sustained pull, kN, one per case.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    /// <exception cref="SolverException">Pull and load transfer could not be solved together.</exception>
    public void SustainedAt(ReadOnlySpan<double> coneIndexKilopascals, Span<double> pullKilonewtons)
    {
        Guard.SameLength(coneIndexKilopascals.Length, pullKilonewtons.Length, nameof(pullKilonewtons));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        for (var i = 0; i < coneIndexKilopascals.Length; i++) pullKilonewtons[i] = CapabilityBound.At(_flat, 1000 * coneIndexKilopascals[i]).Pull / 1000;
    }

    /// <summary>Gives the axle loads while it pulls, on the grade where it stands; an axle that lifts carries nothing.</summary>
    /// <param name="pull">Pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>Loads in the order of the axles.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public IReadOnlyList<Force> AxleLoadsWhilePulling(Force pull)
    {
        var newtons = Guard.Newtons(pull, 0, 5000, nameof(pull));
        var share = CapabilityKernel.Share(_flat, _flat.Load, newtons);
        var loads = new Force[_flat.Load.Length];
        for (var i = 0; i < loads.Length; i++) loads[i] = Force.FromNewtons(Math.Max(0, _flat.Load[i] + (_flat.LoadPerPull[i] * newtons)) * share);
        return Array.AsReadOnly(loads);
    }

    /// <summary>Gives the share of what holds the leading end down that is used up, the greater of just moving off and the line at a force: 1 is lift.</summary>
    /// <param name="lineForce">Greatest force in the line along the ground, 0 to 5,000 kN.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public double NoseRatio(Force lineForce) => NoseRatio(Guard.Newtons(lineForce, 0, 5000, nameof(lineForce)));

    /// <summary>Gives what the leading axle still carries, from just moving off to a line force.</summary>
    /// <param name="lineForce">Greatest force in the line along the ground, 0 to 5,000 kN.</param>
    /// <returns>The margin, with its findings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public NoseMargin NoseMargin(Force lineForce) => new(Tower.Machine.Name, _flat, PushNewtons, Guard.Newtons(lineForce, 0, 5000, nameof(lineForce)));

    /// <summary>Gives what its line puts across it at a force, and how near that is to turning it over sideways; a side slope is for <see cref="SidePull.Of"/>.</summary>
    /// <param name="lineForce">Force in the line along the ground and along the machine, 0 to 5,000 kN.</param>
    /// <returns>The margin, with its findings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its range.</exception>
    public SidePull SideMargin(Force lineForce) => new(Tower, SidePullKernel.Tension(Guard.Newtons(lineForce, 0, 5000, nameof(lineForce)), _flat.LinePitch, _flat.LineYaw), _flat.LinePitch, _flat.LineYaw, 0);

    /// <summary>Works out the central sustained pull step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain() => CapabilityAssumptions.Explain(this);

    /// <summary>Gives the capability in one line, invariant culture.</summary>
    /// <returns>Sustained and imposable pull.</returns>
    public override string ToString() => "sustains " + Sustained + " (" + LimitedBy + "), can impose " + Text.Kilonewtons(ImposableNewtons, 3);

    internal double NoseRatio(double lineNewtons)
    {
        var push = PushNewtons;
        return Math.Max(
            NoseKernel.Ratio(_flat.NoseMoment, _flat.LineHeight, _flat.CentreHeight, push, 0),
            NoseKernel.Ratio(_flat.NoseMoment, _flat.LineHeight, _flat.CentreHeight, push, lineNewtons));
    }

    /// <summary>What the wheels push where the machine stands, net of its grade; the nose moment is taken on that grade too.</summary>
    private double PushNewtons => Math.Max(0, _imposableWheelForce - _flat.GradeForce);

    private double AtSlip(double slip)
    {
        var pull = CapabilityKernel.AtSlip(_flat, Tower.Soil.RatingConeIndex.Pascals, slip, BrixiusConstants.Bias, out var residual);
        CapabilityBound.Check("pull at a slip", residual, pull);
        return pull;
    }
}
