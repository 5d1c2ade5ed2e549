using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

public class ElongationTests
{
    private static readonly TabulatedElongation Table = LoadElongation.Tabulated(M(10), [0.02, 0.05, 0.1], [20, 80, 300], Test);

    [Theory]
    [CheckRows("lines", "reference-line")]
    public void A_reference_line_matches(CheckRow row)
    {
        var line = Linear(row);
        double ea = line.AxialStiffness.Newtons, mass = row.Si("m_line");
        row.Matches(("EA", ea), ("k", line.Stiffness.NewtonsPerMeter), ("m_L", Segment(row).Mass.Kilograms), ("c0", Segment(row).WaveSpeed!.Value.MetersPerSecond), ("Z", ElasticKernel.Impedance(ea, mass)));
    }

    [Theory]
    [CheckRows("lines", "linear-energy")]
    public void Energy_of_a_linear_line_matches(CheckRow row)
    {
        var line = Linear(row);
        row.Matches(("E", line.StoredEnergy(N(row.Si("F"))).Joules), ("x", line.Stretch(N(row.Si("F"))).Meters));
    }

    [Theory]
    [CheckRows("lines", "energy-per-mass")]
    public void Energy_per_line_mass_matches(CheckRow row) => row.Matches(("e_m", new LineSegment("strap", Linear(9, row.Si("F"), row.Si("eps")), PerMetre(row.Si("m_line"))).EnergyPerMass(N(row.Si("F"))).JoulesPerKilogram));

    [Theory]
    [CheckRows("lines", "speed-of-energy")]
    public void Speed_of_a_tractor_with_the_same_energy_matches(CheckRow row) =>
        row.Matches(("v", BallisticsKernel.SpeedOfEnergy(Linear(row).StoredEnergy(N(row.Si("F"))).Joules, row.Si("m"))));

    [Theory]
    [CheckRows("lines", "power-energy")]
    public void Energy_of_a_power_law_matches(CheckRow row)
    {
        var line = Power(row);
        double f = row.Si("F"), e = line.StoredEnergy(N(f)).Joules, x = line.Stretch(N(f)).Meters;
        row.MatchesOne("E", e);
        if (row.ExpectedNames.Contains("x")) row.MatchesOne("x", x);
        if (row.ExpectedNames.Contains("E_over_Fx")) row.MatchesOne("E_over_Fx", e / (f * x));
        if (row.ExpectedNames.Contains("E_over_linear")) row.MatchesOne("E_over_linear", e / Linear(row.Si("L"), row.Si("Fb"), row.Si("eb")).StoredEnergy(N(f)).Joules);
    }

    [Theory]
    [CheckRows("lines", "trapezoid")]
    public void A_table_reads_a_parabola_high_by_the_trapezoid_error(CheckRow row)
    {
        var n = (int)row.Si("strips");
        var strains = Enumerable.Range(1, n).Select(i => 0.1 * i / n).ToArray();
        var table = LoadElongation.Tabulated(M(9), strains, strains.Select(e => 3e4 * e * e).ToArray(), Test);
        var parabola = LoadElongation.PowerLaw(M(9), KN(300), Frac(0.1), 2, Test);
        row.Matches(("rel_error", (table.StoredEnergy(KN(300)).Joules / parabola.StoredEnergy(KN(300)).Joules) - 1));
    }

    [Theory]
    [CheckRows("lines", "recovered-fraction")]
    public void Recovered_fraction_matches(CheckRow row) =>
        row.Matches(("eta_r", UnloadingTest.FromBranches(row.Si("n"), row.Si("q"), Frac(row.Si("ep_over_em")), Test).Recovered.DecimalFractions));

    [Theory]
    [CheckRows("lines", "series")]
    public void Two_linear_lines_in_series_match(CheckRow row)
    {
        var line = new LineAssembly([new LineSegment("tail", Linear(row, "1"), PerMetre(2)), new LineSegment("rope", Linear(row, "2"), PerMetre(0.5))], Length.Zero);
        var energy = line.StoredEnergy(N(row.Si("F")));
        row.Matches(("k", line.Stiffness!.Value.NewtonsPerMeter), ("E1", energy.Parts[0].Energy.Joules), ("E2", energy.Parts[1].Energy.Joules), ("share1", energy.Parts[0].Share.DecimalFractions));
    }

    [Theory]
    [CheckRows("lines", "series-curve")]
    public void A_linear_and_a_stiffening_line_in_series_match(CheckRow row)
    {
        var stiffening = LoadElongation.PowerLaw(M(row.Si("L2")), N(row.Si("MBS2")), Frac(row.Si("eb2")), row.Si("n2"), Test);
        var line = new LineAssembly([new LineSegment("strap", Linear(row, "1"), PerMetre(2)), new LineSegment("rope", stiffening, PerMetre(2))], M(0.3));
        var energy = line.StoredEnergy(N(row.Si("F")));
        row.Matches(("E1", energy.Parts[0].Energy.Joules), ("E2", energy.Parts[1].Energy.Joules), ("E_total", energy.Total.Joules), ("x_total", line.Stretch(N(row.Si("F"))).Meters));
        Assert.Equal(row.Si("F"), line.Tension(M(0.3) + energy.Stretch).Newtons, row.Si("F") * 1e-12);
        Assert.Null(line.Stiffness);
    }

    [Theory]
    [CheckRows("lines", "parallel-legs")]
    public void Unequal_legs_beside_each_other_match(CheckRow row)
    {
        double k = row.Si("k_leg"), end = 588.399e3;
        LinearElongation leg = Linear(9, end, end / k / 9);
        var both = LineSegment.ParallelLegs("bridle", leg, leg, M(row.Si("dL")), PerMetre(4));
        row.Matches(("F", both.Curve.Tension(M(row.Si("x"))).Newtons), ("E", both.Curve.StoredEnergy(both.Curve.Tension(M(row.Si("x")))).Joules));
        Assert.Equal(k * 0.05, both.Curve.Tension(M(0.05)).Newtons, 1e-6);
    }

    [Theory]
    [CheckRows("lines", "bridle-stiffness")]
    public void A_strap_through_an_eye_matches(CheckRow row)
    {
        double mbs = row.Si("MBS"), length = row.Si("L_b"), theta = ElasticKernel.RunningBridleAngle(length, row.Si("w"));
        var bridle = LineSegment.RunningBridle("bridle", Linear(length, mbs, 1 / row.Si("EA_over_MBS")), M(row.Si("w")), PerMetre(2.2));
        var k = ((LinearElongation)bridle.Curve).Stiffness.NewtonsPerMeter;
        row.Matches(("theta", theta), ("k_b", k), ("k_series", ElasticKernel.InSeries(k, row.Si("k_strap"))));
        // Its mass is that of the whole strap, and it parts where a leg does.
        Assert.Equal(2.2 * length, bridle.MassKilograms, 1e-9);
        Assert.Equal(2 * Math.Cos(theta / 2) * mbs, bridle.Curve.EndForce.Newtons, mbs * 1e-9);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(10, 0.1)]
    [InlineData(20, 0.2)]
    [InlineData(50, 0.35)]
    [InlineData(80, 0.5)]
    [InlineData(300, 1.0)]
    public void A_table_is_read_both_ways_at_its_ends_its_points_and_between(double kilonewtons, double stretch)
    {
        Assert.Equal(stretch, Table.Stretch(KN(kilonewtons)).Meters, 1e-12);
        Assert.Equal(kilonewtons, Table.Tension(M(stretch)).Kilonewtons, 1e-9);
    }

    [Fact]
    public void Nothing_is_read_past_the_end_of_a_curve()
    {
        foreach (LoadElongation curve in new LoadElongation[] { Table, LoadElongation.Linear(M(10), KN(300), Frac(0.1), Test), LoadElongation.PowerLaw(M(10), KN(300), Frac(0.1), 1.5, Test) })
        {
            Assert.Equal(1.0, curve.Stretch(KN(300)).Meters, 1e-12);
            var error = Assert.Throws<ArgumentOutOfRangeException>(() => curve.Stretch(KN(300.001)));
            Assert.Contains("tension", error.Message, StringComparison.Ordinal);
            Assert.Contains("300 kN", error.Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentOutOfRangeException>(() => curve.Tension(M(1.0001)));
            Assert.Throws<ArgumentOutOfRangeException>(() => curve.StoredEnergy(KN(-1)));
        }
    }

    [Fact]
    public void A_table_that_cannot_be_read_both_ways_is_refused()
    {
        Assert.Contains("must rise", Assert.Throws<ArgumentException>(() => LoadElongation.Tabulated(M(9), [0.02, 0.02], [20, 30], Test)).Message, StringComparison.Ordinal);
        Assert.Contains("must rise", Assert.Throws<ArgumentException>(() => LoadElongation.Tabulated(M(9), [0.02, 0.03], [20, 20], Test)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LoadElongation.Tabulated(M(9), [], [], Test));
        Assert.Throws<ArgumentException>(() => LoadElongation.Tabulated(M(9), [0.02, 0.03], [20], Test));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadElongation.Tabulated(M(9), [0.02, double.NaN], [20, 30], Test));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadElongation.Tabulated(M(9), [-0.02], [20], Test));
        Assert.Throws<ArgumentException>(() => LineSegment.ParallelLegs("bridle", LoadElongation.PowerLaw(M(9), KN(300), Frac(0.1), 2, Test), Table, Length.Zero, PerMetre(2)));
    }

    [Fact]
    public void A_bedded_in_line_is_drawn_together_and_a_worn_one_keeps_its_strain_at_break()
    {
        var first = LoadElongation.Linear(M(9), KN(588.399), Frac(0.25), Test);
        var bedded = first.In(LineState.AsTested.WithStiffeningFactor(2));
        Assert.Equal(2, bedded.SecantStiffness(KN(100)) / first.SecantStiffness(KN(100)), 1e-12);
        Assert.Equal(0.5, bedded.StoredEnergy(KN(100)) / first.StoredEnergy(KN(100)), 1e-12);
        Assert.Equal(first.EndForce.Newtons, bedded.EndForce.Newtons, 1e-6);
        var worn = first.In(LineState.AsTested.WithRemainingStrength(Frac(0.4)));
        Assert.Equal(0.4, worn.EndForce / first.EndForce, 1e-12);
        Assert.Equal(first.EndStretch.Meters, worn.EndStretch.Meters, 1e-12);
        Assert.Equal(0.4, worn.SecantStiffness(KN(100)) / first.SecantStiffness(KN(100)), 1e-12);
        var table = (TabulatedElongation)Table.In(new LineState { StiffeningFactor = 1.5, RemainingStrength = Frac(0.5) });
        Assert.Equal(Table.Stretch(KN(80)).Meters / 1.5, table.Stretch(KN(40)).Meters, 1e-12);
        Assert.Equal(0.5 / 1.5, table.StoredEnergy(KN(150)) / Table.StoredEnergy(KN(300)), 1e-12);
    }

    [Fact]
    public void A_wet_line_is_taken_as_stiff_as_a_dry_one_and_says_so()
    {
        var dry = Linear(9, 588399, 0.25);
        var wet = dry.In(LineState.AsTested.WithIsWet(true));
        Assert.Equal(dry.Stretch(KN(100)).Meters, wet.Stretch(KN(100)).Meters);
        Assert.Empty(dry.Remarks());
        Assert.Equal("line.wet-as-dry", Assert.Single(wet.Remarks()).Id);
    }

    [Fact]
    public void Only_a_test_lowers_the_energy_that_recoil_is_reckoned_with()
    {
        var line = Linear(9, 588399, 0.25);
        Assert.Equal(line.StoredEnergy(KN(200)).Joules, line.RecoverableEnergy(KN(200)).Joules);
        var tested = line.WithUnloading(new UnloadingTest(Frac(0.6), Test));
        Assert.Equal(0.6, tested.RecoverableEnergy(KN(200)) / line.StoredEnergy(KN(200)), 1e-12);
        Assert.Equal(0.6, tested.In(LineState.AsTested.WithIsWet(true)).RecoveredFraction.DecimalFractions, 1e-12);
        // Branches that would give back more than was stored are refused.
        Assert.Throws<ArgumentOutOfRangeException>(() => UnloadingTest.FromBranches(3, 1, Frac(0), Test));
    }

    [Fact]
    public void An_elastic_tail_arms_a_low_stretch_part()
    {
        LineSegment rope = new("HMPE rope", Linear(9, 588399, 0.0179), PerMetre(0.49)), tail = new("nylon tail", Linear(9, 588399, 0.25), PerMetre(2));
        var remark = Assert.Single(new LineAssembly([rope, tail], Length.Zero).StoredEnergy(KN(200)).Remarks());
        Assert.Equal("line.elastic-tail", remark.Id);
        Assert.Contains("HMPE rope", remark.ToString(), StringComparison.Ordinal);
        Assert.Empty(new LineAssembly(rope).StoredEnergy(KN(200)).Remarks());
        Assert.Empty(new LineAssembly([rope, tail], Length.Zero).StoredEnergy(Force.Zero).Remarks());
    }

    [Fact]
    public void No_tension_until_the_slack_is_gone()
    {
        var line = Taut(Linear(9, 588399, 0.25), 0.5);
        Assert.Equal(0, line.Tension(M(0.3)).Newtons);
        Assert.Equal(0, line.Tension(M(0.5)).Newtons);
        Assert.Equal(261.510666667, line.Tension(M(1.5)).Kilonewtons, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => line.Tension(M(3)));
        Assert.Throws<ArgumentException>(() => new LineAssembly([], Length.Zero));
    }

    [Fact]
    public void Explains_itself_up_to_the_result()
    {
        Assert.Equal("76.48 kJ", Linear(9, 588399, 0.25).Explain(KN(200)).Steps[^1].Value);
        LineSegment a = new("strap", Linear(9, 588399, 0.25), PerMetre(2)), b = new("rope", Linear(9, 588399, 0.035), PerMetre(0.45));
        var energy = new LineAssembly([a, b], Length.Zero).StoredEnergy(KN(200));
        Assert.Equal("87.19 kJ", energy.Explain().Steps[^1].Value);
        Assert.Equal(3, energy.Explain().Steps.Count);
        Assert.Equal("linear, 9 m, to 588.4 kN at 25 %", a.Curve.ToString());
        Assert.Equal("strap + rope, slack 0 m", energy.Line.ToString());
    }

    [Property]
    public Property Energies_add_and_stretch_is_inverted_on_any_chain_of_curves() => Prop.ForAll((from parts in Gen.NonEmptyListOf(Curves()) from share in Gen.Choose(1, 1000) select (parts, share / 1000.0)).ToArbitrary(), x =>
    {
        var line = new LineAssembly(x.parts.Select((c, i) => new LineSegment("part " + i, c, PerMetre(1))), Length.Zero);
        var f = line.EndForce * x.Item2;
        var energy = line.StoredEnergy(f);
        var sum = energy.Parts.Sum(p => p.Energy.Joules);
        var back = line.Tension(M(line.Stretch(f).Meters * (1 - 1e-15))).Newtons;
        return Math.Abs(sum - energy.Total.Joules) <= 1e-12 * sum && energy.Parts.All(p => p.Energy.Joules >= 0) && Math.Abs(back - f.Newtons) <= 1e-9 * f.Newtons
            && Math.Abs(energy.Total.Joules - Quadrature(line, f)) <= 2e-3 * sum;
    });

    private static double Quadrature(LineAssembly line, Force f)
    {
        double end = line.Stretch(f).Meters * (1 - 1e-15), sum = 0;
        const int n = 400;
        for (var i = 0; i < n; i++) sum += line.Tension(M(end * (i + 0.5) / n)).Newtons * end / n;
        return sum;
    }

    private static Gen<LoadElongation> Curves() =>
        from kind in Gen.Choose(0, 2)
        from length in Gen.Choose(1, 30)
        from end in Gen.Choose(100, 900)
        from strain in Gen.Choose(15, 300)
        from exponent in Gen.Choose(100, 250)
        select kind switch
        {
            0 => LoadElongation.Linear(M(length), KN(end), Frac(strain / 1000.0), Test),
            1 => (LoadElongation)LoadElongation.PowerLaw(M(length), KN(end), Frac(strain / 1000.0), exponent / 100.0, Test),
            _ => LoadElongation.Tabulated(M(length), [strain / 3000.0, strain / 1500.0, strain / 1000.0], [end / 6.0, end / 2.5, end], Test),
        };
}
