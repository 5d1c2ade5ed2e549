#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// How sure the numbers of a plan are: the odds, what each measure does to them, and what to measure next.
// Scenario, invented throughout: the same bogged tanker-type beet harvester as in first-recovery.cs. All machine, soil and
// gear numbers are plausible and made up; none belongs to a real machine or place.

using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using Recovery.Mechanics.Uncertainty;
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

// Unloaded and dug out first: the plan that somebody would really try.
Measure[] done = [RecoveryMeasures.Unload("beet"), RecoveryMeasures.Dig(Angle.FromDegrees(9)), RecoveryMeasures.FreeBelly()];
var tried = done.Aggregate(plan, (p, m) => m.ApplyTo(p));

// Every spread is a factor on the plan's own value, with its source. The harvester was not weighed; the axle straps are two seasons old.
var sampler = PlanSampler.WithDefaults(tried)
    .With("stuck.load:body", Spread.LognormalAround(1, 0.05))
    .With("rig.wear:axle strap", Spread.Truncated(Spread.Normal(0.8, 0.1), 0.4, 1));
Console.WriteLine("WHAT SCATTERS (all data invented)");
Console.WriteLine();
Console.WriteLine("Each is a factor on the plan's own value. 1 in 20 lie below, 1 in 20 above:");
Console.WriteLine();
foreach (var input in sampler.Inputs.Where(i => !i.Input.Key.StartsWith("rig.strength")))
{
    Say("- " + input.Input.Title + ": " + Hundredths(input.Factor.Quantile(0.05)) + " to " + Hundredths(input.Factor.Quantile(0.95)) + " times (" + Standings.Describe(input.Source.Standing) + ")");
}

Say("- strength of every part when new: a few per cent about its mean (reported)");

// An input that changes the machine makes the plan anew for every sample, so it is left out of the long run.
var samples = sampler.Without("stuck.load:body").Run(1_000_000, seed: 2026);
Console.WriteLine();
Console.WriteLine("UNLOADED, DUG, BELLY FREE");
Console.WriteLine();
Console.Write(samples.ToReport());

Console.WriteLine();
Console.WriteLine("WHAT EACH MEASURE DOES TO THE ODDS");
Console.WriteLine("on the same samples, from the plan as found; the fall of the demand is that of");
Console.WriteLine("the middle sample, in brackets what 1 in 20 fall short of and 1 in 20 exceed");
Console.WriteLine();
var found = PlanSampler.WithDefaults(plan);
Console.WriteLine("as it stands");
Say("    not enough: " + found.Run(20_000, seed: 2026).NotEnough.WithInterval());
foreach (var measure in MeasureList.For(plan))
{
    var effect = MeasureSamples.Of(found, [measure], 20_000, seed: 2026);
    Console.WriteLine(measure.Title);
    Tell(effect);
}

var together = MeasureSamples.Of(found, done, 20_000, seed: 2026);
Console.WriteLine("unload, dig and free the belly together");
Tell(together);

Console.WriteLine();
Console.WriteLine("HOW LIKELY A LIMIT IS PASSED");
Console.WriteLine("sampled; by first order (beta: deviations from the middle to the likeliest way");
Console.WriteLine("there, below 0 where the middle is past it); sampled once more about that way,");
Console.WriteLine("which sees rare things better");
Console.WriteLine();
var fast = sampler.Without("stuck.load:body");
foreach (var key in new[] { "pull", "frees-itself", "nose-lift", "floor:axle strap", "breaks:axle strap" }) Say("- " + PlanLimitOdds.Of(PlanLimits.Of(fast, key), 20_000, seed: 1));

Console.WriteLine();
Console.WriteLine("WHAT TO MEASURE NEXT");
Console.WriteLine();
foreach (var worth in NextMeasurement.Rank(sampler, samples: 64, seed: 1).Ranked.Take(4)) Say("- " + worth);

Console.WriteLine();
Console.WriteLine("CAUTIONS");
Console.WriteLine();
Say("- Odds hold for what scatters above and for nothing else: brakes, hidden damage, what lies buried and what people do are not in them. Read them as orders of magnitude.");
Say("- Small odds are no leave to stand near the line: nobody in line with it, whatever the odds.");

static void Tell(MeasureSamples effect)
{
    double Tens(double probability) => Math.Round(effect.DemandSavedNewtons.Quantile(probability) / 10000) * 10;
    var (least, middle, most) = (Tens(0.05), Tens(0.5), Tens(0.95));
    Say("    demand " + (least == 0 && most == 0 ? "as it was" : "falls by " + Whole(middle) + " kN (" + (least < 0 ? "rises by " + Whole(-least) + " to falls by " : Whole(least) + " to ") + Whole(most) + ")") + "; not enough: " + effect.NotEnoughAfter.WithInterval());
}

static string Whole(double number) => (number + 0.0).ToString("0", System.Globalization.CultureInfo.InvariantCulture);

static string Hundredths(double number) => number.ToString("0.0#", System.Globalization.CultureInfo.InvariantCulture);

static void Say(string text)
{
    // Lines that follow stand under the text of the first.
    var indent = new string(' ', text.StartsWith("- ") ? 1 : Math.Max(0, text.Length - text.TrimStart().Length - 1));
    var line = text.StartsWith("- ") ? string.Empty : indent;
    foreach (var word in text.TrimStart().Split(' '))
    {
        if (line.Length + 1 + word.Length > 78)
        {
            Console.WriteLine(line);
            line = indent;
        }

        line += line.Length == 0 ? word : " " + word;
    }

    Console.WriteLine(line);
}
