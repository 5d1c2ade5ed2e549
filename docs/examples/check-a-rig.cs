#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// One rig, laid out in space: what every part carries and what flies if one lets go, once with steel in the line and once
// without. Scenario, invented throughout: the bridle rig of first-recovery.cs behind a tractor that stands off the middle
// line. No machine, place or product is meant.

using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);
static RigPoint At(double x, double y, double z) => new(M(x), M(y), M(z));
static string F(double value, int decimals) => value.ToString("F" + decimals, System.Globalization.CultureInfo.InvariantCulture);

// What the tractor puts into the line: the most it can hold, the peak of a gear of 1.5 km/h drawn taut, and a careless take-up.
var strap = new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(12)) { Condition = StrapCondition.Wet };
var line = ElasticLine.Of(LineMaterial.NylonWebbing, strap.Rating.Breaking!.Value, strap.Length);
var loads = LineLoads.Evaluate(Force.FromKilonewtons(115), Mass.FromTonnes(18), line, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1.5)));

// x runs along the pull from the front axle, y to the left, z up. The drawbar is 3 m off the middle line.
var bad = Lay(shackled: true);
var good = Lay(shackled: false);
var policy = DesignFactorPolicy.SlowPull;
RigGraphCheck badCheck = bad.Check(policy, wear: 1.1), goodCheck = good.Check(policy, wear: 1.1);

Console.WriteLine("CHECK A RIG (all data invented)");
Console.WriteLine();
Console.WriteLine("Tractor: " + F(loads.Steady.Kilonewtons, 0) + " kN held, " + F(loads.ProcedurePeak.Kilonewtons, 0) + " kN at the peak of the declared gear, " + F(loads.Careless.Kilonewtons, 0) + " kN careless.");
Wrap("Policy: " + policy.Name + ". Each part on the worst end of each band.");
Compare();

Console.WriteLine();
Console.WriteLine("IF ONE PART LETS GO: the worst that flies, each speed an upper bound");
Console.WriteLine();
Console.WriteLine(Cell("this lets go", 18) + Cell("steel in the line", 31) + "no steel in the line");
Console.WriteLine(new string('-', 80));
foreach (var part in badCheck.Failures.Concat(goodCheck.Failures).Select(f => Alike(f.Part)).Distinct())
    foreach (var (name, left, right) in Rows(part, Worst(badCheck, part), Worst(goodCheck, part))) Console.WriteLine((Cell(name, 18) + Cell(left, 31) + right).TrimEnd());

Wrap("Towards the drawbar sits the driver of the tractor, towards the axle whoever is in the harvester: glass stops none of it. " + (goodCheck.Failures.Select(f => f.Jam).FirstOrDefault(j => j is not null) is { } jam ? "A bridle that lost an end and jams in its eye in place of running out: " + jam + ". No level is accepted for it." : string.Empty));
Console.WriteLine();
Console.WriteLine("Steel on a free end: " + Names(badCheck.SteelOnFreeEnds) + " against " + Names(goodCheck.SteelOnFreeEnds) + ".");
foreach (var finding in badCheck.Findings().Where(f => f.Id is "line.metal-joiner" or "rig.steel-on-free-end").Take(2)) Wrap(finding.Severity + ": " + finding.Message + " " + finding.Remedy);
var better = badCheck.BetterArrangement!.Check(policy, wear: 1.1);
Wrap("The better arrangement, found from the bad one: " + string.Join(", ", better.Graph.Nodes.Where(n => n.Joiner is not null).Select(n => n.Joiner!.Name)) + ". Steel on a free end then: " + Names(better.SteelOnFreeEnds) + ".");

Console.WriteLine();
Console.WriteLine("WHERE A WEAK LINK MOVES THE FAILURE");
Wrap("By strength alone the first to part is " + goodCheck.PartingOrder[0].Name + ", at a line pull of " + F(goodCheck.PartingOrder[0].PartingPull!.Value.Kilonewtons, 0) + " kN.");
var moved = goodCheck.WithStrength("axle strap left", Force.FromTonnesForce(15));
Wrap("With an axle strap of 15 t it is " + moved.PartingOrder[0].Name + ", at " + F(moved.PartingOrder[0].PartingPull!.Value.Kilonewtons, 0) + " kN: " + moved.Failures.Where(f => f.Part == moved.PartingOrder[0].Part.Name).OrderByDescending(f => f.SpeedBound).First().Why + ".");
Console.WriteLine();
Wrap("No distance makes the line of pull a place to stand. Forces at every joint add up to less than " + (Math.Max(badCheck.Residual, goodCheck.Residual) < 1e-10 ? "1e-10" : "?") + " of the pull.");

RigGraph Lay(bool shackled)
{
    RigPart End(string side) => shackled
        ? new Shackle("shackle " + side, Rating.WorkingLoadLimitTonnes(12, designFactor: 5), Mass.FromKilograms(8))
        : new SoftShackle("soft shackle " + side, Rating.BreakingStrengthTonnes(60));
    Strap AxleStrap(string side) => new("axle strap " + side, Fibre.Polyester, Rating.BreakingStrengthTonnes(50), M(1.6)) { Choked = true, AngleOfChoke = Angle.FromDegrees(125) };
    return new RigGraph(
        [
            RigNode.Anchor(new AttachmentPoint("axle left", AttachmentKind.FrontAxle, approvedByMaker: true), At(0, 0.95, 0.5)),
            RigNode.Anchor(new AttachmentPoint("axle right", AttachmentKind.FrontAxle, approvedByMaker: true), At(0, -0.95, 0.5)),
            RigNode.Joint("left", End("left")),
            RigNode.Joint("right", End("right")),
            RigNode.Joint("eye", shackled ? new Shackle("middle shackle", Rating.WorkingLoadLimitTonnes(17, designFactor: 5), Mass.FromKilograms(12)) : null),
            RigNode.Puller(new AttachmentPoint("drawbar", AttachmentKind.Drawbar, approvedByMaker: true), At(22, 3, 0.5), RigPull.Of(loads)),
        ],
        [
            RigLink.Between(strap, "drawbar", "eye"),
            RigLink.Running(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(18)), "left", ["eye"], "right"),
            RigLink.Between(AxleStrap("left"), "axle left", "left"),
            RigLink.Between(AxleStrap("right"), "axle right", "right"),
        ]);
}

void Compare()
{
    Console.WriteLine();
    Console.WriteLine("WHAT EACH PART CARRIES AND KEEPS");
    Console.WriteLine();
    Console.WriteLine(Cell("", 25) + Cell("shackles, one in the line", 28) + "soft shackles, no steel");
    Console.WriteLine(Cell("part", 25) + " peak   rated  keeps/stop     peak   rated  keeps/stop");
    Console.WriteLine(new string('-', 80));
    foreach (var name in badCheck.Parts.Concat(goodCheck.Parts).Select(p => Alike(Short(p.Name))).Distinct())
        Console.WriteLine((Cell(name, 25) + Side(badCheck, name) + "  " + Side(goodCheck, name)).TrimEnd());
    Wrap("kN. \"rated\" is steady load over what the policy allows: over 1 fails, marked !. \"keeps\" is strength over peak, \"stop\" the level below which that stops the job; an eye and a bight count half the strap, from memory, and have their own level. * weakest.");
    foreach (var (title, check) in new[] { ("with steel", badCheck), ("without", goodCheck) })
        Wrap("Anchors " + title + ": " + string.Join("; ", check.Attachments.Select(a => a.Point.Name + " " + F(a.Steady.Kilonewtons, 0) + ", at the peak " + F(a.Procedure.Kilonewtons, 0) + (a.InwardProcedure.Kilonewtons >= 0.5 ? ", squeezed by " + F(a.InwardProcedure.Kilonewtons, 0) : string.Empty))) + ".");
}

static string Side(RigGraphCheck check, string name)
{
    if (check.Parts.FirstOrDefault(p => Alike(Short(p.Name)) == name) is not { } part) return Cell("    -", 26);
    var rated = part.RatedUtilisation is { } u ? F(u, 2) + (u > 1 ? "!" : " ") : "? ";
    return F(part.Procedure.Kilonewtons, 0).PadLeft(5) + rated.PadLeft(8) + ((part.Reserve is { } keeps ? F(keeps, 2) : "?") + "/" + F(part.Floor, 2)).PadLeft(12) + (part.Name == check.Weakest?.Name ? "*" : " ");
}

static string Short(string name) => name.Replace("bight in the eye (0.5)", "bight").Replace("eye on the bight (0.5)", "its eye");

static string Alike(string part) => part.Replace("soft shackle", "shackle");

static List<FailureCase> Worst(RigGraphCheck check, string part) => check.Failures.Where(f => Alike(f.Part) == part).OrderByDescending(f => f.Hardware.Count > 0).ThenByDescending(f => f.SpeedBound).Take(1).ToList();

static IEnumerable<(string Name, string Left, string Right)> Rows(string part, List<FailureCase> bad, List<FailureCase> good)
{
    List<string> left = Text(bad), right = Text(good);
    for (var i = 0; i < Math.Max(left.Count, right.Count); i++) yield return (i == 0 ? part : string.Empty, i < left.Count ? left[i] : string.Empty, i < right.Count ? right[i] : string.Empty);
}

static List<string> Text(List<FailureCase> cases) => cases.Count == 0 ? ["-"] : cases.SelectMany(Lines).ToList();

static IEnumerable<string> Lines(FailureCase f)
{
    if (f.Hardware.Count == 0) yield return "the line alone";
    for (var i = 0; i < f.Hardware.Count; i++) yield return f.Hardware[i].Replace("piece of the ", string.Empty) + (i < f.Hardware.Count - 1 || f.MassIsComplete ? i == 0 && f.HardwareMass.Kilograms > 0 ? ", " + F(f.HardwareMass.Kilograms, 0) + " kg" : string.Empty : ", mass ?");
    yield return f.SpeedText + " to " + f.Towards.Replace("axle left and axle right", "the axle");
}

static string Names(IReadOnlyList<string> names) => names.Count == 0 ? "none" : string.Join(", ", names);

static string Cell(string text, int width) => text.Length >= width ? text[..(width - 1)] + " " : text.PadRight(width);

static void Wrap(string text)
{
    var at = string.Empty;
    foreach (var word in text.Split(' '))
    {
        if (at.Length + 1 + word.Length > 80)
        {
            Console.WriteLine(at);
            at = string.Empty;
        }

        at += at.Length == 0 ? word : " " + word;
    }

    Console.WriteLine(at);
}
