using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Working load limits of cargo chain, webbing and wire rope without a rating of their own, as printed in 49 CFR 393.108.</summary>
/// <remarks>The order of grades is not the order of limits: at 8 mm grade 70 stands at 2,130 kg and grade 80 at 2,000 kg. A size between two printed ones takes the smaller. Sources: tables reported, rules for unmarked gear primary.</remarks>
public static class DefaultRatings
{
    private static readonly double[] ChainMillimetres = [7, 8, 10, 13, 16];

    private static readonly (ChainGrade Grade, double[] Kilograms, double[] Pounds)[] ChainColumns =
    [
        (ChainGrade.Grade30, [580, 860, 1200, 2030, 3130], [1300, 1900, 2650, 4500, 6900]),
        (ChainGrade.Grade43, [1180, 1770, 2450, 4170, 5910], [2600, 3900, 5400, 9200, 13000]),
        (ChainGrade.Grade70, [1430, 2130, 2990, 5130, 7170], [3150, 4700, 6600, 11300, 15800]),
        (ChainGrade.Grade80, [1570, 2000, 3200, 5400, 8200], [3500, 4500, 7100, 12000, 18100]),
        (ChainGrade.Grade100, [1950, 2600, 4000, 6800], [4300, 5700, 8800, 15000]),
    ];

    /// <summary>Gets the rows of webbing, by width.</summary>
    public static IReadOnlyList<DefaultRating> Webbing { get; } = Array.AsReadOnly<DefaultRating>(
    [
        new("webbing", 45, 790, null, PartSources.CargoTables),
        new("webbing", 50, 910, 2000, PartSources.CargoTables),
        new("webbing", 75, 1360, null, PartSources.CargoTables),
        new("webbing", 100, 1810, 4000, PartSources.CargoTables),
    ]);

    /// <summary>Gets the rows of wire rope 6 x 37 with fibre core, by diameter.</summary>
    public static IReadOnlyList<DefaultRating> WireRope { get; } = Array.AsReadOnly<DefaultRating>(
    [
        new("wire rope 6x37 FC", 6.35, 640, null, PartSources.CargoTables),
        new("wire rope 6x37 FC", 9.525, 1360, null, PartSources.CargoTables),
        new("wire rope 6x37 FC", 12.7, 2400, null, PartSources.CargoTables),
        new("wire rope 6x37 FC", 15.875, 3770, null, PartSources.CargoTables),
        new("wire rope 6x37 FC", 19.05, 4940, null, PartSources.CargoTables),
    ]);

    /// <summary>Gives the rows of a grade of chain.</summary>
    /// <param name="grade">The grade; unmarked counts as grade 30.</param>
    /// <returns>The rows, by size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The grade is not a defined one.</exception>
    public static IReadOnlyList<DefaultRating> Chain(ChainGrade grade)
    {
        var counted = Guard.Defined(grade, grade is >= ChainGrade.Unmarked and <= ChainGrade.Grade100, nameof(grade)) == ChainGrade.Unmarked ? ChainGrade.Grade30 : grade;
        var (_, kilograms, pounds) = ChainColumns.Single(c => c.Grade == counted);
        return Array.AsReadOnly(kilograms.Select((kg, i) => new DefaultRating("chain grade " + Text.Number(ChainKernel.Number(counted)), ChainMillimetres[i], kg, pounds[i], grade == ChainGrade.Unmarked ? PartSources.CargoRules : PartSources.CargoTables)).ToArray());
    }

    /// <summary>Finds a chain: the largest printed size not above its own.</summary>
    /// <param name="grade">The grade; unmarked counts as grade 30.</param>
    /// <param name="diameter">Diameter of its link, 1 to 100 mm.</param>
    /// <returns>The row; null below the smallest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static DefaultRating? OfChain(ChainGrade grade, Length diameter) => Find(Chain(grade), Guard.Metres(diameter, 0.001, 0.1, nameof(diameter)));

    /// <summary>Finds webbing without a mark: the largest printed width not above its own.</summary>
    /// <param name="width">Its width, 10 to 500 mm.</param>
    /// <returns>The row; null below the smallest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public static DefaultRating? OfWebbing(Length width) => Find(Webbing, Guard.Metres(width, 0.01, 0.5, nameof(width)));

    /// <summary>Finds wire rope 6 x 37 with fibre core: the largest printed size not above its own.</summary>
    /// <param name="diameter">Its diameter, 1 to 200 mm.</param>
    /// <returns>The row; null below the smallest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static DefaultRating? OfWireRope(Length diameter) => Find(WireRope, Guard.Metres(diameter, 0.001, 0.2, nameof(diameter)));

    /// <summary>Limit of unmarked wire rope of known make: a quarter of its nominal strength (49 CFR 393.108(e), primary).</summary>
    /// <param name="nominalStrength">Nominal strength, 1 to 20,000 kN.</param>
    /// <returns>The working load limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static Force OfUnmarkedWireRope(Force nominalStrength) => Force.FromNewtons(Guard.Newtons(nominalStrength, 1, 20000, nameof(nominalStrength)) / 4);

    private static DefaultRating? Find(IReadOnlyList<DefaultRating> rows, double metres) => rows.LastOrDefault(r => TableKernel.Reaches(metres, r.Size.Meters));
}
