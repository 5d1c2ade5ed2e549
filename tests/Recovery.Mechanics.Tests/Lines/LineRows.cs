using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>Lines made from check rows.</summary>
internal static class LineRows
{
    public static readonly Source Test = new("test", "made up for a test", Standing.UserSupplied);

    public static Force N(double newtons) => Force.FromNewtons(newtons);

    public static Mass Kg(double kilograms) => Mass.FromKilograms(kilograms);

    public static Speed Mps(double metresPerSecond) => Speed.FromMetersPerSecond(metresPerSecond);

    public static LinearDensity PerMetre(double kilograms) => LinearDensity.FromKilogramsPerMeter(kilograms);

    public static LinearElongation Linear(double length, double breakForce, double strain) => LoadElongation.Linear(M(length), N(breakForce), Frac(strain), Test);

    /// <summary>Columns MBS, eb, L with an ending.</summary>
    public static LinearElongation Linear(CheckRow row, string ending = "") => Linear(row.Si("L" + ending), row.Si(row.Has("MBS" + ending) ? "MBS" + ending : "MBS"), row.Si("eb" + ending));

    public static PowerLawElongation Power(CheckRow row) => LoadElongation.PowerLaw(M(row.Si("L")), N(row.Si("Fb")), Frac(row.Si("eb")), row.Si("n"), Test);

    public static LineSegment Segment(CheckRow row) => new("strap", Linear(row), PerMetre(row.Si("m_line")));

    /// <summary>A taut line of a given stiffness that does not end within a test.</summary>
    public static LineAssembly OfStiffness(double newtonsPerMetre, double slack = 0)
    {
        var end = Math.Min(2e7, 250 * newtonsPerMetre);
        return new([new LineSegment("line", Linear(300, end, end / newtonsPerMetre / 300), PerMetre(1))], M(slack));
    }

    public static LineAssembly Taut(LoadElongation curve, double slack = 0) => new([new LineSegment("strap", curve, PerMetre(1))], M(slack));
}
