using System;
using System.Collections.Generic;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The limits that a sampled outcome has: each a key, what happens beyond it, why a plan may not have it, and its margin.</summary>
internal static class PlanLimitRows
{
    /// <summary>Force below which none is told from nothing, N; keeps logarithms finite.</summary>
    private const double Nothing = 1;

    public static IEnumerable<(string Key, string Event, string WhyNot, PlanMargin Margin)> For(RecoveryPlan plan)
    {
        var (drawbar, casualty) = (plan.Rig.Drawbar.Name, plan.Rig.Casualty.Name);
        const string NoPull = "the plan has no pull", NoNumber = "its number is not known, or the line is not", Rolls = "the ground does not fall along the pull, so it cannot";
        yield return ("pull", "the pull is not enough", NoPull, static (BlockSampler b, in PlanOutcome o) => (o.Sustained - o.Demand) / Weight(b));
        yield return ("will-not-move-it", "the pull is under nine tenths of the demand", NoPull, static (BlockSampler b, in PlanOutcome o) => (o.Sustained - (ChoiceFindings.WillNot * o.Demand)) / Weight(b));
        yield return ("undecided", "the pull is under eleven tenths of the demand, too near it to be called enough", NoPull, static (BlockSampler b, in PlanOutcome o) => (o.Sustained - (ChoiceFindings.Undecided * o.Demand)) / Weight(b));
        yield return ("may-bog", "the puller sustains so little that it may bog itself", NoPull, static (BlockSampler b, in PlanOutcome o) => Over(o.Own, CapabilityFindings.BogShare * b.Numbers.Compiled.Tower.Weight));
        yield return ("frees-itself", "the machine drives itself out", "no wheel model covers its drive: none of its wheels is driven, or a driven one is buried", static (BlockSampler b, in PlanOutcome o) => (o.OwnHolding - o.OwnNet) / Weight(b));
        yield return ("nose-light", "the leading axle of the puller goes light", NoPull, static (BlockSampler _, in PlanOutcome o) => NoseKernel.Caution - o.Nose);
        yield return ("nose-lift", "the leading axle of the puller lifts", NoPull, static (BlockSampler _, in PlanOutcome o) => PlanKernel.NoseLifts - o.Nose);
        yield return ("runs-away", "the freed machine rolls away", Rolls, static (BlockSampler _, in PlanOutcome o) => o.Slope > 0 ? Over(o.RollingHolds, o.Slope) : double.NaN);
        yield return ("may-run-away", "the freed machine rolls away on the firmest ground on its way", Rolls, static (BlockSampler _, in PlanOutcome o) => o.Slope > 0 ? Over(o.RollingHoldsOnFirmest, o.Slope) : double.NaN);
        yield return ("hitch-rating", "the puller can impose more than its hitch is rated for", "no rating of the hitch is declared", static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.Compiled.Tower.RatingLimit, o.AtHitch));
        for (var i = 0; i < plan.Ahead.Count; i++)
        {
            var (at, name, drawn) = (i, plan.Ahead[i].Tower.Machine.Name, i + 1 < plan.Ahead.Count ? plan.Ahead[i + 1].Tower.Machine.Name : plan.Tower.Machine.Name);
            yield return ("hitch-rating:" + name, "more comes into the line behind the " + name + " ahead than its hitch is rated for", "no rating of that hitch is declared", (BlockSampler b, in PlanOutcome _) => Over(b.Numbers.Team!.Alone[at].RatingLimit, b.LineBehind(at)));
            yield return ("front-rating:" + drawn, "the " + drawn + " is drawn harder than the point on its front is rated for", "no rating of that point is declared", (BlockSampler b, in PlanOutcome _) => Over(b.Numbers.Team!.FrontRating[at + 1], b.LineBehind(at)));
        }

        yield return ("hitch-vertical", "the line presses down on the hitch more than its maker allows", "no load down on the hitch is declared, or the line presses nothing down", static (BlockSampler b, in PlanOutcome o) => o.Down > 0 ? Over(b.Numbers.VerticalRating, o.Down) : double.NaN);
        yield return ("tackle-short", "the pull through the tackle is under the demand that the tackle is sized on", "there is no tackle", static (BlockSampler b, in PlanOutcome o) => b.Numbers.TackleNeeds > 0 ? (o.Sustained - b.Numbers.TackleNeeds) / Weight(b) : double.NaN);
        yield return ("tackle-anchor", "the anchor of the tackle gives", "there is no tackle, or what its anchor holds is not known", static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.AnchorHolds, o.AtHitch * (b.Numbers.Advantage - 1)));
        yield return ("tackle-blocks", "the load on the tackle is over the rating of its blocks", "there is no tackle, or its blocks are not rated", static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.BlockRating, o.Imposable));
        yield return ("sideways", "the line pulls the puller over sideways", "the line does not run off to the side, so it cannot", static (BlockSampler _, in PlanOutcome o) => o.Sideways > 0 ? 1 - o.Sideways : double.NaN);
        yield return ("drawbar-working", "the steady load is over the working load of the " + drawbar, NoNumber, static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.Drawbar.Working, o.Steady));
        yield return ("drawbar-yield", "the peak is over the yield of the " + drawbar, NoNumber, static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.Drawbar.Yield, o.Procedure));
        yield return ("casualty-working", "the steady load is over the working load of the " + casualty, NoNumber, static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.Casualty.Working, o.CasualtyEnd * o.Steady));
        yield return ("casualty-yield", "the peak is over the yield of the " + casualty, NoNumber, static (BlockSampler b, in PlanOutcome o) => Over(b.Numbers.Casualty.Yield, o.CasualtyEnd * o.Procedure));
        var second = plan.Procedure.SecondPull is null;
        for (var i = 0; i < plan.Rig.Parts.Count; i++)
        {
            var (part, name) = (i, plan.Rig.Parts[i].Name);
            const string NotKnown = "its strength is not known, or the line is not", NoRating = "nothing is known to be allowed, or the line is not";
            yield return ("rated:" + name, "the " + name + " is over its rating", NoRating, Part(part, static (in RigPlace p, in RigOutcome r) => p.Kind == PlaceKind.Bight ? double.PositiveInfinity : -Math.Log(Math.Max(r.RatedUtilisation, 1e-6))));
            yield return ("factors:" + name, "the " + name + " misses the full factors", NotKnown, Part(part, static (in RigPlace p, in RigOutcome r) => p.Kind == PlaceKind.Bight ? double.PositiveInfinity : -Math.Log(Math.Max(r.PeakUtilisation, 1e-6))));
            yield return ("floor:" + name, "the " + name + " is below its floor", NotKnown, Part(part, static (in RigPlace p, in RigOutcome r) => Math.Log(Math.Min(r.Reserve, 1e6) / p.Floor)));
            yield return ("second-pull:" + name, "the " + name + " is below its floor on a second pull", second ? NotKnown : "the plan says whether there is a second pull", Part(part, (in RigPlace p, in RigOutcome r) => second ? Math.Log(Math.Min(r.SecondReserve, 1e6) / p.Floor) : double.PositiveInfinity));
            yield return ("careless:" + name, "a careless take-up comes too near the strength of the " + name, NotKnown, Part(part, static (in RigPlace _, in RigOutcome r) => Math.Log(Math.Min(r.CarelessReserve, 1e6) / RigKernel.CarelessFloor)));
            yield return ("breaks:" + name, "the " + name + " breaks", NotKnown, (BlockSampler b, in PlanOutcome _) => Math.Log(Math.Min(b.LeastReserve(part), 1e6)));
        }
    }

    /// <summary>Logarithm of what holds over what loads it: finite for any finite load.</summary>
    private static double Over(double holds, double load) => Math.Log(Math.Max(holds, Nothing) / Math.Max(load, Nothing));

    private static double Weight(BlockSampler block) => block.Numbers.Compiled.Stuck.Flat.Weight;

    private static PlanMargin Part(int part, PlaceMargin margin) => (BlockSampler b, in PlanOutcome _) => b.Least(part, margin);
}
