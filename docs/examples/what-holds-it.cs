#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// What holds a stuck machine: floor and wall, how low, central and high arise, the handbook rule beside them, what goes on
// holding after the first movement, whether it can move itself, and what a ramp costs.
// Scenario, invented throughout: a tanker-type beet harvester, tank full, is down on a drained clay polder.

using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);

// Wraps at 78 columns, with the lines after the first indented.
static void Say(string text)
{
    var line = string.Empty;
    foreach (var word in text.Split(' '))
    {
        if (line.Length + word.Length > 77)
        {
            Console.WriteLine(line);
            line = " ";
        }

        line += (line.Length == 0 ? string.Empty : " ") + word;
    }

    Console.WriteLine(line);
}

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

Console.WriteLine("THE HOLE");
Say("- " + FloorBoundModel.Instance.WholeMachine(stuck) + ", as it sank");
var demand = PullDemand.Estimate(stuck);
foreach (var axle in demand.AxleBearings) Say("- " + axle);

Console.WriteLine("\nTHE PULL");
foreach (var bound in demand.Basis) Say("- " + bound);
Say("- after the first movement " + demand.Sustained + " go on holding it");
foreach (var term in demand.Terms) Say("- " + term);

Console.WriteLine("\nTHE HANDBOOK RULE BESIDE IT");
Say("- " + DepthRule.Factor(demand.DepthClass) + " times the weight (from memory), " + demand.MethodRatio!.Value.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture) + " times central");
Say("- " + (demand.MethodReason ?? "within a factor of two, so no reason is owed"));
Say("- with the reduction there is: " + DepthRule.Reduce(demand.DepthRule, againstEntry: true, onTracks: false, powered: true));

Console.WriteLine("\nCAN IT MOVE ITSELF?");
var self = SelfRecovery.Estimate(stuck);
Say("- " + self);
foreach (var step in self.Steps()) Say("- " + step);
Say("- worth of driving its wheels gently with the pull: " + demand.DrivingOwnWheels);

Console.WriteLine("\nDUG OUT AND UNLOADED");
var slope = Angle.FromRadians(Math.Atan(1.0 / 6));
var light = stuck.Without("beet").Dug(slope);
Say("- " + RutExitModel.Instance.RampFor(light, slope));
var after = PullDemand.Estimate(light);
Say("- " + after + (after.MethodReason is { } reason ? ". " + reason : string.Empty));

Console.WriteLine("\nCAUTIONS");
Say("- Estimates of mire are good to a factor of two or three: low and high are bounds and carry no probability.");
Say("- Lighten and dig first; a towed pull comes last. Nobody between machines, and nobody in line with a loaded line.");
