using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What is left to be done before a stuck machine drives itself out, each action worked whole by the kernels of demand, grip and critical index.</summary>
internal static class SelfRecoveryActions
{
    /// <summary>Relative change of the critical index below which a step is said to do nothing to it (judgement).</summary>
    private const double Little = 0.02;

    /// <summary>The steps: what can be taken off or let down, dug, vented and freed, all of that together, and the other direction.</summary>
    public static IReadOnlyList<SelfRecoveryStep> Of(PullDemand demand, double before)
    {
        var stuck = demand.Stuck;
        var steps = new List<SelfRecoveryStep>();
        var all = stuck;
        foreach (var load in stuck.Machine.Loads)
        {
            if (load.Kind is not (LoadKind.Payload or LoadKind.Detachable)) continue;
            steps.Add(Lighter((load.Kind == LoadKind.Payload ? SelfPhrases.Unload : SelfPhrases.TakeOff).With(load.Name), demand, stuck.Without(load.Name), before));
            all = all.Without(load.Name);
        }

        if (stuck.Machine.Axles.Any(a => a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals))
        {
            steps.Add(Lighter(SelfPhrases.Inflation.With(), demand, stuck.Deflated(), before));
            all = all.Deflated();
        }

        if (stuck.AnyWheelBuried && stuck.DugSlope is null)
        {
            var slope = CompiledStuckMachine.OfferedRamp;
            steps.Add(OfTheHole(SelfPhrases.Dig.With(), demand, stuck.Dug(slope), before, SelfPhrases.DigStays));
            all = all.Dug(slope);
        }

        if (stuck.Seal != Seal.Vented && (stuck.AnyWheelBuried || stuck.Belly is not null))
        {
            steps.Add(OfTheHole(SelfPhrases.Vent.With(), demand, stuck.Vented(), before, SelfPhrases.VentStays));
            all = all.Vented();
        }

        if (stuck.Belly is not null)
        {
            steps.Add(OfTheHole(SelfPhrases.FreeBelly.With(), demand, stuck.WithBellyFreed(), before, SelfPhrases.BellyStays));
            all = all.WithBellyFreed();
        }

        if (steps.Count > 1) steps.Add(Lighter(SelfPhrases.AllOfIt.With(), demand, all, before));
        steps.Add(Turned(demand, before));
        return steps.AsReadOnly();
    }

    private static SelfRecoveryStep Lighter(Phrase name, PullDemand before, StuckMachine after, double index)
    {
        var critical = SelfRecoverySteps.Critical(after);
        return new SelfRecoveryStep(name, critical, index, before, PullDemand.Estimate(after), NoSoil(after, critical, index) ?? Remark(before.Stuck, after, critical, index));
    }

    /// <summary>A step that changes the hole and not the wheels: the index stays by the way it is defined, what holds the machine does not.</summary>
    private static SelfRecoveryStep OfTheHole(Phrase name, PullDemand before, StuckMachine after, double index, PhraseTemplate stays)
    {
        var critical = SelfRecoverySteps.Critical(after);
        var demand = PullDemand.Estimate(after);
        return new SelfRecoveryStep(name, critical, index, before, demand, NoSoil(after, critical, index) ?? (Math.Abs(demand.CentralNewtons - before.CentralNewtons) < 1 ? SelfPhrases.HoldsAlike.With(stays.With()) : stays.With()));
    }

    private static SelfRecoveryStep Turned(PullDemand before, double index)
    {
        StuckMachine stuck = before.Stuck, after = stuck.DrawnTheOtherWay();
        var critical = SelfRecoverySteps.Critical(after);
        var remark = NoSoil(after, critical, index) ?? (after.Grade.Radians > 0 ? SelfPhrases.Rises : after.Grade.Radians < 0 ? SelfPhrases.FallsThatWay : SelfPhrases.LevelGround).With();
        if (stuck.DugSlope is not null || stuck.ExitSlope is not null || stuck.MeetsUncutSoil is not null) remark = SelfPhrases.OtherSide.With(remark);
        var driven = after.Machine.Axles.Where(a => a.Driven).ToList();
        if (driven.Any(a => a.TyresThatBite(PullDirection.Rearwards) == 0)) remark = (after.Direction == PullDirection.Rearwards ? SelfPhrases.LugsAgainst : SelfPhrases.LugsBite).With(remark);
        return new SelfRecoveryStep((after.Direction == PullDirection.Forwards ? SelfPhrases.TurnForwards : SelfPhrases.TurnRearwards).With(), critical, index, before, PullDemand.Estimate(after), remark);
    }

    /// <summary>Why a step leaves a machine without a number that had none; null where there is one before or after.</summary>
    private static Phrase? NoSoil(StuckMachine after, double critical, double before) =>
        !double.IsNaN(critical) || !double.IsNaN(before) ? null
        : (after.Machine.Axles.Any(a => a.Driven) ? SelfPhrases.NoSoilHolds : SelfPhrases.NoAxle).With();

    private static Phrase? Remark(StuckMachine stuck, StuckMachine after, double critical, double before)
    {
        if (double.IsNaN(critical)) return SelfPhrases.LoadOff.With();
        if (!(critical > before * (1 - Little))) return Softer(stuck, after);
        double[] was = LoadsOf(stuck), now = LoadsOf(after);
        var raised = Enumerable.Range(0, now.Length).Where(i => now[i] > was[i] + 1).Select(i => stuck.Machine.Axles[i].Name).ToList();
        if (raised.Count > 0) return SelfPhrases.LoadOn.With(string.Join(", ", raised));
        return critical > before * (1 + Little) ? SelfPhrases.BestGrip.With() : SelfPhrases.LittleChange.With();
    }

    private static Phrase? Softer(StuckMachine stuck, StuckMachine after) =>
        Enumerable.Range(0, stuck.Sinkage.Count).Any(i => after.Machine.Axles[i].Tyre.Inflation.Pascals < stuck.Machine.Axles[i].Tyre.Inflation.Pascals)
        && CompiledStuckMachine.From(after, after.Machine.Resolve(Suspension.Undeclared)).Flat.GreatestDeflection > BrixiusKernel.MostDeflection
            ? SelfPhrases.EndOfFit.With() : null;

    private static double[] LoadsOf(StuckMachine stuck) => CompiledStuckMachine.From(stuck, stuck.Machine.Resolve(Suspension.Undeclared)).Flat.Load;
}
