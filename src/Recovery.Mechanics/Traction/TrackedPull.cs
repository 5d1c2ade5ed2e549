using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What a machine on two tracks sustains on its ground, and the most it can put into a line.</summary>
/// <remarks>
/// <para>P = 2 [F(N/2, s) - R_c(N/2)] - W sin(theta), N = W cos(theta) + P tan(pitch), at slip 0.30: thrust rises with slip to its ceiling, without a peak. Low on the terrain of the weakest place, central on that of the track, high on that of the firmest place; then the least of that, power, nose and rating.</para>
/// <para>Imposable: the ceiling 2 A c + N tan(phi) on the firmest terrain with nothing off for the rut, or the hard-surface ratio where one is in reach; rating, power and a careful driver do not lower it.</para>
/// <para>The resultant of the ground stands e ahead of the middle of the track: e = [W (x_c cos - h sin) - P h_d - V (l/2 + a)]/N. Beyond l/6 from the middle part of the track bears nothing and the even pressure of the track model is too kind: a Caution. At its rear end the nose lifts.</para>
/// <para>Source: <see cref="TrackModel"/>; composition and slip judgement, statics derived. Immutable.</para>
/// </remarks>
public sealed class TrackedPull
{
    private readonly double _down;
    private readonly double _weight;
    private readonly double _theta;

    private TrackedPull(TrackedTower tower, double pitch)
    {
        Tower = tower;
        _down = Math.Tan(pitch);
        _weight = tower.Mass.Kilograms * PhysicalConstants.StandardGravity;
        _theta = tower.Grade.Radians;
        var half = 0.5 * tower.Track.ContactLength.Meters;
        var moment = _weight * (((tower.CentreAhead.Meters + half) * Math.Cos(_theta)) - (tower.CentreHeight.Meters * Math.Sin(_theta)));
        NoseLimit = Force.FromNewtons(Math.Max(0, NoseKernel.Lift(moment, NoseKernel.LineHeight(tower.HitchHeight.Meters, tower.HitchBehind.Meters, pitch), tower.CentreHeight.Meters)));
        PowerLimit = tower.EnginePower is { } power ? Force.FromNewtons(Math.Max(0, (tower.Efficiency.DecimalFractions * (double)power.Watts / tower.PullSpeed.MetersPerSecond) - (_weight * Math.Sin(_theta)))) : null;
        TractionLimit = Of(Solve(tower.Track.Terrain, CriticalIndexKernel.PlanningSlip));
        double? low = Limited(Solve(tower.WeakestTerrain ?? tower.Track.Terrain, CriticalIndexKernel.PlanningSlip), out _), central = Limited(TractionLimit?.Newtons, out var limit), high = Limited(Solve(tower.FirmestTerrain ?? tower.Track.Terrain, CriticalIndexKernel.PlanningSlip), out _);
        LimitedBy = limit;
        Central = Of(central);
        Sustained = low is { } a && central is { } b && high is { } c ? ForceBand.FromNewtons(Math.Min(a, b), b, Math.Max(b, c)) : null;
        Imposable = Force.FromNewtons(Most());
        Flags = TrackModel.Instance.Evaluate(tower.Track.WithLoad(Force.FromNewtons(0.5 * Normal(central ?? 0))), Ratio.FromDecimalFractions(CriticalIndexKernel.PlanningSlip)).Flags;
    }

    /// <summary>Gets the machine.</summary>
    public TrackedTower Tower { get; }

    /// <summary>Gets the central sustained pull; null where the ground gives the track no support.</summary>
    public Force? Central { get; }

    /// <summary>Gets the band of the sustained pull; null where one of its terrains gives no support.</summary>
    public ForceBand? Sustained { get; }

    /// <summary>Gets what limits the central pull.</summary>
    public PullLimit LimitedBy { get; }

    /// <summary>Gets the central traction limit; null where the ground gives no support.</summary>
    public Force? TractionLimit { get; }

    /// <summary>Gets the power limit; null where engine power is not known.</summary>
    public Force? PowerLimit { get; }

    /// <summary>Gets the nose-lift limit.</summary>
    public Force NoseLimit { get; }

    /// <summary>Gets the most it can put into a line, along the ground.</summary>
    public Force Imposable { get; }

    /// <summary>Gets the limits of the track model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets what was filled in because it was not declared.</summary>
    public IReadOnlyList<Assumption> Assumptions => CapabilityAssumptions.List(Tower);

    /// <summary>Gets the objections.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var list = new List<Finding>();
            if (Central is not { } central)
            {
                list.Add(new Finding(TowingFindings.NoSupport, Tower.Name));
                return list.AsReadOnly();
            }

            var third = Tower.Track.ContactLength.Meters / 6;
            var e = Resultant(central).Meters;
            if (Math.Abs(e) > third) list.Add(new Finding(TowingFindings.TrackEnd, Tower.Name, third, Math.Abs(e), "m"));
            var nose = NoseLimit.Newtons > 0 ? NoseMargin.Judge(Imposable.Newtons / NoseLimit.Newtons) : Severity.Stop;
            if (nose is { } severity) list.Add(new Finding(severity == Severity.Stop ? TractionFindings.NoseLift : TractionFindings.NoseLight, Tower.Name, Imposable.Kilonewtons, NoseLimit.Kilonewtons, "kN"));
            if (Tower.HitchRating is { } rating && rating.Newtons < Imposable.Newtons) list.Add(new Finding(TractionFindings.HitchRatingExceeded, Tower.Name, Imposable.Kilonewtons, rating.Kilonewtons, "kN"));
            return list.AsReadOnly();
        }
    }

    /// <summary>Estimates with a level line.</summary>
    /// <param name="tower">The machine.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static TrackedPull Estimate(TrackedTower tower) => Estimate(tower, Angle.Zero);

    /// <summary>Estimates with an inclined line.</summary>
    /// <param name="tower">The machine.</param>
    /// <param name="linePitch">Angle by which the line falls from the hitch towards the casualty, -40 to 40 degrees.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    /// <exception cref="SolverException">Pull and load could not be solved together.</exception>
    public static TrackedPull Estimate(TrackedTower tower, Angle linePitch) => new(Guard.NotNull(tower, nameof(tower)), Guard.Radians(linePitch, -40, 40, nameof(linePitch)));

    /// <summary>Gives the pull at a slip on the terrain of the track; null where it gives no support. Negative where the machine does not move even itself.</summary>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The pull, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slip is outside its range.</exception>
    public Force? AtSlip(Ratio slip) => Of(Solve(Tower.Track.Terrain, Guard.Fraction(slip, 0, 1, nameof(slip))));

    /// <summary>Gives the least slip at which a wanted pull is reached; null where it is out of reach or the ground gives no support.</summary>
    /// <param name="pull">Wanted pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>The slip, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    /// <exception cref="SolverException">The slip was not found.</exception>
    public Ratio? SlipAt(Force pull)
    {
        var wanted = Guard.Newtons(pull, 0, 5000, nameof(pull));
        var net = Math.Max(0, 0.5 * (wanted + (_weight * Math.Sin(_theta))));
        return TrackModel.Instance.SlipFor(Tower.Track.WithLoad(Force.FromNewtons(0.5 * Normal(wanted))), Force.FromNewtons(net));
    }

    /// <summary>Gives the pull over slip; no points where the ground gives no support.</summary>
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
            if (Solve(Tower.Track.Terrain, last * i / (points - 1)) is { } pull) curve.Add(new SlipPoint(last * i / (points - 1), pull));
        }

        return curve.AsReadOnly();
    }

    /// <summary>Gives how far ahead of the middle of the track the resultant of the ground stands while it pulls; negative behind it.</summary>
    /// <param name="pull">Pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public Length Resultant(Force pull)
    {
        var p = Guard.Newtons(pull, 0, 5000, nameof(pull));
        return Length.FromMeters(TrackedKernel.Resultant(_weight, _theta, Tower.CentreAhead.Meters, Tower.CentreHeight.Meters, p, p * _down, Tower.HitchHeight.Meters, (0.5 * Tower.Track.ContactLength.Meters) + Tower.HitchBehind.Meters));
    }

    /// <summary>Gives the greatest over the mean ground pressure while it pulls; null where the resultant has left the track.</summary>
    /// <param name="pull">Pull along the ground, 0 to 5,000 kN.</param>
    /// <returns>The ratio, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public double? PeakOverMeanPressure(Force pull)
    {
        var peak = TrackedKernel.PeakPressure(Resultant(pull).Meters, Tower.Track.ContactLength.Meters);
        return double.IsInfinity(peak) ? null : peak;
    }

    /// <summary>Works the central pull out step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Sustained pull of " + Tower.Name);
        if (TractionLimit is not { } traction || Central is not { } central) return working.Step("P", "the ground gives no support: there is no number", "none", "none", "immobile", TerramechanicsSources.ShearDisplacement).Build();
        working.Include(TrackModel.Instance.Explain(Tower.Track.WithLoad(Force.FromNewtons(0.5 * Normal(traction.Newtons))), Ratio.FromDecimalFractions(CriticalIndexKernel.PlanningSlip)))
            .Step("P_traction", "pull that traction allows, both tracks", "2 NT - W sin(theta)", "less " + Text.Kilonewtons(_weight * Math.Sin(_theta)), Text.Kilonewtons(traction.Newtons), TractionSources.TwoPulls)
            .Step("P_nose", "pull at which the front would lift", "W (x_c + l/2)/max(h_e, h_cg)", "about the rear end of the track", Text.Kilonewtons(NoseLimit.Newtons), TractionSources.Nose);
        return working.Step("P", "sustained pull, central", "least of these, power and rating", LimitedBy.ToString(), Text.Kilonewtons(central.Newtons), TractionSources.TwoPulls).Build();
    }

    /// <summary>Gives the pull in one line, invariant culture.</summary>
    /// <returns>Sustained and imposable pull.</returns>
    public override string ToString() => Tower.Name + ": sustains " + (Central is { } pull ? Text.Kilonewtons(pull.Newtons, 3) + " (" + LimitedBy + ")" : "nothing, the ground gives no support") + ", can impose " + Text.Kilonewtons(Imposable.Newtons, 3);

    private static Force? Of(double? newtons) => newtons is { } n ? Force.FromNewtons(n) : null;

    private double Normal(double pull) => (_weight * Math.Cos(_theta)) + (pull * _down);

    private double? Limited(double? traction, out PullLimit limit)
    {
        limit = PullLimit.Traction;
        return traction is { } grip ? CapabilityKernel.Sustained(grip, PowerLimit?.Newtons ?? double.PositiveInfinity, NoseLimit.Newtons, double.PositiveInfinity, Tower.HitchRating?.Newtons ?? double.PositiveInfinity, out limit) : null;
    }

    private double? Solve(BekkerTerrain terrain, double slip)
    {
        var flat = TrackFlat.From(Tower.Track with { Terrain = terrain });
        var standing = Net(flat, 0, slip);
        if (double.IsNegativeInfinity(standing)) return null;
        if (!(standing > 0)) return standing;
        if (_down == 0) return standing;
        // A falling line loads the tracks more the more they pull: bracket above the level pull, below it where the line rises.
        var upper = standing;
        for (var i = 0; i < 12 && Net(flat, upper, slip) > upper; i++) upper *= 2;
        return BracketedRoot.Find("pull of a tracked machine", p => Math.Max(-_weight, Net(flat, p, slip)) - p, 0, upper, CapabilityKernel.AcceptedResidual);
    }

    /// <summary>Net traction of both tracks less the grade; negative infinity where the ground gives no support.</summary>
    private double Net(in TrackFlat flat, double pull, double slip)
    {
        var each = 0.5 * Normal(pull);
        if (!(each > 0)) return -_weight * Math.Sin(_theta);
        var sinkage = flat.Sinkage(each);
        return sinkage <= TrackFlat.Deepest ? (2 * (flat.Thrust(each, slip) - flat.Resistance(sinkage))) - (_weight * Math.Sin(_theta)) : double.NegativeInfinity;
    }

    /// <summary>P = 2 A c + (W cos + P tan(pitch)) tan(phi) solved for P, level; the hard surface likewise; plus the weight component of a downhill place.</summary>
    private double Most()
    {
        var flat = TrackFlat.From(Tower.Track with { Terrain = Tower.FirmestTerrain ?? Tower.Track.Terrain });
        var soil = Ceiling(2 * flat.Length * flat.Width * flat.Cohesion, Math.Tan(flat.Friction));
        var hard = Tower.HardSurfaceFriction is { } friction ? Ceiling(0, friction.DecimalFractions) : 0;
        return Math.Max(soil, hard) + Math.Max(0, -_weight * Math.Sin(_theta));

        // Grip that pulls its own load on (tan(phi) tan(pitch) at 0.9 and more) has no end; it is cut there.
        double Ceiling(double cohesive, double grip) => (cohesive + (_weight * grip)) / Math.Max(0.1, 1 - (grip * _down));
    }
}
