using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Resistance;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>The typed term models against their kernels' worked numbers, their flags and their refusals.</summary>
public class TermModelTests
{
    private static readonly SpecificWeight Gamma = SpecificWeight.FromKilonewtonsPerCubicMeter(17);

    [Fact]
    public void Buried_wheel_gives_the_worked_terms()
    {
        // b 0.6, z 0.5, d 2.0, 10 kPa, gamma 17: face 7.275, suction 6.0, base 10.392 kN; step of 5 kN at z/r 0.5: 8.66 kN.
        var terms = BuriedWheelModel.Instance.Evaluate(M(0.6), M(2), M(0.5), KN(5), KPa(10), KPa(10), Gamma, Frac(0.5));
        Assert.Equal(7.275, terms.Face.Kilonewtons, 0.0005);
        Assert.Equal(8.660, terms.RigidStep!.Value.Kilonewtons, 0.0005);
        Assert.Equal(7.275, terms.FaceThatCounts.Kilonewtons, 0.0005);
        Assert.Equal(6.0, terms.Suction.Kilonewtons, 1e-9);
        Assert.Equal(10.392, terms.Base.Kilonewtons, 0.0005);
        Assert.Equal(24.5674 / 4, terms.SideLocked.Kilonewtons, 0.0001);
        Assert.Equal(terms.SideLocked.Newtons / 2, terms.SideTurning.Newtons, 1e-9);
        Assert.Empty(terms.Flags);
        var working = BuriedWheelModel.Instance.Explain(M(0.6), M(2), M(0.5), KN(5), KPa(10), KPa(10), Gamma, Frac(0.5));
        Assert.Equal("7.275 kN", working.Steps[^1].Value);
    }

    [Theory]
    [InlineData(0.19, 10, "z/d")]
    [InlineData(1.01, 10, "z/d")]
    [InlineData(0.5, 61, "s_w")]
    public void Buried_wheel_flags_what_lies_outside(double z, double wall, string symbol) =>
        Assert.Equal([symbol], BuriedWheelModel.Instance.Evaluate(M(0.6), M(2), M(z), KN(40), KPa(wall), KPa(10), Gamma, Frac(0.5)).Flags.Select(f => f.Limit.Symbol));

    [Fact]
    public void A_step_at_the_hub_has_no_answer()
    {
        Assert.Null(BuriedWheelModel.Instance.Evaluate(M(0.6), M(2), M(1), KN(40), KPa(10), KPa(10), Gamma, Frac(0.5)).RigidStep);
        Assert.Null(RutExitModel.Instance.RigidStep(KN(40), M(2), M(1)));
        Assert.Equal(1.7321 * 40, RutExitModel.Instance.RigidStep(KN(40), M(2), M(0.5))!.Value.Kilonewtons, 0.005);
    }

    [Fact]
    public void Underbody_and_exit_give_the_worked_numbers()
    {
        // Belly 3.0 x 1.2 m, 0.1 m in, 5 kPa, alpha 0.5: 9 kN of adhesion and 1.302 kN of front.
        Assert.Equal(10.302, UnderbodyModel.Instance.Drag(new Belly(M(3), M(1.2), M(0.1)), KPa(5), Gamma, Frac(0.5)).Kilonewtons, 0.0005);
        Assert.Equal("10.3 kN", UnderbodyModel.Instance.Explain(new Belly(M(3), M(1.2), M(0.1)), KPa(5), Gamma, Frac(0.5)).Steps[^1].Value);
        Assert.Equal(24.66, RutExitModel.Instance.Climb(KN(150), Angle.FromRadians(Math.Atan(1.0 / 6))).Kilonewtons, 0.005);
        Assert.Equal(0.45, RutExitModel.Instance.Spoil(M(0.6), M(0.5), Angle.FromRadians(Math.Atan(1.0 / 6))).CubicMeters, 1e-9);
        Assert.EndsWith("kN", RutExitModel.Instance.Explain(KN(150), Angle.FromDegrees(9)).Steps[^1].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Take_up_says_plainly_where_no_speed_will_do()
    {
        var line = new ElasticLine(M(9), KN(2353.596), KN(2353.596), LinearDensity.FromKilogramsPerMeter(2), LineMaterial.NylonWebbing.Source);
        Assert.Equal(241.736, TakeUpModel.Instance.PeakHeld(KN(100), line, Mass.FromTonnes(20), Speed.FromKilometersPerHour(5), M(0)).Kilonewtons, 0.0005);
        Assert.Equal(290.134, TakeUpModel.Instance.PeakHeld(KN(100), line, Mass.FromTonnes(20), Speed.Zero, M(0.5)).Kilonewtons, 0.0005);
        Assert.Null(TakeUpModel.Instance.SpeedLimit(KN(196.133), KN(100), line, Mass.FromTonnes(20)));
        Assert.Equal(1.89868, TakeUpModel.Instance.SpeedLimit(KN(196.133), KN(50), line, Mass.FromTonnes(20))!.Value.MetersPerSecond, 0.00001);
        Assert.Equal("241.7 kN", TakeUpModel.Instance.Explain(KN(100), line, Mass.FromTonnes(20), Speed.FromKilometersPerHour(5), M(0)).Steps[^1].Value);
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("sinkage must be from 0 to 2 m; it was 2.1 m", Assert.Throws<ArgumentOutOfRangeException>(() => BuriedWheelModel.Instance.Evaluate(M(0.6), M(2), M(2.1), KN(40), KPa(10), KPa(10), Gamma, Frac(0.5))).Message, StringComparison.Ordinal);
        Assert.Contains("immersion must be from 0 to 1.5 m", Assert.Throws<ArgumentOutOfRangeException>(() => new Belly(M(3), M(1), M(-0.1))).Message, StringComparison.Ordinal);
    }
}
