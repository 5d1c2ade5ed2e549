using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The rig sections of the plain-text report.</summary>
internal static class TextReportRig
{
    public static void Write(ReportWriter w, Assessment a)
    {
        w.Heading("The line and the gear");
        w.Paragraph(a.Plan.Rig.ToString() + ".");
        if (a.Rig is not { } rig || a.Loads is not { } loads)
        {
            w.Paragraph("Not worked: the strength of the line is not known, so neither its stretch nor its peak loads are.");
            return;
        }

        w.Paragraph("Load in the line: steady " + TextReport.Kn(loads.Output.Steady) + ", at the peak of the declared procedure " + TextReport.Kn(loads.Output.Procedure) + " (" + Rule(loads.Rule) + "), after one careless take-up " + TextReport.Kn(loads.Output.Careless) + ". A second pull on the same strap: " + TextReport.Kn(loads.Output.SecondProcedure) + ".");
        w.Table(["each part, kN", "peak", "strength", "keeps", "asked"], rig.Parts.Select(p => (IReadOnlyList<string>)[p.Name, TextReport.Num(p.Procedure.Newtons), p.Strength is { } s ? TextReport.Num(s.Newtons) : "?", p.Reserve is { } r ? Text.Fixed(r, 2) : "?", Text.Fixed(p.Floor, 2)]).ToList());
        w.Paragraph("\"Keeps\" is strength over peak, \"asked\" the level below which the plan stops.");
        if (rig.AdmissiblePull is { } admissible) w.Paragraph("Line pull that keeps every part within the named policy and the full factors: " + TextReport.Kn(admissible.Newtons) + "; the first part reaches its stop level at " + TextReport.Kn(rig.FloorPull!.Value.Newtons) + (rig.GearSpeedAtFloor() is { } gear ? ", a locked gear of " + Text.Number(gear.KilometersPerHour, 2) + " km/h." : "."));
        Remedies(w, rig);
        w.Heading("If a part lets go");
        foreach (var f in rig.Failures.Where(f => f.Hardware.Count > 0))
            w.Item("- ", f.Part + ": " + string.Join(", ", f.Hardware) + " (" + Text.With(f.HardwareMass.Kilograms, "kg", 2) + ") " + f.SpeedText + " towards and past " + f.Towards + "; " + Text.With(f.StoredEnergy.Joules / 1000, "kJ", 2) + " in the line.");
        var bare = rig.Failures.Where(f => f.Hardware.Count == 0).Select(f => f.Part).Distinct(StringComparer.Ordinal).ToList();
        if (bare.Count > 0)
        {
            var worst = rig.Failures.Where(f => f.Hardware.Count == 0).OrderByDescending(f => f.SpeedBound.MetersPerSecond).First();
            w.Item("- ", string.Join(", ", bare) + ": no steel on the free end, the line itself recoils " + worst.SpeedText + ".");
        }
    }

    private static void Remedies(ReportWriter w, RigCheck rig)
    {
        foreach (var part in rig.Parts.Where(p => p.Reserve < p.Floor).Select(p => p.Part.Name).Distinct(StringComparer.Ordinal))
        {
            if (rig.BreakingStrengthForFloor(part) is { } needed)
                w.Item("- ", "To lift the stop of the " + part + ": a breaking strength of at least " + TextReport.Kn(needed.Newtons) + " (" + Text.Number(needed.Newtons / (1000 * PhysicalConstants.StandardGravity), 3) + " t), its own stiffness counted; then check the whole rig again.");
        }
    }

    private static string Rule(LineLoadRule rule) => rule switch
    {
        LineLoadRule.LockedGear => "locked gear",
        LineLoadRule.HeldAnchor => "held anchor",
        LineLoadRule.RaisedThrottle => "raised throttle",
        _ => "nothing declared, so the careless one",
    };
}
