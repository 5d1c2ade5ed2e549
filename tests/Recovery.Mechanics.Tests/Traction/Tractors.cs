using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

/// <summary>Towing machines of the worked examples; invented numbers that stand in the check-value files.</summary>
internal static class Tractors
{
    public const double G = 9.80665;

    /// <summary>A two-axle machine by its static axle loads, level.</summary>
    public static Machine TwoAxles(double frontKn, double rearKn, double wheelbase, double centreHeight, Tyre front, Tyre rear, bool frontDriven = true, int rearTyres = 2) => new(
        "tractor",
        [
            new Axle("front axle", M(0), 2, front, frontDriven, M(2.0)),
            new Axle("rear axle", M(-wheelbase), rearTyres, rear, true, M(2.0)),
        ],
        [new NamedLoad("all", Mass.FromKilograms((frontKn + rearKn) * 1000 / G), M(-wheelbase * rearKn / (frontKn + rearKn)), M(centreHeight))]);

    public static Machine SixteenTonnes(double frontKn = 62.8, double rearKn = 94.2, double centreHeight = 1.0, bool frontDriven = true) =>
        TwoAxles(frontKn, rearKn, 3.0, centreHeight, Tyre(0.60, 1.60, 0.35, 0.22), Tyre(0.71, 2.05, 0.45, 0.22), frontDriven);

    public static TowingMachine SixteenTonneTower(double coneIndex = 900, double remoulding = 0.8, double hitchHeight = 0.5, double behind = 0.9) =>
        new(SixteenTonnes(), Soil.FromConeIndex(KPa(coneIndex), Frac(remoulding)), M(-3.0 - behind), M(hitchHeight));

    /// <summary>The machine of a check row, on a soil whose cone index and rating cone index are both the one that the row feeds.</summary>
    public static TowingMachine Of(CheckRow row, double coneIndexPascals)
    {
        double dh = row.Si("dh");
        var machine = TwoAxles(
            row.Si("axle_f") / 1000, row.Si("axle_r") / 1000, row.Si("L"), 1.0,
            Tyre(row.Si("bf"), row.Si("df"), 0.35, dh), Tyre(row.Si("br"), row.Si("dr"), 0.45, dh));
        return new TowingMachine(machine, Soil.FromConeIndex(Pressure.FromPascals(coneIndexPascals), Frac(1)), M(-row.Si("L")), M(row.Si("H")));
    }
}
