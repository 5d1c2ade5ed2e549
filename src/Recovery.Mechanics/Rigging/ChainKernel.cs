using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Strength of chain, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.ChainBreaking"/>, <see cref="PartSources.ChainHot"/>, <see cref="PartSources.ColdSteel"/>, <see cref="PartSources.CargoTables"/>.</remarks>
internal static class ChainKernel
{
    /// <summary>Coldest use, deg C.</summary>
    public const double Coldest = -40;

    /// <summary>Hottest row of the table, deg C: 1000 F.</summary>
    public const double Hottest = (1000 - 32) / 1.8;

    /// <summary>Grade as a number; unmarked counts as 30.</summary>
    public static int Number(ChainGrade grade) => grade switch
    {
        ChainGrade.Grade43 => 43,
        ChainGrade.Grade70 => 70,
        ChainGrade.Grade80 => 80,
        ChainGrade.Grade100 => 100,
        _ => 30,
    };

    /// <summary>Breaking strength: 10 x grade N/mm2 on the two limbs of a link, 2 (pi/4) d^2.</summary>
    public static double Breaking(int grade, double diameterMetres) => grade * 1e7 * 2 * (Math.PI / 4) * diameterMetres * diameterMetres;

    /// <summary>Share of the limit that is left while the chain is hot: the row at or above the temperature, none lost below 400 F (204 C); not a number outside -40 C to 1000 F.</summary>
    public static double Hot(double celsius)
    {
        var fahrenheit = Math.Round((celsius * 1.8) + 32, 6);
        if (celsius < Coldest || fahrenheit > 1000) return double.NaN;
        return fahrenheit < 400 ? 1 : fahrenheit <= 400 ? 0.90 : fahrenheit <= 500 ? 0.85 : fahrenheit <= 600 ? 0.80 : fahrenheit <= 700 ? 0.70 : fahrenheit <= 800 ? 0.60 : fahrenheit <= 900 ? 0.50 : 0.40;
    }

    /// <summary>The older table, shown beside: first loss at 600 F.</summary>
    public static double HotOlder(double celsius)
    {
        var fahrenheit = Math.Round((celsius * 1.8) + 32, 6);
        if (celsius < Coldest || fahrenheit > 1000) return double.NaN;
        return fahrenheit < 600 ? 1 : fahrenheit <= 600 ? 0.90 : fahrenheit <= 700 ? 0.80 : fahrenheit <= 800 ? 0.70 : fahrenheit <= 900 ? 0.60 : 0.50;
    }
}
