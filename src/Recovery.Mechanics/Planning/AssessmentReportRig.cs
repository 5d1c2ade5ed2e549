using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The rig sections of the report: loads, gear, attachments, remedies, what flies.</summary>
internal static class AssessmentReportRig
{
    public static void Write(ReportBuilder w, Assessment a)
    {
        w.Section("gear", "heading.gear");
        w.Paragraph("gear.path", a.Plan.Rig.ToString());
        if (a.Rig is not { } rig || a.Loads is not { } loads)
        {
            w.Paragraph("gear.unknown");
            w.Paragraph("gear.unknown-steady", w.Display.Force(a.Available.Imposable * a.Plan.Compiled.Tension));
            foreach (var strap in a.Plan.Rig.LineParts.OfType<Strap>())
            {
                if (strap.Rating.Kind == RatingKind.Unknown && strap.Rating.Marked.Newtons > 0) w.Item("- ", w.Say("gear.unknown-reading", strap.Name, w.Display.Force(strap.Rating.Marked.Newtons), w.Display.Force(strap.Rating.Marked.Newtons / a.Plan.Policy.Factor)));
            }

            w.Paragraph("gear.unknown-hardware", string.Join(", ", a.Plan.Rig.Parts.Where(p => p is not Strap and not Bridle).Select(p => p.Name).DefaultIfEmpty(w.Say("gear.none"))));
            return;
        }

        w.Paragraph("gear.loads", w.Display.Force(loads.Output.Steady), w.Display.Force(loads.Output.Procedure), w.Say(Rule(loads.Rule)), w.Display.Force(loads.Output.Careless), w.Display.Force(loads.Output.SecondProcedure));
        w.Table([w.Say("gear.header", w.Display.ForceUnit), w.Say("gear.peak"), w.Say("gear.strength"), w.Say("gear.keeps"), w.Say("gear.stop-below"), w.Say("gear.full")], rig.Parts.Select(p => (IReadOnlyList<string>)[w.Wording.Say(p.Called), w.Display.Cell(p.Procedure.Newtons), p.Strength is { } s ? w.Display.Cell(s.Newtons) : "?", p.Reserve is { } r ? Text.Fixed(r, 2) : "?", Text.Fixed(p.Floor, 2), p.FullFactors is { } full ? Text.Fixed(full, 2) : "-"]).ToList());
        w.Paragraph("gear.key");
        Attachment(w, rig.DrawbarLoad);
        Attachment(w, rig.CasualtyLoad);
        Limits(w, rig);
        Remedies(w, rig);
        Failures(w, rig);
        Needs(w, a);
    }

    /// <summary>Least ratings in the unit gear is marked in, what marking to look for, and how long the list is that is gone through first.</summary>
    private static void Needs(ReportBuilder w, Assessment a)
    {
        w.Section("needs", "heading.needs");
        var needs = a.GearNeeds;
        var unit = w.Display.MarkingUnit;
        string Least(double? marked) => marked is { } number ? Text.Number(number, 3) : w.Say("needs.none");
        w.Table([w.Say("needs.header", w.Say(unit == MarkingUnit.Tonne ? "needs.tonnes" : "needs.short-tons")), w.Say("needs.breaking"), w.Say("needs.limit")], needs.Select(n => (IReadOnlyList<string>)[n.Part, Least(n.MarkedBreaking(unit)), Text.Number(ChoiceKernel.RoundUp(Marking.In(n.LeastWorkingLoad, unit)), 3)]).ToList());
        w.Paragraph("needs.key", a.Plan.Policy.Name);
        foreach (var kind in needs.Select(n => n.Kind).Distinct()) w.Item("- ", w.Say("look." + kind));
        w.Paragraph("needs.inspect", Text.Number(a.Inspection.Count));
    }

    private static void Limits(ReportBuilder w, RigCheck rig)
    {
        if (rig.AdmissiblePull is { } pull)
        {
            if (pull.Newtons > 0) w.Paragraph("gear.admissible", w.Display.Force(pull.Newtons), w.Display.Force(rig.AdmissiblePeak!.Value.Newtons), rig.Loads.Procedure.SecondPull is null && rig.AdmissibleSecondPull is { } second && second.Newtons < pull.Newtons ? w.Say("gear.admissible-second", w.Display.Force(second.Newtons)) : string.Empty);
            else w.Paragraph("gear.admissible-none");
        }

        var levels = rig.Levels;
        if (levels.Count == 0) return;
        w.Table([w.Say("gear.level-header", w.Display.ForceUnit), w.Say("gear.level-load"), w.Say("gear.level-stretch", w.Display.StretchUnit), w.Say("gear.level-gear")], levels.Select(l => (IReadOnlyList<string>)[w.Say(Level(l.Kind)), w.Display.Cell(l.LineLoad.Newtons), w.Display.Stretch(l.Stretch.Least.Meters) + " - " + w.Display.Stretch(l.Stretch.Greatest.Meters), l.Gear is { } gear ? w.Display.Speed(gear.MetersPerSecond) : l.Kind == RigLevelKind.Rated ? "-" : w.Say("gear.level-none")]).ToList());
        w.Paragraph("gear.level-key", w.Display.Force(rig.Loads.Output.Steady), w.Say(rig.Loads.Procedure.SecondPull == false ? "gear.level-first" : rig.Loads.Procedure.SecondPull == true ? "gear.level-second" : "gear.level-both"));
    }

    private static string Level(RigLevelKind kind) => kind switch
    {
        RigLevelKind.Rated => "gear.level-rated",
        RigLevelKind.FullFactors => "gear.level-full",
        _ => "gear.level-floor",
    };

    private static void Failures(ReportBuilder w, RigCheck rig)
    {
        w.Section("failures", "heading.failures");
        foreach (var f in rig.Failures.Where(f => f.Hardware.Count > 0 && f.Jam is null))
            w.Item("- ", w.Say("failure.hardware", w.Wording.Say(f.PartCalled), string.Join(", ", f.HardwareCalled.Select(w.Wording.Say)), Mass(w, f), w.Display.Bound(f.SpeedMetresPerSecond), w.Wording.Say(f.TowardsCalled), w.Display.Energy(f.StoredEnergy.Joules)));
        var bare = rig.Failures.Where(f => f.Hardware.Count == 0 && f.Jam is null).ToList();
        if (bare.Count > 0) w.Item("- ", w.Say("failure.line", string.Join(", ", bare.Select(f => w.Wording.Say(f.PartCalled)).Distinct(StringComparer.Ordinal)), w.Display.Bound(bare.Max(f => f.SpeedMetresPerSecond))));
        if (rig.Failures.FirstOrDefault(f => f.Jam is not null)?.Jam is { } jam)
            w.Item("- ", w.Say("failure.jam", rig.Rig.Bridle!.Name, w.Display.Force(jam.LegLoad.Newtons), w.Wording.Say(jam.WeakestCalled), jam.Reserve is { } keeps ? Text.Fixed(keeps, 2) : "?"));
    }

    private static void Attachment(ReportBuilder w, AttachmentLoad load)
    {
        string Three(UnitsNet.Force steady, UnitsNet.Force procedure, UnitsNet.Force careless) => w.Say("attachment.three", w.Display.Force(steady.Newtons), w.Display.Force(procedure.Newtons), w.Display.Force(careless.Newtons));
        var side = Three(load.Steady, load.Procedure, load.Careless);
        w.Item("- ", load.Sides == 1 ? w.Say("attachment.one", load.Point.Name, side) : w.Say("attachment.two", load.Point.Name, side, w.Display.Force(load.InwardProcedure.Newtons), Three(load.TotalSteady, load.TotalProcedure, load.TotalCareless)));
    }

    private static string Mass(ReportBuilder w, FailureCase f) =>
        f.MassIsComplete ? w.Display.Mass(f.HardwareMass.Kilograms) : f.HardwareMass.Kilograms > 0 ? w.Say("failure.mass-and-piece", w.Display.Mass(f.HardwareMass.Kilograms)) : w.Say("failure.mass-unknown");

    private static void Remedies(ReportBuilder w, RigCheck rig)
    {
        var below = rig.Parts.Where(p => p.Reserve < p.Floor).Select(p => p.Part.Name).Distinct(StringComparer.Ordinal).ToList();
        foreach (var part in below)
        {
            if (rig.RemedyForFloor(part) is { } remedy) w.Item("- ", w.Say("remedy.part", part, Strength(w, remedy.BreakingStrength.Newtons), Below(w, remedy.After), Loads(w, remedy.After)));
            if (RigAlternatives.ChokeSeen(rig, part) is { } seen) w.Item("- ", w.Say("remedy.choke", part, Text.Number(RigAlternatives.WideChokeDegrees), Text.Fixed(seen.Reserve!.Value, 2), Text.Fixed(seen.Floor, 2)));
        }

        if (below.Count == 0) return;
        if (rig.FloorPull is { } floor && floor.Newtons <= rig.Loads.Output.Steady) w.Item("- ", w.Say("remedy.no-gear", w.Display.Force(rig.Loads.Output.Steady), w.Display.Force(floor.Newtons)));
        else if (RigAlternatives.SlowerGear(rig) is { } slower) w.Item("- ", w.Say("remedy.gear", w.Display.Speed(slower.Loads.Procedure.LockedGear!.Value.MetersPerSecond), w.Display.Force(slower.Loads.Output.Procedure), w.Display.Force(rig.Loads.Output.Procedure), Below(w, slower), Loads(w, slower)));
        if (rig.RemediedTogether() is { } together && !ReferenceEquals(together, rig)) w.Item("- ", w.Say("remedy.together", string.Join(", ", Changed(w, rig, together)), Loads(w, together)));
    }

    private static string Below(ReportBuilder w, RigCheck after)
    {
        var names = after.Parts.Where(p => p.Reserve < p.Floor).Select(p => w.Wording.Say(p.Called)).ToList();
        return names.Count == 0 ? w.Say("remedy.none-below") : w.Say("remedy.still-below", string.Join(", ", names));
    }

    /// <summary>What the attachments take at the peak of a changed rig.</summary>
    private static string Loads(ReportBuilder w, RigCheck after)
    {
        AttachmentLoad drawbar = after.DrawbarLoad, casualty = after.CasualtyLoad;
        return w.Say("remedy.loads", w.Display.Force(drawbar.Procedure.Newtons), w.Wording.Say(drawbar.Called), w.Display.Force(casualty.Procedure.Newtons), w.Wording.Say(casualty.Called));
    }

    private static IEnumerable<string> Changed(ReportBuilder w, RigCheck before, RigCheck after)
    {
        for (var i = 0; i < after.Places.Length; i++)
        {
            // The first place of a part is the part as a whole.
            if (i > 0 && after.Places[i].Part == after.Places[i - 1].Part) continue;
            var part = after.Parts[i].Part;
            if (!ReferenceEquals(part, before.Parts[i].Part) && Breaking(part) is { } newtons) yield return part.Name + " " + Strength(w, newtons);
        }
    }

    private static double? Breaking(RigPart part) => part switch
    {
        Strap s => s.Rating.Breaking?.Newtons,
        Bridle b => b.Strap.Rating.Breaking?.Newtons,
        SoftShackle s => s.Rating.Breaking?.Newtons,
        Chain c => c.Rating.Breaking?.Newtons,
        WireRope r => r.Rating.Breaking?.Newtons,
        SnatchBlock b => b.Rating.Breaking?.Newtons,
        Shackle s => s.DocumentedBreakingLoad?.Newtons ?? s.Rating.Breaking?.Newtons,
        _ => null,
    };

    private static string Strength(ReportBuilder w, double newtons) => w.Display.Force(newtons) + " (" + w.Display.Marked(newtons) + ")";

    private static string Rule(LineLoadRule rule) => rule switch
    {
        LineLoadRule.LockedGear => "procedure.locked-gear",
        LineLoadRule.HeldAnchor => "procedure.held-anchor",
        LineLoadRule.RaisedThrottle => "procedure.throttle",
        _ => "procedure.none",
    };
}
