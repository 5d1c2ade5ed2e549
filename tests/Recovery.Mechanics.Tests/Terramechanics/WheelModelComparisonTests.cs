using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

/// <summary>All models side by side; the comparison of the sources on a 30 t machine at three cone indices.</summary>
public class WheelModelComparisonTests
{
    private static readonly MobilityFactors Factors = new MobilityFactors(Length.FromMeters(0.40)).WithPower(Power.FromKilowatts(350), Mass.FromTonnes(30));

    [Theory]
    [CheckRows("terramechanics", "comparison-brixius-bias")]
    public void Brixius_bias_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(BrixiusModel.Bias, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-brixius-radial")]
    public void Brixius_radial_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(BrixiusModel.Radial, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-wismer-luth")]
    public void Wismer_Luth_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(WismerLuthModel.Instance, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-gee-clough")]
    public void Gee_Clough_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(GeeCloughModel.Instance, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-wes-clay")]
    public void Wes_clay_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(WesClayModel.Instance, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-vti")]
    public void Vti_of_the_machine_matches(CheckRow row) => row.Matches(("MR", Rolling(VtiFineSoilModel.Instance, row)));

    [Theory]
    [CheckRows("terramechanics", "comparison-nrmm")]
    public void Rating_cone_index_of_the_machine_matches(CheckRow row)
    {
        var index = row.Si("CI") * row.Si("RI");
        var wheels = Wheels.TwoAxles(row, index / 1000);
        var entry = WheelModelComparison.OfMachine(wheels, Inputs())[RatingConeIndexModel.Instance];
        row.Matches(
            ("RCIx_f", index - WheeledMobilityModel.Instance.Evaluate(wheels[0], Factors).OnePass.Pascals),
            ("RCIx_r", index - WheeledMobilityModel.Instance.Evaluate(wheels[1], Factors).OnePass.Pascals),
            ("low", entry.MotionResistanceLow!.Value.Newtons),
            ("high", entry.MotionResistanceHigh!.Value.Newtons));
        Assert.NotEmpty(entry.Remark);
    }

    /// <summary>The table as printed: whole kilonewtons.</summary>
    [Theory]
    [CheckRows("terramechanics", "comparison-30t")]
    public void Reproduces_the_table(CheckRow row)
    {
        var entry = Entry(row);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, (name == "R_low" ? entry.MotionResistanceLow : entry.MotionResistanceHigh)!.Value.Newtons);
    }

    /// <summary>The shares of the weight as printed: three decimals.</summary>
    [Theory]
    [CheckRows("terramechanics", "comparison-30t-ratio")]
    public void Reproduces_the_shares(CheckRow row)
    {
        var entry = Entry(row);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, (name == "low_over_W" ? entry.MotionResistanceRatioLow : entry.MotionResistanceRatioHigh)!.Value);
    }

    [Theory]
    [CheckRows("terramechanics", "comparison-30t-refused")]
    public void Reproduces_the_refusals(CheckRow row)
    {
        var entry = Entry(row);
        row.MatchesWord("says", entry.ResistanceRefusal.Split(':')[0]);
        Assert.Null(entry.MotionResistanceLow);
        Assert.Null(entry.NetTraction);
        Assert.NotEmpty(entry.TractionRefusal);
        Assert.Contains(entry.ResistanceRefusal, entry.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("terramechanics", "comparison-30t-driven")]
    public void Reproduces_the_net_tractions(CheckRow row) => row.Matches(("NT_all", Net(row, true)!.Value.Newtons), ("NT_front", Net(row, false)!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "comparison-30t-no-drive")]
    public void Reproduces_the_no_drive(CheckRow row)
    {
        row.MatchesWord("drive", Net(row, true) is null && Net(row, false) is null ? "false" : "true");
        Assert.StartsWith("no drive", Entry(row).TractionRefusal, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("terramechanics", "comparison-net")]
    public void Net_traction_of_the_machine_matches(CheckRow row) => row.Matches(("NT", WheelModelComparison.OfMachine(Wheels.TwoAxles(row, row.Si("CI") / 1000))[BrixiusModel.Bias].NetTraction!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "comparison-net-gee-clough")]
    public void Net_traction_by_Gee_Clough_matches(CheckRow row) => row.Matches(("NT", WheelModelComparison.OfMachine(Wheels.TwoAxles(row, row.Si("CI") / 1000))[GeeCloughModel.Instance].NetTraction!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "comparison-net-vti")]
    public void Net_traction_by_Vti_matches(CheckRow row) => row.Matches(
        ("NT_all", SelfMobility.NetTraction(VtiFineSoilModel.Instance, Wheels.TwoAxles(row, row.Si("CI") / 1000))!.Value.Newtons),
        ("NT_front", SelfMobility.NetTraction(VtiFineSoilModel.Instance, Wheels.TwoAxles(row, row.Si("CI") / 1000, rearDriven: false))!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "comparison-rating")]
    public void Cone_index_for_the_optimistic_end_rating_cone_index_for_the_rest(CheckRow row) => row.Matches(
        ("RCI", row.Si("CI") * row.Si("RI")),
        ("MR_optimistic", Total(BrixiusModel.Bias, Wheels.TwoAxles(row, row.Si("CI") / 1000))),
        ("MR_central", Total(BrixiusModel.Bias, Wheels.TwoAxles(row, row.Si("CI") * row.Si("RI") / 1000))));

    [Theory]
    [CheckRows("terramechanics", "comparison-rating-net")]
    public void The_same_for_net_traction(CheckRow row) => row.Matches(
        ("NT_central", SelfMobility.NetTraction(BrixiusModel.Bias, Wheels.TwoAxles(row, row.Si("CI") * row.Si("RI") / 1000))!.Value.Newtons),
        ("NT_optimistic", SelfMobility.NetTraction(BrixiusModel.Bias, Wheels.TwoAxles(row, row.Si("CI") / 1000))!.Value.Newtons));

    [Theory]
    [CheckRows("terramechanics", "three-axle-gross")]
    public void Gross_traction_of_a_stuck_machine_matches(CheckRow row)
    {
        var results = ThreeAxles(row, row.Si("RCI")).Select(s => (s, BrixiusModel.Bias.Evaluate(s.Wheel, Wheels.Slip(row.Si("s"))))).ToArray();
        row.Matches(
            ("Bn1", results[0].Item2.Numeric), ("Bn2", results[1].Item2.Numeric), ("Bn3", results[2].Item2.Numeric), ("GT", results.Sum(r => r.Item2.GrossTraction!.Value.Newtons * r.s.Count)));
        Assert.Contains(results[0].Item2.Flags, f => f.Limit.Symbol == "B_n");
    }

    [Theory]
    [CheckRows("terramechanics", "three-axle-rolling")]
    public void Rolling_of_a_three_axle_machine_matches(CheckRow row)
    {
        var sets = ThreeAxles(row, row.Si("RCI"));
        var results = sets.Select(s => BrixiusModel.Radial.Evaluate(s.Wheel, Ratio.Zero)).ToArray();
        var entry = WheelModelComparison.OfMachine(sets)[BrixiusModel.Radial];
        row.Matches(
            ("Bn1", results[0].Numeric), ("Bn2", results[1].Numeric), ("Bn3", results[2].Numeric),
            ("MRR1", results[0].MotionResistanceRatio!.Value), ("MRR2", results[1].MotionResistanceRatio!.Value), ("MRR3", results[2].MotionResistanceRatio!.Value),
            ("MR", entry.MotionResistanceHigh!.Value.Newtons), ("MR_over_W", entry.MotionResistanceHigh!.Value.Newtons / row.Si("W")));
        Assert.False(entry.InRange);
        // The worst wheel of each limit is kept, once.
        Assert.Equal(results[0].Numeric, Assert.Single(entry.Flags, f => f.Limit.Symbol == "B_n").Value, 12);
    }

    /// <summary>The spreads of the sources: at 400 kPa 44 to 67 kN without WES and NRMM, at 200 kPa 74 to 136 kN without VTI and to 213 kN with it.</summary>
    [Fact]
    public void Reproduces_the_spreads()
    {
        bool Sources(WheelModelEntry e) => e.Model is not (MaclaurinModel or WesClayModel or RatingConeIndexModel);
        var at400 = Machine(400, "Rubicon sandy loam (Wong)", 43);
        Close(44, 67, 1.5, at400.SpreadOf(Sources)!);
        Assert.Equal(2.3, at400.SpreadOf(e => Sources(e) || e.Model is RatingConeIndexModel)!.Factor, 0.05);
        var at200 = Machine(200, "lean clay (WES)", 32);
        Close(74, 136, 1.8, at200.SpreadOf(e => Sources(e) && e.Model is not VtiFineSoilModel)!);
        Close(74, 213, 2.9, at200.SpreadOf(Sources)!);
        Assert.Equal(2, at200.Spread!.Refused);
        Assert.Equal(7, at200.Spread!.Models);
    }

    [Fact]
    public void What_is_not_given_is_refused_with_its_reason()
    {
        var comparison = WheelModelComparison.OfWheel(Wheels.Of(900, 30));
        Assert.Equal(9, comparison.Entries.Count);
        Assert.Contains("clearance", comparison[RatingConeIndexModel.Instance].ResistanceRefusal, StringComparison.Ordinal);
        Assert.Contains("section height", comparison[MaclaurinModel.Instance].ResistanceRefusal, StringComparison.Ordinal);
        Assert.Contains("Bekker", comparison[BekkerWheelModel.Instance].ResistanceRefusal, StringComparison.Ordinal);
        Assert.Equal(6, comparison.Spread!.Models);
        Assert.Equal(3, comparison.Spread!.Refused);
        Assert.All(comparison.Entries, e => Assert.True(e.MotionResistanceHigh is null == e.ResistanceRefusal.Length > 0));
        Assert.All(comparison.Entries, e => Assert.True(e.NetTraction is null == e.TractionRefusal.Length > 0));
        Assert.All(comparison.Entries, e => Assert.NotEmpty(e.CriticalMeaning));
        Assert.Throws<ArgumentException>(() => comparison[HardSurfaceModel.Bias]);
    }

    [Fact]
    public void Within_range_nothing_is_flagged_and_a_heavy_wheel_leaves_the_range()
    {
        var firm = WheelModelComparison.OfMachine([new WheelSet(Wheels.Of(1200, 30, 0.6, 1.9, 0.2), 1).WithSectionHeight(Length.FromMeters(0.45))], Inputs());
        Assert.Equal(8, firm.SpreadInRange!.Models);
        Assert.All(firm.Entries.Where(e => e.Model is not BekkerWheelModel), e => Assert.True(e.InRange, e.ToString()));
        var heavy = Machine(200, "lean clay (WES)", 32);
        Assert.Null(heavy.SpreadInRange);
        Assert.Null(heavy.SpreadOf(_ => false));
    }

    [Fact]
    public void An_axle_that_is_not_driven_refuses_the_rating_cone_index_its_pull()
    {
        WheelSet[] wheels = [new(Wheels.Of(900, 30), 2), new(Wheels.Of(900, 30), 2, driven: false)];
        var entry = WheelModelComparison.OfMachine(wheels, Inputs())[RatingConeIndexModel.Instance];
        Assert.NotNull(entry.MotionResistanceHigh);
        Assert.Null(entry.NetTraction);
        Assert.Null(entry.CriticalConeIndex);
        Assert.Contains(entry.Flags, f => f.Limit.Symbol == "driven");
        Assert.Contains("driven", entry.TractionRefusal, StringComparison.Ordinal);
    }

    /// <summary>Front wheel of the 30 t machine on Rubicon loam, 16 kN/m3: printed 0.46 of its load pushed ahead; on Grenville loam it sinks too little.</summary>
    [Fact]
    public void Soil_pushed_ahead_stands_beside_and_never_inside()
    {
        WheelModelEntry Entry(string terrain, double moisture, SpecificWeight? weight) => WheelModelComparison.OfMachine([new WheelSet(Wheels.Of(400, 98.1, 0.90, 2.05, 0.20), 2)], ComparisonInputs.None.WithTerrain(BekkerTerrains.Find(terrain, moisture)).WithUnitWeight(weight))[BekkerWheelModel.Instance];
        var soil = SpecificWeight.FromKilonewtonsPerCubicMeter(16);
        WheelModelEntry with = Entry("Rubicon sandy loam (Wong)", 43, soil), without = Entry("Rubicon sandy loam (Wong)", 43, null);
        Assert.Equal(0.46, with.Bulldozing!.Value.Kilonewtons / 196.2, 0.005);
        Assert.Contains("; soil pushed ahead, apart, ", with.Remark, StringComparison.Ordinal);
        Assert.Equal(without.MotionResistanceHigh, with.MotionResistanceHigh);
        Assert.Null(without.Bulldozing);
        Assert.Null(Entry("Grenville loam (Wong)", 24, soil).Bulldozing);
        // On lean clay it exceeds the load, which is flagged.
        Assert.Contains(Entry("lean clay (WES)", 32, soil).Flags, f => f.Limit.Symbol == "R_b/W");
        Assert.Throws<ArgumentOutOfRangeException>(() => ComparisonInputs.None.WithUnitWeight(SpecificWeight.FromKilonewtonsPerCubicMeter(30)));
    }

    [Fact]
    public void A_terrain_that_gives_no_support_is_refused()
    {
        var mud = new BekkerTerrain("mud", 0, 20, 0.5, Pressure.FromKilopascals(2), Angle.FromDegrees(0));
        var entry = WheelModelComparison.OfWheel(Wheels.Of(200, 98.1, 0.9, 2.05), ComparisonInputs.None.WithTerrain(mud))[BekkerWheelModel.Instance];
        Assert.StartsWith("immobile", entry.ResistanceRefusal, StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_fits_the_screen_and_shows_every_model()
    {
        var table = Machine(200, "lean clay (WES)", 32).ToTable().Split('\n');
        Assert.All(table, l => Assert.True(l.Length <= 80, l));
        foreach (var entry in Machine(200, "lean clay (WES)", 32).Entries) Assert.Contains(table, l => l.StartsWith(entry.Model.Name, StringComparison.Ordinal));
        Assert.Contains("immobile", string.Join('\n', table), StringComparison.Ordinal);
        Assert.Contains("no-go", string.Join('\n', table), StringComparison.Ordinal);
    }

    [Fact]
    public void The_table_does_not_depend_on_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var invariant = Machine(400, "Rubicon sandy loam (Wong)", 43).ToTable();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("nl-NL");
            Assert.Equal(invariant, Machine(400, "Rubicon sandy loam (Wong)", 43).ToTable());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Takes_the_wheels_of_an_axle()
    {
        var tyre = new Tyre(Length.FromMeters(0.9), Length.FromMeters(2.05), Length.FromMeters(0.55), Pressure.FromKilopascals(240));
        var set = WheelSet.Of(new Axle("front", Length.Zero, 2, tyre, true, Length.FromMeters(2.6)), Force.FromKilonewtons(196.2), Pressure.FromKilopascals(400));
        Assert.Equal(98.1, set.Wheel.Load.Kilonewtons, 9);
        Assert.Equal(0.193, set.Wheel.DeflectionRatio.DecimalFractions, 5e-4);
        Assert.Equal(0.55, set.SectionHeight!.Value.Meters);
        Assert.Null(set.TyrePressure);
        Assert.Equal(900, set.On(Pressure.FromKilopascals(900)).Wheel.ConeIndex.Kilopascals, 9);
    }

    /// <summary>136 kN of the printed comparison on lean clay: Bekker's model takes part where the soil carries its parameters, and says why not where it does not.</summary>
    [Fact]
    public void Bekker_takes_part_where_the_soil_has_its_parameters()
    {
        var soil = Soil.FromConeIndex(Pressure.FromKilopascals(200), Ratio.FromDecimalFractions(1));
        var without = WheelModelComparison.OfMachine(Sets(200), ComparisonInputs.Of(soil));
        Assert.Equal("not worked, because it asks for the Bekker parameters of the soil", without[BekkerWheelModel.Instance].ResistanceRefusal);
        Assert.Contains("Bekker-Wong wheel: not worked, because it asks for the Bekker parameters", without.ToTable(), StringComparison.Ordinal);
        Assert.Null(without.Inputs.UnitWeight);
        var with = WheelModelComparison.OfMachine(Sets(200), ComparisonInputs.Of(soil.WithTerrain(BekkerTerrains.Find("lean clay (WES)", 32)).WithDeclaredUnitWeight(SpecificWeight.FromKilonewtonsPerCubicMeter(16))));
        Assert.Equal(136, with[BekkerWheelModel.Instance].MotionResistanceHigh!.Value.Kilonewtons, 0.5);
        Assert.True(with[BekkerWheelModel.Instance].Bulldozing > Force.Zero);
        Assert.Equal(without.Spread!.Models + 1, with.Spread!.Models);
        Assert.Throws<ArgumentNullException>(() => ComparisonInputs.Of(null!));
    }

    [Fact]
    public void Refuses_bad_input()
    {
        Assert.Throws<ArgumentException>(() => WheelModelComparison.OfMachine([]));
        Assert.Throws<ArgumentNullException>(() => WheelModelComparison.OfWheel((WheelOnSoil)null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => ComparisonInputs.None.WithSlipLimit(Ratio.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new WheelSet(Wheels.Of(400, 30), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new WheelSet(Wheels.Of(400, 30), 1).WithTyrePressure(Pressure.Zero));
    }

    [Property(MaxTest = 40)]
    public Property Worse_ground_and_more_load_never_help_any_model() => Prop.ForAll(Wheels.Any(), wheel =>
    {
        IReadOnlyList<WheelModelEntry> At(double index, double load) => WheelModelComparison.OfMachine([new WheelSet(wheel with { ConeIndex = wheel.ConeIndex * index, Load = wheel.Load * load }, 2).WithSectionHeight(Length.FromMeters(0.5))], Inputs()).Entries;
        static double Value(Force? force) => force?.Newtons ?? double.PositiveInfinity;
        var now = At(1, 1);
        return now.Zip(At(0.9, 1)).All(p => Value(p.First.MotionResistanceHigh) <= Value(p.Second.MotionResistanceHigh) * (1 + 1e-12))
            && now.Zip(At(1, 0.9)).All(p => Value(p.Second.MotionResistanceHigh) <= Value(p.First.MotionResistanceHigh) * (1 + 1e-12));
    });

    private static ComparisonInputs Inputs() => ComparisonInputs.None.WithMobility(Factors);

    private static WheelSet[] Sets(double coneIndexKilopascals, bool rearDriven = true) =>
    [
        new WheelSet(Wheels.Of(coneIndexKilopascals, 98.1, 0.90, 2.05, 0.20), 2).WithSectionHeight(Length.FromMeters(0.55)),
        new WheelSet(Wheels.Of(coneIndexKilopascals, 49.05, 0.60, 1.60, 0.20), 2, rearDriven).WithSectionHeight(Length.FromMeters(0.42)),
    ];

    private static WheelModelComparison Machine(double coneIndexKilopascals, string terrain, double moisture) => WheelModelComparison.OfMachine(Sets(coneIndexKilopascals), Inputs().WithTerrain(BekkerTerrains.Find(terrain, moisture)));

    private static WheelModelEntry Entry(CheckRow row)
    {
        var inputs = row.Has("terrain") ? Inputs().WithTerrain(BekkerTerrains.Find(row.Word("terrain").Replace('_', ' '), row.Printed("w"))) : Inputs();
        return WheelModelComparison.OfMachine(Sets(row.Si("CI") * row.Si("RI", 1) / 1000), inputs)[Model(row)];
    }

    private static Force? Net(CheckRow row, bool rearDriven) => SelfMobility.NetTraction((IWheelModel)Model(row), Sets(row.Si("CI") / 1000, rearDriven));

    private static IModel Model(CheckRow row) => SelfMobilityTests.Model(row.Word("model"));

    private static double Rolling(IWheelModel model, CheckRow row) => Total(model, Wheels.TwoAxles(row, row.Si("CI") / 1000, loadFactor: row.Si("load_factor", 1)));

    private static double Total(IWheelModel model, WheelSet[] wheels) => WheelModelComparison.OfMachine(wheels)[model].MotionResistanceHigh!.Value.Newtons;

    private static WheelSet[] ThreeAxles(CheckRow row, double pascals) =>
        Enumerable.Range(1, 3).Select(i => new WheelSet(Wheels.Of(pascals / 1000, row.Si("W" + i) / 1000, row.Si("b" + i), row.Si("d" + i), row.Si("dh")), 2)).ToArray();

    private static void Close(double low, double high, double factor, ModelSpread spread)
    {
        Assert.Equal(low, spread.Low.Kilonewtons, 0.5);
        Assert.Equal(high, spread.High.Kilonewtons, 0.5);
        Assert.Equal(factor, spread.Factor, 0.05);
    }
}
