using FsCheck;
using FsCheck.Fluent;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;

namespace Recovery.Mechanics.Tests.Terramechanics;

/// <summary>Wheels of the domain: farm and harvester tyres on soils from mud to hard.</summary>
internal static class Wheels
{
    public static WheelOnSoil Of(double coneIndexKilopascals, double loadKilonewtons, double b = 0.65, double d = 1.90, double dh = 0.25) =>
        new(Length.FromMeters(b), Length.FromMeters(d), Ratio.FromDecimalFractions(dh), Force.FromKilonewtons(loadKilonewtons), Pressure.FromKilopascals(coneIndexKilopascals));

    public static WheelOnSoil Of(CheckRow row) => Of(row.Si("CI") / 1000, row.Si("W") / 1000, row.Si("b"), row.Si("d"), row.Si("dh", 0.2));

    /// <summary>The two axles of a comparison row, all wheels driven or the front axle alone.</summary>
    public static WheelSet[] TwoAxles(CheckRow row, double coneIndexKilopascals, bool rearDriven = true, double loadFactor = 1) =>
    [
        new(Of(coneIndexKilopascals, loadFactor * row.Si("Wf") / 1000, row.Si("bf"), row.Si("df"), row.Si("dh")), (int)row.Si("nf")),
        new(Of(coneIndexKilopascals, loadFactor * row.Si("Wr") / 1000, row.Si("br"), row.Si("dr"), row.Si("dh")), (int)row.Si("nr"), rearDriven),
    ];

    public static Ratio Slip(double fraction) => Ratio.FromDecimalFractions(fraction);

    public static Arbitrary<WheelOnSoil> Any(int leastConeIndexKilopascals = 100) => (
        from b in Gen.Choose(30, 120)
        from d in Gen.Choose(100, 220)
        from dh in Gen.Choose(10, 30)
        from load in Gen.Choose(5, 150)
        from ci in Gen.Choose(leastConeIndexKilopascals, 2500)
        select Of(ci, load, b / 100.0, d / 100.0, dh / 100.0)).ToArbitrary();
}
