using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What a rig puts into one of its two attachments: on each side where it is made fast, and on both sides together.</summary>
/// <remarks>
/// <para>Behind a bridle the casualty is held on two sides. <see cref="Steady"/>, <see cref="Procedure"/> and <see cref="Careless"/> are then those of one side, along the leg, the harder one at the upper end of friction: the published numbers of the <see cref="AttachmentPoint"/> are held against them. The totals are the loads of the line. Without a bridle there is one side and both are the same.</para>
/// <para>Steady at most the working load, procedure peak at most the yield, no partial factor on yield (judgement).</para>
/// </remarks>
public sealed record AttachmentLoad
{
    private AttachmentLoad(AttachmentPoint point, int sides, in LineLoadOutput loads, double share, double inward)
    {
        Point = point;
        Sides = sides;
        Share = share;
        Steady = Force.FromNewtons(share * loads.Steady);
        Procedure = Force.FromNewtons(share * loads.Procedure);
        Careless = Force.FromNewtons(share * loads.Careless);
        TotalSteady = Force.FromNewtons(loads.Steady);
        TotalProcedure = Force.FromNewtons(loads.Procedure);
        TotalCareless = Force.FromNewtons(loads.Careless);
        InwardSteady = Force.FromNewtons(inward * loads.Steady);
        InwardProcedure = Force.FromNewtons(inward * loads.Procedure);
        InwardCareless = Force.FromNewtons(inward * loads.Careless);
    }

    internal AttachmentLoad(AttachmentPoint point, (double Steady, double Procedure, double Careless) newtons, (double Steady, double Procedure, double Careless) inward)
    {
        Point = point;
        Sides = 1;
        Share = 1;
        Steady = TotalSteady = Force.FromNewtons(newtons.Steady);
        Procedure = TotalProcedure = Force.FromNewtons(newtons.Procedure);
        Careless = TotalCareless = Force.FromNewtons(newtons.Careless);
        InwardSteady = Force.FromNewtons(inward.Steady);
        InwardProcedure = Force.FromNewtons(inward.Procedure);
        InwardCareless = Force.FromNewtons(inward.Careless);
    }

    /// <summary>Gets the attachment.</summary>
    public AttachmentPoint Point { get; }

    /// <summary>Gets on how many sides the rig is made fast to it: 2 behind a bridle, else 1.</summary>
    public int Sides { get; }

    /// <summary>Gets the share of the line load on the harder side.</summary>
    public double Share { get; }

    /// <summary>Gets the steady load on one side.</summary>
    public Force Steady { get; }

    /// <summary>Gets the procedure peak on one side.</summary>
    public Force Procedure { get; }

    /// <summary>Gets the careless peak on one side.</summary>
    public Force Careless { get; }

    /// <summary>Gets the steady load of all sides together.</summary>
    public Force TotalSteady { get; }

    /// <summary>Gets the procedure peak of all sides together.</summary>
    public Force TotalProcedure { get; }

    /// <summary>Gets the careless peak of all sides together.</summary>
    public Force TotalCareless { get; }

    /// <summary>Gets how hard one side is squeezed towards the other under the steady load; nothing without a bridle. In a rig of any arrangement towards the anchor that it is tied to by straps, pullers and blocks left out.</summary>
    public Force InwardSteady { get; }

    /// <summary>Gets the same at the procedure peak.</summary>
    public Force InwardProcedure { get; }

    /// <summary>Gets the same at the careless peak.</summary>
    public Force InwardCareless { get; }

    /// <summary>Gets the steady load of one side over the working load of the point; null where none is published.</summary>
    public double? WorkingUtilisation => Point.WorkingLoad is { } working ? Steady.Newtons / working.Newtons : null;

    /// <summary>Gets the procedure peak of one side over the yield of the point; null where none is published.</summary>
    public double? YieldUtilisation => Point.Yield is { } yield ? Procedure.Newtons / yield.Newtons : null;

    internal Phrase Called => Sides == 1 ? Phrase.Name(Point.Name) : RiggingPhrases.EachSide.With(Point.Name);

    /// <summary>Gives the loads in one line, invariant culture.</summary>
    /// <returns>One side, and both together.</returns>
    public override string ToString() => Called + ": steady " + Text.Kilonewtons(Steady.Newtons, 3) + ", procedure " + Text.Kilonewtons(Procedure.Newtons, 3) + ", careless " + Text.Kilonewtons(Careless.Newtons, 3)
        + (Sides == 1 ? string.Empty : "; together " + Text.Kilonewtons(TotalSteady.Newtons, 3) + ", " + Text.Kilonewtons(TotalProcedure.Newtons, 3) + ", " + Text.Kilonewtons(TotalCareless.Newtons, 3));

    internal static AttachmentLoad OfDrawbar(Rig rig, in LineLoadOutput loads) => new(rig.Drawbar, 1, loads, 1, 0);

    internal static AttachmentLoad OfCasualty(Rig rig, in LineLoadOutput loads) =>
        rig.Bridle is { } bridle ? new(rig.Casualty, 2, loads, bridle.LegShareWithFriction, bridle.InwardShareWithFriction) : new(rig.Casualty, 1, loads, 1, 0);

    internal void AddFindings(List<Finding> findings)
    {
        if (Point.Kind == AttachmentKind.Unidentified || Point.Forbidden) return;
        double steady = Steady.Kilonewtons, procedure = Procedure.Kilonewtons;
        if (!Point.ApprovedByMaker) findings.Add(new Finding(RiggingFindings.AttachmentUnapproved, Called, procedure, unit: "kN"));
        else if (Point.WorkingLoad is null && Point.Yield is null) findings.Add(new Finding(RiggingFindings.AttachmentNoNumber, Called, procedure, unit: "kN"));
        Limit(Point.WorkingLoad, steady, RiggingFindings.AttachmentWorkingLoad, RiggingPhrases.AtWorkingLoad, findings);
        Limit(Point.Yield, procedure, RiggingFindings.AttachmentYield, RiggingPhrases.AtYield, findings);
    }

    private void Limit(Force? limit, double load, FindingDefinition exceeded, PhraseTemplate level, List<Finding> findings)
    {
        if (limit is not { } most) return;
        if (load > most.Kilonewtons) findings.Add(new Finding(exceeded, Called, load, most.Kilonewtons, "kN"));
        else if (load * RigStrengthFindings.Near > most.Kilonewtons) findings.Add(new Finding(RiggingFindings.WithinTenPercent, level.With(Called), load, most.Kilonewtons, "kN"));
    }
}
