using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A whole plan from plain numbers: the central sums, the two pulls, the line loads, the rig, the verdict. It only calls the kernels that the typed assessment calls. No units, no allocation, no exceptions.</summary>
internal static class PlanKernel
{
    /// <summary>Share of the nose moment used up at which the leading axle lifts.</summary>
    public const double NoseLifts = 1;

    /// <summary>Angle above which a line off the direction of the pull is objected to (judgement).</summary>
    public const double Mentioned = 2 * Math.PI / 180;

    // Levels of the standard checks of the pull.
    private const double Stop = ChoiceFindings.WillNot, Undecided = ChoiceFindings.Undecided, Bogged = CapabilityFindings.BogShare;

    /// <summary>Cone index that the sustained pull is worked on, and the one for the imposable pull.</summary>
    public static void TowerIndices(PlanNumbers n, ReadOnlySpan<double> factors, out double sustained, out double imposable)
    {
        var index = n.TowerConeIndex * factors[(int)PlanFactor.TowerConeIndex];
        sustained = SoilKernel.RatingConeIndex(index, Math.Min(1, n.TowerRemouldingIndex * factors[(int)PlanFactor.TowerRemouldingIndex]));
        imposable = Math.Max(index, n.FirmestDeclared * factors[(int)PlanFactor.FirmestConeIndex]);
    }

    /// <summary>The same for every machine in line; the towing machine is the last.</summary>
    private static void TeamIndices(PlanNumbers n, TeamFlat team, ReadOnlySpan<double> factors, TeamScratch w)
    {
        for (var i = 0; i < n.Ahead; i++)
        {
            var index = team.ConeIndex[i] * factors[n.ConeIndexOf(i)];
            w.SustainedIndex[i] = SoilKernel.RatingConeIndex(index, Math.Min(1, team.RemouldingIndex[i] * factors[n.RemouldingIndexOf(i)]));
            w.ImposableIndex[i] = Math.Max(index, team.FirmestDeclared[i]);
        }

        TowerIndices(n, factors, out w.SustainedIndex[n.Ahead], out w.ImposableIndex[n.Ahead]);
    }

    /// <summary>Traction that is sustained and most that the wheels push on soil, over arrays of cone indices.</summary>
    public static void Pulls(PlanNumbers n, ReadOnlySpan<double> sustainedIndex, ReadOnlySpan<double> imposableIndex, Span<double> traction, Span<double> onSoil, ref double residual)
    {
        var f = n.Compiled.Tower;
        CapabilityBatch.Greatest(f, f.Load, f.GradeForce, CriticalIndexKernel.PlanningSlip, BrixiusConstants.Bias, sustainedIndex, traction, ref residual);
        CapabilityBatch.Greatest(f.OnSoftTyres(), f.LevelLoad, 0, 1, BrixiusConstants.Radial, imposableIndex, onSoil, ref residual);
    }

    /// <summary>Evaluates the plan at the factors of the scratch.</summary>
    /// <param name="n">The plan.</param>
    /// <param name="w">Working memory; its outcomes are filled.</param>
    /// <param name="traction">Sustained traction by the wheel model, N.</param>
    /// <param name="onSoil">Most that the wheels push on soil, N.</param>
    /// <param name="o">Receives the outcome.</param>
    public static void Evaluate(PlanNumbers n, PlanScratch w, double traction, double onSoil, out PlanOutcome o)
    {
        o = default;
        Demand(n, w, n.Compiled.Stuck, w.Stuck, ref o);
        if (n.Compiled.StuckOnStraightFrame is { } straight)
        {
            var other = default(PlanOutcome);
            Demand(n, w, straight, w.Straight!, ref other);
            Worse(ref o, other);
        }

        var push = Capability(n, w, traction, onSoil, ref o);
        var worst = n.Standing;
        Pull(n, o, ref worst);
        Surroundings(n, w, ref o, ref worst);
        if (n.Compiled.Line is not null) Gear(n, w, ref o, ref worst);
        else o.Steady = o.Procedure = double.NaN;
        if (n.Team is { } team)
        {
            Team(team, w.Team!, TeamLineKernel.Peak(o.Steady, o.Procedure), ref o, ref worst);
        }
        else
        {
            var line = double.IsNaN(o.Procedure) ? o.AtHitch : o.Procedure / n.Advantage;
            o.Nose = Math.Max(Nose(n.Compiled.Tower, push, 0), Nose(n.Compiled.Tower, push, line));
        }

        if (o.Nose > NoseKernel.Caution) Raise(ref worst, o.Nose >= NoseLifts ? Severity.Stop : Severity.Caution);
        o.Verdict = worst == Severity.Stop ? Verdict.Stop : worst == Severity.Caution ? Verdict.NeedsCompetentReview : Verdict.NoObjectionFound;
    }

    private static void Demand(PlanNumbers n, PlanScratch w, CompiledStuckMachine compiled, DemandFlat flat, ref PlanOutcome o)
    {
        var f = w.Factors;
        double index = n.ConeIndex * f[(int)PlanFactor.StuckConeIndex], rating = SoilKernel.RatingConeIndex(index, Math.Min(1, n.RemouldingIndex * f[(int)PlanFactor.StuckRemouldingIndex]));
        var a = compiled.Assumptions;
        a.Strength = SoilKernel.Stuck(index, rating, compiled.EquilibriumBoundPascals, SoilKernel.ConeFactor * f[(int)PlanFactor.ConeFactor]);
        a.IndexCentral = compiled.CriticalIndexPascals < rating ? compiled.CriticalIndexPascals : rating;
        a.ExitCentral *= f[(int)PlanFactor.ExitSlope];
        flat.AdhesionFactor = Math.Min(1, compiled.Flat.AdhesionFactor * f[(int)PlanFactor.Adhesion]);
        var state = DemandBounds.CentralState(a, n.Locked);
        state.Rho *= f[(int)PlanFactor.Rolling];
        state.VentedShare = 1 - ((1 - state.VentedShare) * f[(int)PlanFactor.Seal]);
        state.Uplift = Math.Min(1, state.Uplift * f[(int)PlanFactor.Seal]);
        DemandKernel.Compose(flat, state, out var terms);
        var method = f[(int)PlanFactor.Method];
        o.Demand = terms.Total * method;
        o.Turning = o.Demand;
        o.BellyDrags = flat.BellyArea > 0 && !a.Vented && !(terms.UpliftDeveloped > 0);
        if (state.Locked)
        {
            state.Locked = false;
            DemandKernel.Compose(flat, state, out var turning);
            o.Turning = turning.Total * method;
        }

        if (!OwnTractionKernel.Covers(flat, terms.BellyLoad))
        {
            o.OwnNet = o.OwnHolding = double.NaN;
            return;
        }

        // As self-recovery sets them against each other: net traction, and what holds the machine beside the rolling that this net traction has paid for.
        o.OwnNet = OwnTractionKernel.Net(flat, terms.BellyLoad, state.Index);
        o.OwnHolding = o.Turning - (method * OwnTractionKernel.Towed(flat, terms.BellyLoad, state.Index));
    }

    /// <summary>The less favourable frame, for what the puller needs and for what its own wheels need.</summary>
    private static void Worse(ref PlanOutcome o, in PlanOutcome other)
    {
        if (other.Turning > o.Turning * (1 + PullDemand.SameForce)) (o.Turning, o.OwnNet, o.OwnHolding) = (other.Turning, other.OwnNet, other.OwnHolding);
        if (other.Demand > o.Demand * (1 + PullDemand.SameForce)) (o.Demand, o.BellyDrags) = (other.Demand, other.BellyDrags);
    }

    /// <summary>Sustained and imposable pull; returns what the wheels push without a downhill.</summary>
    private static double Capability(PlanNumbers n, PlanScratch w, double traction, double onSoil, ref PlanOutcome o)
    {
        var f = w.Factors;
        var tower = n.Compiled.Tower;
        var model = f[(int)PlanFactor.WheelModel];
        o.Own = CapabilityKernel.Sustained(traction * model, CapabilityKernel.Power(tower, f[(int)PlanFactor.Power]), tower.NoseLimit, tower.SideLimit, tower.RatingLimit, out _);
        var push = onSoil * model;
        if (tower.HardFriction > 0) push = Math.Max(push, ImposableKernel.OnHardSurface(tower, Math.Min(ImposableKernel.HardSurfaceRatio, tower.HardFriction * f[(int)PlanFactor.HardFriction]), out _));
        o.Sustained = o.Own;
        o.AtHitch = push + (tower.Weight * tower.DownhillSine);
        if (n.Team is { } team)
        {
            var scatter = new TeamScatter { Model = model, Power = f[(int)PlanFactor.Power], HardFriction = f[(int)PlanFactor.HardFriction] };
            TeamIndices(n, team, f, w.Team!);
            o.Sustained = TeamLineKernel.Pull(team, w.Team!, scatter, out o.Residual);
            o.AtHitch = w.Team!.Imposable[team.Count - 1];
        }

        o.Sustained *= n.SustainedAdvantage;
        o.Imposable = o.AtHitch * n.Advantage;
        return push;
    }

    private static void Pull(PlanNumbers n, in PlanOutcome o, ref Severity worst)
    {
        var tower = n.Compiled.Tower;
        if (o.Sustained < Stop * o.Demand) Raise(ref worst, Severity.Stop);
        else if (o.Sustained < Undecided * o.Demand) Raise(ref worst, Severity.Caution);
        if (o.Own < Bogged * tower.Weight) Raise(ref worst, Severity.Caution);
        if (o.AtHitch > tower.RatingLimit) Raise(ref worst, Severity.Caution);
        if (o.Sustained < n.TackleNeeds) Raise(ref worst, Severity.Caution);
        if (o.AtHitch * (n.Advantage - 1) > n.AnchorHolds || o.Imposable > n.BlockRating) Raise(ref worst, Severity.Stop);
    }

    /// <summary>Nose, hitch and front point of every machine in line.</summary>
    private static void Team(TeamFlat team, TeamScratch w, double peak, ref PlanOutcome o, ref Severity worst)
    {
        o.Nose = 0;
        for (var i = 0; i < team.Count; i++)
        {
            o.Nose = Math.Max(o.Nose, TeamLineKernel.Nose(w.Soft[i], w.Imposable[i], peak));
            if (w.Imposable[i] > team.Alone[i].RatingLimit) Raise(ref worst, Severity.Caution);
            if (i > 0 && w.Imposable[i - 1] > team.FrontRating[i]) Raise(ref worst, Severity.Stop);
        }
    }

    /// <summary>The belly, the way the machine may roll, and what the line does sideways and down to the hitch.</summary>
    private static void Surroundings(PlanNumbers n, PlanScratch w, ref PlanOutcome o, ref Severity worst)
    {
        var tower = n.Compiled.Tower;
        if (o.BellyDrags) Raise(ref worst, Severity.Caution);
        // Of a team every hitch is judged with its own line.
        o.Down = n.Team is null ? o.AtHitch * tower.DownPerPull : 0;
        if (o.Down > n.VerticalRating) Raise(ref worst, Severity.Caution);
        if (n.Yaw > Mentioned)
        {
            double tension = o.AtHitch * n.Compiled.Tension, sideways = SidePullKernel.Sideways(tension, n.Pitch, n.Yaw);
            o.Sideways = SidePullKernel.MomentUsed(tower.Weight, 0, tower.CentreHeight, n.Track, sideways, n.HitchHeight, SidePullKernel.Vertical(tension, n.Pitch));
            Raise(ref worst, o.Sideways >= 1 ? Severity.Stop : Severity.Caution);
        }

        var stuck = n.Compiled.Stuck.Flat;
        o.Slope = -stuck.Weight * stuck.GradeSine;
        if (!(o.Slope > 0)) return;
        var index = n.ConeIndex * w.Factors[(int)PlanFactor.StuckConeIndex];
        TowerIndices(n, w.Factors, out _, out var firmest);
        o.RollingHolds = RollingAway.Holds(stuck, SoilKernel.RatingConeIndex(index, Math.Min(1, n.RemouldingIndex * w.Factors[(int)PlanFactor.StuckRemouldingIndex])));
        o.RollingHoldsOnFirmest = RollingAway.HoldsOnFirmest(stuck, n.HardSurfaceInReach, index, firmest);
        if (o.Slope > o.RollingHolds) Raise(ref worst, n.FreedMachineHeld ? Severity.Caution : Severity.Stop);
        else if (o.Slope > o.RollingHoldsOnFirmest) Raise(ref worst, Severity.Caution);
    }

    private static double Nose(CapabilityFlat tower, double push, double line) => NoseKernel.Ratio(tower.NoseMoment, tower.LineHeight, tower.CentreHeight, Math.Max(0, push - tower.GradeForce), line);

    private static void Gear(PlanNumbers n, PlanScratch w, ref PlanOutcome o, ref Severity worst)
    {
        var f = w.Factors;
        var input = n.Compiled.LineInput;
        input.Pull = o.Imposable * n.Compiled.Tension;
        input.Stiff *= f[(int)PlanFactor.LineStiffness];
        input.Soft = Math.Min(input.Soft, input.Stiff);
        input.GearSpeed *= f[(int)PlanFactor.GearSpeed];
        input.Slack *= f[(int)PlanFactor.Slack];
        input.Approach *= f[(int)PlanFactor.Approach];
        if (input.GearSpeed >= 0 && input.Approach > input.GearSpeed)
        {
            // A gear that is slower than the approach is not engaged: the plan contradicts itself.
            input.GearRuleBroken = true;
            Raise(ref worst, Severity.Stop);
        }

        input.Rise *= f[(int)PlanFactor.ThrottleRise];
        input.CarelessSlack *= f[(int)PlanFactor.CarelessSlack];
        input.CarelessSpeed *= f[(int)PlanFactor.CarelessSpeed];
        LineLoadKernel.Evaluate(input, out var loads);
        o.Steady = loads.Steady;
        o.Procedure = loads.Procedure;
        if (loads.GearRefused) Raise(ref worst, Severity.Caution);
        var share = f[(int)PlanFactor.BridleShare];
        for (var i = 0; i < w.Places.Length; i++)
        {
            // Below half the pull no leg can carry: the other would have to carry more.
            if (w.Places[i].Part >= n.BridleIndex) w.Places[i].Share = Math.Max(0.5, n.Compiled.Places[i].Share * share);
        }

        RigKernel.Evaluate(w.Places, loads, w.Outcomes);
        for (var i = 0; i < w.Places.Length; i++) Place(n, w, i, loads.Procedure, ref o, ref worst);
        o.CasualtyEnd = n.BridleIndex == int.MaxValue ? 1 : Math.Max(0.5, n.CasualtyShare * share);
        if (loads.Steady > n.Drawbar.Working || o.CasualtyEnd * loads.Steady > n.Casualty.Working) Raise(ref worst, Severity.Caution);
        if (loads.Procedure > n.Drawbar.Yield || o.CasualtyEnd * loads.Procedure > n.Casualty.Yield) Raise(ref worst, Severity.Stop);
    }

    private static void Place(PlanNumbers n, PlanScratch w, int i, double procedure, ref PlanOutcome o, ref Severity worst)
    {
        ref readonly var p = ref w.Places[i];
        ref readonly var r = ref w.Outcomes[i];

        // The marked strength decides the checks; the strength that the part has decides whether it parts.
        if (p.Strength * w.Factors[n.StrengthOf(p.Part)] * w.Factors[n.WearOf(p.Part)] < p.Share * procedure) o.Parted |= 1UL << i;
        if (p.Kind != PlaceKind.Bight && r.RatedUtilisation > 1) Raise(ref worst, Severity.Caution);
        if (double.IsNaN(p.Strength)) return;
        if (r.Reserve < p.Floor) Raise(ref worst, Severity.Stop);
        else if (p.Kind == PlaceKind.Bight || r.PeakUtilisation > 1 || (n.SecondPullUndeclared && r.SecondReserve < p.Floor)) Raise(ref worst, Severity.Caution);
        if (r.CarelessReserve < RigKernel.CarelessFloor) Raise(ref worst, Severity.Caution);
    }

    private static void Raise(ref Severity worst, Severity severity)
    {
        if (severity > worst) worst = severity;
    }
}
