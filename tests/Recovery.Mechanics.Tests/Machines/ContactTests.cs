using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Machines;

/// <summary>Area of contact and pressure by the named models.</summary>
public class ContactTests
{
    [Theory]
    [CheckRows("machines", "keller")]
    [CheckRows("ground-machines-scipy", "keller")]
    public void Keller_footprint(CheckRow row)
    {
        var c = KellerModel.Instance.Evaluate(Wheel(row), Force.FromNewtons(row.Si("W")), Pressure.FromPascals(row.Si("p_rec")));
        row.Matches(("L", c.ContactLength.Meters), ("n", c.ShapeExponent), ("A", c.Patch.Area.SquareMeters), ("sigma_max", c.PeakStress.Pascals), ("mean", c.Patch.MeanPressure.Pascals));
        Assert.EndsWith("kPa", KellerModel.Instance.Explain(Wheel(row), Force.FromNewtons(row.Si("W")), Pressure.FromPascals(row.Si("p_rec"))).Steps[^1].Value, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("machines", "keller-stress")]
    [CheckRows("ground-machines-scipy", "keller-stress")]
    public void Keller_stress(CheckRow row)
    {
        var c = KellerModel.Instance.Evaluate(Wheel(row), Force.FromNewtons(row.Si("W")), Pressure.FromPascals(row.Si("p_rec")));
        row.Matches(("sigma_max", c.PeakStress.Pascals), ("delta_y", c.DecayPerMetre), ("f_0", c.MiddleShare), ("alpha", c.LengthExponent!.Value), ("sigma_centre", c.StressAt(M(0), M(0))!.Value.Pascals), ("sigma_xy", c.StressAt(M(row.Si("x")), M(row.Si("y")))!.Value.Pascals));
        Assert.Equal(c.LengthExponent is < 1 or > 16, c.Patch.Flags.Any(f => f.Limit.Symbol == "alpha"));
    }

    [Fact]
    public void Each_limit_of_Keller_is_raised_and_not_raised()
    {
        var rear = new Tyre(M(0.6), M(1.6), M(0.42), KPa(100));
        Assert.Empty(KellerModel.Instance.Evaluate(rear, KN(49.05), KPa(100)).Patch.Flags);
        Assert.Equal("alpha", Assert.Single(KellerModel.Instance.Evaluate(rear, KN(10), KPa(100)).Patch.Flags).Limit.Symbol);
        Assert.Contains(KellerModel.Instance.Evaluate(rear, KN(60.1), KPa(100)).Patch.Flags, f => f.Limit.Symbol == "W");
        Assert.DoesNotContain(KellerModel.Instance.Evaluate(rear, KN(60), KPa(100)).Patch.Flags, f => f.Limit.Symbol == "W");
        Assert.Contains(KellerModel.Instance.Evaluate(new Tyre(M(1.28), M(2), M(0.5), KPa(100)), KN(50), KPa(100)).Patch.Flags, f => f.Limit.Symbol == "w");
        // More load than the greatest stress over the whole footprint can carry: no exponent does it, and no stress is given.
        var over = KellerModel.Instance.Evaluate(rear, KN(400), KPa(100));
        Assert.Null(over.LengthExponent);
        Assert.Null(over.StressAt(M(0), M(0)));
        Assert.Contains(over.Patch.Flags, f => f.Limit.Symbol == "alpha");
    }

    [Fact]
    public void Stress_is_nothing_outside_the_footprint_and_the_same_on_both_sides()
    {
        var c = KellerModel.Instance.Evaluate(new Tyre(M(0.6), M(1.6), M(0.42), KPa(100)), KN(49.05), KPa(100));
        Assert.Equal(0, c.StressAt(M(0), M(0.3))!.Value.Pascals);
        Assert.Equal(0, c.StressAt(M(c.ContactLength.Meters / 2), M(0))!.Value.Pascals);
        Assert.Equal(c.StressAt(M(0.1), M(0.2))!.Value.Pascals, c.StressAt(M(-0.1), M(-0.2))!.Value.Pascals);
    }

    [Property]
    public Property Keller_stress_carries_the_load() => Prop.ForAll((from p in Gen.Choose(80, 250) from w in Gen.Choose(20, 60) select (p, w)).ToArbitrary(), x =>
    {
        var c = KellerModel.Instance.Evaluate(new Tyre(M(0.65), M(1.8), M(0.45), KPa(x.p)), KN(x.w), KPa(x.p));
        if (c.LengthExponent is not (>= 1 and <= 16)) return true;
        const int N = 300;
        double sum = 0, dx = c.ContactLength.Meters / N, dy = 0.65 / N;
        for (var i = 0; i < N; i++)
        {
            for (var j = 0; j < N; j++) sum += c.StressAt(M((i + 0.5 - (N / 2)) * dx), M((j + 0.5 - (N / 2)) * dy))!.Value.Pascals * dx * dy;
        }

        return Math.Abs(sum - (x.w * 1000)) < 2e-3 * x.w * 1000;
    });

    [Theory]
    [CheckRows("ground-machines-scipy", "osullivan")]
    public void OSullivan(CheckRow row)
    {
        var load = Force.FromNewtons(row.Si("W"));
        row.Matches(("soft", OSullivanModel.YieldingSoil.Evaluate(Wheel(row), load).Area.SquareMeters), ("hard", OSullivanModel.HardGround.Evaluate(Wheel(row), load).Area.SquareMeters));
        Assert.Equal(row.Si("W") > 60000, OSullivanModel.HardGround.Evaluate(Wheel(row), load).Flags.Count > 0);
        Assert.Equal(2, OSullivanModel.HardGround.Explain(Wheel(row), load).Steps.Count);
    }

    [Theory]
    [CheckRows("machines", "nominal-pressure")]
    [CheckRows("ground-machines-scipy", "nominal-pressure")]
    public void Nominal_ground_pressure(CheckRow row)
    {
        var tyre = new Tyre(M(row.Si("b")), M(row.Si("d")), M(0.4), KPa(200));
        var load = Force.FromNewtons(row.Si("W"));
        row.Matches(("p_nom", NominalPressureModel.Instance.Evaluate(tyre, load).MeanPressure.Pascals));
        Assert.EndsWith("kPa", NominalPressureModel.Instance.Explain(tyre, load).Steps[0].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Nominal_pressure_flags_loads_off_the_tyres_of_the_traction_models()
    {
        var tyre = new Tyre(M(1), M(2), M(0.5), KPa(200));
        Assert.Empty(NominalPressureModel.Instance.Evaluate(tyre, KN(30)).Flags);
        Assert.Empty(NominalPressureModel.Instance.Evaluate(tyre, KN(110)).Flags);
        Assert.Single(NominalPressureModel.Instance.Evaluate(tyre, KN(29.9)).Flags);
        Assert.Single(NominalPressureModel.Instance.Evaluate(tyre, KN(110.1)).Flags);
    }

    [Fact]
    public void All_models_side_by_side()
    {
        var tyre = new Tyre(M(0.9), M(2.05), M(0.55), KPa(240));
        var all = ContactComparison.Of(tyre, KN(98.1), KPa(240));
        Assert.Equal(4, all.All.Count);
        Assert.Equal(240, all.ByInflation!.Value.Kilopascals, 1e-9);
        Assert.Equal(all.All.Max(c => c.Area.SquareMeters) / all.All.Min(c => c.Area.SquareMeters), all.Spread);
        Assert.Null(ContactComparison.Of(tyre, KN(98.1), KPa(180)).ByInflation);
        Assert.Contains("arvidsson-keller", all.InflationSource.Key, StringComparison.Ordinal);
        Assert.Contains("Inflation: mean about 240 kPa", all.ToString(), StringComparison.Ordinal);
        Assert.Contains("recommendedInflation must be from 24 to 2400 kPa", Assert.Throws<ArgumentOutOfRangeException>(() => KellerModel.Instance.Evaluate(tyre, KN(90), KPa(10))).Message, StringComparison.Ordinal);
    }

    private static Tyre Wheel(CheckRow row) => new(M(row.Si("w")), M(row.Si("d")), M(0.4), Pressure.FromPascals(row.Si("p")));
}
