using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The machines ahead of the towing machine and the tackle as inputs that can scatter: the ground under the machines is compiled, each of the others makes the plan anew.</summary>
internal static class ArrangementInputs
{
    private const string Cone = "ten cone readings along its wheel tracks", Tape = "a tape", Level = "a level along the pull", Manual = "the manual";

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        for (var i = 0; i < plan.Ahead.Count; i++) Member(plan, i, list);
        if (plan.Ahead.Count > 0)
        {
            list.Add(new(plan, "tower.front-height", "height of the point by which the towing machine is drawn", Tape, new(static p => FrontHeight(Front(p)), static (p, z) => p.WithAhead(p.Ahead, Front(p) with { FrontHeight = Length.FromMeters(z) })), "m"));
            if (plan.Front?.FrontRating is not null) list.Add(new(plan, "tower.front-rating", "rating of the point by which the towing machine is drawn", Manual, new(static p => FrontRating(Front(p)), static (p, n) => p.WithAhead(p.Ahead, Front(p) with { FrontRating = Force.FromNewtons(n) })), "N"));
        }

        if (plan.Tackle?.AnchorHolds is not null) list.Add(new(plan, "tackle.anchor-holds", "what the anchor of the tackle holds", "a trial pull on the anchor", new(static p => Strength(p.Tackle?.AnchorHolds), static (p, n) => p.Tackle is { } t ? p.WithTackle(t with { AnchorHolds = Force.FromNewtons(n) }) : p), "N"));
        if (plan.Tackle?.BlockRating is not null) list.Add(new(plan, "tackle.block-rating", "what the blocks of the tackle may carry", "the marking on the blocks", new(static p => Strength(p.Tackle?.BlockRating), static (p, n) => p.Tackle is { } t ? p.WithTackle(t with { BlockRating = Force.FromNewtons(n) }) : p), "N"));
    }

    private static void Member(RecoveryPlan plan, int i, List<PlanInput> list)
    {
        var member = plan.Ahead[i];
        var tower = member.Tower;
        var name = tower.Machine.Name;
        void Of(string key, string title, string measurement, Func<TowingMachine, InputReach> reach, Func<TowingMachine, double, TowingMachine> set, string unit = "") =>
            list.Add(new(plan, "ahead." + key + ":" + name, title + " " + name + " ahead", measurement, new(p => reach(p.Ahead[i].Tower), (p, v) => With(p, i, p.Ahead[i].On(set(p.Ahead[i].Tower, v)))), unit));

        list.Add(new("ahead.cone-index:" + name, "cone index under the " + name + " ahead", Cone, PlanFactor.Count, i));
        list.Add(new("ahead.remoulding-index:" + name, "remoulding index under the " + name + " ahead (at most 1)", "remoulding index: cone before and after 100 blows on a tube sample", PlanFactor.Count, i));
        if (tower.FirmestConeIndex is not null) Of("firmest-cone-index", "cone index of the firmest ground in reach of the", Cone, static t => new(t.FirmestConeIndex?.Pascals ?? 1000, 1000, 20e6), static (t, pa) => t.FirmestConeIndex is null ? t : t with { FirmestConeIndex = Pressure.FromPascals(pa) });
        Of("grade", "slope under the", Level, static t => new(t.Grade.Radians, -Math.PI / 4, Math.PI / 4), static (t, a) => t with { Grade = Grade.FromAngle(Angle.FromRadians(a)) }, "rad");
        if (tower.EnginePower is not null) Of("power", "engine power of the", string.Empty, static t => new(t.EnginePower is { } power ? (double)power.Watts : 10e3, 10e3, 2e6), static (t, w) => t.EnginePower is null ? t : t with { EnginePower = Power.FromWatts(w) });
        Of("hitch-height", "height of the hitch of the", Tape, static t => new(t.HitchHeight.Meters, 0.1, 3), static (t, z) => t.WithHitch(t.HitchPosition.Meters, z), "m");
        if (tower.HitchRating is not null) Of("hitch-rating", "rating of the hitch of the", Manual, static t => new(t.HitchRating?.Newtons ?? 5e3, 5e3, 2e6), static (t, n) => t.HitchRating is null ? t : t with { HitchRating = Force.FromNewtons(n) }, "N");
        MachineInputs.Of(plan, MachineOwner.Ahead(plan, i), list);
        if (i == 0) return;
        list.Add(new(plan, "ahead.front-height:" + name, "height of the point by which the " + name + " is drawn", Tape, new(p => FrontHeight(p.Ahead[i]), (p, z) => With(p, i, p.Ahead[i] with { FrontHeight = Length.FromMeters(z) })), "m"));
        if (member.FrontRating is not null) list.Add(new(plan, "ahead.front-rating:" + name, "rating of the point by which the " + name + " is drawn", Manual, new(p => FrontRating(p.Ahead[i]), (p, n) => With(p, i, p.Ahead[i] with { FrontRating = Force.FromNewtons(n) })), "N"));
    }

    internal static RecoveryPlan With(RecoveryPlan plan, int at, TeamMember member) => plan.WithAhead(plan.Ahead.Select((m, i) => i == at ? member : m), plan.Front);

    private static TeamMember Front(RecoveryPlan plan) => plan.Front ?? new TeamMember(plan.Tower);

    private static InputReach FrontHeight(TeamMember member) => new(member.FrontHeight.Meters, 0.1, 3);

    private static InputReach FrontRating(TeamMember member) => new(member.FrontRating?.Newtons ?? 5e3, 5e3, 2e6);

    private static InputReach Strength(Force? force) => new(force?.Newtons ?? 1e3, 1e3, 10e6);
}
