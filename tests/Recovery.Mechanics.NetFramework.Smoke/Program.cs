using System;
using System.Globalization;
using System.Threading;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.NetFramework.Smoke
{
    internal static class Program
    {
        private static int Main()
        {
            Thread.CurrentThread.CurrentCulture = new CultureInfo("de-DE");
            var tyre = new Tyre(Length.FromMeters(0.8), Length.FromMeters(2.05), Length.FromMeters(0.55), Pressure.FromKilopascals(240));
            var harvester = new Machine(
                "harvester",
                new[] { new Axle("front axle", Length.Zero, 2, tyre, true, Length.FromMeters(2.6)), new Axle("rear axle", Length.FromMeters(-4.9), 2, tyre, true, Length.FromMeters(2.4)) },
                new[] { new NamedLoad("body", Mass.FromTonnes(22), Length.FromMeters(-2.3), Length.FromMeters(1.7)), new NamedLoad("beet", Mass.FromTonnes(8), Length.FromMeters(-2.9), Length.FromMeters(2.6), LoadKind.Payload) });
            var stuck = new StuckMachine(harvester, Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7)), new[] { Length.FromMeters(0.4), Length.FromMeters(0.4) }, PullDirection.Rearwards);
            var tractor = new TowingMachine(
                new Machine(
                    "tractor",
                    new[] { new Axle("front axle", Length.Zero, 2, tyre, true, Length.FromMeters(2)), new Axle("rear axle", Length.FromMeters(-3), 2, tyre, true, Length.FromMeters(2)) },
                    new[] { new NamedLoad("tractor", Mass.FromTonnes(18), Length.FromMeters(-1.8), Length.FromMeters(1)) }),
                Soil.FromConeIndexOnly(Pressure.FromKilopascals(1000)), Length.FromMeters(-4), Length.FromMeters(0.5));
            var rig = new Rig(
                new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true),
                new RigPart[]
                {
                    new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), Length.FromMeters(12)),
                    Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), Length.FromMeters(16)), Length.FromMeters(1.3)),
                    new Shackle("shackle", Rating.WorkingLoadLimitTonnes(12, 5), Mass.FromKilograms(8)),
                    new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(50), Length.FromMeters(1.6)),
                },
                new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true));
            var assessment = new RecoveryPlan(stuck, tractor, rig, DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)), RecoverySite.Undeclared).Assess();
            var report = assessment.ToReport();
            Console.WriteLine(report);

            // Checked against a worked example: nylon 60 t, EA/MBS 5, 9 m, 18 t, 116 kN, 2 km/h locked gear: 158.615 kN.
            var loads = LineLoads.Evaluate(Force.FromKilonewtons(116), Mass.FromTonnes(18), ElasticLine.Of(LineMaterial.NylonWebbing, Force.FromKilonewtons(588.399), Length.FromMeters(9)), PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)));
            var good = Math.Abs(loads.ProcedurePeak.Kilonewtons - 158.615) < 0.0005 && report.Contains("kN") && !report.Contains("NaN") && assessment.Demand.Total.CentralNewtons > 0;
            Console.WriteLine(good ? "netstandard2.0 smoke passed" : "netstandard2.0 smoke FAILED");
            return good ? 0 : 1;
        }
    }
}
