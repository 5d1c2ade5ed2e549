using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Sizes of shackles by published specification, as data. One size is made in limits four times apart: the mark tells the limit, the size never does.</summary>
/// <remarks>Grade A 1/2 to 3/4 in by ultimate load over 5 (primary), to 1-1/2 in reported, above from memory; grade B and AS 2741 grade S reported; Navy field rule 3 D2 short tons primary; 29 CFR 1926.251 from memory.</remarks>
public static class ShackleSizes
{
    /// <summary>Gets every printed size.</summary>
    public static IReadOnlyList<ShackleSize> All { get; } = Array.AsReadOnly<ShackleSize>(
    [
        Ultimate(0.5, 20000), Ultimate(0.625, 32500), Ultimate(0.75, 47500),
        Inches(0.875, 6.5, 1.00, 1.44, PartSources.ShackleGradeASeries), Inches(1, 8.5, 1.13, 1.69, PartSources.ShackleGradeASeries), Inches(1.125, 9.5, 1.25, 1.81, PartSources.ShackleGradeASeries),
        Inches(1.25, 12, 1.38, 2.03, PartSources.ShackleGradeASeries), Inches(1.375, 13.5, 1.50, 2.25, PartSources.ShackleGradeASeries), Inches(1.5, 17, 1.63, 2.38, PartSources.ShackleGradeASeries),
        Inches(1.75, 25, 2.0, 2.88, PartSources.ShackleGradeALarge), Inches(2, 35, 2.25, 3.25, PartSources.ShackleGradeALarge), Inches(2.5, 55, 2.75, 4.13, PartSources.ShackleGradeALarge),
        Alloy(0.5, 3.3), Alloy(0.75, 7), Alloy(1, 12.5), Alloy(1.5, 30),
        Metric(2.0, 13, 16, 21), Metric(3.2, 16, 19, 27), Metric(4.7, 19, 22, 32), Metric(6.5, 22, 25, 37), Metric(8.5, 25, 29, 43),
        Osha(0.5, 1.4), Osha(0.625, 2.2), Osha(0.75, 3.2), Osha(0.875, 4.3), Osha(1, 5.6), Osha(1.25, 8.2), Osha(1.5, 11.9), Osha(2, 21.2),
    ]);

    /// <summary>Finds a size of a specification.</summary>
    /// <param name="specification">The specification.</param>
    /// <param name="bodyDiameter">Diameter of the body, 5 to 150 mm.</param>
    /// <returns>The size within 2 % of it; null where none is printed. The Navy rule gives any size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ShackleSize? Find(ShackleSpecification specification, Length bodyDiameter)
    {
        Guard.Defined(specification, specification is >= ShackleSpecification.GradeA and <= ShackleSpecification.Osha1926, nameof(specification));
        var metres = Guard.Metres(bodyDiameter, 0.005, 0.15, nameof(bodyDiameter));
        if (specification == ShackleSpecification.NavyFieldRule) return new(specification, metres, Marking.ShortTons(ShackleKernel.NavyShortTons(metres)), null, null, null, PartSources.NavyShackleRule);
        return All.FirstOrDefault(s => s.Specification == specification && Math.Abs((metres / s.BodyDiameter.Meters) - 1) < 0.02);
    }

    /// <summary>Lists the limits with which shackles of one size are made, least first: to be shown beside a shackle whose mark cannot be read, never taken.</summary>
    /// <param name="bodyDiameter">Diameter of the body, 5 to 150 mm.</param>
    /// <returns>The sizes within 2 % of it by every publication, the Navy rule included.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static IReadOnlyList<ShackleSize> LimitsOf(Length bodyDiameter)
    {
        var found = new List<ShackleSize>();
        for (var specification = ShackleSpecification.GradeA; specification <= ShackleSpecification.Osha1926; specification++)
        {
            if (Find(specification, bodyDiameter) is { } size) found.Add(size);
        }

        return found.OrderBy(s => s.WorkingLoadLimit.Newtons).ToList().AsReadOnly();
    }

    /// <summary>The Navy field rule in its printed metric form, 0.417 D2 t with D in centimetres: 1.2 % below the form in inches.</summary>
    /// <param name="bodyDiameter">Diameter of the body, 5 to 150 mm.</param>
    /// <returns>The limit of the rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static Marking NavyMetricRule(Length bodyDiameter) => Marking.Tonnes(ShackleKernel.NavyTonnes(Guard.Metres(bodyDiameter, 0.005, 0.15, nameof(bodyDiameter))));

    private static ShackleSize Ultimate(double inches, double pounds) =>
        new(ShackleSpecification.GradeA, inches * PhysicalConstants.MetresPerInch, Marking.ShortTons(MarkingKernel.Working(pounds, 5) / 2000), null, null, Marking.Pounds(pounds), PartSources.ShackleGradeAUltimate);

    private static ShackleSize Inches(double inches, double shortTons, double pin, double jaw, Source source) =>
        new(ShackleSpecification.GradeA, inches * PhysicalConstants.MetresPerInch, Marking.ShortTons(shortTons), pin * PhysicalConstants.MetresPerInch, jaw * PhysicalConstants.MetresPerInch, null, source);

    private static ShackleSize Alloy(double inches, double shortTons) =>
        new(ShackleSpecification.GradeB, inches * PhysicalConstants.MetresPerInch, Marking.ShortTons(shortTons), null, null, null, PartSources.ShackleGradeB);

    private static ShackleSize Metric(double tonnes, double bow, double pin, double jaw) =>
        new(ShackleSpecification.AustralianGradeS, bow / 1000, Marking.Tonnes(tonnes), pin / 1000, jaw / 1000, Marking.Tonnes(6 * tonnes), PartSources.ShackleGradeS);

    private static ShackleSize Osha(double inches, double shortTons) =>
        new(ShackleSpecification.Osha1926, inches * PhysicalConstants.MetresPerInch, Marking.ShortTons(shortTons), null, null, null, PartSources.OshaShackles);
}
