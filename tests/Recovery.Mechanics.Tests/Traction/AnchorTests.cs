using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class AnchorTests
{
    private const double Foot = 0.3048;

    private static Deadman Log(double depth = 7 * Foot, double run = 3, DeadmanSoil soil = DeadmanSoil.Loam, double length = 6.18 * Foot) => new("log", M(2.5 * Foot), null, M(length), M(depth), run, soil, M(2 * Foot));

    [Theory]
    [CheckRows("traction", "deadman-power")]
    public void Holding_power_of_the_published_table(CheckRow row) => row.Matches(Enumerable.Range(1, 4)
        .Select(run => ("slope_1_" + run, DeadmanModel.Instance.HoldingPower(M(row.Si("depth")), run, DeadmanSoil.Loam).Power!.Value.Pascals)).ToArray());

    [Theory]
    [CheckRows("traction", "deadman-soil")]
    public void Soil_factors(CheckRow row)
    {
        double Of(DeadmanSoil soil) => DeadmanModel.Instance.HoldingPower(M(row.Si("depth")), row.Si("slope_run"), soil).Power!.Value.Pascals;
        Assert.Equal(row.Si("HP_loam"), Of(DeadmanSoil.Loam), 1e-6);
        row.Matches(("rock", Of(DeadmanSoil.RockOrHardpan)), ("wet", Of(DeadmanSoil.FineGrainedOrWetSand)));
    }

    [Theory]
    [CheckRows("traction", "deadman-log")]
    public void Log_for_a_load(CheckRow row)
    {
        var soil = row.Si("soil_factor") < 1 ? DeadmanSoil.FineGrainedOrWetSand : DeadmanSoil.Loam;
        var log = Deadman.LogFor(Force.FromNewtons(row.Si("CC")), M(row.Si("log_diameter")), M(row.Si("depth")), row.Si("slope_run"), soil, M(row.Si("trench_allowance")));
        Assert.Equal(row.Si("HP_loam"), log.Holding.Loam!.Value.Pascals, 1e-6);
        row.MatchesOne("length", log.Length!.Value.Meters);
        row.MatchesOne("length_over_diameter", log.Slenderness!.Value);
        row.MatchesWord("passes", log.Passes ? "true" : "false");
    }

    [Theory]
    [CheckRows("traction", "deadman-log-fm")]
    public void Published_rope_anchorage(CheckRow row)
    {
        var log = Deadman.LogFor(Force.FromNewtons(row.Si("BS")), M(row.Si("log_diameter")), M(row.Si("depth")), row.Si("slope_run"), DeadmanSoil.Loam, M(row.Si("trench")));
        Assert.Equal(row.Si("HP"), log.Holding.Power!.Value.Pascals, 1e-6);
        row.Matches(("BA", log.BearingArea!.Value.SquareMeters), ("EL", log.EffectiveLength!.Value.Meters), ("L", log.Length!.Value.Meters), ("L_over_d", log.Slenderness!.Value));
        Assert.True(log.Passes);
    }

    [Theory]
    [CheckRows("traction", "deadman-place")]
    public void Place_behind_the_line(CheckRow row)
    {
        double C(double run) => DeadmanModel.Instance.Distance(M(row.Si("H")), M(row.Si("D_D")), run).Meters;
        row.Matches(("C", C(row.Si("slope_run"))), ("C_min", C(1)), ("C_max", C(4)));
    }

    [Theory]
    [CheckRows("traction-scipy", "deadman")]
    public void Between_the_entries(CheckRow row)
    {
        var soil = (DeadmanSoil)Enum.Parse(typeof(DeadmanSoil), row.Word("soil"));
        var deadman = new Deadman("log", M(row.Si("face")), null, M(row.Si("L")), M(row.Si("depth")), row.Si("run"), soil, M(row.Si("trench")));
        row.Matches(("HP", deadman.Holding.Power!.Value.Pascals), ("F", deadman.Holds!.Value.Newtons));
        Assert.Contains(Text.Kilonewtons(deadman.Holds.Value.Newtons), deadman.Explain().Steps.Select(s => s.Value));
    }

    [Theory]
    [CheckRows("traction", "picket-wood")]
    public void Wooden_pickets(CheckRow row) => row.Matches(("capacity", Pickets(row.Word("kind"), row.Word("soil"))));

    [Theory]
    [CheckRows("traction", "picket-steel")]
    public void Steel_pickets(CheckRow row) => row.Matches(("capacity", Pickets(row.Si("pickets") > 1 ? "SteelThreeInLine" : "SteelSingle", row.Word("soil"))));

    [Theory]
    [CheckRows("traction", "picket-inclined")]
    public void Inclined_steel_pickets(CheckRow row) => row.Matches(("capacity", PicketModel.Instance.InclinedSteel((int)row.Si("pickets")).Newtons));

    [Theory]
    [CheckRows("traction-scipy", "machine-anchor")]
    public void Machine_as_an_anchor(CheckRow row)
    {
        var machine = Tractors.SixteenTonnes(row.Si("axle_f") / 1000, row.Si("axle_r") / 1000, row.Si("h"));
        machine = machine.WithAxles(machine.Axles.Select((a, i) => a with { Braked = i == 1 || row.Word("front") == "yes" }));
        var tower = new TowingMachine(machine, Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), Frac(1)), M(-row.Si("L")), M(row.Si("H"))) { Grade = Grade.FromRatio(Frac(row.Si("grade"))), EnginePower = Power.FromKilowatts(20) };
        var anchor = new MachineAnchor(tower);
        row.Matches(("holds", anchor.Holds!.Value.Newtons));
        Assert.Empty(anchor.Findings);
        Assert.Contains(anchor.Name, anchor.ToString(), StringComparison.Ordinal);
        Assert.Equal(Text.Kilonewtons(anchor.Holds.Value.Newtons), anchor.Explain().Steps[^1].Value);
    }

    [Fact]
    public void Table_at_its_ends_and_beyond()
    {
        double? Hp(double depth, double run) => DeadmanModel.Instance.HoldingPower(M(depth), run, DeadmanSoil.Loam).Power?.Kilopascals;
        int Flags(double depth, double run) => DeadmanModel.Instance.HoldingPower(M(depth), run, DeadmanSoil.Loam).Flags.Count;
        Assert.Null(Hp((3 * Foot) - 1e-6, 2));
        Assert.Equal(62.2444, Hp(3 * Foot, 2)!.Value, 1e-3);
        Assert.Equal(402.195, Hp(7 * Foot, 4)!.Value, 1e-2);
        Assert.Equal(402.195, Hp(9 * Foot, 9)!.Value, 1e-2);
        Assert.Equal(28.728, Hp(3 * Foot, 0)!.Value, 1e-2);
        Assert.Equal((0, 1, 1, 2), (Flags(5 * Foot, 3), Flags(7.1 * Foot, 3), Flags(5 * Foot, 0.9), Flags(2 * Foot, 5)));
        foreach (var run in new[] { 1.0, 2, 3, 4 })
            Assert.Equal(Hp(5 * Foot, run - 1e-9)!.Value, Hp(5 * Foot, run + 1e-9)!.Value, 1e-6);
        foreach (var depth in new[] { 4.0, 5, 6, 7 })
            Assert.Equal(Hp((depth * Foot) - 1e-9, 2.5)!.Value, Hp((depth * Foot) + 1e-9, 2.5)!.Value, 1e-5);
    }

    [Property]
    public Property Deeper_flatter_and_longer_never_hold_less() => Prop.ForAll(Gen.Choose(92, 250).ToArbitrary(), Gen.Choose(0, 50).ToArbitrary(), Gen.Choose(10, 30).ToArbitrary(), (depth, run, length) =>
    {
        double Holds(double d, double r, double l) => Log(d, r, DeadmanSoil.Loam, l).Holds!.Value.Newtons;
        var here = Holds(depth / 100.0, run / 10.0, length / 10.0);
        return Holds((depth + 1) / 100.0, run / 10.0, length / 10.0) >= here && Holds(depth / 100.0, (run + 1) / 10.0, length / 10.0) >= here && Holds(depth / 100.0, run / 10.0, (length + 1) / 10.0) >= here;
    });

    [Property]
    public Property Log_for_a_load_holds_that_load() => Prop.ForAll(Gen.Choose(10, 900).ToArbitrary(), Gen.Choose(92, 210).ToArbitrary(), (load, depth) =>
    {
        var log = Deadman.LogFor(KN(load), M(0.6), M(depth / 100.0), 2.5, DeadmanSoil.Loam, M(0.4));
        return log.Length!.Value.Meters is < 0.5 or > 12 || Math.Abs(new Deadman("log", M(0.6), null, log.Length.Value, M(depth / 100.0), 2.5, DeadmanSoil.Loam, M(0.4)).Holds!.Value.Kilonewtons - load) < 1e-9 * load;
    });

    [Property(MaxTest = 60)]
    public Property A_machine_never_holds_more_where_the_ground_rises_away_from_the_casualty() => Prop.ForAll(Gen.Choose(-15, 20).ToArbitrary(), Gen.Choose(30, 150).ToArbitrary(), (percent, cone) =>
    {
        double Holds(double grade) => new MachineAnchor(Tractors.SixteenTonneTower(10 * cone) with { Grade = Grade.FromPercent(grade) }).Holds!.Value.Newtons;
        return Holds(percent + 1) <= Holds(percent) + 1e-3;
    });

    [Fact]
    public void Raises_each_objection_to_a_deadman_and_none()
    {
        static string[] Ids(GroundAnchor anchor) => anchor.Findings.Select(f => f.Id).ToArray();
        Assert.Equal(["anchor.deadman-trench"], Ids(Log()));
        Assert.Equal(["anchor.deadman-shallow", "anchor.deadman-trench"], Ids(Log(depth: 0.9)));
        Assert.Equal(["anchor.deadman-slope", "anchor.deadman-trench"], Ids(Log(run: 0.99)));
        Assert.Equal(["anchor.deadman-slope", "anchor.deadman-trench"], Ids(Log(run: 4.01)));
        Assert.Equal(["anchor.deadman-trench"], Ids(Log(length: 12.5 * Foot)));
        Assert.Equal(["anchor.deadman-slender", "anchor.deadman-trench"], Ids(Log(length: 12.51 * Foot)));
        Assert.Equal(9, new Deadman("timber", M(0.4), M(0.3), M(2.7), M(1.5), 2, DeadmanSoil.Loam, null).Slenderness, 1e-12);
        Assert.DoesNotContain("anchor.deadman-slender", Ids(new Deadman("timber", M(0.4), M(0.3), M(2.69), M(1.5), 2, DeadmanSoil.Loam, null)));
        Assert.Single(new Deadman("log", M(0.4), M(2), M(1.5), 2, DeadmanSoil.Loam).Assumptions);
        Assert.Empty(Log().Assumptions);
        Assert.Null(Log(depth: 0.9).Holds);
        Assert.Null(Log(depth: 0.9).Check(KN(1), KN(1)).Utilisation);
        Assert.Equal("none", Log(depth: 0.9).Explain().Steps[0].Value);
        Assert.Equal(Standing.FromMemory, Log(run: 0.5).Source.Standing);
        Assert.Equal("no log: too shallow for the table", Deadman.LogFor(KN(10), M(0.5), M(0.5), 2, DeadmanSoil.Loam, M(0.4)).ToString());
    }

    [Fact]
    public void Check_takes_the_greater_load_and_says_what_is_short()
    {
        var log = Log();
        // 83,600 lbf: the log of the published rope anchorage.
        Assert.Equal(371.871, log.Holds!.Value.Kilonewtons, 0.3);
        string[] Ids(double planning, double imposable, double? line = null) => log.Check(KN(planning), KN(imposable), line is { } l ? KN(l) : null).Findings.Select(f => f.Id).ToArray();
        Assert.Equal(["anchor.deadman-trench"], Ids(200, 330));
        Assert.Equal(["anchor.deadman-trench", "anchor.within-ten-percent"], Ids(200, 340));
        Assert.Equal(["anchor.deadman-trench", "anchor.too-weak"], Ids(380, 200));
        Assert.Equal(["anchor.deadman-trench", "anchor.line-stronger"], Ids(100, 100, 380));
        Assert.True(log.Check(KN(200), KN(340)).HoldsBoth);
        Assert.False(log.Check(KN(380), KN(200)).HoldsBoth);
        Assert.Equal(380, log.Check(KN(380), KN(200)).Required.Kilonewtons, 1e-9);
        Assert.Equal(0.5377, log.Check(KN(100), KN(200)).Utilisation!.Value, 1e-3);
    }

    [Fact]
    public void Pickets_say_what_they_cannot_do()
    {
        var holdfast = new PicketHoldfast("3-2-1", PicketKind.Wood321, PicketSoil.Loam);
        var stop = holdfast.Check(KN(150), KN(100)).Findings.Single(f => f.Id == "anchor.pickets");
        Assert.Equal(Severity.Stop, stop.Severity);
        Assert.Contains("Pickets do not hold a harvester", stop.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Caution, holdfast.Check(KN(5), KN(5)).Findings.Single(f => f.Id == "anchor.pickets").Severity);
        Assert.Equal(["anchor.picket-soil-unknown"], new PicketHoldfast("3-2-1", PicketKind.Wood321, PicketSoil.Undeclared).Findings.Select(f => f.Id));
        Assert.Equal(["anchor.picket-soil-unknown"], new PicketHoldfast("3-2-1", PicketKind.Wood321, PicketSoil.LooseSand).Findings.Select(f => f.Id));
        Assert.False(new PicketHoldfast("steel", PicketKind.SteelSingle, PicketSoil.Undeclared).Check(KN(1), KN(1)).HoldsBoth);
        Assert.Equal(Standing.FromMemory, new PicketHoldfast("2-1", PicketKind.Wood21, PicketSoil.Loam).Source.Standing);
        Assert.Equal("17.79 kN", holdfast.Explain().Steps[0].Value);
        Assert.True(PicketModel.Instance.Validity.Limits[0].Contains(17));
        Assert.False(PicketModel.Instance.Validity.Limits[0].Contains(18));
    }

    [Fact]
    public void A_machine_that_can_roll_is_no_anchor()
    {
        var tower = Tractors.SixteenTonneTower();
        var rolling = new MachineAnchor(tower with { Machine = tower.Machine.WithAxles(tower.Machine.Axles.Select(a => a with { Braked = false })) });
        Assert.Equal(["anchor.machine-not-braked"], rolling.Findings.Select(f => f.Id));
        Assert.Equal(0, rolling.Holds!.Value.Newtons);
        Assert.False(rolling.Check(KN(1), KN(1)).HoldsBoth);
        Assert.Contains("hitch", string.Join(" ", rolling.Assumptions), StringComparison.Ordinal);
        Assert.Contains("hold", new MachineAnchor(tower).Check(KN(50), KN(60)).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("meanDepth", Assert.Throws<ArgumentOutOfRangeException>(() => Log(depth: 7)).Message, StringComparison.Ordinal);
        Assert.Contains("0.1 to 6 m", Assert.Throws<ArgumentOutOfRangeException>(() => Log(depth: 7)).Message, StringComparison.Ordinal);
        Assert.Contains("pickets", Assert.Throws<ArgumentOutOfRangeException>(() => PicketModel.Instance.InclinedSteel(0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => DeadmanModel.SoilFactor((DeadmanSoil)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PicketHoldfast("x", (PicketKind)99, PicketSoil.Loam));
        Assert.Throws<ArgumentOutOfRangeException>(() => Log().Check(KN(0), KN(1)));
    }

    private static double Pickets(string kind, string soil) =>
        PicketModel.Instance.Load((PicketKind)Enum.Parse(typeof(PicketKind), kind), (PicketSoil)Enum.Parse(typeof(PicketSoil), soil))!.Value.Newtons;
}
