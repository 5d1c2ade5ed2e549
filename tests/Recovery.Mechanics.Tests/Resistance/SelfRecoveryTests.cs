using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Whether the stuck machine can move itself.</summary>
public class SelfRecoveryTests
{
    [Theory]
    [CheckRows("resistance-scipy", "own-wheels")]
    public void Grip_and_critical_index_recomputed(CheckRow row)
    {
        double[] loads = [row.Si("N1"), row.Si("N2"), row.Si("N3")], b = [0.8, 1, 1], d = [2.05, 1.95, 1.95];
        bool[] driven = [row.Si("driven1") > 0, row.Si("driven2") > 0, row.Si("driven3") > 0];
        var theta = Math.Atan(row.Si("grade"));
        var weight = loads.Sum() / Math.Cos(theta);
        var f = new DemandFlat
        {
            Count = [2, 2, 2],
            Width = b,
            Diameter = d,
            Sinkage = [0.1, 0.1, 0.1],
            Contact = [1, 1, 1],
            Segment = [0, 0, 0],
            Step = [0, 0, 0],
            NumericPerPascal = Enumerable.Range(0, 3).Select(i => BrixiusKernel.Numeric(1, b[i], d[i], 0.2, loads[i] / 2)).ToArray(),
            Load = loads,
            UpliftShare = [0, 0, 0],
            Buried = [false, false, false],
            Driven = driven,
            Braked = [true, true, true],
            Weight = weight,
        };
        row.Matches(
            ("gross", OwnTractionKernel.Gross(f, row.Si("W_b"), row.Si("CI"))),
            ("resistance", Enumerable.Range(0, 3).Sum(i => OwnTractionKernel.Resistance(f, i, row.Si("W_b"), row.Si("CI")))),
            ("critical", CriticalIndexKernel.Find(f.NumericPerPascal, loads, driven, weight * Math.Sin(theta), BrixiusConstants.Radial)));
        if (row.Word("state") is not ("full" or "empty")) return;
        var self = SelfRecovery.Estimate(row.Word("state") == "full" ? StuckHarvester() : StuckHarvester().Without("beet"));
        // The loads of the row are rounded to six digits.
        Assert.Equal(1, self.GrossTraction.Newtons / Printed(row, "gross"), 1e-5);
        Assert.Equal(1, self.CriticalConeIndex!.Value.Pascals / Printed(row, "critical"), 1e-5);
    }

    /// <summary>Worked example: gross 139 kN listed apart against 364.7 kN, critical index 264.0 kPa as it sank; every wheel is buried.</summary>
    [Fact]
    public void A_buried_machine_gets_no_answer_from_a_wheel_model()
    {
        var self = SelfRecovery.Estimate(StuckHarvester());
        Assert.Equal(SelfRecoveryOutlook.NoModel, self.Outlook);
        Assert.Contains("a buried wheel is in no wheel model's range", self.Statement, StringComparison.Ordinal);
        Assert.Null(self.NetTraction);
        Assert.Null(self.Holding);
        Assert.Equal(139, self.GrossTraction.Kilonewtons, 0.5);
        Assert.Equal(364.7, self.Demand.Total.Central.Kilonewtons, 0.0501);
        Assert.Equal(0.38, self.ShareOfDemand.DecimalFractions, 0.005);
        Assert.Equal(264.0, self.CriticalAsSunk!.Value.Kilopascals, 0.05);
        Assert.Equal(self.CriticalAsSunk.Value.Pascals, self.CriticalConeIndex!.Value.Pascals, 1);
        Assert.Equal(245, self.RatingConeIndex.Kilopascals, 1e-9);
        Assert.All(self.Axles, a => Assert.True(a.Buried && !a.InRange));
        Assert.Equal(self.GrossTraction.Newtons, self.Axles.Sum(a => a.GrossTraction.Newtons), 1e-6);
        Assert.EndsWith("kPa", self.Explain().Steps[^1].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_step_of_lightening_says_what_it_does_to_the_critical_index()
    {
        var self = SelfRecovery.Estimate(StuckHarvester());
        var steps = self.Steps();
        Assert.Equal(["take off front", "unload beet", "lowest inflation", "dig out to 1:6", "vent", "free the belly", "all of it", "turn round, out forwards"], steps.Select(s => s.Name));
        var unload = steps[1];
        Assert.True(unload.Change!.Value.Pascals < 0);
        Assert.True(unload.ReadingSuffices);
        Assert.Equal(self.CriticalConeIndex!.Value.Pascals, unload.CriticalConeIndex!.Value.Pascals - unload.Change.Value.Pascals, 1e-6);
        Assert.Equal(303.3, unload.Holds.Kilonewtons, 0.0501);
        // Front off 239.17 kPa, beet off 173.61 kPa, each from axle loads and a bisection worked apart; both are gains, so nothing has to be explained, though the front off loads the rear axles.
        Assert.Equal(239.17, steps[0].CriticalConeIndex!.Value.Kilopascals, 0.0101);
        Assert.Equal(173.61, unload.CriticalConeIndex.Value.Kilopascals, 0.0101);
        Assert.All(steps.Take(3), s => Assert.Empty(s.Remark));
        Assert.Empty(steps[6].Remark);
        Assert.True(steps[6].CriticalConeIndex!.Value.Pascals <= unload.CriticalConeIndex.Value.Pascals);
    }

    [Fact]
    public void A_machine_that_cannot_drive_cannot_move_itself()
    {
        var self = SelfRecovery.Estimate(Sprayer(0.1, 600, driven: false));
        Assert.Equal(SelfRecoveryOutlook.NotDriven, self.Outlook);
        Assert.Equal(0, self.GrossTraction.Newtons);
        Assert.Null(self.CriticalConeIndex);
        Assert.Contains("No axle is driven", self.ToString(), StringComparison.Ordinal);
        Assert.Equal("no soil would do", self.Explain().Steps[^1].Value);
        Assert.All(self.Steps(), s => Assert.Null(s.CriticalConeIndex));
        Assert.All(self.Steps(), s => Assert.StartsWith("unchanged, because no axle is driven", s.Remark, StringComparison.Ordinal));
    }

    /// <summary>On level ground, still loaded, the index is held at the critical one (radial); with bias constants the net traction is then below nothing.</summary>
    [Fact]
    public void Loaded_as_it_sank_it_stays()
    {
        var self = SelfRecovery.Estimate(Sprayer(0.1, 600));
        Assert.Equal(SelfRecoveryOutlook.Held, self.Outlook);
        Assert.True(self.NetTraction!.Value.HighNewtons < 0);
        Assert.Equal(0, self.Holding!.Value.CentralNewtons, 1e-6);
        Assert.Contains("Listed, not credited: front (outside the wheel model: B_n, W)", self.Statement, StringComparison.Ordinal);
    }

    /// <summary>Half its load taken off: B_n 8.42602, net 44.4662 kN (SciPy), nothing holds it beside its rolling on level ground.</summary>
    [Fact]
    public void Lightened_it_moves_itself_on_level_ground_and_not_up_a_hill()
    {
        var self = SelfRecovery.Estimate(Sprayer(0.1, 600).Without("cargo"));
        Assert.Equal(SelfRecoveryOutlook.MovesItself, self.Outlook);
        Assert.Equal(44.4662, self.NetTraction!.Value.Central.Kilonewtons, 0.0001);
        Assert.Equal(0, self.Holding!.Value.CentralNewtons, 1e-6);
        Assert.Equal(44.4662, self.Axles.Sum(a => a.NetTraction.Kilonewtons), 0.0001);
        // A belly on the ground drags; its band makes the answer undecided or worse.
        var dragging = SelfRecovery.Estimate(Sprayer(0.1, 600).WithBelly(new Belly(M(4), M(2), M(0.1))).Without("cargo"));
        Assert.NotEqual(SelfRecoveryOutlook.MovesItself, dragging.Outlook);
        Assert.True(dragging.Holding!.Value.CentralNewtons > 0);
    }

    /// <summary>Undriven, so that nothing caps the index: motion resistance with delta/h held at 0.30 printed as 84.2, 48.0 and 27.9 kN; without the hold it would be 78.2, 45.0 and 26.5.</summary>
    [Theory]
    [InlineData(200, 84.2, 74.71)]
    [InlineData(400, 48.0, 42.14)]
    [InlineData(900, 27.9, 24.04)]
    public void Tyres_let_down_beyond_the_fit_earn_nothing_more(double coneIndex, double bias, double radial)
    {
        StuckMachine At(double front, double rear) => new(
            new Machine("30 t machine", [new Axle("front", M(0), 2, Tyre(0.90, 2.05, 0.55, front), false, M(2)), new Axle("rear", M(-3), 2, Tyre(0.60, 1.60, 0.42, rear), false, M(2))], [new NamedLoad("all", Mass.FromKilograms(294300 / 9.80665), M(-1), M(1))]),
            Soil.FromConeIndex(KPa(coneIndex), Frac(1)), [M(0.05), M(0.05)], PullDirection.Rearwards);
        var soft = SelfRecovery.Estimate(At(0.370, 0.243));
        Assert.Equal(bias, soft.Axles.Sum(a => a.MotionResistance.Kilonewtons), 0.0501);
        Assert.Equal(radial, soft.Demand.Total.Central.Kilonewtons, 0.00501);
        Assert.Equal("Tyres of the 30 t machine deflect 0.37 of their section height, more than the tests behind the wheel model: 0.3 is counted, and letting them down further earns nothing in these numbers.", soft.Demand.Findings.Single(f => f.Id == "wheel.deflection-held").Message);
        Assert.DoesNotContain(PullDemand.Estimate(At(0.30, 0.243)).Findings, f => f.Id == "wheel.deflection-held");
    }

    /// <summary>Measured 0.25 at 200 kPa; let down to 100 kPa it deflects beyond 0.30; a harder tyre of 0.10 does not.</summary>
    [Theory]
    [InlineData(0.25, true)]
    [InlineData(0.10, false)]
    public void A_step_of_inflation_says_where_the_fit_ends(double deflection, bool ends)
    {
        var tyre = new Tyre(M(0.8), M(2.0), M(0.5), KPa(200), KPa(100), Frac(deflection));
        var stuck = new StuckMachine(
            new Machine("sprayer", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-4), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(20), M(-2), M(1.5))]),
            Soil.FromConeIndex(KPa(300), Frac(1)), [M(0.1), M(0.1)], PullDirection.Rearwards);
        Assert.Equal(ends ? "deflection of the tyres counted to 30 % of section height, the end of the fit" : string.Empty, SelfRecovery.Estimate(stuck).Steps().Single(s => s.Name == "lowest inflation").Remark);
    }

    /// <summary>Gross, net and hold in one line; the demand of the towed machine is not set against the gross.</summary>
    [Fact]
    public void Says_both_bands_it_sets_against_each_other()
    {
        var self = SelfRecovery.Estimate(Sprayer(0.1, 600).Without("cargo"));
        Assert.Contains(" / 44.5 / ", self.ToString(), StringComparison.Ordinal);
        Assert.Contains(" kN against 0 / 0 / 0 kN that hold it beside its rolling", self.ToString(), StringComparison.Ordinal);
        Assert.Contains("net of what they cost to roll while they slip", self.Statement, StringComparison.Ordinal);
        Assert.Contains(self.Explain().Steps, s => s.Substitution.StartsWith("load ", StringComparison.Ordinal));
        Assert.DoesNotContain(self.Explain().Steps, s => s.Substitution.Contains("belly", StringComparison.Ordinal));
    }

    /// <summary>The worked machine needs 264.0 kPa up its 2 % and 251.8 kPa on the level, worked apart.</summary>
    [Fact]
    public void The_critical_index_counts_the_slope()
    {
        Assert.Equal(264.0, PullDemand.Estimate(StuckHarvester()).CriticalConeIndex!.Value.Kilopascals, 0.0501);
        Assert.Equal(251.8, PullDemand.Estimate(StuckHarvester() with { Grade = Grade.Level }).CriticalConeIndex!.Value.Kilopascals, 0.0501);
    }

    /// <summary>Critical 264.0 kPa: of 350 x 0.7 = 245 only the cone index lies above it; of 350 x 0.8 = 280 both; with a weakest reading of 340 x 0.8 = 272 all.</summary>
    [Theory]
    [InlineData(0.7, 300, "the cone index alone")]
    [InlineData(0.8, 300, "all but the weakest reading")]
    [InlineData(0.8, 340, "every reading")]
    public void Says_which_readings_are_taken_down_to_the_critical_value(double remoulding, double weakest, string words)
    {
        var demand = PullDemand.Estimate(StuckHarvester() with { Soil = Soil.FromConeIndex(KPa(350), Frac(remoulding)).WithWeakestReading(KPa(weakest)) });
        Assert.Contains(words, demand.Findings.Single(f => f.Id == "mire.index-capped").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sinkage_that_cannot_be_names_its_place()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new StuckMachine(Harvester(), StuckHarvester().Soil, [M(0.5), M(2.5), M(0.5)], PullDirection.Rearwards));
        Assert.Equal("sinkage", refusal.ParamName);
        Assert.StartsWith("sinkage[1] (middle axle) must be from 0 to 1.95 m; it was 2.5 m.", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_nothing() => Assert.Throws<ArgumentNullException>(() => SelfRecovery.Estimate(null!));

    [Property]
    public Property A_lighter_machine_never_needs_stronger_ground_where_no_axle_load_rises() => Prop.ForAll((from share in Gen.Choose(0, 99) from grade in Gen.Choose(0, 8) select (share / 100.0, grade)).ToArbitrary(), x =>
    {
        var full = StuckHarvester() with { Grade = Grade.FromPercent(x.grade) };
        SelfRecovery before = SelfRecovery.Estimate(full), after = SelfRecovery.Estimate(full.WithShareOf("beet", Ratio.FromDecimalFractions(x.Item1)));
        return after.CriticalConeIndex!.Value.Pascals <= before.CriticalConeIndex!.Value.Pascals * (1 + 1e-8);
    });

    [Property]
    public Property Steeper_ground_never_needs_less() => Prop.ForAll(Gen.Choose(-5, 9).ToArbitrary(), grade =>
    {
        double At(double percent) => SelfRecoverySteps.Critical(Sprayer(0.1, 600) with { Grade = Grade.FromPercent(percent) });
        return At(grade + 1) >= At(grade) * (1 - 1e-8);
    });

    private static Tyre Bare => new(M(0.8), M(2), M(0.5), KPa(140), KPa(140));

    private static double Printed(CheckRow row, string name) => double.Parse(row.ExpectedText(name), System.Globalization.CultureInfo.InvariantCulture);

    private static StuckMachine Sprayer(double z, double coneIndex, bool driven = true)
    {
        var tyre = Tyre(0.8, 2.0, 0.5, 0.2);
        return new StuckMachine(
            new Machine("sprayer", [new Axle("front", M(0), 2, tyre, driven, M(2)), new Axle("rear", M(-4), 2, tyre, driven, M(2))], [new NamedLoad("body", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(160 / 9.80665), M(-2), M(1.5), LoadKind.Payload)]),
            Soil.FromConeIndex(KPa(coneIndex), Frac(1)),
            [M(z), M(z)],
            PullDirection.Rearwards);
    }
}
