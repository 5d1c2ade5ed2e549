using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How much pull along the ground it takes to move a stuck machine: a band of bounds with named terms, and the handbook depth rule beside it.</summary>
/// <remarks>
/// <para>R = sum over buried wheels of the larger of [rolling rho W_i or base shear s_f b c, + side lambda 2 A_seg min(alpha s_w, 12 kPa), + face min(b (gamma z^2/2 + 2 s_w z), rigid step), + suction 2 s_w b z] and the wheel model's rolling resistance,
/// + rolling wheels by the wheel model, + belly drag, + with a buried wheel developed uplift x sin(exit) and climb W sin(exit), + grade W sin(theta).</para>
/// <para>Low: vented, turning, rho 0.10, open ruts, exit 1:10. Central: as declared, else sealed and turning, rho 0.15, the leading buried axle against uncut soil, exit 1:6. High: the larger of locked and turning at rho 0.25, all buried wheels against uncut soil, exit 1:4, full uplift.
/// Each end is the extreme over the interval of the floor strength. The wheel model is Brixius with radial constants; on a buried wheel it is out of range and a lower limit only.</para>
/// <para>What holds at the first movement and what goes on are kept apart (<see cref="FirstMovement"/>, <see cref="Sustained"/>); <see cref="Basis"/> says how each bound arises. The handbook rule stands beside with the ratio and, where they differ by more than two, the reason. Mire and grade are summed, which asks for more than the handbook does: it takes the governing one.</para>
/// <para>It is a band of bounds, good to a factor of two or three; no probability belongs to its ends. It holds no rate effect, layering, debris or frozen crust. Pullers are chosen on central, tackle and anchors on <see cref="PlanningHigh"/>; gear on what the puller can put into it, never on this.</para>
/// <para>Source: composition and shares judgement; face Rankine (derived), suction API RP 2GEO (secondary), N_k and depth factors from memory.</para>
/// </remarks>
public sealed class PullDemand
{
    /// <summary>Relative difference below which two sums are the same: which frame governs must not turn on rounding.</summary>
    internal const double SameForce = 1e-9;

    private readonly DemandBounds _bounds;
    private readonly CompiledStuckMachine _compiled, _linked;
    private readonly CompiledStuckMachine? _straight;

    private PullDemand(StuckMachine stuck, CompiledStuckMachine linked, CompiledStuckMachine? straight, CompiledStuckMachine governing, in DemandBounds bounds, DepthClass depth)
    {
        Stuck = stuck;
        _linked = linked;
        _straight = straight;
        _compiled = governing;
        _bounds = bounds;
        DepthClass = depth;
    }

    /// <summary>Gets the stuck machine.</summary>
    public StuckMachine Stuck { get; }

    /// <summary>Gets the demand along the ground.</summary>
    public ForceBand Total => ForceBand.FromNewtons(LowNewtons, CentralNewtons, HighNewtons);

    /// <summary>Gets the terms; in each of the three columns they sum to <see cref="Total"/>.</summary>
    public IReadOnlyList<DemandTerm> Terms => DemandTermList.From(_bounds, Stuck.FaceMethod);

    /// <summary>Gets the method that gave the soil ahead of buried wheels.</summary>
    public FaceMethod FaceMethod => Stuck.FaceMethod;

    /// <summary>Gets the class of the deepest wheel.</summary>
    public DepthClass DepthClass { get; }

    /// <summary>Gets the handbook depth rule for the hole as found and the present weight (from memory).</summary>
    public Force DepthRule => Force.FromNewtons(DepthRuleNewtons);

    /// <summary>Gets the larger of high and depth rule: what sizes tackle and anchors.</summary>
    public Force PlanningHigh => Force.FromNewtons(Planning(HighNewtons, DepthRuleNewtons));

    /// <summary>Gets the depth rule over the central demand; null where the rule has nothing to say.</summary>
    public double? MethodRatio => DepthRuleNewtons > 0 ? DepthRuleNewtons / CentralNewtons : null;

    /// <summary>Gets why rule and soil model lie apart, in words; null where they lie within a factor of two, or the rule has nothing to say.</summary>
    public string? MethodReason => MethodWords.Why(this)?.ToString();

    /// <summary>Gets the demand of the first movement, before suction and seal let go: <see cref="Total"/> by another name.</summary>
    public ForceBand FirstMovement => Total;

    /// <summary>Gets the demand that goes on once the machine has moved and air or water has reached wheels and belly: the same bounds without suction behind wheels and without uplift, each worked whole (judgement). Soil ahead, sides, floor and climb stay. Suction does not drain away while somebody pulls; it goes by movement or by venting.</summary>
    public ForceBand Sustained
    {
        get
        {
            Worse(_linked, _straight, out var bounds, brokenLoose: true);
            return ForceBand.FromNewtons(bounds.Low.Total, bounds.Central.Total, bounds.High.Total);
        }
    }

    /// <summary>Gets what goes on holding at central once the machine has broken loose: the central of <see cref="Sustained"/>.</summary>
    public Force AfterBreakout => Sustained.Central;

    /// <summary>Gets the whole band on each frame that was worked: the declared one alone, or linked axles and a straight frame where the suspension is undeclared and matters. <see cref="Total"/> takes the less favourable at each bound.</summary>
    public IReadOnlyList<FrameDemand> ByFrame => _straight is null ? [On(_linked)] : [On(_linked), On(_straight)];

    /// <summary>Gets how each bound arises: low, central, high.</summary>
    public IReadOnlyList<BoundBasis> Basis => [BoundWords.Of(this, DemandBound.Low), BoundWords.Of(this, DemandBound.Central), BoundWords.Of(this, DemandBound.High)];

    /// <summary>Gets what the floor bears under each axle beside the load it would carry without the belly: why a sealed belly can or cannot be lifted.</summary>
    public IReadOnlyList<AxleBearing> AxleBearings
    {
        get
        {
            var f = _compiled.Flat;
            var strength = _compiled.Assumptions.Strength;
            var axles = new List<AxleBearing>(f.Count.Length);
            for (var i = 0; i < f.Count.Length; i++)
            {
                axles.Add(new AxleBearing(AxleName(i), f.Load[i], DemandKernel.Bearing(f, i, strength.FloorLow), DemandKernel.Bearing(f, i, strength.FloorCentral), DemandKernel.Bearing(f, i, strength.FloorHigh)));
            }

            return axles.AsReadOnly();
        }
    }

    /// <summary>Gets the pull to climb the hole as a rigid step. Shown beside, never summed; null where no wheel is buried or the hole is dug (there is no step then), and from the hub upwards, where no pull along the ground would do.</summary>
    public Force? RigidStep
    {
        get
        {
            if (_compiled.Flat.Dug || !_compiled.Flat.AnyBuried) return null;
            double sum = 0;
            for (var i = 0; i < _compiled.Flat.Count.Length; i++) sum += _compiled.Flat.Buried[i] ? _compiled.Flat.StepForce(i, _compiled.Flat.Load[i]) : 0;
            return double.IsInfinity(sum) ? null : Force.FromNewtons(sum);
        }
    }

    /// <summary>Gets the weight that the belly carries at central.</summary>
    public Force BellyLoad => Force.FromNewtons(_bounds.Central.BellyLoad);

    /// <summary>Gets the uplift that a sealed belly could hold: 0 / half / full sealing at the three floors.</summary>
    public ForceBand UpliftHeld => Ordered(_bounds.Low.UpliftHeld, _bounds.Central.UpliftHeld, _bounds.High.UpliftHeld);

    /// <summary>Gets the uplift that develops, as far as the wheels can bear it.</summary>
    public ForceBand UpliftDeveloped => Ordered(_bounds.Low.UpliftDeveloped, _bounds.Central.UpliftDeveloped, _bounds.High.UpliftDeveloped);

    /// <summary>Gets the floor strength taken: low, central, high, kPa.</summary>
    public IReadOnlyList<double> FloorKilopascals => [_compiled.Assumptions.Strength.FloorLow / 1000, _compiled.Assumptions.Strength.FloorCentral / 1000, _compiled.Assumptions.Strength.FloorHigh / 1000];

    /// <summary>Gets the wall strength taken: low, central, high, kPa.</summary>
    public IReadOnlyList<double> WallKilopascals => [_compiled.Assumptions.Strength.WallLow / 1000, _compiled.Assumptions.Strength.WallCentral / 1000, _compiled.Assumptions.Strength.WallHigh / 1000];

    /// <summary>Gets the demand if braked wheels stay locked, central strengths: what it costs to leave the brakes on.</summary>
    public Force CentralLocked => Force.FromNewtons(CentralAs(locked: true));

    /// <summary>Gets the gross traction of the driven axles at the rating cone index, slip 0.30, bias constants, on the loads beside the belly. A resource listed apart, never taken off the demand; on buried wheels the model is out of range.</summary>
    public Force OwnGrossTraction => Force.FromNewtons(OwnTractionKernel.Gross(_compiled.Flat, _bounds.Central.BellyLoad, _compiled.Assumptions.IndexCentral));

    /// <summary>Gets what it is worth that the machine drives its own wheels, with the reason where that is little: locked less turning, plus net traction of rolling wheels within the range of the wheel model.</summary>
    public OwnWheelsWorth DrivingOwnWheels => OwnWheels.Worth(this);

    /// <summary>Gets the cone index at which the machine as it sank would just have moved itself, its wheels rolling: Brixius, radial, with the weight component of the pull's slope or of the entry's, whichever is steeper; null where no soil would do.</summary>
    public Pressure? CriticalConeIndex => double.IsNaN(_compiled.CriticalIndexPascals) ? null : Pressure.FromPascals(_compiled.CriticalIndexPascals);

    /// <summary>Gets what was filled in because it was not declared.</summary>
    public IReadOnlyList<Assumption> Assumptions => DemandAssumptionList.From(Stuck);

    /// <summary>Gets the findings of this room.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            AddFindings(findings);
            return findings.AsReadOnly();
        }
    }

    internal double LowNewtons => _bounds.Low.Total;

    internal double CentralNewtons => _bounds.Central.Total;

    internal double HighNewtons => _bounds.High.Total;

    internal double DepthRuleNewtons => Resistance.DepthRule.Factor(DepthClass) * _compiled.Flat.Weight;

    internal DemandBounds Bounds => _bounds;

    internal CompiledStuckMachine Compiled => _compiled;

    /// <summary>Estimates the demand of a stuck machine.</summary>
    /// <param name="stuck">The machine in its hole.</param>
    /// <returns>The demand.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stuck"/> is null.</exception>
    public static PullDemand Estimate(StuckMachine stuck)
    {
        Guard.NotNull(stuck, nameof(stuck));
        var compiled = CompiledStuckMachine.From(stuck, stuck.Machine.Resolve(Suspension.Undeclared));
        var straight = stuck.Machine.SuspensionMatters ? CompiledStuckMachine.From(stuck, Suspension.StraightFrame) : null;
        return Estimate(stuck, compiled, straight);
    }

    internal static PullDemand Estimate(StuckMachine stuck, CompiledStuckMachine compiled, CompiledStuckMachine? straight)
    {
        var central = Worse(compiled, straight, out var bounds);
        return new PullDemand(stuck, compiled, straight, central, bounds, Resistance.DepthRule.Classify(stuck));
    }

    /// <summary>Gives the same demand with another cone factor, for the sensitivity line: the band 10 to 20 is never put on top of the bounds.</summary>
    /// <param name="coneFactor">Cone factor N_k, 8 to 30.</param>
    /// <returns>The demand with that cone factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public ForceBand WithConeFactor(double coneFactor)
    {
        Guard.Range(coneFactor, 8, 30, string.Empty, nameof(coneFactor));
        var compiled = CompiledStuckMachine.From(Stuck, Stuck.Machine.Resolve(Suspension.Undeclared), coneFactor);
        Worse(compiled, Stuck.Machine.SuspensionMatters ? CompiledStuckMachine.From(Stuck, Suspension.StraightFrame, coneFactor) : null, out var bounds);
        return ForceBand.FromNewtons(bounds.Low.Total, bounds.Central.Total, bounds.High.Total);
    }

    /// <summary>Gives the demand by every face method for undrained clay that a sum can take, the rest alike. The band of <see cref="Total"/> does not hold this spread.</summary>
    /// <returns>One row per method, the chosen one among them where it is for undrained clay.</returns>
    public IReadOnlyList<FaceMethodDemand> ByFaceMethod()
    {
        var rows = new List<FaceMethodDemand>(FaceMethod.Undrained.Count);
        foreach (var method in FaceMethod.Undrained)
        {
            if (method.HoldsSuction) continue;
            var demand = Estimate(Stuck with { FaceMethod = method });
            rows.Add(new FaceMethodDemand(method, demand._bounds.Central.Face, demand.CentralNewtons, demand.Total));
        }

        return rows.AsReadOnly();
    }

    /// <summary>Works out the central demand step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain() => Explain(DemandBound.Central);

    /// <summary>Works one bound out step by step.</summary>
    /// <param name="bound">The bound.</param>
    /// <returns>The worked steps; the last is the demand at that bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The bound is not one of the three.</exception>
    public Working Explain(DemandBound bound) => DemandExplanation.Of(this, Guard.Defined(bound, bound is DemandBound.Low or DemandBound.Central or DemandBound.High, nameof(bound)));

    /// <summary>Gives the demand in one line, invariant culture.</summary>
    /// <returns>The band and the depth rule.</returns>
    public override string ToString() => "demand " + Total + ", depth rule " + Text.Kilonewtons(DepthRuleNewtons, 3);

    internal void AddFindings(List<Finding> findings)
    {
        var f = _compiled.Flat;
        var strength = _compiled.Assumptions.Strength;
        ref readonly var central = ref _bounds.Central;
        if (f.BellyArea > 0 && !_compiled.Assumptions.Vented)
        {
            if (central.UpliftDeveloped > 0)
                findings.Add(new Finding(ResistanceFindings.BellyUplift, AxleName(central.LimitingAxle), central.UpliftHeld / 1000, central.UpliftDeveloped / 1000, "kN"));
            else
                findings.Add(new Finding(ResistanceFindings.BellyDrags, AxleName(central.LimitingAxle)));
        }

        if (_compiled.EquilibriumBoundPascals <= 0)
            findings.Add(new Finding(ResistanceFindings.FloorNotPositive, Stuck.Machine.Name));
        else if (strength.ReadingBelowBound)
            findings.Add(new Finding(ResistanceFindings.FloorAboveReading, Stuck.Machine.Name, strength.FloorLow / 1000, strength.WallCentral / 1000, "kPa"));
        if (MethodWords.Why(this) is { } why) findings.Add(new Finding(ResistanceFindings.MethodsDiffer, why, DepthRuleNewtons / 1000, CentralNewtons / 1000, "kN"));
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (((_bounds.Low.ModelGoverns | central.ModelGoverns | _bounds.High.ModelGoverns) & (1 << i)) != 0)
                findings.Add(new Finding(ResistanceFindings.ModelOutOfRange, AxleName(i)));
        }

        AddNearBreak(findings);
        if (!f.Dug)
        {
            for (var i = 0; i < f.Count.Length; i++)
            {
                if (f.Buried[i] && f.Sinkage[i] > f.Diameter[i] / 2) findings.Add(new Finding(ResistanceFindings.OverHub, AxleName(i)));
            }
        }

        if (_compiled.CriticalIndexPascals < Stuck.Soil.ConeIndex.Pascals)
            findings.Add(new Finding(ResistanceFindings.IndexCapped, MethodWords.Capped(Stuck.Soil, _compiled.CriticalIndexPascals), Stuck.Soil.ConeIndex.Pascals / 1000, _compiled.CriticalIndexPascals / 1000, "kPa"));
        TerramechanicsFindings.AddDeflection(findings, Stuck.Machine.Name, f.GreatestDeflection);
        if (Stuck.Machine.SuspensionMatters) findings.Add(new Finding(ResistanceFindings.SuspensionUndeclared, Stuck.Machine.Name));
    }

    /// <summary>Frame, terms and state of one bound.</summary>
    internal (CompiledStuckMachine Frame, DemandTerms Terms, DemandState State) At(DemandBound bound)
    {
        var terms = bound switch
        {
            DemandBound.Low => _bounds.Low,
            DemandBound.High => _bounds.High,
            _ => _bounds.Central,
        };
        var frame = bound switch
        {
            DemandBound.Low => _bounds.LowOnStraightFrame ? _straight! : _linked,
            DemandBound.High => _bounds.HighOnStraightFrame ? _straight! : _linked,
            _ => _compiled,
        };
        var state = bound == DemandBound.Central || terms.StandsIn ? DemandBounds.CentralState(frame.Assumptions, terms.Locked)
            : bound == DemandBound.Low ? DemandBounds.LowState(frame.Assumptions)
            : DemandBounds.HighState(frame.Assumptions, terms.Locked);
        state.Floor = terms.Floor;
        return (frame, terms, state);
    }

    /// <summary>The central sum of the governing frame with braked wheels locked or all turning, N.</summary>
    internal double CentralAs(bool locked)
    {
        DemandKernel.Compose(_compiled.Flat, DemandBounds.CentralState(_compiled.Assumptions, locked), out var terms);
        return terms.Total;
    }

    /// <summary>What tackle and anchors are sized on: the larger of high and depth rule.</summary>
    internal static double Planning(double high, double rule) => Math.Max(high, rule);

    internal string AxleName(int axle) => axle < 0 ? "belly" : Stuck.Machine.Axles[axle].Name;

    /// <summary>Where wheels stand near the break between rolling and buried the sum is worked both ways and both are shown.</summary>
    private void AddNearBreak(List<Finding> findings)
    {
        int near = 0, count = 0;
        var names = string.Empty;
        for (var i = 0; i < Stuck.Sinkage.Count; i++)
        {
            var ratio = Stuck.Sinkage[i].Meters / _compiled.Flat.Diameter[i];
            if (ratio < BuriedWheelKernel.NearBuriedLow || ratio > BuriedWheelKernel.NearBuriedHigh) continue;
            near |= 1 << i;
            names += (count++ == 0 ? string.Empty : ", ") + AxleName(i);
        }

        if (near == 0) return;
        findings.Add(new Finding(ResistanceFindings.NearBreak, names, Taken(near, 0) / 1000, Taken(0, near) / 1000, "kN"));
    }

    private double Taken(int asBuried, int asRolling)
    {
        var linked = CompiledStuckMachine.From(Stuck, Stuck.Machine.Resolve(Suspension.Undeclared), asBuried: asBuried, asRolling: asRolling);
        Worse(linked, Stuck.Machine.SuspensionMatters ? CompiledStuckMachine.From(Stuck, Suspension.StraightFrame, asBuried: asBuried, asRolling: asRolling) : null, out var bounds);
        return bounds.Central.Total;
    }

    /// <summary>Takes the less favourable of both frames at each bound and gives the frame that governs central; of two alike the linked axles.</summary>
    private static CompiledStuckMachine Worse(CompiledStuckMachine linked, CompiledStuckMachine? straight, out DemandBounds bounds, bool brokenLoose = false)
    {
        DemandBounds.Evaluate(linked.Flat, Loose(linked, brokenLoose), out bounds);
        if (straight is null) return linked;
        DemandBounds.Evaluate(straight.Flat, Loose(straight, brokenLoose), out var other);
        if (other.Low.Total < bounds.Low.Total)
        {
            bounds.Low = other.Low;
            bounds.LowOnStraightFrame = true;
        }

        if (other.High.Total > bounds.High.Total)
        {
            bounds.High = other.High;
            bounds.HighOnStraightFrame = true;
        }

        if (!(other.Central.Total > bounds.Central.Total * (1 + SameForce))) return linked;
        bounds.Central = other.Central;
        return straight;
    }

    private static FrameDemand On(CompiledStuckMachine frame)
    {
        DemandBounds.Evaluate(frame.Flat, frame.Assumptions, out var bounds);
        return new FrameDemand(frame.Frame, bounds.Low.Total, bounds.Central.Total, bounds.High.Total);
    }

    private static DemandAssumptions Loose(CompiledStuckMachine compiled, bool brokenLoose)
    {
        var assumptions = compiled.Assumptions;
        assumptions.Vented |= brokenLoose;
        return assumptions;
    }

    private static ForceBand Ordered(double a, double b, double c) => ForceBand.FromNewtons(Math.Min(a, Math.Min(b, c)), b, Math.Max(a, Math.Max(b, c)));
}
