#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// What on the farm can pull it, and what cannot and why: machines alone, in line and side by side, a winch, tackle and anchors.
// Scenario, invented throughout: a tanker-type beet harvester is down on a drained clay polder. All machine, soil and gear
// numbers are plausible and made up; none belongs to a real machine or place.

using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Traction;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);
static Force KN(double kilonewtons) => Force.FromKilonewtons(kilonewtons);

// The harvester, half a metre down with its tank full. Tyre: width, diameter, section height, inflation, lowest the maker lists.
var front = new Tyre(M(0.80), M(2.05), M(0.55), Pressure.FromKilopascals(240), Pressure.FromKilopascals(190));
var rear = new Tyre(M(1.00), M(1.95), M(0.60), Pressure.FromKilopascals(220), Pressure.FromKilopascals(170));
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
var stuck = new StuckMachine(harvester, Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7)), [M(0.50), M(0.50), M(0.50)], PullDirection.Rearwards)
{
    Grade = Grade.FromPercent(2),
    Belly = new Belly(M(3.0), M(0.7), M(0.15)),
};

// Two tractors on the headland; its soil was read with cone and remoulding test.
var headland = Soil.FromConeIndex(Pressure.FromKilopascals(1000), Ratio.FromDecimalFractions(0.8)).WithWeakestReading(Pressure.FromKilopascals(850));
TowingMachine Tractor(string name, double tonnes, double kilowatts) => new(
    new Machine(
        name,
        [
            new Axle("front axle", M(0), 2, new Tyre(M(0.60), M(1.60), M(0.42), Pressure.FromKilopascals(120)), driven: true, M(2.0)),
            new Axle("rear axle", M(-3.05), 2, new Tyre(M(0.71), M(2.05), M(0.55), Pressure.FromKilopascals(110)), driven: true, M(2.0)),
        ],
        [new NamedLoad("tractor and ballast", Mass.FromTonnes(tonnes), M(-1.77), M(1.05))]),
    headland, hitchPosition: M(-4.05), hitchHeight: M(0.5))
{
    EnginePower = Power.FromKilowatts(kilowatts),
};
var big = Tractor("big tractor", 18, 250);
var small = Tractor("small tractor", 11, 130);

// A forestry winch on the big tractor, six snatch blocks (one without a tag), a log for a deadman in the wet clay, and pickets.
var winch = new Winch("winch", KN(80), M(0.22), M(0.014)) { RatedPull = KN(75) };
var blocks = new FarmBlock[6];
for (var i = 0; i < 5; i++) blocks[i] = new FarmBlock("snatch block " + (char)('A' + i), KN(350));
blocks[5] = new FarmBlock("snatch block without a tag", null);
var means = new PullMeans(
    [big, small],
    [new FarmWinch(winch, layer: 1, heldBy: new MachineAnchor(big))],
    blocks,
    [
        new Deadman("deadman", M(0.75), null, M(3.6), M(2.1), slopeRun: 3, DeadmanSoil.FineGrainedOrWetSand, M(0.5)),
        new MachineAnchor(small),
        new PicketHoldfast("pickets 3-2-1", PicketKind.Wood321, PicketSoil.RiverClay),
    ]);

Console.WriteLine("AS FOUND (all data invented)");
Console.WriteLine();
Console.WriteLine(PullChoice.For(PullDemand.Estimate(stuck), means).ToText());

var lighter = stuck.Without("beet").Dug(Angle.FromDegrees(8), sides: true).WithBellyFreed().Vented().DrivingItsWheels();
Console.WriteLine();
Console.WriteLine("UNLOADED, DUG, VENTED, BELLY FREE, ITS WHEELS TURNING GENTLY");
Console.WriteLine();
Console.WriteLine(PullChoice.For(PullDemand.Estimate(lighter), means).ToText());
