using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using UnitsNet;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>Machines of the worked examples; invented numbers that stand in the check-value files.</summary>
internal static class ReferenceMachines
{
    public static Length M(double metres) => Length.FromMeters(metres);

    public static Force KN(double kilonewtons) => Force.FromKilonewtons(kilonewtons);

    public static Pressure KPa(double kilopascals) => Pressure.FromKilopascals(kilopascals);

    public static Ratio Frac(double fraction) => Ratio.FromDecimalFractions(fraction);

    public static Tyre Tyre(double b, double d, double h, double deflectionRatio) => new(M(b), M(d), M(h), KPa(200), KPa(140), Frac(deflectionRatio));

    /// <summary>Three-axle beet harvester: body 27 t, front 3 t, beet 22 t; axles at 0, -4.9, -6.8 m.</summary>
    public static Machine Harvester(Suspension suspension = Suspension.Equalised) => new(
        "beet harvester",
        [
            new Axle("front axle", M(0), 2, Tyre(0.80, 2.05, 0.55, 0.20), true, M(2.6)),
            new Axle("middle axle", M(-4.9), 2, Tyre(1.00, 1.95, 0.55, 0.20), true, M(2.6)),
            new Axle("rear axle", M(-6.8), 2, Tyre(1.00, 1.95, 0.55, 0.20), true, M(2.6)),
        ],
        [
            new NamedLoad("body", Mass.FromTonnes(27), M(-2.75), M(1.7)),
            new NamedLoad("front", Mass.FromTonnes(3), M(2.2), M(0.8), LoadKind.Detachable),
            new NamedLoad("beet", Mass.FromTonnes(22), M(-3.9), M(2.6), LoadKind.Payload),
        ],
        suspension);

    /// <summary>The harvester half a metre down, belly 0.15 m in, CI 350 kPa, RI 0.7, drawn rearwards up 2 %.</summary>
    public static StuckMachine StuckHarvester(Suspension suspension = Suspension.Equalised) => new(
        Harvester(suspension),
        Soil.FromConeIndex(KPa(350), Frac(0.7)) with { DeclaredUnitWeight = SpecificWeight.FromKilonewtonsPerCubicMeter(17), DeclaredAdhesionFactor = Frac(0.5) },
        [M(0.5), M(0.5), M(0.5)],
        PullDirection.Rearwards)
    {
        Grade = Grade.FromPercent(2),
        Belly = new Belly(M(3.0), M(1.6), M(0.15)),
    };
}
