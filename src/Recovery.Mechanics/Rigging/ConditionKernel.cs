using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Whole-length shares of strength, once. What is not published or not permitted is not a number.</summary>
/// <remarks>Sources: <see cref="PartSources.Overload"/>, <see cref="PartSources.Sunlight"/>, <see cref="PartSources.OldNylon"/>, <see cref="PartSources.Chemicals"/>, <see cref="PartSources.Knots"/>; wet fibres: <see cref="RiggingSources.WetNylon"/>, <see cref="RiggingSources.WetOther"/>.</remarks>
internal static class ConditionKernel
{
    /// <summary>Load over breaking strength beyond which a line is retired.</summary>
    public const double RetireShare = 0.75;

    /// <summary>Nylon rope wet, ordinary and improved finish (one study); the code value 0.85 lies between.</summary>
    public const double WetOrdinaryFinish = 0.80, WetImprovedFinish = 1.13;

    /// <summary>Share that a knot leaves: code value, and the worst published one.</summary>
    public const double KnotCode = 0.50, KnotWorst = 0.35;

    /// <summary>Age from which seven nylon dock lines of ten to twelve years count, and the least share that one of them kept.</summary>
    public const double OldYears = 10, OldNylon = 0.25;

    /// <summary>Chemicals: HMPE in bleach or nitric acid.</summary>
    public const double BleachedHmpe = 0.88;

    /// <summary>Wet over dry.</summary>
    public static double Wet(Fibre fibre) => fibre == Fibre.Nylon ? StrengthKernel.WetNylon : 1;

    /// <summary>Coldest use, deg C: the warmest of the published lower limits; none is held for HMPE and aramid.</summary>
    public static double Coldest(Fibre fibre) => fibre switch
    {
        Fibre.Nylon or Fibre.Polyester => -29,
        Fibre.Polypropylene => -40,
        _ => double.NegativeInfinity,
    };

    /// <summary>Hottest use, deg C: the lowest of the published upper limits.</summary>
    public static double Hottest(Fibre fibre) => fibre switch
    {
        Fibre.Hmpe => 60,
        Fibre.Aramid => 177,
        Fibre.Polypropylene => 80,
        _ => 82,
    };

    /// <summary>Coldest use of wire rope, deg C: -60 F with a wire core; none is held for a fibre core.</summary>
    public static double Coldest(WireCore core) => core == WireCore.Wire ? FromFahrenheit(-60) : double.NegativeInfinity;

    /// <summary>Hottest use of wire rope, deg C: 200 F with a fibre core, 400 F with a wire core.</summary>
    public static double Hottest(WireCore core) => FromFahrenheit(core == WireCore.Wire ? 400 : 200);

    /// <summary>Whether a temperature lies within limits, rounding allowed.</summary>
    public static bool Within(double celsius, double coldest, double hottest) => Math.Round(celsius - coldest, 9) >= 0 && Math.Round(celsius - hottest, 9) <= 0;

    /// <summary>Left by continuous sunlight: the published loss of the period reached, no interpolation; nylon to 12 and 36 months, polyester to 12.</summary>
    public static double Sunlight(Fibre fibre, double months) => months <= 0 ? 1 : fibre switch
    {
        Fibre.Nylon => months <= 12 ? 0.60 : months <= 36 ? 0.40 : double.NaN,
        Fibre.Polyester => months <= 12 ? 0.70 : double.NaN,
        Fibre.Hmpe => 1,
        _ => double.NaN,
    };

    /// <summary>Left by age: nylon of ten years and more as the weakest of seven dock lines; nothing published below that and for other fibres.</summary>
    public static double Age(Fibre fibre, double years) => fibre == Fibre.Nylon && years >= OldYears ? OldNylon : 1;

    /// <summary>Left by chemicals; 0 where the chemical excludes the fibre, not a number where nothing is known.</summary>
    public static double Chemical(Fibre fibre, ChemicalExposure chemicals)
    {
        if (chemicals == ChemicalExposure.None) return 1;
        var bleach = (chemicals & ChemicalExposure.BleachOrNitricAcid) != ChemicalExposure.None;
        return fibre switch
        {
            Fibre.Hmpe => bleach ? BleachedHmpe : 1,
            Fibre.Nylon => (chemicals & (ChemicalExposure.Acid | ChemicalExposure.ConcentratedSulphuricAcid)) != ChemicalExposure.None ? 0 : bleach ? double.NaN : 1,
            Fibre.Polyester => (chemicals & (ChemicalExposure.Alkali | ChemicalExposure.ConcentratedSulphuricAcid)) != ChemicalExposure.None ? 0 : bleach ? double.NaN : 1,
            _ => double.NaN,
        };
    }

    /// <summary>Whole-length share: wet x lesser of sunlight and age x chemicals. Sunlight and age overlap: the larger loss alone.</summary>
    public static double WholeLength(double wet, double sunlight, double age, double chemical) => wet * Math.Min(sunlight, age) * chemical;

    private static double FromFahrenheit(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
