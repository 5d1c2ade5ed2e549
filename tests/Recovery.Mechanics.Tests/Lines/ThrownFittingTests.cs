using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class ThrownFittingTests
{
    [Theory]
    [CheckRows("lines", "vacuum-range")]
    public void Vacuum_range_matches(CheckRow row) => row.Matches(("range", new ThrownFitting(Kg(5), Mps(row.Si("v")), M(row.Si("h"))).VacuumReach(Angle.FromRadians(row.Si("theta"))).Meters));

    [Theory]
    [CheckRows("lines", "fragment")]
    public void Shape_and_drag_match(CheckRow row)
    {
        var a = BallisticsKernel.FragmentArea(row.Si("m"), row.Si("k_shape"));
        var b = BallisticsKernel.DragPerMetre(row.Si("m"), a, row.Si("CD"), row.Si("rho"));
        row.Matches(("A", a), ("inv_b", 1 / b), ("v_t", new ThrownFitting(Kg(row.Si("m")), Mps(20), M(1)).TerminalSpeed.MetersPerSecond));
        Assert.Equal((BallisticsKernel.ForgedSteelShape, BallisticsKernel.DragCoefficient, BallisticsKernel.AirDensity), (row.Si("k_shape"), row.Si("CD"), row.Si("rho")));
    }

    [Theory]
    [CheckRows("lines", "critical-energy")]
    public void Terminal_energy_matches(CheckRow row)
    {
        // L1 = 1/(b m^(1/3)), and twice the energy at terminal speed is g L1 m^(4/3).
        var b = BallisticsKernel.DragPerMetre(row.Si("m"), BallisticsKernel.FragmentArea(row.Si("m"), row.Si("k_shape")), row.Si("CD"), row.Si("rho"));
        row.Matches(("L1", 1 / b / Math.Cbrt(row.Si("m"))), ("two_Ecr", 2 * new ThrownFitting(Kg(row.Si("m")), Mps(20), M(1)).TerminalEnergy.Joules));
    }

    [Theory]
    [CheckRows("lines", "level-drag")]
    public void Level_flight_matches(CheckRow row) => row.Matches(("v", Thrown(row).SpeedAfter(M(row.Si("x"))).MetersPerSecond));

    [Theory]
    [CheckRows("lines", "vertical-drag")]
    public void Vertical_flight_matches(CheckRow row) => row.Matches(("rise", Thrown(row).GreatestRise.Meters), ("v_return", Thrown(row).ReturnSpeed.MetersPerSecond));

    [Theory]
    [CheckRows("lines", "vertical-drag")]
    public void The_integrated_flight_straight_up_meets_its_closed_form(CheckRow row)
    {
        var landing = BallisticsKernel.Fly(row.Si("v0"), Math.PI / 2, 0, Drag(row));
        Assert.Equal(BallisticsKernel.ReturnSpeed(row.Si("v0"), Drag(row)), landing.Speed, 1e-8 * landing.Speed);
        Assert.Equal(0, landing.Range, 1e-8);
    }

    [Theory]
    [CheckRows("lines", "drag-flight")]
    public void A_flight_with_drag_matches(CheckRow row)
    {
        var landing = Fitting(row).Flight(Angle.FromRadians(row.Si("theta")));
        row.Matches(("range", landing.Reach.Meters), ("KE_land", landing.LandingEnergy.Joules), ("t", landing.FlightTime.Seconds));
    }

    [Theory]
    [CheckRows("lines", "drag-ranges")]
    public void Ranges_with_drag_match(CheckRow row)
    {
        var fitting = Fitting(row);
        row.Matches(
            ("range_0", fitting.Flight(Angle.Zero).Reach.Meters),
            ("range_10", fitting.Flight(Angle.FromDegrees(10)).Reach.Meters),
            ("range_45", fitting.Flight(Angle.FromDegrees(45)).Reach.Meters),
            ("range_max", fitting.FurthestFlight().Reach.Meters));
    }

    [Theory]
    [CheckRows("lines", "drag-elevation")]
    public void Elevation_of_the_furthest_flight_matches(CheckRow row) => Assert.Equal(double.Parse(row.ExpectedText("theta"), System.Globalization.CultureInfo.InvariantCulture), Fitting(row).FurthestFlight().Elevation.Degrees, 0.05);

    [Theory]
    [CheckRows("lines", "swept-area")]
    public void Swept_area_matches(CheckRow row) => row.Matches(("area", BallisticsKernel.SweptArea(row.Si("A"))));

    [Theory]
    [CheckRows("lines", "vacuum-throw")]
    public void The_speed_behind_a_reported_throw_matches(CheckRow row)
    {
        var v = ThrownFitting.LeastSpeedToReach(M(row.Si("range"))).MetersPerSecond;
        row.Matches(("v", v), ("KE", new ThrownFitting(Kg(row.Si("m")), Mps(v), M(1)).KineticEnergy.Joules));
    }

    [Theory]
    [CheckRows("lines", "foot-pounds")]
    [CheckRows("lines", "debris-threshold")]
    public void A_threshold_in_foot_pounds_is_in_the_table(CheckRow row)
    {
        var expected = double.Parse(row.ExpectedText("E"), System.Globalization.CultureInfo.InvariantCulture) * (row.Model == "debris-threshold" ? Units.Factor("ft-lbf") : 1);
        var found = InjuryThresholds.All.Where(t => Math.Abs(t.Energy.Joules - expected) < 1e-5).ToList();
        row.MatchesOne("E", Assert.Single(found).Energy.Joules);
    }

    [Theory]
    [CheckRows("lines", "foot-pounds-list")]
    public void Energies_of_fatality_match(CheckRow row) =>
        row.MatchesList("E", new[] { "thorax-10", "head-10", "head-50", "head-90" }.Select(k => Threshold(k).Energy.Joules).ToList());

    [Theory]
    [CheckRows("lines", "threshold-ratio")]
    public void The_best_known_threshold_lies_above_fatality(CheckRow row)
    {
        var e = Threshold("hazardous-fragment").Energy;
        row.Matches(("ratio_head", e / Threshold("head-10").Energy), ("ratio_thorax", e / Threshold("thorax-10").Energy));
    }

    [Theory]
    [CheckRows("lines", "threshold-speed")]
    public void Speeds_at_thresholds_match(CheckRow row) =>
        row.Matches(("v_58", Threshold("hazardous-fragment").SpeedOf(Kg(row.Si("m"))).MetersPerSecond), ("v_11", Threshold("debris-risk").SpeedOf(Kg(row.Si("m"))).MetersPerSecond));

    [Fact]
    public void Thresholds_stand_in_rising_order_and_permit_nothing()
    {
        var joules = InjuryThresholds.All.Select(t => t.Energy.Joules).ToList();
        Assert.Equal(joules.Order(), joules);
        Assert.Contains("no filter", InjuryThresholds.Remark, StringComparison.Ordinal);
    }

    [Property]
    public Property Drag_shortens_a_flight_and_takes_energy() => Prop.ForAll((from m in Gen.Choose(2, 400) from v in Gen.Choose(5, 250) from h in Gen.Choose(1, 30) from e in Gen.Choose(0, 80) select (m / 4.0, (double)v, h / 10.0, (double)e)).ToArbitrary(), x =>
    {
        var fitting = new ThrownFitting(Kg(x.Item1), Mps(x.Item2), M(x.Item3));
        var flight = fitting.Flight(Angle.FromDegrees(x.Item4));
        // What drops from height h lands with no more than its energy and that of the drop.
        return flight.Reach <= fitting.VacuumReach(Angle.FromDegrees(x.Item4)) && flight.LandingEnergy.Joules < fitting.KineticEnergy.Joules + (x.Item1 * 9.80665 * x.Item3) && flight.Reach.Meters <= fitting.FurthestFlight().Reach.Meters * (1 + 1e-9);
    });

    [Fact]
    public void Refuses_what_it_does_not_know_and_explains_itself()
    {
        var fitting = new ThrownFitting(Kg(5), Mps(70), M(1));
        Assert.Equal("283.4 m", fitting.Explain().Steps[^1].Value);
        Assert.Throws<ArgumentOutOfRangeException>(() => fitting.Flight(Angle.FromDegrees(90)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ThrownFitting(Kg(5), Mps(500), M(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ThrownFitting(Mass.Zero, Mps(50), M(1)));
        Assert.Equal("5 kg at 70 m/s from 1 m", fitting.ToString());
    }

    private static InjuryThreshold Threshold(string key) => InjuryThresholds.All.Single(t => t.Key == key);

    private static ThrownFitting Fitting(CheckRow row) => new(Kg(row.Si("m")), Mps(row.Si("v0")), M(row.Si("h")));

    private static double Drag(CheckRow row) => BallisticsKernel.DragPerMetre(row.Si("m"), BallisticsKernel.FragmentArea(row.Si("m"), row.Si("k_shape")), row.Si("CD"), row.Si("rho"));

    [Fact]
    public void A_way_or_reach_out_of_range_is_refused_with_words()
    {
        var fitting = new ThrownFitting(Kg(5), Mps(70), M(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => fitting.SpeedAfter(M(1000.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ThrownFitting.LeastSpeedToReach(M(0.05)));
        Assert.Equal(70, fitting.SpeedAfter(M(0)).MetersPerSecond);
    }

    private static ThrownFitting Thrown(CheckRow row) => new(Kg(row.Si("m")), Mps(row.Si("v0")), M(1));
}
