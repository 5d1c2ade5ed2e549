#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// How much do the published models agree? First a 30 t machine at three cone indices, then the demo harvester.
// Scenario, invented throughout: a tanker-type beet harvester on a drained clay polder. None of the numbers belongs to a real machine or place.

using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Terramechanics;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);
static Pressure KPa(double kilopascals) => Pressure.FromKilopascals(kilopascals);

// Two axles, two tyres each: 98.1 kN a wheel in front, 49.05 behind. The cone index is the one that the models are fed with.
WheelSet[] Machine(double coneIndex) =>
[
    new WheelSet(new WheelOnSoil(M(0.90), M(2.05), Ratio.FromPercent(20), Force.FromKilonewtons(98.1), KPa(coneIndex)), 2).WithSectionHeight(M(0.55)),
    new WheelSet(new WheelOnSoil(M(0.60), M(1.60), Ratio.FromPercent(20), Force.FromKilonewtons(49.05), KPa(coneIndex)), 2).WithSectionHeight(M(0.42)),
];

var vehicle = new MobilityFactors(M(0.40)).WithPower(Power.FromKilowatts(350), Mass.FromTonnes(30));
foreach (var (coneIndex, terrain) in new[]
{
    (200.0, BekkerTerrains.Find("lean clay (WES)", 32)),
    (400.0, BekkerTerrains.Find("Rubicon sandy loam (Wong)", 43)),
    (900.0, BekkerTerrains.Find("Grenville loam (Wong)", 24)),
})
{
    Console.WriteLine($"30 T MACHINE, CONE INDEX {coneIndex:0} kPa, ALL WHEELS DRIVEN, SLIP AT MOST 0.30");
    Console.WriteLine(WheelModelComparison.OfMachine(Machine(coneIndex), ComparisonInputs.None.WithMobility(vehicle).WithTerrain(terrain).WithUnitWeight(SpecificWeight.FromKilonewtonsPerCubicMeter(16))).ToTable());
}

// The demo harvester, full, level. Cone index 350 kPa and remoulding index 0.7 were measured: 245 kPa is what its wheels leave of the soil.
var front = new Tyre(M(0.80), M(2.05), M(0.55), KPa(240), KPa(190));
var rear = new Tyre(M(1.00), M(1.95), M(0.60), KPa(220), KPa(170));
var harvester = new Machine(
    "harvester",
    [
        new Axle("front axle", M(0), 2, front, driven: true, M(2.6)),
        new Axle("middle axle", M(-4.9), 2, rear, driven: true, M(2.4)),
        new Axle("rear axle", M(-6.8), 2, rear, driven: true, M(2.4)),
    ],
    [
        new NamedLoad("body", Mass.FromTonnes(27), M(-2.75), M(1.7)),
        new NamedLoad("lifter front", Mass.FromTonnes(3), M(2.2), M(0.8), LoadKind.Detachable),
        new NamedLoad("beet", Mass.FromTonnes(22), M(-3.9), M(2.6), LoadKind.Payload),
    ],
    Suspension.Equalised);
var soil = Soil.FromConeIndex(KPa(350), Ratio.FromDecimalFractions(0.7));

// Nobody measured its Bekker parameters, so Bekker's model is not worked for the full one. For the empty one the soil borrows those of a
// published clay; the table says which cone index they imply, to be set against the one that was read.
var borrowed = soil.WithTerrain(BekkerTerrains.Find("lean clay (WES)", 32)).WithDeclaredUnitWeight(SpecificWeight.FromKilonewtonsPerCubicMeter(17));

foreach (var (title, machine, ground) in new[] { ("FULL", harvester, soil), ("TANK EMPTY", harvester.Without("beet"), borrowed) })
{
    var loads = machine.AxleLoads(Grade.Level, PullDirection.Rearwards);
    var wheels = loads.Axles.Select((axle, i) => WheelSet.Of(axle, loads.Of(i), ground.RatingConeIndex)).ToArray();
    var factors = new MobilityFactors(M(0.40)).WithPower(Power.FromKilowatts(450), Mass.FromKilograms(loads.Total.Newtons / 9.80665));
    Console.WriteLine($"DEMO HARVESTER, {title}, RATING CONE INDEX 245 kPa");
    Console.WriteLine(WheelModelComparison.OfMachine(wheels, ComparisonInputs.Of(ground).WithMobility(factors)).ToTable());
}

Console.WriteLine("None of these has belly, suction or rut walls in it: a machine that is down");
Console.WriteLine("needs more (see first-recovery.cs). \"Moves from\" is on level ground; the report");
Console.WriteLine("there counts the 2 % climb of the pull too and so names a higher cone index.");
