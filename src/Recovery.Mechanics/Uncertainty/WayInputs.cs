using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The way of the line under the stuck machine, as taken with a tape: each length makes the plan anew.</summary>
internal static class WayInputs
{
    private const string Tape = "a tape under the machine";

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        if (plan.Site.UnderMachine is not { } way) return;
        void Of(string key, string title, Func<UnderMachineLine, double> get, double least, double most, Func<UnderMachineLine, Length, UnderMachineLine> set) =>
            list.Add(new(plan, "way." + key, title, Tape, new(p => p.Site.UnderMachine is { } w ? new(get(w), least, most) : default, (p, v) => p.Site.UnderMachine is { } w ? p.With(p.Site with { UnderMachine = set(w, Length.FromMeters(v)) }) : p), "m"));

        Of("wheelbase", "distance behind the front axle of the axle that stays down", static w => w.Wheelbase.Meters, 0.5, 30, static (w, l) => Made(w, l, w.AnchorHeight, w.ApexHeight, w.Parts));
        Of("anchor-height", "height of the axle straps", static w => w.AnchorHeight.Meters, 0, 3, static (w, l) => Made(w, w.Wheelbase, l, w.ApexHeight, w.Parts));
        Of("apex-height", "height of the eye", static w => w.ApexHeight.Meters, 0, 3, static (w, l) => Made(w, w.Wheelbase, w.AnchorHeight, l, w.Parts));
        if (way.BellyEndBehindAxle is not null) Of("belly-end", "distance of the rear end of the belly behind the front axle", static w => w.BellyEndBehindAxle?.Meters ?? 0, 0, 30, static (w, l) => w.BellyEndBehindAxle is null ? w : w with { BellyEndBehindAxle = l });
        Of("strap-width", "width of the strap under the machine", static w => w.StrapWidth.Meters, 0.02, 0.6, static (w, l) => w with { StrapWidth = l });
        Of("strap-thickness", "thickness of the strap under the machine", static w => w.StrapThickness.Meters, 0.002, 0.2, static (w, l) => w with { StrapThickness = l });
        for (var i = 0; i < way.Parts.Count; i++)
        {
            var at = i;
            var name = MachineInputs.Numbered(way.Parts.Select(static part => part.Name), i);
            Of("part-place:" + name, "distance of the " + name + " behind the front axle, under which the line passes", w => w.Parts[at].BehindAxle.Meters, 0, 30, (w, l) => With(w, at, part => new UndersidePart(part.Name, l, part.Height)));
            Of("part-height:" + name, "height of the " + name + ", under which the line passes", w => w.Parts[at].Height.Meters, 0, 4, (w, l) => With(w, at, part => new UndersidePart(part.Name, part.BehindAxle, l)));
        }
    }

    private static UnderMachineLine With(UnderMachineLine way, int at, Func<UndersidePart, UndersidePart> change) =>
        Made(way, way.Wheelbase, way.AnchorHeight, way.ApexHeight, way.Parts.Select((part, i) => i == at ? change(part) : part));

    private static UnderMachineLine Made(UnderMachineLine way, Length wheelbase, Length anchor, Length apex, IEnumerable<UndersidePart> parts) =>
        new(way.TailBehindAxle, wheelbase, anchor, apex, parts) { BellyEndBehindAxle = way.BellyEndBehindAxle, StrapWidth = way.StrapWidth, StrapThickness = way.StrapThickness };
}
