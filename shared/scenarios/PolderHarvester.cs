using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Scenarios;

/// <summary>The demo scenario, invented throughout: a tanker-type beet harvester down on a drained clay polder, a neighbour's tractor, a bridle rig. Compiled into benchmarks and tests; <c>docs/examples/first-recovery.cs</c> builds the same plan.</summary>
internal static class PolderHarvester
{
    public static RecoveryPlan Create()
    {
        static Length M(double metres) => Length.FromMeters(metres);
        var front = new Tyre(M(0.80), M(2.05), M(0.55), Pressure.FromKilopascals(240), Pressure.FromKilopascals(190));
        var rear = new Tyre(M(1.00), M(1.95), M(0.60), Pressure.FromKilopascals(220), Pressure.FromKilopascals(170));
        var harvester = new Machine(
            "harvester",
            [new Axle("front axle", M(0), 2, front, true, M(2.6)), new Axle("middle axle", M(-4.9), 2, rear, true, M(2.4)), new Axle("rear axle", M(-6.8), 2, rear, true, M(2.4))],
            [new NamedLoad("body", Mass.FromTonnes(27), M(-2.75), M(1.7)), new NamedLoad("lifter front", Mass.FromTonnes(3), M(2.2), M(0.8), LoadKind.Detachable), new NamedLoad("beet", Mass.FromTonnes(22), M(-3.9), M(2.6), LoadKind.Payload)],
            Suspension.Equalised);
        var stuck = new StuckMachine(harvester, Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7)), [M(0.50), M(0.50), M(0.50)], PullDirection.Rearwards)
        {
            Grade = Grade.FromPercent(2),
            Belly = new Belly(M(3.0), M(0.7), M(0.15)),
        };
        var tractor = new TowingMachine(
            new Machine(
                "tractor",
                [new Axle("front axle", M(0), 2, new Tyre(M(0.60), M(1.60), M(0.42), Pressure.FromKilopascals(120)), true, M(2.0)), new Axle("rear axle", M(-3.05), 2, new Tyre(M(0.71), M(2.05), M(0.55), Pressure.FromKilopascals(110)), true, M(2.0))],
                [new NamedLoad("tractor and ballast", Mass.FromTonnes(18), M(-1.77), M(1.05))]),
            Soil.FromConeIndexOnly(Pressure.FromKilopascals(1000)).WithWeakestReading(Pressure.FromKilopascals(850)),
            M(-4.05),
            M(0.5))
        {
            FirmestConeIndex = Pressure.FromKilopascals(1200),
            EnginePower = Power.FromKilowatts(250),
            PullSpeed = Speed.FromKilometersPerHour(2),
        };
        var rig = new Rig(
            new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true),
            [
                new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(12)) { Condition = StrapCondition.Wet },
                Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(18)), M(1.9)),
                new Shackle("shackle", Rating.WorkingLoadLimitTonnes(12, 5), Mass.FromKilograms(8)),
                new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(50), M(1.6)) { Choked = true, AngleOfChoke = Angle.FromDegrees(125) },
            ],
            new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true));
        var site = new RecoverySite
        {
            PeopleInLine = false,
            UnderMachine = new UnderMachineLine(M(8.5), M(4.9), M(0.5), M(0.45), [new UndersidePart("rear axle", M(6.8), M(0.65)), new UndersidePart("discharge chute", M(8.5), M(0.9))]) { BellyEndBehindAxle = M(4.2) },
        };
        return new RecoveryPlan(stuck, tractor, rig, DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1.5)), site);
    }
}
