using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The rig sections of the report.</summary>
internal static class AssessmentReportRig
{
    public static void Write(ReportBuilder w, Assessment a)
    {
        w.Section("gear", "The line and the gear");
        w.Paragraph(a.Plan.Rig.ToString() + ".");
        if (a.Rig is not { } rig || a.Loads is not { } loads)
        {
            w.Paragraph("Not worked: the strength of the line is not known, so neither its stretch nor its peak loads are.");
            return;
        }

        w.Paragraph("Load in the line: steady " + w.Display.Force(loads.Output.Steady) + ", at the peak of the declared procedure " + w.Display.Force(loads.Output.Procedure) + " (" + Rule(loads.Rule) + "), after one careless take-up " + w.Display.Force(loads.Output.Careless) + ". A second pull on the same strap: " + w.Display.Force(loads.Output.SecondProcedure) + ".");
        w.Table(["each part, " + w.Display.ForceUnit, "peak", "strength", "keeps", "asked"], rig.Parts.Select(p => (IReadOnlyList<string>)[p.Name, w.Display.Cell(p.Procedure.Newtons), p.Strength is { } s ? w.Display.Cell(s.Newtons) : "?", p.Reserve is { } r ? Text.Fixed(r, 2) : "?", Text.Fixed(p.Floor, 2)]).ToList());
        w.Paragraph("\"Keeps\" is strength over peak, \"asked\" the level below which the plan stops.");
        Attachment(w, rig.DrawbarLoad);
        Attachment(w, rig.CasualtyLoad);
        if (rig.AdmissiblePull is { } admissible) w.Paragraph("Line pull that keeps every part within the named policy and the full factors: " + w.Display.Force(admissible.Newtons) + "; the first part reaches its stop level at " + w.Display.Force(rig.FloorPull!.Value.Newtons) + (rig.GearSpeedAtFloor() is { } gear ? ", a locked gear of " + w.Display.Speed(gear.MetersPerSecond) + "." : "."));
        Remedies(w, rig);
        w.Section("failures", "If a part lets go");
        foreach (var f in rig.Failures.Where(f => f.Hardware.Count > 0))
            w.Item("- ", f.Part + ": " + string.Join(", ", f.Hardware) + " (" + Mass(w, f) + ") " + w.Display.UpTo(f.SpeedMetresPerSecond) + " towards and past " + f.Towards + "; " + w.Display.Energy(f.StoredEnergy.Joules) + " in the line.");
        var bare = rig.Failures.Where(f => f.Hardware.Count == 0).Select(f => f.Part).Distinct(StringComparer.Ordinal).ToList();
        if (bare.Count > 0)
        {
            var worst = rig.Failures.Where(f => f.Hardware.Count == 0).OrderByDescending(f => f.SpeedBound.MetersPerSecond).First();
            w.Item("- ", string.Join(", ", bare) + ": no steel on the free end, the line itself recoils " + w.Display.UpTo(worst.SpeedMetresPerSecond) + ".");
        }
    }

    private static void Attachment(ReportBuilder w, AttachmentLoad load)
    {
        string Three(UnitsNet.Force steady, UnitsNet.Force procedure, UnitsNet.Force careless) => w.Display.Force(steady.Newtons) + " steady, " + w.Display.Force(procedure.Newtons) + " at the peak, " + w.Display.Force(careless.Newtons) + " after a careless take-up";
        w.Item("- ", "At the " + load.Point.Name + (load.Sides == 1 ? ": " + Three(load.Steady, load.Procedure, load.Careless) + "." : ", on each side: " + Three(load.Steady, load.Procedure, load.Careless) + ", squeezed inwards by " + w.Display.Force(load.InwardProcedure.Newtons) + " at the peak; on both together: " + Three(load.TotalSteady, load.TotalProcedure, load.TotalCareless) + "."));
    }

    private static string Mass(ReportBuilder w, FailureCase f) => f.MassIsComplete ? w.Display.Mass(f.HardwareMass.Kilograms) : f.HardwareMass.Kilograms > 0 ? w.Display.Mass(f.HardwareMass.Kilograms) + " and the torn-off piece" : "mass not known";

    private static void Remedies(ReportBuilder w, RigCheck rig)
    {
        foreach (var part in rig.Parts.Where(p => p.Reserve < p.Floor).Select(p => p.Part.Name).Distinct(StringComparer.Ordinal))
        {
            if (rig.RemedyForFloor(part) is not { } remedy) continue;
            w.Item("- ", "To lift the stop of the " + part + ": a breaking strength of at least " + Strength(w, remedy.BreakingStrength.Newtons) + ". The whole rig checked again with it: " + (remedy.StillBelow.Count == 0 ? "no part is below its level." : "still below: " + string.Join(", ", remedy.StillBelow) + "."));
        }

        if (rig.RemediedTogether() is { } together && !ReferenceEquals(together, rig))
            w.Item("- ", "All stops of strength lifted together: " + string.Join(", ", Changed(w, rig, together)) + "; the peak is then " + w.Display.Force(together.Loads.Output.Procedure) + ".");
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
        Shackle s => s.DocumentedBreakingLoad?.Newtons ?? s.Rating.Breaking?.Newtons,
        _ => null,
    };

    private static string Strength(ReportBuilder w, double newtons) => w.Display.Force(newtons) + " (" + Text.Number(newtons / (1000 * PhysicalConstants.StandardGravity), 3) + " t)";

    private static string Rule(LineLoadRule rule) => rule switch
    {
        LineLoadRule.LockedGear => "locked gear",
        LineLoadRule.HeldAnchor => "held anchor",
        LineLoadRule.RaisedThrottle => "raised throttle",
        _ => "nothing declared, so the careless one",
    };
}
