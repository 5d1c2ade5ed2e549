using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Published energies of injury by thrown things, side by side: context only.</summary>
/// <remarks>They screen debris and permit nothing. The best-known one, 58 ft-lbf, lies above the 10 % fatality values for head and thorax, and a shackle in a heavy pull passes all of them by two to three orders of magnitude. No result of this library is ever compared with them.</remarks>
public static class InjuryThresholds
{
    /// <summary>Gets the statement that goes with every showing of them.</summary>
    public static string Remark => "Thresholds for screening debris, shown for scale only. They are no filter: nothing is allowed because an energy lies below one of them.";

    /// <summary>Gets them in rising order of energy.</summary>
    public static IReadOnlyList<InjuryThreshold> All { get; } = Array.AsReadOnly<InjuryThreshold>(
    [
        new("debris-risk", Feet(11), "a debris risk analysis counts every inert impact of at least this, 14 CFR Part 417 Appendix C (b)(3)", LinesSources.DebrisRisk),
        new("re-entry", 15, "re-entry debris above it counts as able to injure an unsheltered person, NASA-STD-8719.14", LinesSources.ReEntry),
        new("skull-naval", Feet(15), "naval figure for skull fracture", LinesSources.FatalityReport),
        new("category-3", Feet(25), "unmanned aircraft over people, 14 CFR 107.130", LinesSources.Category3),
        new("thorax-10", Feet(28), "10 % probability of fatality, thorax", LinesSources.FatalityReport),
        new("head-10", Feet(38), "10 % probability of fatality, head", LinesSources.FatalityReport),
        new("hazardous-fragment", Feet(58), "hazardous fragment, DoD 6055.09; from casualty data of 1944", LinesSources.HazardousFragment),
        new("head-50", Feet(60), "50 % probability of fatality, head", LinesSources.FatalityReport),
        new("head-90", Feet(87), "90 % probability of fatality, head", LinesSources.FatalityReport),
    ]);

    private static double Feet(double footPounds) => footPounds * InjuryThreshold.JoulesPerFootPound;
}
