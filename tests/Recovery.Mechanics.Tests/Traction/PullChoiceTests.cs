using System;
using System.Globalization;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Traction;

public class PullChoiceTests
{
    private static TowingMachine Named(string name, double scale = 1)
    {
        var machine = Tractors.SixteenTonnes(62.8 * scale, 94.2 * scale);
        return Tractors.SixteenTonneTower() with { Machine = new Machine(name, machine.Axles, machine.Loads) };
    }

    private static Winch SmallWinch => new("winch", KN(80), M(0.22), M(0.014)) { RatedPull = KN(75) };

    private static Deadman Log(double length = 3.6) => new("deadman", M(0.75), null, M(length), M(2.1), 3, DeadmanSoil.FineGrainedOrWetSand, M(0.5));

    private static FarmBlock[] Blocks(int known, int unknown = 0, double fails = 350) =>
        [.. Enumerable.Range(0, known).Select(i => new FarmBlock("block " + i, KN(fails))), .. Enumerable.Range(0, unknown).Select(i => new FarmBlock("bare " + i, null))];

    private static PullMeans Farm(FarmBlock[]? blocks = null, GroundAnchor? anchor = null, GroundAnchor? holder = null) =>
        new([Named("big")], [new FarmWinch(SmallWinch, 1, holder ?? new MachineAnchor(Named("big")))], blocks ?? Blocks(5), [anchor ?? Log()]);

    private static PullOption Of(PullChoice choice, PullOptionKind kind) => choice.Options.First(o => o.Kind == kind);

    private static PullChoice Light(PullMeans means) => PullChoice.For(new ForceBand(KN(60), KN(80), KN(200)), KN(290), means);

    [Fact]
    public void Lists_what_can_and_what_cannot_and_why()
    {
        var choice = Light(Farm());
        Assert.Equal(4, choice.Options.Count);
        var tackle = Of(choice, PullOptionKind.WinchTackle);
        // 290 (1 + 0.1 x 5)/6 = 72.5 below 75: the first advantage that holds is 6, by the handbook steps.
        Assert.Equal(6, tackle.Advantage);
        Assert.Equal(72.5 / 75, tackle.TackleUtilisation!.Value, 1e-9);
        Assert.Equal(75.0 * 6 / 1.5, tackle.Capacity.Central.Kilonewtons, 1e-9);
        Assert.Equal(80.0 * 6, tackle.Imposable.Kilonewtons, 1e-9);
        // Three sheaves on the casualty, two and the dead end on the anchor: five parts at stall.
        Assert.Equal(400, tackle.Anchor!.Required.Kilonewtons, 1e-9);
        Assert.Equal(80, tackle.Holder!.Required.Kilonewtons, 1e-9);
        Assert.Equal(PullOutcome.CanDo, tackle.Outcome);
        Assert.Equal(PullOutcome.CanDo, Of(choice, PullOptionKind.Machine).Outcome);
        // 80/75 = 1.07 of what the winch sustains.
        Assert.Equal(PullOutcome.Undecided, Of(choice, PullOptionKind.Winch).Outcome);
        Assert.Contains("tackle.machine-hauls", Of(choice, PullOptionKind.MachineTackle).Findings.Select(f => f.Id));
        Assert.Equal(choice.Options.Count(o => o.Outcome == PullOutcome.CanDo), choice.Possible.Count);
        Assert.Equal(choice.Options.OrderBy(o => o.Outcome).Select(o => o.Name), choice.Options.Select(o => o.Name));
    }

    [Fact]
    public void What_was_not_declared_of_machines_and_anchors_is_listed()
    {
        var choice = Light(Farm(anchor: new Deadman("deadman", M(0.75), M(3.6), M(2.1), 3, DeadmanSoil.FineGrainedOrWetSand)));
        string[] Ids(PullOptionKind kind) => [.. Of(choice, kind).Assumptions.Select(a => a.Id)];
        Assert.Contains("assume.puller-engine-power", Ids(PullOptionKind.Machine));
        Assert.Equal("assume.anchor-brakes", Ids(PullOptionKind.Winch)[0]);
        Assert.Contains("assume.deadman-trench", Ids(PullOptionKind.WinchTackle));
        Assert.Contains("assume.anchor-brakes", Ids(PullOptionKind.WinchTackle));
        Assert.All(choice.Options, o => Assert.Equal(o.Assumptions.Select(a => a.Id).Distinct(), o.Assumptions.Select(a => a.Id)));
        Assert.Contains("TAKEN WHERE NOTHING WAS DECLARED", choice.ToText(), StringComparison.Ordinal);
        var winch = new PullMeans([], [new FarmWinch(SmallWinch, 1, Log())], [], []);
        Assert.DoesNotContain("NOTHING WAS DECLARED", Light(winch).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Overlapping_bands_name_the_low_of_the_puller()
    {
        // A demand that ends between the low and the central of the puller may still hold it.
        var tower = Named("big");
        var means = new PullMeans([tower.WithSoil(tower.Soil.WithWeakestReading(KPa(600)))], [], [], []);
        var option = Of(Light(means), PullOptionKind.Machine);
        var (low, central) = (option.Capacity.Low.Kilonewtons, option.Capacity.Central.Kilonewtons);
        Assert.True(low < central);
        string[] At(double high) => [.. Of(PullChoice.For(new ForceBand(KN(40), KN(50), KN(high)), KN(290), means), PullOptionKind.Machine).Findings.Where(f => f.Id == "pull.bands-overlap").Select(f => f.Message)];
        Assert.Empty(At(low - 0.01));
        Assert.Contains(Text.Kilonewtons(1000 * low, 3), Assert.Single(At(0.5 * (low + central))), StringComparison.Ordinal);
    }

    [Fact]
    public void Levels_of_the_central_demand()
    {
        PullOutcome At(double demand) => Of(PullChoice.For(new ForceBand(KN(demand), KN(demand), KN(demand)), KN(demand), Farm()), PullOptionKind.Machine).Outcome;
        // The machine sustains 97.0741 kN on RCI 720 kPa (published equations, worked row T92).
        const double Sustains = 97.0741;
        Assert.Equal(PullOutcome.CanDo, At((Sustains / 1.1) - 0.01));
        Assert.Equal(PullOutcome.Undecided, At((Sustains / 1.1) + 0.01));
        Assert.Equal(PullOutcome.Undecided, At((Sustains / 0.9) - 0.01));
        Assert.Equal(PullOutcome.Cannot, At((Sustains / 0.9) + 0.01));
    }

    [Fact]
    public void Each_reason_stops_the_tackle()
    {
        string[] Stops(PullMeans means) => Of(Light(means), PullOptionKind.WinchTackle).Findings.Where(f => f.Severity == Severity.Stop).Select(f => f.Id).ToArray();
        Assert.Empty(Stops(Farm()));
        Assert.Equal(["tackle.below-planning-high"], Stops(Farm(Blocks(4))));
        Assert.Equal(["tackle.block-unknown"], Stops(Farm(Blocks(4, 1))));
        Assert.Equal(["tackle.block-weak"], Stops(Farm(Blocks(5, fails: 319))).Distinct());
        Assert.Empty(Stops(Farm(Blocks(5, fails: 320))));
        Assert.Equal(["anchor.too-weak"], Stops(Farm(anchor: Log(3.0))));
        Assert.Equal(["anchor.too-weak", "anchor.pickets"], Stops(Farm(anchor: new PicketHoldfast("pickets", PicketKind.Wood321, PicketSoil.RiverClay))));
        Assert.Equal(["anchor.too-weak"], Stops(Farm(holder: new MachineAnchor(Named("light", 0.5)))));
        Assert.Equal(["winch.not-held"], Stops(new PullMeans([], [new FarmWinch(SmallWinch, 1, null)], Blocks(5), [Log()])));
        Assert.Equal(["tackle.no-anchor"], Stops(new PullMeans([], [new FarmWinch(SmallWinch, 1, Log())], Blocks(5), [])));
        // What holds the winch is no anchor for its own tackle.
        Assert.Equal(["tackle.no-anchor"], Stops(Farm(anchor: new MachineAnchor(Named("big", 5)))));
    }

    [Fact]
    public void Anchor_is_never_asked_for_more_than_the_haul_imposes()
    {
        var tackle = Of(PullChoice.For(new ForceBand(KN(300), KN(400), KN(900)), KN(900), Farm(Blocks(2))), PullOptionKind.WinchTackle);
        Assert.Equal(3, tackle.Advantage);
        Assert.Equal(PullOutcome.Cannot, tackle.Outcome);
        Assert.Equal(2 * 80, tackle.Anchor!.Required.Kilonewtons, 1e-9);
    }

    [Fact]
    public void Pairs_in_line_and_abreast_and_three_abreast()
    {
        var choice = PullChoice.For(new ForceBand(KN(50), KN(90), KN(150)), KN(200), new PullMeans([Named("a"), Named("b", 0.7), Named("c", 1.2)], [], [], []));
        Assert.Equal(3 + 6 + 1, choice.Options.Count);
        Assert.Contains(choice.Options, o => o.Name == "b + a in line");
        Assert.Contains(choice.Options, o => o.Name == "b + a + c side by side");
        Assert.All(choice.Options, o => Assert.Equal(1, o.Advantage));
        Assert.All(choice.Options, o => Assert.True(o.Imposable.Newtons > o.Capacity.CentralNewtons));
    }

    [Fact]
    public void Tracks_and_an_equaliser_are_looked_at_too()
    {
        var clay = new BekkerTerrain("clay", 13.19, 692.15, 0.5, Pressure.FromKilopascals(20), Angle.FromDegrees(20));
        TrackedTower Dozer(BekkerTerrain terrain) => new("dozer", Mass.FromTonnes(18), M(0.3), M(0.9), M(0.5), M(0.6), new TrackOnSoil(M(3), M(0.6), KN(88), terrain, M(0.025)));
        var means = new PullMeans([Named("a"), Named("b", 0.7)], [], [], []).WithEqualiser(true).WithTracked([Dozer(clay)]);
        var choice = PullChoice.For(new ForceBand(KN(50), KN(90), KN(150)), KN(200), means);
        Assert.Equal(3 + 3, choice.Options.Count);
        Assert.Contains(choice.Options, o => o.Name == "b + a on an equaliser");
        var dozer = choice.Options.Single(o => o.Name == "dozer");
        Assert.Equal(TrackedPull.Estimate(Dozer(clay)).Central!.Value.Newtons, dozer.Capacity.CentralNewtons, 1e-6);
        Assert.Equal(PullOutcome.CanDo, dozer.Outcome);
        var slurry = new BekkerTerrain("slurry", 0, 0.01, 0.5, Pressure.Zero, Angle.FromDegrees(2));
        var none = PullChoice.For(new ForceBand(KN(50), KN(90), KN(150)), KN(200), means.WithTracked([Dozer(slurry)])).Options.Single(o => o.Name == "dozer");
        Assert.Equal(PullOutcome.Cannot, none.Outcome);
        Assert.Null(none.Utilisation);
    }

    [Fact]
    public void Text_has_eighty_columns_all_reasons_and_no_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var choice = PullChoice.For(PullDemand.Estimate(StuckHarvester()), Farm(Blocks(4, 1)));
            var text = choice.ToText();
            Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
            Assert.All(choice.Options, o => Assert.Contains(o.Name, text.Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal));
            Assert.Contains("CANNOT", text, StringComparison.Ordinal);
            Assert.Contains("never against the demand", text, StringComparison.Ordinal);
            Assert.DoesNotContain("safe", text, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("arrangements", choice.ToString(), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void More_demand_never_makes_more_possible()
    {
        var last = int.MaxValue;
        for (var demand = 20; demand <= 400; demand += 20)
        {
            var possible = PullChoice.For(new ForceBand(KN(0.5 * demand), KN(demand), KN(1.5 * demand)), KN(2 * demand), Farm(Blocks(8))).Possible.Count;
            Assert.True(possible <= last);
            last = possible;
        }
    }

    [Fact]
    public void Refuses_with_words()
    {
        Assert.Contains("planningHigh", Assert.Throws<ArgumentOutOfRangeException>(() => PullChoice.For(new ForceBand(KN(1), KN(2), KN(3)), KN(2), Farm())).Message, StringComparison.Ordinal);
        Assert.Contains("demand", Assert.Throws<ArgumentOutOfRangeException>(() => PullChoice.For(default, KN(2), Farm())).Message, StringComparison.Ordinal);
        Assert.Contains("one name", Assert.Throws<ArgumentException>(() => new PullMeans([Named("a"), Named("a")], [], [], [])).Message, StringComparison.Ordinal);
        Assert.Contains("at most 4", Assert.Throws<ArgumentException>(() => new PullMeans([], [], [], Enumerable.Range(0, 5).Select(i => new PicketHoldfast("p" + i, PicketKind.Wood11, PicketSoil.Loam)))).Message, StringComparison.Ordinal);
    }
}
