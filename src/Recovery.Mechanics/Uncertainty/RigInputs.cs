using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Lengths, angles and ratings of the rig as inputs that can scatter: each makes the plan anew.</summary>
internal static class RigInputs
{
    private const string Tape = "a tape", Maker = "the maker of the machine", Drawbar = "drawbar";

    /// <summary>Whether the rating of the hitch is the working load of the drawbar.</summary>
    public static bool IsHitchRating(RecoveryPlan plan) => plan.Tower.HitchRating is { } rating && plan.Rig.Drawbar.WorkingLoad is { } working && Math.Abs(rating.Newtons - working.Newtons) <= 1;

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        foreach (var part in plan.Rig.Parts)
        {
            var name = part.Name;
            if (part is Strap or Bridle or Chain or WireRope) list.Add(new(plan, "rig.length:" + name, "length of the " + name + " (a line whose stretch was measured keeps its measured length)", Tape, new(p => StrapLength(p.Rig, name), (p, l) => p.With(Longer(p.Rig, name, l))), "m"));
            if (part is Bridle) list.Add(new(plan, "rig.bridle-spacing:" + name, "distance between the anchors of the " + name, Tape, new(p => Spacing(p.Rig), (p, w) => p.Rig.Bridle is { } bridle ? p.With(p.Rig.Replace(bridle.Name, bridle.WithSpacing(w))) : p), "m"));
            if (part is Bridle { DeclaredLean: not null }) list.Add(new(plan, "rig.bridle-lean:" + name, "angle by which the pull leans from the middle line of the " + name, "a tape from the line of the machine", OfBridle(static b => new(b.Lean.Radians, -Math.PI / 3, Math.PI / 3), static (b, a) => b.DeclaredLean is null ? b : b with { Lean = Angle.FromRadians(a) }), "rad"));
            if (part is Bridle { EyeLength: not null, BightThickness: not null })
            {
                list.Add(new(plan, "rig.eye-length:" + name, "inside length of the eye that the " + name + " runs through", Tape, OfBridle(static b => new(b.EyeLength?.Meters ?? 0.05, 0.05, 5), static (b, l) => b.EyeLength is null ? b : b with { EyeLength = Length.FromMeters(l) }), "m"));
                list.Add(new(plan, "rig.bight-thickness:" + name, "thickness of the bight of the " + name + " in the eye", Tape, OfBridle(static b => new(b.BightThickness?.Meters ?? 0.002, 0.002, 0.3), static (b, l) => b.BightThickness is null ? b : b with { BightThickness = Length.FromMeters(l) }), "m"));
            }

            if (part is Strap { Choked: true, AngleOfChoke: not null }) list.Add(new(plan, "rig.choke-angle:" + name, "angle of choke of the " + name, "a look along the strap", OfStrap(name, static s => new(s.AngleOfChoke?.Radians ?? 0, 0, Math.PI), static (s, a) => s.AngleOfChoke is null ? s : s with { AngleOfChoke = Angle.FromRadians(a) }), "rad"));
            if (part is Strap { IsBasket: true }) list.Add(new(plan, "rig.basket-angle:" + name, "angle of a leg of the basket of the " + name, "a tape across the legs", OfStrap(name, static s => new(s.BasketLegAngle?.Radians ?? 0, 0, Math.PI / 3), static (s, a) => s.BasketLegAngle is null ? s : s with { BasketLegAngle = Angle.FromRadians(a) }), "rad"));
        }

        Attachment(plan, Drawbar, static r => r.Drawbar, static (r, a) => r.WithAttachments(a, r.Casualty), list);
        Attachment(plan, "casualty", static r => r.Casualty, static (r, a) => r.WithAttachments(r.Drawbar, a), list);
        list.Add(new(plan, "rig.wear-factor", "wear factor of the gear (1 to 1.5)", string.Empty, new(static p => new(p.Rig.WearFactor, 1, 1.5), static (p, w) => p.With(p.Rig.WithWear(w)))));
        list.Add(new(plan, "rig.twist-factor", "twist factor of the line (1 to 2)", string.Empty, new(static p => new(p.Rig.TwistFactor, 1, 2), static (p, w) => p.With(p.Rig.WithTwist(w)))));
        list.Add(new(plan, "line.pitch", "angle by which the line falls", "a level along the line", new(static p => new(p.Site.LinePitch.Radians, -Math.PI / 6, Math.PI / 6), static (p, a) => p.With(p.Site with { LinePitch = Angle.FromRadians(a) })), "rad"));
        list.Add(new(plan, "line.yaw", "angle by which the line runs off to the side", "a tape from the line of the machine", new(static p => new(p.Site.LineYaw.Radians, -Math.PI / 4, Math.PI / 4), static (p, a) => p.With(p.Site with { LineYaw = Angle.FromRadians(a) })), "rad"));
    }

    private static void Attachment(RecoveryPlan plan, string end, Func<Rig, AttachmentPoint> get, Func<Rig, AttachmentPoint, Rig> set, List<PlanInput> list)
    {
        var point = get(plan.Rig);
        if (point.WorkingLoad is not null)
            list.Add(new(plan, "rig.working-load:" + end, "working load of the " + point.Name, Maker, new(p => Load(get(p.Rig).WorkingLoad, end == Drawbar && IsHitchRating(p)), (p, n) => get(p.Rig) is { WorkingLoad: not null } a ? Rated(p, end, set(p.Rig, a with { WorkingLoad = Force.FromNewtons(n) }), n) : p), "N"));
        if (point.Yield is not null) list.Add(new(plan, "rig.yield:" + end, "yield load of the " + point.Name, Maker, new(p => Load(get(p.Rig).Yield), (p, n) => get(p.Rig) is { Yield: not null } a ? p.With(set(p.Rig, a with { Yield = Force.FromNewtons(n) })) : p), "N"));
    }

    private static InputReach Load(Force? load, bool alsoHitch = false) => alsoHitch ? new(load?.Newtons ?? 5e3, 5e3, 2e6) : new(load?.Newtons ?? 1e3, 1e3, 20e6);

    /// <summary>One number given twice stays one: a hitch rating that is the working load of the drawbar goes with it.</summary>
    private static RecoveryPlan Rated(RecoveryPlan plan, string end, Rig rig, double newtons) =>
        end == Drawbar && IsHitchRating(plan) ? plan.With(plan.Tower with { HitchRating = Force.FromNewtons(newtons) }).With(rig) : plan.With(rig);

    /// <summary>A strap is 0.3 to 100 m long, the straps of a line together at most 300 m, a bridle longer than its anchors are apart.</summary>
    private static InputReach StrapLength(Rig rig, string name) => rig.Parts.FirstOrDefault(p => p.Name == name) switch
    {
        Strap strap => new(strap.Length.Meters, Math.Max(0.3, 0.2 * strap.Length.Meters / strap.LineMetres), rig.LineParts.Contains(strap) ? Math.Min(100, 300 - rig.LineMetres + strap.LineMetres) : 100),
        Chain chain => Steel(rig, chain, chain.Length.Meters, 100),
        WireRope rope => Steel(rig, rope, rope.Length.Meters, 300),
        Bridle bridle => new(bridle.Strap.Length.Meters, Math.Max(0.3, bridle.SpacingMetres + 0.001), 100),
        _ => default,
    };

    /// <summary>Chain and wire rope are 0.2 m long or more; a line as a whole at most 300 m.</summary>
    private static InputReach Steel(Rig rig, RigPart part, double metres, double most) => new(metres, 0.2, rig.LineParts.Contains(part) ? Math.Min(most, 300 - rig.LineMetres + metres) : most);

    private static InputEdit OfBridle(Func<Bridle, InputReach> reach, Func<Bridle, double, Bridle> set) => new(p => p.Rig.Bridle is { } bridle ? reach(bridle) : default, (p, v) => p.Rig.Bridle is { } bridle ? p.With(p.Rig.Replace(bridle.Name, set(bridle, v))) : p);

    private static InputEdit OfStrap(string name, Func<Strap, InputReach> reach, Func<Strap, double, Strap> set) => new(
        p => p.Rig.Parts.FirstOrDefault(part => part.Name == name) is Strap strap ? reach(strap) : default,
        (p, v) => p.Rig.Parts.FirstOrDefault(part => part.Name == name) is Strap strap ? p.With(p.Rig.Replace(name, set(strap, v))) : p);

    private static InputReach Spacing(Rig rig) => rig.Bridle is { } bridle ? new(bridle.SpacingMetres, 0.2, Math.Min(6, bridle.Strap.Length.Meters - 0.001)) : default;

    private static Rig Longer(Rig rig, string name, double metres) => rig.Parts.FirstOrDefault(p => p.Name == name) switch
    {
        Strap strap => rig.Replace(name, strap with { Length = Length.FromMeters(metres) }),
        Chain chain => rig.Replace(name, chain.WithMetres(metres)),
        WireRope rope => rig.Replace(name, rope.WithMetres(metres)),
        Bridle bridle => rig.Replace(name, bridle.WithStrap(bridle.Strap with { Length = Length.FromMeters(metres) })),
        _ => rig,
    };
}
