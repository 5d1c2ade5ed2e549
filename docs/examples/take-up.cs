#:project ../../src/Recovery.Mechanics/Recovery.Mechanics.csproj

// One strap taken up at 2, 5 and 10 km/h: what the line feels, holds and throws. All machine and gear numbers are invented.

using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

// A nylon strap, 9 m, breaking strength 588 kN, on the stiff end of its band; nothing of it was measured.
var strength = Force.FromKilonewtons(588.4);
var source = new Source("example", "Invented for this example: a strap that breaks at 20 %, linear", Standing.UserSupplied);
var strap = new LineSegment("strap", LoadElongation.Linear(Length.FromMeters(9), strength, Ratio.FromPercent(20), source), LinearDensity.FromKilogramsPerMeter(1.6));
var line = new LineAssembly(strap);

// An 18 t tractor whose wheels can hold 116 kN on the firmest ground it may stand on, and an 8 kg shackle.
var tractor = Mass.FromTonnes(18);
var pull = Force.FromKilonewtons(116);
var shackle = Mass.FromKilograms(8);

Console.WriteLine("ONE STRAP AT THREE SPEEDS (all data invented)");
Console.WriteLine("18 t tractor, 116 kN of pull that goes on, casualty held, no slack");
Console.WriteLine();
Console.WriteLine("km/h  peak kN  of break  stretch m  in line kJ  8 kg shackle thrown");
foreach (var kmh in new[] { 2.0, 5.0, 10.0 })
{
    var peak = TakeUp.PeakHeld(line, tractor, pull, Speed.FromKilometersPerHour(kmh));
    var thrown = Recoil.OfFitting(strap, peak.Peak!.Value, shackle);
    Console.WriteLine(FormattableString.Invariant(
        $"{kmh,4}  {peak.Peak!.Value.Kilonewtons,7:F0}  {100 * peak.Peak!.Value.Kilonewtons / strength.Kilonewtons,6:F0} %  {peak.Stretch!.Value.Meters,9:F2}  {peak.StoredEnergy!.Value.Kilojoules,10:F0}  {thrown.Printed}"));
}

Console.WriteLine();
Console.WriteLine("THE SAME IN A LOCKED GEAR, the line drawn taut first");
foreach (var kmh in new[] { 2.0, 5.0, 10.0 })
{
    var gear = Speed.FromKilometersPerHour(kmh);
    var rule = TakeUp.PeakLockedGear(line, tractor, pull, gear, LockedGearConditions.AllMet);
    var held = TakeUp.PeakHeld(line, tractor, pull, gear);
    var run = TakeUp.Simulate(new TakeUpCase(line, tractor, TowDrive.LockedGear(pull, gear), gear));
    Console.WriteLine(FormattableString.Invariant($"{kmh,4}  at most {Math.Min(rule.Peak!.Value.Kilonewtons, held.Peak!.Value.Kilonewtons):F0} kN; followed in time with slipping wheels {run.Peak.Kilonewtons:F0} kN"));
}

Console.WriteLine();
Console.WriteLine("THE PEAK PASSES A THIRD OF THE BREAKING STRENGTH from these speeds up:\nrefuse above, never aim at");
var limit = strength / 3;
Console.WriteLine("held anchor:");
Console.WriteLine("  " + TakeUp.HighestSpeedHeld(line, tractor, pull, limit).Statement.Replace(": ", ":\n  "));
Console.WriteLine("locked gear:");
Console.WriteLine("  " + TakeUp.HighestSpeedLockedGear(line, tractor, pull, limit).Statement.Replace(": ", ":\n  "));

Console.WriteLine();
Console.WriteLine("CAUTIONS");
Console.WriteLine("- A speed here is a limit above which to refuse, never one to aim at. Creep in");
Console.WriteLine("  the lowest gear, line drawn taut, power raised in steps. No run-up, with any");
Console.WriteLine("  line: one with stretch bears less force and stores more.");
Console.WriteLine("- The shackle flies along the line of pull, through cabs. No distance, cab or");
Console.WriteLine("  blanket is credited; nobody stands in line with it.");
Console.WriteLine("- No loss, no break-out and no damping is credited; no load record of a heavy");
Console.WriteLine("  farm pull is published. A strap pulled before is about twice as stiff:");
var bedded = new LineAssembly(new LineSegment("strap", strap.Curve.In(LineState.AsTested.WithStiffeningFactor(2)), strap.MassPerMetre));
var second = TakeUp.PeakHeld(bedded, tractor, pull, Speed.FromKilometersPerHour(10));
Console.WriteLine(FormattableString.Invariant($"  at 10 km/h the second pull peaks at {second.Peak!.Value.Kilonewtons:F0} kN, {100 * second.Peak!.Value.Kilonewtons / strength.Kilonewtons:F0} % of its breaking strength."));
