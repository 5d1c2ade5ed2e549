using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Planning;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Uncertainty;

/// <summary>Inputs of the places of axles, of what was dug, of gear and its way, of machines ahead and a tackle: a factor each, and the plan as a person would type it with that number.</summary>
internal static class InputTypings
{
    public static IReadOnlyDictionary<string, (double Factor, Func<RecoveryPlan, double, RecoveryPlan> Typed)> All { get; } = new Dictionary<string, (double Factor, Func<RecoveryPlan, double, RecoveryPlan> Typed)>(StringComparer.Ordinal)
    {
        ["stuck.axle-position:middle axle"] = (1.1, static (p, f) => p.With(p.Stuck.WithMachines(Placed(p.Stuck.Machine, 1, f, 1), Placed(p.Stuck.AsFound, 1, f, 1)))),
        ["tower.axle-position:rear axle"] = (0.9, static (p, f) => p.With(p.Tower with { Machine = Placed(p.Tower.Machine, 1, f, 1) })),
        ["tower.track-width:rear axle"] = (0.4, static (p, f) => p.With(p.Tower with { Machine = Placed(p.Tower.Machine, 1, 1, f) })),
        ["tower.deflection:front axle"] = (1.2, static (p, f) => p.With(p.Tower with { Machine = Deflected(p.Tower.Machine, 0, f) })),
        ["stuck.deflection:rear axle"] = (1.3, static (p, f) => p.With(p.Stuck.WithMachines(Deflected(p.Stuck.Machine, 2, f), Deflected(p.Stuck.AsFound, 2, f)))),
        ["tower.loaded-radius:rear axle"] = (0.95, static (p, f) => p.With(p.Tower with { Machine = p.Tower.Machine.WithAxles(p.Tower.Machine.Axles.Select((a, i) => i == 1 ? a with { Tyre = a.Tyre.WithStaticLoadedRadius(new LoadedRadius(M(0.93 * f), KN(50), KPa(160))) } : a)) })),
        ["stuck.dug-slope"] = (0.7, static (p, f) => p.With(p.Stuck.Dug(p.Stuck.DugSlope!.Value * f))),
        ["stuck.fender-height"] = (0.8, static (p, f) => p.With(p.Stuck with { FenderHeight = p.Stuck.FenderHeight * f })),
        ["line.rotating-mass"] = (1.5, static (p, f) => p.With(p.Procedure with { RotatingMass = p.Procedure.RotatingMass * f })),
        ["rig.bridle-lean:bridle"] = (1.1, static (p, f) => p.With(p.Rig.Replace("bridle", p.Rig.Bridle!.WithLean(p.Rig.Bridle.Lean * f)))),
        ["rig.eye-length:bridle"] = (0.4, static (p, f) => p.With(p.Rig.Replace("bridle", p.Rig.Bridle!.WithEye(p.Rig.Bridle.EyeLength * f, p.Rig.Bridle.BightThickness)))),
        ["rig.bight-thickness:bridle"] = (3, static (p, f) => p.With(p.Rig.Replace("bridle", p.Rig.Bridle!.WithEye(p.Rig.Bridle.EyeLength, p.Rig.Bridle.BightThickness * f)))),
        ["rig.choke-angle:axle strap"] = (0.5, static (p, f) => p.With(p.Rig.Replace("axle strap", Part<Strap>(p, "axle strap") with { AngleOfChoke = Part<Strap>(p, "axle strap").AngleOfChoke * f }))),
        ["rig.basket-angle:basket"] = (2, static (p, f) => p.With(p.Rig.Replace("basket", Part<Strap>(p, "basket").WithBasket(Part<Strap>(p, "basket").BasketLegAngle * f)))),
        ["rig.length:chain"] = (1.5, static (p, f) => p.With(p.Rig.Replace("chain", new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), Part<Chain>(p, "chain").Length * f)))),
        ["rig.length:wire"] = (0.6, static (p, f) => p.With(p.Rig.Replace("wire", new WireRope("wire", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, Part<WireRope>(p, "wire").Length * f)))),
        ["way.wheelbase"] = (1.1, static (p, f) => Way(p, static (w, g) => new(w.TailBehindAxle, w.Wheelbase * g, w.AnchorHeight, w.ApexHeight, w.Parts), f)),
        ["way.anchor-height"] = (1.5, static (p, f) => Way(p, static (w, g) => new(w.TailBehindAxle, w.Wheelbase, w.AnchorHeight * g, w.ApexHeight, w.Parts), f)),
        ["way.apex-height"] = (1.6, static (p, f) => Way(p, static (w, g) => new(w.TailBehindAxle, w.Wheelbase, w.AnchorHeight, w.ApexHeight * g, w.Parts), f)),
        ["way.belly-end"] = (1.3, static (p, f) => p.With(p.Site with { UnderMachine = p.Site.UnderMachine! with { BellyEndBehindAxle = p.Site.UnderMachine.BellyEndBehindAxle * f } })),
        ["way.strap-width"] = (3, static (p, f) => p.With(p.Site with { UnderMachine = p.Site.UnderMachine! with { StrapWidth = p.Site.UnderMachine.StrapWidth * f } })),
        ["way.strap-thickness"] = (4, static (p, f) => p.With(p.Site with { UnderMachine = p.Site.UnderMachine! with { StrapThickness = p.Site.UnderMachine.StrapThickness * f } })),
        ["way.part-place:rear axle"] = (0.8, static (p, f) => Way(p, static (w, g) => new(w.TailBehindAxle, w.Wheelbase, w.AnchorHeight, w.ApexHeight, w.Parts.Select(x => x.Name == "rear axle" ? new UndersidePart(x.Name, x.BehindAxle * g, x.Height) : x)), f)),
        ["way.part-height:rear axle"] = (0.7, static (p, f) => Way(p, static (w, g) => new(w.TailBehindAxle, w.Wheelbase, w.AnchorHeight, w.ApexHeight, w.Parts.Select(x => x.Name == "rear axle" ? new UndersidePart(x.Name, x.BehindAxle, x.Height * g) : x)), f)),
        ["tackle.anchor-holds"] = (0.6, static (p, f) => p.WithTackle(p.Tackle! with { AnchorHolds = p.Tackle.AnchorHolds * f })),
        ["tackle.block-rating"] = (0.6, static (p, f) => p.WithTackle(p.Tackle! with { BlockRating = p.Tackle.BlockRating * f })),
        ["tower.front-height"] = (1.4, static (p, f) => p.WithAhead(p.Ahead, new TeamMember(p.Tower) { FrontHeight = M(0.8 * f), FrontRating = KN(250) })),
        ["tower.front-rating"] = (0.5, static (p, f) => p.WithAhead(p.Ahead, new TeamMember(p.Tower) { FrontHeight = M(0.8), FrontRating = KN(250 * f) })),
        ["ahead.cone-index:second tractor"] = (0.15, static (p, f) => Ahead(p, 1, t => t with { Soil = Soil.FromConeIndex(t.Soil.ConeIndex * f, t.Soil.RemouldingIndex) })),
        ["ahead.remoulding-index:second tractor"] = (0.2, static (p, f) => Ahead(p, 1, t => t with { Soil = Soil.FromConeIndex(t.Soil.ConeIndex, t.Soil.RemouldingIndex * f) })),
        ["ahead.firmest-cone-index:second tractor"] = (1.5, static (p, f) => Ahead(p, 1, t => t with { FirmestConeIndex = t.FirmestConeIndex * f })),
        ["ahead.grade:second tractor"] = (1.6, static (p, f) => Ahead(p, 1, t => t with { Grade = Grade.FromAngle(Angle.FromRadians(t.Grade.Radians * f)) })),
        ["ahead.power:second tractor"] = (0.5, static (p, f) => Ahead(p, 1, t => t with { EnginePower = Power.FromKilowatts(60 * f) })),
        ["ahead.hitch-height:second tractor"] = (1.7, static (p, f) => Ahead(p, 1, t => t.WithHitch(t.HitchPosition.Meters, t.HitchHeight.Meters * f))),
        ["ahead.hitch-rating:second tractor"] = (0.5, static (p, f) => Ahead(p, 1, t => t with { HitchRating = t.HitchRating * f })),
        ["ahead.load:second tractor/tractor"] = (0.8, static (p, f) => Ahead(p, 1, t => t with { Machine = new Machine(t.Machine.Name, t.Machine.Axles, t.Machine.Loads.Select(l => new NamedLoad(l.Name, l.Mass * f, l.Position, l.Height, l.Kind))) })),
        ["ahead.load-position:second tractor/tractor"] = (0.9, static (p, f) => Ahead(p, 1, t => t with { Machine = new Machine(t.Machine.Name, t.Machine.Axles, t.Machine.Loads.Select(l => new NamedLoad(l.Name, l.Mass, l.Position * f, l.Height, l.Kind))) })),
        ["ahead.load-height:second tractor/tractor"] = (1.3, static (p, f) => Ahead(p, 1, t => t with { Machine = new Machine(t.Machine.Name, t.Machine.Axles, t.Machine.Loads.Select(l => new NamedLoad(l.Name, l.Mass, l.Position, l.Height * f, l.Kind))) })),
        ["ahead.axle-position:second tractor/rear axle"] = (0.9, static (p, f) => Ahead(p, 1, t => t with { Machine = Placed(t.Machine, 1, f, 1) })),
        ["ahead.tyre-width:second tractor/front axle"] = (1.2, static (p, f) => Ahead(p, 1, t => t with { Machine = Shod(t.Machine, 0, x => new Tyre(x.SectionWidth * f, x.OverallDiameter, x.SectionHeight, x.Inflation, x.LowestInflation, x.MeasuredDeflectionRatio)) })),
        ["ahead.tyre-diameter:second tractor/front axle"] = (1.1, static (p, f) => Ahead(p, 1, t => t with { Machine = Shod(t.Machine, 0, x => new Tyre(x.SectionWidth, x.OverallDiameter * f, x.SectionHeight, x.Inflation, x.LowestInflation, x.MeasuredDeflectionRatio)) })),
        ["ahead.tyre-height:second tractor/front axle"] = (0.8, static (p, f) => Ahead(p, 1, t => t with { Machine = Shod(t.Machine, 0, x => new Tyre(x.SectionWidth, x.OverallDiameter, x.SectionHeight * f, x.Inflation, x.LowestInflation, x.MeasuredDeflectionRatio)) })),
        ["ahead.deflection:second tractor/rear axle"] = (1.3, static (p, f) => Ahead(p, 1, t => t with { Machine = Deflected(t.Machine, 1, f) })),
        ["ahead.inflation:second tractor/rear axle"] = (0.7, static (p, f) => Ahead(p, 1, t => t with { Machine = Shod(t.Machine, 1, x => x.AtInflation(x.Inflation * f)) })),
        ["stuck.axle-stiffness:rear axle"] = (3, static (p, f) => p.With(p.Stuck.WithMachines(Stiff(p.Stuck.Machine, 2, f), Stiff(p.Stuck.AsFound, 2, f)))),
        ["ahead.front-height:second tractor"] = (1.5, static (p, f) => p.WithAhead([p.Ahead[0], p.Ahead[1].WithFrontHeight(p.Ahead[1].FrontHeight * f)], Front(p))),
        ["ahead.front-rating:second tractor"] = (0.2, static (p, f) => p.WithAhead([p.Ahead[0], p.Ahead[1].WithFrontRating(p.Ahead[1].FrontRating * f)], Front(p))),
    };

    /// <summary>Two machines ahead and a tackle, everything known of them.</summary>
    public static RecoveryPlan Arranged()
    {
        var plan = ReferencePlans.AsFound();
        var known = ArrangementTests.Second();
        var second = known with { Machine = Shod(known.Machine, 0, x => new Tyre(x.SectionWidth, x.OverallDiameter, x.SectionHeight, x.Inflation, x.LowestInflation)) };
        var third = second with { Machine = new Machine("third tractor", second.Machine.Axles, second.Machine.Loads) };
        return plan.WithAhead([new TeamMember(third), new TeamMember(second with { Grade = Grade.FromPercent(3), EnginePower = Power.FromKilowatts(60), HitchRating = KN(300), FirmestConeIndex = KPa(3000) }) { FrontHeight = M(0.7), FrontRating = KN(200) }], new TeamMember(plan.Tower) { FrontHeight = M(0.8), FrontRating = KN(250) })
            .WithTackle(new LineTackle(2) { AnchorHolds = KN(400), BlockRating = KN(700) });
    }

    /// <summary>Every angle of the gear declared, wheels that cannot slip, a machine deep under its fender, dug, the line off to the side.</summary>
    public static RecoveryPlan Everything()
    {
        var plan = ReferencePlans.Gentle();
        var frame = new Machine(plan.Stuck.Machine.Name, plan.Stuck.Machine.Axles, plan.Stuck.Machine.Loads, Suspension.StraightFrame);
        var stuck = new StuckMachine(frame, plan.Stuck.Soil, [M(0.7), M(0.7), M(0.7)], plan.Stuck.Direction).Dug(Angle.FromDegrees(5)) with { FenderHeight = M(0.85) };
        var rig = new Rig(
            plan.Rig.Drawbar,
            [
                plan.Rig.Parts[0],
                new WireRope("wire", Rating.BreakingStrengthTonnes(200), Length.FromMillimeters(40), WireCore.Wire, M(5)),
                new Chain("chain", ChainGrade.Grade100, Length.FromMillimeters(22), M(2)),
                new Strap("basket", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(4)).WithBasket(Angle.FromDegrees(12)),
                plan.Rig.Bridle!.WithLean(Angle.FromDegrees(5)).WithEye(M(0.4), M(0.08)),
                plan.Rig.Parts[2],
                plan.Rig.Parts[3],
            ],
            plan.Rig.Casualty).WithWear(1);
        var tower = plan.Tower with { Machine = plan.Tower.Machine.WithAxles(plan.Tower.Machine.Axles.Select((a, i) => i == 1 ? a with { Tyre = a.Tyre.WithStaticLoadedRadius(new LoadedRadius(M(0.93), KN(50), KPa(160))) } : a)) };
        return plan.With(stuck).With(tower).With(rig).With(plan.Site with { LineYaw = Angle.FromDegrees(5) }).With(plan.Procedure with { RotatingMass = Mass.FromTonnes(40) });
    }

    public static T Part<T>(RecoveryPlan plan, string name)
        where T : RigPart => (T)plan.Rig.Parts.Single(x => x.Name == name);

    private static TeamMember Front(RecoveryPlan plan) => new(plan.Tower) { FrontHeight = M(0.8), FrontRating = KN(250) };

    public static RecoveryPlan Ahead(RecoveryPlan plan, int at, Func<TowingMachine, TowingMachine> change) => plan.WithAhead(
        plan.Ahead.Select((m, i) => i == at ? new TeamMember(change(m.Tower)) { FrontHeight = m.FrontHeight, FrontRating = m.FrontRating } : m), Front(plan));

    private static RecoveryPlan Way(RecoveryPlan plan, Func<UnderMachineLine, double, UnderMachineLine> change, double f)
    {
        var way = plan.Site.UnderMachine!;
        return plan.With(plan.Site with { UnderMachine = change(way, f) with { BellyEndBehindAxle = way.BellyEndBehindAxle, StrapWidth = way.StrapWidth, StrapThickness = way.StrapThickness } });
    }

    private static Machine Placed(Machine m, int axle, double place, double track) => m.WithAxles(m.Axles.Select((a, i) => i == axle ? new Axle(a.Name, a.Position * place, a.Tyres, a.Tyre, a.Driven, a.TrackWidth * track) { Braked = a.Braked, RelativeStiffness = a.RelativeStiffness } : a));

    private static Machine Shod(Machine m, int axle, Func<Tyre, Tyre> change) => m.WithAxles(m.Axles.Select((a, i) => i == axle ? a with { Tyre = change(a.Tyre) } : a));

    private static Machine Stiff(Machine m, int axle, double f) => m.WithAxles(m.Axles.Select((a, i) => i == axle ? a.WithRelativeStiffness(a.RelativeStiffness * f) : a));

    private static Machine Deflected(Machine m, int axle, double f) => m.WithAxles(m.Axles.Select((a, i) => i == axle && a.Tyre.MeasuredDeflectionRatio is { } r ? a with { Tyre = new Tyre(a.Tyre.SectionWidth, a.Tyre.OverallDiameter, a.Tyre.SectionHeight, a.Tyre.Inflation, a.Tyre.LowestInflation, r * f) } : a));
}
