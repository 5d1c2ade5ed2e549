using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>What turns in the puller reaches the load that the gear is checked against, where its wheels cannot slip.</summary>
public class TurningPartsTests
{
    private static readonly Mass Turning = new RotatingInertia(2.5, 800, 150, M(0.95)).EquivalentMass;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_governing_load_of_a_plan_holds_it(int parts)
    {
        // (2.5 x 150^2 + 800)/0.95^2 = 63,213 kg beside 30 t, 1 km/h; through a tackle the speed falls and the mass grows with its square.
        Assert.Equal(63213.3, Turning.Kilograms, 0.05);
        var plan = ReferencePlans.Gentle();
        if (parts > 1) plan = plan.WithTackle(new LineTackle(parts));
        var still = plan.Assess().Loads!;
        var assessment = plan.With(plan.Procedure.WithRotatingMass(Turning)).Assess();
        var loads = assessment.Loads!;
        Assert.Equal(still.Steady.Newtons, loads.Steady.Newtons);
        double p = loads.Steady.Newtons, k = loads.Line.StiffStiffness.Newtons / loads.Line.Length.Meters, v = 1 / 3.6;
        Assert.Equal(p + Math.Sqrt((p * p) + (k * (30000 + 63213.3) * v * v)), loads.ProcedurePeak.Newtons, 1.0);
        Assert.True(loads.ProcedurePeak > still.ProcedurePeak);
        Assert.Contains("line.locked-gear-not-met", assessment.Findings.Select(f => f.Id));
        Assert.NotEqual(plan.Assess().Fingerprint, assessment.Fingerprint);
    }

    [Fact]
    public void Both_ways_to_the_equivalent_mass_are_one() =>
        Assert.Equal(
            new RotatingInertia(2.5, 0, 150, M(0.95)).EquivalentMass.Kilograms,
            TakeUp.RotatingMass(MassMomentOfInertia.FromKilogramSquareMeters(2.5), RotationalSpeed.FromRevolutionsPerMinute(2100), Speed.FromMetersPerSecond(2100 * Math.PI / 30 / 150 * 0.95)).Kilograms,
            1e-6);
}
