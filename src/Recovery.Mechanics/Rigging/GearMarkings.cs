using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Rigging;

/// <summary>What stands on gear and what to look for.</summary>
internal static class GearMarkings
{
    public static string LookFor(GearKind kind) => kind switch
    {
        GearKind.Webbing => "A sewn tag. A recovery strap is marked with its breaking strength (MBS, MBL), in t, kg or kN; a lifting sling with its WLL in a straight pull, factor 5 (US), 7 (EN 1492) or 8 (AS 1353). LC in daN is cargo gear.",
        GearKind.Roundsling => "A sewn tag with the WLL in a straight pull, factor 5 (US) or 7 (EN 1492, AS 4497). The colour is a hint, the tag decides.",
        GearKind.FibreRope => "The maker's sheet with the breaking strength, with or without splice, and the least pin it may lie on.",
        GearKind.SoftShackle => "The maker's sheet with the breaking strength of the finished shackle; else that of its line counts, no more.",
        GearKind.WireRope => "A certificate with the minimum breaking force and how the ends are made; a sling's tag has its WLL.",
        GearKind.Chain => "The grade on the links (8 or 80, 10 or 100) and a tag with the WLL. No mark counts as grade 30.",
        GearKind.Shackle => "The WLL on the bow, in t or short tons, with maker and grade; a sheet with breaking load and proof load. The size does not tell the limit.",
        GearKind.Block => "The WLL on its side plate: say whether it is for the hook or for the line, and the rope size it takes.",
        GearKind.Drawbar => "The plate or manual of the tractor: horizontal and vertical load of the drawbar, and its pin.",
        _ => "The manual of the machine: recovery points with their load. Ask maker or dealer with the loads at that point.",
    };

    public static IReadOnlyList<RatingKind> Kinds(GearKind kind) => kind switch
    {
        GearKind.Webbing => Array.AsReadOnly<RatingKind>([RatingKind.BreakingStrength, RatingKind.WorkingLoadLimit, RatingKind.LashingCapacity]),
        GearKind.Roundsling or GearKind.Chain or GearKind.Block => Array.AsReadOnly<RatingKind>([RatingKind.WorkingLoadLimit]),
        GearKind.FibreRope or GearKind.SoftShackle => Array.AsReadOnly<RatingKind>([RatingKind.BreakingStrength]),
        GearKind.WireRope => Array.AsReadOnly<RatingKind>([RatingKind.BreakingStrength, RatingKind.WorkingLoadLimit]),
        GearKind.Shackle => Array.AsReadOnly<RatingKind>([RatingKind.WorkingLoadLimit, RatingKind.BreakingStrength, RatingKind.ProofLoad]),
        _ => Array.AsReadOnly<RatingKind>([RatingKind.WorkingLoadLimit]),
    };
}
