using System;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class RotatingInertiaTests
{
    private static RotatingInertia Of(CheckRow row) => new(row.Si("J_e"), row.Si("J_w"), row.Si("i"), M(row.Si("r")));

    [Theory]
    [CheckRows("traction-scipy", "rotating-inertia")]
    public void Peak_against_the_equation_of_motion(CheckRow row)
    {
        Mass machine = Mass.FromKilograms(row.Si("m"));
        var speed = Speed.FromMetersPerSecond(row.Si("v"));
        row.Matches(
            ("m_r", Of(row).EquivalentMass.Kilograms),
            ("E", Of(row).EnergyAt(machine, speed).Joules),
            ("F", Of(row).PeakWithoutSlip(Force.FromNewtons(row.Si("P")), machine, speed, row.Si("k")).Newtons));
    }

    [Fact]
    public void Low_gears_carry_many_times_the_machine()
    {
        var crawl = new RotatingInertia(2.5, 800, 400, M(0.95));
        Assert.True(crawl.EquivalentMass > Mass.FromTonnes(400));
        Assert.Contains("400:1", crawl.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, new RotatingInertia(0, 0, 1, M(1)).EquivalentMass.Kilograms);
        Assert.Contains("ratio", Assert.Throws<ArgumentOutOfRangeException>(() => new RotatingInertia(1, 1, 0.5, M(1))).Message, StringComparison.Ordinal);
    }
}
