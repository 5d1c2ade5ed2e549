#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// A whole plan, assessed as found and again after the best three measures.
// Scenario, invented throughout: a tanker-type beet harvester, tank full, is down on a drained clay polder. All machine,
// soil and gear numbers are plausible and made up; none belongs to a real machine or place.

using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);

// The harvester: three axles, x forward from the front axle. Tyre: width, diameter, section height, inflation, lowest the maker lists.
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

// The ground beside it: cone index of the uncut soil and remoulding index, measured. It stands half a metre down, belly in the mud.
var stuck = new StuckMachine(harvester, Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7)), [M(0.50), M(0.50), M(0.50)], PullDirection.Rearwards)
{
    Grade = Grade.FromPercent(2),
    Belly = new Belly(M(3.0), M(0.7), M(0.15)),
};

// A neighbour's tractor on the headland. Its soil was read with the cone alone.
var tractorTyreFront = new Tyre(M(0.60), M(1.60), M(0.42), Pressure.FromKilopascals(120));
var tractorTyreRear = new Tyre(M(0.71), M(2.05), M(0.55), Pressure.FromKilopascals(110));
var tractor = new TowingMachine(
    new Machine(
        "tractor",
        [new Axle("front axle", M(0), 2, tractorTyreFront, driven: true, M(2.0)), new Axle("rear axle", M(-3.05), 2, tractorTyreRear, driven: true, M(2.0))],
        [new NamedLoad("tractor and ballast", Mass.FromTonnes(18), M(-1.77), M(1.05))]),
    Soil.FromConeIndexOnly(Pressure.FromKilopascals(1000)).WithWeakestReading(Pressure.FromKilopascals(850)),
    hitchPosition: M(-4.05),
    hitchHeight: M(0.5))
{
    FirmestConeIndex = Pressure.FromKilopascals(1200),
    EnginePower = Power.FromKilowatts(250),
    PullSpeed = Speed.FromKilometersPerHour(2),
};

// A contractor's articulated tractor on duals, an hour away.
var contractor = new TowingMachine(
    new Machine(
        "articulated tractor",
        [new Axle("front axle", M(0), 4, tractorTyreRear, driven: true, M(2.6)), new Axle("rear axle", M(-3.9), 4, tractorTyreRear, driven: true, M(2.6))],
        [new NamedLoad("tractor", Mass.FromTonnes(26), M(-1.75), M(1.2))]),
    tractor.Soil,
    hitchPosition: M(-5.2),
    hitchHeight: M(0.5))
{
    FirmestConeIndex = Pressure.FromKilopascals(1200),
    EnginePower = Power.FromKilowatts(400),
    PullSpeed = Speed.FromKilometersPerHour(2),
};

// The gear, from the drawbar to the axle. Every rating says what it is.
var rig = new Rig(
    new AttachmentPoint("drawbar", AttachmentKind.Drawbar, approvedByMaker: true),
    [
        new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(12)) { Condition = StrapCondition.Wet },
        Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(18)), anchorSpacing: M(1.9)),
        new Shackle("shackle", Rating.WorkingLoadLimitTonnes(12, designFactor: 5), Mass.FromKilograms(8)),
        new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(50), M(1.6)) { Choked = true, AngleOfChoke = Angle.FromDegrees(125) },
    ],
    new AttachmentPoint("front axle", AttachmentKind.FrontAxle, approvedByMaker: true));

// The line runs from the front axle back under the machine; its eye lies behind the tail.
var site = new RecoverySite
{
    PeopleInLine = false,
    UnderMachine = new UnderMachineLine(
        tailBehindAxle: M(8.5), wheelbase: M(4.9), anchorHeight: M(0.5), apexHeight: M(0.45),
        [new UndersidePart("rear axle", M(6.8), M(0.65)), new UndersidePart("discharge chute", M(8.5), M(0.9))])
    {
        BellyEndBehindAxle = M(4.2),
    },
};

var plan = new RecoveryPlan(stuck, tractor, rig, DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1.5)), site);
Console.WriteLine("AS FOUND (all data invented)");
Console.WriteLine();
Console.WriteLine(plan.Assess().ToReport());

var best = MeasureList.BestSet(plan, most: 3);
var after = best.Aggregate(plan, (p, measure) => measure.ApplyTo(p));
Console.WriteLine();
Console.WriteLine("AFTER THE BEST THREE MEASURES");
foreach (var measure in best) Console.WriteLine("- " + measure.Title);
Console.WriteLine();
Console.WriteLine(after.Assess().ToReport());

// What more would it take? Every set of these measures is worked whole; the smallest that lifts the verdict is printed with its stages.
Measure[] offered =
[
    RecoveryMeasures.FreeBelly(),
    RecoveryMeasures.Detach("lifter front"),
    RecoveryMeasures.DriveOwnWheels(),
    RecoveryMeasures.OtherTower(contractor),
    RecoveryMeasures.SlowerGear(Speed.FromKilometersPerHour(1)),
    RecoveryMeasures.ReplacePart("recovery strap", new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(150), M(16)) { Condition = StrapCondition.Wet }),
    RecoveryMeasures.ReplacePart("bridle", Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(120), M(18)), anchorSpacing: M(1.9))),
    RecoveryMeasures.ReplacePart("axle strap", new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(120), M(1.6)) { Choked = true, AngleOfChoke = Angle.FromDegrees(125) }),
    RecoveryMeasures.ReplacePart("shackle", new Shackle("shackle", Rating.WorkingLoadLimitTonnes(25, designFactor: 5), Mass.FromKilograms(18))),
];
var search = MeasureSearch.Run(after, offered);
var last = search.Best.Measures.Aggregate(after, (p, measure) => measure.ApplyTo(p)).Assess();
Console.WriteLine();
Console.WriteLine("THE SMALLEST SET THAT LIFTS THE VERDICT, of " + search.SetsTried + " tried");
Console.WriteLine();
foreach (var measure in search.Contributions()) Say("- " + measure);
foreach (var tie in search.Ties) Say("as few would be: " + string.Join("; ", tie.Measures.Select(m => m.Title)));
Console.WriteLine();
Console.WriteLine(last.ToDocument(DisplayUnits.Metric).Only("verdict", "why", "stages", "stop-when", "after-a-stop").ToText(72));

static void Say(string text)
{
    var line = string.Empty;
    foreach (var word in text.Split(' '))
    {
        if (line.Length + 1 + word.Length > 78)
        {
            Console.WriteLine(line);
            line = " ";
        }

        line += line.Length == 0 ? word : " " + word;
    }

    Console.WriteLine(line);
}
