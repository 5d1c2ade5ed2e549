using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>Units of the check-value files as factors to SI (angles to radians). Written apart from the library on purpose.</summary>
internal static class Units
{
    private static readonly Dictionary<string, double> Factors = new(StringComparer.Ordinal)
    {
        ["1"] = 1,
        ["%"] = 0.01,
        ["N"] = 1,
        ["kN"] = 1e3,
        ["MN"] = 1e6,
        ["lbf"] = 4.4482216152605,
        ["kip"] = 4448.2216152605,
        ["kgf"] = 9.80665,
        ["t"] = 9806.65,
        ["short_ton"] = 8896.443230521,
        ["long_ton"] = 9964.01641818352,
        ["daN"] = 10,
        ["m"] = 1,
        ["mm"] = 1e-3,
        ["cm"] = 1e-2,
        ["in"] = 0.0254,
        ["ft"] = 0.3048,
        ["m2"] = 1,
        ["m3"] = 1,
        ["mm2"] = 1e-6,
        ["in2"] = 0.00064516,
        ["ft2"] = 0.09290304,
        ["Pa"] = 1,
        ["kPa"] = 1e3,
        ["MPa"] = 1e6,
        ["GPa"] = 1e9,
        ["psi"] = 6894.757293168361,
        ["psf"] = 47.88025898033584,
        ["tsf"] = 95760.51796067168,
        ["kg"] = 1,
        ["lb"] = 0.45359237,
        ["Mg"] = 1000,
        ["kg/m"] = 1,
        ["kg/m3"] = 1,
        ["g/m"] = 1e-3,
        ["kN/m"] = 1e3,
        ["N/m"] = 1,
        ["kN/m2"] = 1e3,
        ["kN/m3"] = 1e3,
        ["N/mm2"] = 1e6,
        ["N s/m"] = 1,
        ["m/s"] = 1,
        ["km/h"] = 1 / 3.6,
        ["mph"] = 0.44704,
        ["m/s2"] = 1,
        ["s"] = 1,
        ["ms"] = 1e-3,
        ["min"] = 60,
        ["h"] = 3600,
        ["d"] = 86400,
        ["yr"] = 365.25 * 86400,
        ["m2/yr"] = 1 / (365.25 * 86400),
        ["J"] = 1,
        ["kJ"] = 1e3,
        ["ft-lbf"] = 1.3558179483314004,
        ["kW"] = 1e3,
        ["hp"] = 745.6998715822702,
        ["kN m"] = 1e3,
        ["deg"] = Math.PI / 180,
        ["rad"] = 1,
        ["rad/s"] = 1,
        ["1/m"] = 1,
    };

    public static double Factor(string unit) =>
        Factors.TryGetValue(unit, out var factor) ? factor : throw new KeyNotFoundException($"Unit '{unit}' of a check-value file is not known.");
}
