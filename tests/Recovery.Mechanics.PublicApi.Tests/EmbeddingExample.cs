using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using UnitsNet;

namespace Recovery.Mechanics.PublicApi.Tests;

/// <summary>The embedding example of the README, compiled and run without access to internals.</summary>
internal static class EmbeddingExample
{
    public static void Run()
    {
        // snippet: embed
        var tyre = new Tyre(M(0.80), M(2.05), M(0.55), Pressure.FromKilopascals(240));
        var harvester = new Machine("harvester",
            [new Axle("front axle", M(0), 2, tyre, true, M(2.6)), new Axle("rear axle", M(-4.9), 2, tyre, true, M(2.4))],
            [new NamedLoad("body", Mass.FromTonnes(22), M(-2.3), M(1.7)), new NamedLoad("beet", Mass.FromTonnes(8), M(-2.9), M(2.6), LoadKind.Payload)]);
        var soil = Soil.FromConeIndex(Pressure.FromKilopascals(350), Ratio.FromDecimalFractions(0.7));
        var stuck = new StuckMachine(harvester, soil, [M(0.4), M(0.4)], PullDirection.Rearwards);

        PullDemand demand = PullDemand.Estimate(stuck);
        Console.WriteLine(demand.Total);                         // low / central / high
        Console.WriteLine(demand.Explain());                     // every step with its source
        foreach (Finding finding in demand.Findings)
            Console.WriteLine(finding.Severity + " " + finding.Id + ": " + finding.Message);

        PullDemand lighter = PullDemand.Estimate(stuck.Without("beet"));
        Console.WriteLine("unloading is worth " + (demand.Total.Central - lighter.Total.Central).Kilonewtons + " kN");
        // endsnippet
    }

    private static Length M(double metres) => Length.FromMeters(metres);
}
