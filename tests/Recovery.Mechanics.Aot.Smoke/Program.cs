using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

static Length M(double metres) => Length.FromMeters(metres);

var tyre = new Tyre(M(0.8), M(2.05), M(0.55), Pressure.FromKilopascals(240), Pressure.FromKilopascals(180));
var stuck = new StuckMachine(
    new Machine("harvester", [new Axle("front axle", M(0), 2, tyre, true, M(2.6)), new Axle("rear axle", M(-4.9), 2, tyre, true, M(2.4))], [new NamedLoad("body", Mass.FromTonnes(22), M(-2.3), M(1.7)), new NamedLoad("beet", Mass.FromTonnes(8), M(-2.9), M(2.6), LoadKind.Payload)]),
    Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7)), [M(0.4), M(0.4)], PullDirection.Rearwards)
{ Belly = new Belly(M(3), M(0.7), M(0.1)) };
var tower = new TowingMachine(
    new Machine("tractor", [new Axle("front axle", M(0), 2, tyre, true, M(2)), new Axle("rear axle", M(-3), 2, tyre, true, M(2))], [new NamedLoad("tractor", Mass.FromTonnes(18), M(-1.8), M(1))]),
    Soil.FromConeIndexOnly(Pressure.FromKilopascals(1000)), M(-4), M(0.5));
var rig = new Rig(
    new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true),
    [
        new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(12)),
        Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(16)), M(1.3)),
        new Shackle("shackle", Rating.WorkingLoadLimitTonnes(12, 5), Mass.FromKilograms(8)),
        new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(50), M(1.6)) { Choked = true },
    ],
    new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true));
var plan = new RecoveryPlan(stuck, tower, rig, DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)), RecoverySite.Undeclared);
var report = plan.Assess().ToReport();
Console.WriteLine(report);
Console.WriteLine(plan.Assess().Demand.Explain());
var loads = LineLoads.Evaluate(Force.FromKilonewtons(116), Mass.FromTonnes(18), ElasticLine.Of(LineMaterial.NylonWebbing, Force.FromKilonewtons(588.399), M(9)), PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
var good = Math.Abs(loads.ProcedurePeak.Kilonewtons - 158.615) < 0.0005 && report.Contains("kN", StringComparison.Ordinal) && !report.Contains("NaN", StringComparison.Ordinal);
Console.WriteLine(good ? "native AOT smoke passed" : "native AOT smoke FAILED");
return good ? 0 : 1;
