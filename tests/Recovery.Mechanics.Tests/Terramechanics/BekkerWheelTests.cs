using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class BekkerWheelTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(16);
    private static readonly BekkerTerrain Rubicon = BekkerTerrains.Find("Rubicon sandy loam (Wong)", 43);

    [Theory]
    [CheckRows("terramechanics", "bekker-rigid")]
    public void Rigid_wheel_matches(CheckRow row)
    {
        var r = BekkerWheelModel.Instance.Evaluate(Wheel(row), Soils.Of(row));
        row.Matches(("z", r.Sinkage!.Value.Meters), ("Rc", r.MotionResistance!.Value.Newtons));
        Assert.Equal(TyreMode.Rigid, r.Mode);
        Assert.Equal(row.Id == "tm-t31f", r.Flags.Any(f => f.Limit.Symbol == "z/D"));
    }

    [Theory]
    [CheckRows("terramechanics", "bekker-critical-pressure")]
    public void Critical_pressure_matches(CheckRow row) => row.Matches(("pgcr", BekkerWheelModel.Instance.Evaluate(Wheel(row), Soils.Of(row)).CriticalPressure!.Value.Pascals));

    [Theory]
    [CheckRows("terramechanics", "bekker-elastic")]
    public void Elastic_wheel_matches(CheckRow row)
    {
        var r = BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, row.Si("W") / 1000, row.Si("b"), 2.05), Soils.Of(row), Pressure.FromPascals(row.Si("pi_plus_pc")));
        row.Matches(("z", r.Sinkage!.Value.Meters), ("Rc", r.MotionResistance!.Value.Newtons), ("Rc/W", r.MotionResistanceRatio!.Value));
        Assert.Equal(TyreMode.Elastic, r.Mode);
    }

    [Theory]
    [CheckRows("terramechanics", "bekker-tyre")]
    public void Inflation_decides_the_mode(CheckRow row)
    {
        var r = BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, row.Si("W") / 1000, row.Si("b"), row.Si("d")), Named(row), Pressure.FromPascals(row.Si("p")));
        row.Matches(("R/W", r.MotionResistanceRatio!.Value));
    }

    [Theory]
    [CheckRows("terramechanics", "bekker-machine")]
    public void A_30_t_machine_matches(CheckRow row)
    {
        var (front, rear) = Machine(row);
        row.Matches(("z", front.Sinkage!.Value.Meters), ("R/W", Total(front, rear) / 294.3e3));
    }

    [Theory]
    [CheckRows("terramechanics", "bekker-machine-total")]
    public void The_total_of_a_30_t_machine_matches(CheckRow row)
    {
        var (front, rear) = Machine(row);
        row.Matches(("total", Total(front, rear)));
    }

    [Theory]
    [CheckRows("terramechanics", "bekker-machine-bulldozing")]
    public void Bulldozing_of_a_30_t_machine_matches(CheckRow row)
    {
        var terrain = Named(row);
        var (front, _) = Machine(row);
        double phi = terrain.FrictionAngle.Radians, z = front.Sinkage!.Value.Meters;
        var kernel = BulldozingKernel.Resistance(
            z, 2.05, 0.90, terrain.Cohesion.Pascals, phi, row.Si("gamma"), BulldozingKernel.CohesionFactor(phi, BulldozingKernel.BearingCohesion(phi)), BulldozingKernel.WeightFactor(phi, BulldozingKernel.BearingWeightOverTangent(phi)));
        row.Matches(("Rb/W", kernel / 98.1e3));
        Assert.Equal(z / 2.05 > 0.06, front.Bulldozing is not null);
        if (front.Bulldozing is { } typed) Assert.Equal(kernel, typed.Newtons, 6);
        Assert.Equal(front.Bulldozing is not null && kernel > 98.1e3, front.Flags.Any(f => f.Limit.Symbol == "R_b/W"));
    }

    [Theory]
    [CheckRows("terramechanics", "bulldozing")]
    public void Bulldozing_matches(CheckRow row)
    {
        var phi = row.Si("phi");
        double kc = BulldozingKernel.CohesionFactor(phi, row.Si("Nc")), kg = BulldozingKernel.WeightFactor(phi, row.Si("Ng") / Math.Tan(phi));
        row.Matches(("Rb", BulldozingKernel.Resistance(row.Si("z"), row.Si("D"), row.Si("b"), row.Si("c"), phi, row.Si("gamma"), kc, kg)), ("Kc", kc), ("Kg", kg));
        Assert.Equal(row.Si("Nc"), BulldozingKernel.BearingCohesion(phi), 0.005);
        Assert.Equal(row.Si("Ng"), BulldozingKernel.BearingWeightOverTangent(phi) * Math.Tan(phi), 0.005);
    }

    [Theory]
    [CheckRows("terramechanics", "slip-sinkage")]
    public void Slip_sinkage_matches(CheckRow row) => row.Matches(("z/z0", BekkerWheelModel.Instance.SinkageAtSlip(Length.FromMeters(0.1), Wheels.Slip(row.Si("s"))).Meters / 0.1));

    [Theory]
    [CheckRows("terramechanics-scipy", "bekker-wheel")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        var wheel = Wheels.Of(400, row.Si("W") / 1000, row.Si("b"), row.Si("d"));
        var terrain = Soils.Of(row);
        var r = BekkerWheelModel.Instance.Evaluate(wheel, terrain, Pressure.FromPascals(row.Si("p")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        row.Matches(("z", r.Sinkage!.Value.Meters), ("pgcr", r.CriticalPressure!.Value.Pascals), ("Rc", r.MotionResistance!.Value.Newtons), ("Rb", r.Bulldozing?.Newtons ?? 0));
        var batch = new double[1];
        var rolls = new bool[1];
        BekkerWheelModel.Instance.MotionResistance([wheel.Load.Kilonewtons], wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, terrain, row.Si("p") / 1000, batch, rolls);
        Assert.True(rolls[0]);
        Assert.Equal(r.MotionResistance!.Value.Kilonewtons, batch[0], 9);
    }

    [Theory]
    [InlineData(-1e-6, TyreMode.Elastic)]
    [InlineData(0, TyreMode.Elastic)]
    [InlineData(1e-6, TyreMode.Rigid)]
    public void The_modes_join_without_a_step(double step, TyreMode mode)
    {
        var wheel = Wheels.Of(400, 98.1, 0.90, 2.05);
        var rigid = BekkerWheelModel.Instance.Evaluate(wheel, Rubicon);
        var at = BekkerWheelModel.Instance.Evaluate(wheel, Rubicon, Pressure.FromPascals(rigid.CriticalPressure!.Value.Pascals * (1 + step)));
        Assert.Equal(mode, at.Mode);
        Assert.Equal(rigid.MotionResistance!.Value.Newtons, at.MotionResistance!.Value.Newtons, 0.2);
    }

    [Fact]
    public void On_the_hub_there_is_no_number()
    {
        var mud = new BekkerTerrain("mud", 0, 20, 0.5, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        var r = BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 98.1, 0.90, 2.05), mud);
        Assert.Equal(WheelOutcome.Immobile, r.Outcome);
        Assert.Null(r.MotionResistance);
        Assert.Contains("immobile", r.ToString(), StringComparison.Ordinal);
        Assert.Equal("immobile", BekkerWheelModel.Instance.Explain(Wheels.Of(400, 98.1, 0.90, 2.05), mud).Steps[^1].Value);
        var none = new BekkerTerrain("no support under broad wheels", -900, 100, 0.5, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        Assert.Equal(WheelOutcome.Immobile, BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 30), none).Outcome);
        var steep = new BekkerTerrain("exponent 3", 0, 100, 3, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        Assert.Equal(WheelOutcome.Immobile, BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 30), steep).Outcome);
        var batch = new double[1];
        var rolls = new bool[1];
        BekkerWheelModel.Instance.MotionResistance([98.1], 0.9, 2.05, mud, null, batch, rolls);
        Assert.False(rolls[0]);
        BekkerWheelModel.Instance.MotionResistance([30], 0.65, 1.9, none, null, batch, rolls);
        Assert.False(rolls[0]);
    }

    [Fact]
    public void The_hub_is_a_clean_edge()
    {
        // Made so that the wheel sinks to just below and just at half its diameter: z = p/k with n 1 on an elastic tyre.
        const double D = 2, P = 100e3;
        BekkerTerrain Soft(double z) => new("soft", 0, P / z / 1000, 1, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        BekkerWheelResult At(double z) => BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 450, 0.5, D), Soft(z), Pressure.FromPascals(P));
        Assert.Equal(WheelOutcome.Rolls, At(1 - 1e-6).Outcome);
        Assert.Equal(WheelOutcome.Immobile, At(1 + 1e-6).Outcome);
    }

    [Theory]
    [InlineData("Grenville loam (Wong)", 24, 40, 0.5, 1.5, "")]
    [InlineData("Grenville loam (Wong)", 24, 5, 0.3, 0.49, "D")]
    [InlineData("Rubicon sandy loam (Wong)", 43, 98.1, 0.5, 1.5, "z/D,z")]
    [InlineData("lean clay (WES)", 32, 98.1, 0.9, 2.05, "z/D,z,R_b/W")]
    public void Flags_each_limit(string name, double moisture, double load, double b, double d, string flagged) =>
        Assert.Equal(flagged, string.Join(',', BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, load, b, d), BekkerTerrains.Find(name, moisture), null, Gamma).Flags.Select(f => f.Limit.Symbol)));

    [Theory]
    [InlineData(1.3, false)]
    [InlineData(1.301, true)]
    public void Flags_an_exponent_beyond_the_range(double exponent, bool flagged)
    {
        var terrain = new BekkerTerrain("made", 0, 5000, exponent, Pressure.FromKilopascals(5), Angle.FromDegrees(20));
        Assert.Equal(flagged, BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 30), terrain).Flags.Any(f => f.Limit.Symbol == "n"));
    }

    [Fact]
    public void Bulldozing_starts_above_six_hundredths_of_the_diameter_and_needs_a_unit_weight()
    {
        BekkerWheelResult At(double ratio, SpecificWeight? gamma) => BekkerWheelModel.Instance.Evaluate(
            Wheels.Of(400, 450, 0.5, 2), new BekkerTerrain("made", 0, 100 / (2 * ratio), 1, Pressure.FromKilopascals(5), Angle.FromDegrees(20)), Pressure.FromKilopascals(100), gamma);
        Assert.Null(At(0.06 - 1e-9, Gamma).Bulldozing);
        Assert.NotNull(At(0.06 + 1e-9, Gamma).Bulldozing);
        Assert.Null(At(0.1, null).Bulldozing);
        Assert.Equal(At(0.1, null).MotionResistance, At(0.1, Gamma).MotionResistance);
    }

    [Fact]
    public void Bearing_factors_join_at_no_friction()
    {
        Assert.Equal((1.5 * Math.PI) + 1, BulldozingKernel.BearingCohesion(0), 12);
        Assert.Equal(BulldozingKernel.BearingCohesion(0), BulldozingKernel.BearingCohesion(2e-6), 4);
        Assert.Equal(4, BulldozingKernel.BearingWeightOverTangent(0), 12);
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "bekker-rut")]
    public void A_following_wheel_agrees_with_SciPy(CheckRow row) =>
        row.Matches(("z", BekkerWheelModel.Instance.SinkageInRut(Wheels.Of(400, row.Si("W") / 1000, row.Si("b"), row.Si("d")), Soils.Of(row), Length.FromMeters(row.Si("rut"))).Meters));

    [Fact]
    public void A_following_wheel_needs_an_exponent_of_about_one_and_support()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BekkerWheelModel.Instance.SinkageInRut(Wheels.Of(400, 30), Rubicon, Length.FromMeters(0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BekkerWheelModel.Instance.SinkageInRut(Wheels.Of(400, 30), BekkerTerrains.Find("Grenville loam (Wong)", 24), Length.FromMeters(-0.1)));
        var none = new BekkerTerrain("no support", -900, 100, 1, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        Assert.Throws<ArgumentException>(() => BekkerWheelModel.Instance.SinkageInRut(Wheels.Of(400, 30), none, Length.FromMeters(0.1)));
    }

    [Fact]
    public void A_following_wheel_at_exponent_one_adds_to_the_rut()
    {
        // Without a rut before it the form is that of the single pass.
        Assert.Equal(BekkerKernel.RigidSinkage(50e3, 0.7, 1.9, 3e6, 1), BekkerKernel.RepeatedSinkage(50e3, 0.7, 1.9, 3e6, 0), 12);
        Assert.True(BekkerKernel.RepeatedSinkage(50e3, 0.7, 1.9, 3e6, 0.1) > 0.1);
    }

    [Fact]
    public void Explains_down_to_the_resistance()
    {
        var working = BekkerWheelModel.Instance.Explain(Wheels.Of(400, 98.1, 0.90, 2.05), Rubicon, null, Gamma);
        Assert.Equal("21.85 kN", working.Steps[^1].Value);
        Assert.Equal(["k", "p_gcr", "z", "R_b", "R_c"], working.Steps.Select(s => s.Symbol));
        Assert.Equal("5.853 kN", BekkerWheelModel.Instance.Explain(Wheels.Of(400, 98.1, 0.90, 2.05), Rubicon, Pressure.FromKilopascals(140)).Steps[^1].Value);
    }

    [Property]
    public Property A_lighter_wheel_never_sinks_deeper_and_a_stiffer_soil_never_resists_more() => Prop.ForAll(Wheels.Any(), wheel =>
    {
        var heavy = BekkerWheelModel.Instance.Evaluate(wheel, Rubicon);
        var light = BekkerWheelModel.Instance.Evaluate(wheel with { Load = wheel.Load * 0.8 }, Rubicon);
        var stiffer = new BekkerTerrain("stiffer", Rubicon.CohesiveModulus * 1.2, Rubicon.FrictionalModulus * 1.2, Rubicon.Exponent, Rubicon.Cohesion, Rubicon.FrictionAngle);
        var firm = BekkerWheelModel.Instance.Evaluate(wheel, stiffer);
        if (heavy.Outcome == WheelOutcome.Immobile) return true;
        return light.Sinkage <= heavy.Sinkage && light.MotionResistance <= heavy.MotionResistance && firm.MotionResistance <= heavy.MotionResistance;
    });

    [Fact]
    public void Refuses_bad_input()
    {
        Assert.Throws<ArgumentNullException>(() => BekkerWheelModel.Instance.Evaluate(null!, Rubicon));
        Assert.Throws<ArgumentOutOfRangeException>(() => BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 30), Rubicon, Pressure.FromKilopascals(0.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, 30), Rubicon, null, SpecificWeight.FromKilonewtonsPerCubicMeter(30)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BekkerWheelModel.Instance.MotionResistance([double.NaN], 0.6, 1.6, Rubicon, null, new double[1], new bool[1]));
    }

    private static WheelOnSoil Wheel(CheckRow row) => Wheels.Of(400, row.Si("W") / 1000, row.Si("b"), row.Si("D"));

    private static BekkerTerrain Named(CheckRow row) => BekkerTerrains.Find(row.Word("terrain").Replace('_', ' '), row.Printed("w"));

    private static (BekkerWheelResult Front, BekkerWheelResult Rear) Machine(CheckRow row) => (
        BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, row.Si("Wf") / 1000, row.Si("bf"), row.Si("df")), Named(row), null, Gamma),
        BekkerWheelModel.Instance.Evaluate(Wheels.Of(400, row.Si("Wr") / 1000, row.Si("br"), row.Si("dr")), Named(row), null, Gamma));

    private static double Total(BekkerWheelResult front, BekkerWheelResult rear) => 2 * (front.MotionResistance!.Value.Newtons + rear.MotionResistance!.Value.Newtons);
}
