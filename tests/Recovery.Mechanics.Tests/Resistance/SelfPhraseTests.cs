using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Words on a machine's own wheels: each is said of some machine, and can be translated.</summary>
public class SelfPhraseTests
{
    /// <summary>No machine is known of which these are said; they stand for cases that the formulas do not exclude.</summary>
    private static readonly string[] NotSeen = ["own.best-grip", "own.sliding-less", "own.no-more-than-rolling"];

    [Fact]
    public void Every_word_is_said_of_some_machine()
    {
        var said = string.Concat(Machines().Select(stuck =>
        {
            var self = SelfRecovery.Estimate(stuck);
            var steps = self.Steps().SelectMany(s => new[] { s.Called, s.Why }.OfType<Provenance.Phrase>());
            return string.Concat(steps.Append(self.Words).Append(OwnWheels.Worth(PullDemand.Estimate(stuck)).Why).Concat(self.Axles.Select(a => a.Called())).Select(p => p.In(key => "[" + key + "]{0}{1}")));
        }));
        Assert.Equal(string.Join(" ", NotSeen), string.Join(" ", SelfPhrases.All.Select(p => p.Key).Where(k => !said.Contains("[" + k + "]", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_step_says_in_english_what_its_key_stands_for()
    {
        var self = SelfRecovery.Estimate(StuckHarvester());
        Assert.Equal("No number answers: the wheels of the front axle, middle axle, rear axle are buried, and a buried wheel is in no wheel model's range.", self.Statement);
        var dig = self.Steps().Single(s => s.Name == "dig out to 1:6");
        Assert.Equal("unchanged, because that number is for wheels that roll, and digging takes soil from wheels that are sunk", dig.Remark);
    }

    /// <summary>A name is the user's own, braces and all.</summary>
    [Fact]
    public void A_name_may_hold_the_marks_of_a_template()
    {
        Assert.Equal("{1} {0} (outside the wheel model: b/d)", SelfPhrases.AxleOutside.With("{1} {0}", "b/d").ToString());
        Assert.Equal("{1}, {0}; {x} {2} {", SelfPhrases.WorthOfDriving.With(Provenance.Phrase.List([Provenance.Phrase.Name("{1}"), Provenance.Phrase.Name("{0}")]), "{x} {2} {").ToString());
        var definition = new Provenance.FindingDefinition("own.test", Provenance.Severity.Note, "{subject} needs {required}.", "Look at {subject}.", Provenance.GeneralSources.Judgement);
        Assert.Equal("{required} needs 3 kN.", Provenance.Finding.Raise(definition, "{required}", 3, 2, "kN").Message);
    }

    /// <summary>Machines on soft and firm ground, on slopes, driven on some axles or none, sunk or not, with and without belly and brakes, full and empty.</summary>
    private static IEnumerable<StuckMachine> Machines()
    {
        var s = StuckHarvester();
        foreach (var driven in new[] { 0, 1, 2, 4, 7 })
            foreach (var grade in new[] { -30.0, 0, 2, 20, 45 })
                foreach (var index in new[] { 60.0, 300, 900, 3000 })
                    foreach (var depth in new[] { 0.02, 0.1, 0.5 })
                    {
                        var machine = s.Machine.WithAxles(s.Machine.Axles.Select((a, i) => a.WithDriven((driven & (1 << i)) != 0)));
                        var stuck = new StuckMachine(machine, Soil.FromConeIndex(KPa(index), Frac(0.7)), machine.Axles.Select(_ => M(depth)), PullDirection.Rearwards) { Grade = Grade.FromPercent(grade), Belly = depth > 0.3 ? new Belly(M(3), M(1.6), M(0.15)) : null };
                        yield return stuck;
                        if (depth > 0.3) yield return stuck.WithWheels(WheelMotion.Locked).WithBelly(null).WithExitSlope(Angle.FromDegrees(3));
                    }

        // A payload far behind the last axle, and a small belly that takes the whole load of one axle.
        var tail = new Machine("tail-heavy", s.Machine.Axles, [new NamedLoad("body", Mass.FromTonnes(20), M(-1.5), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(8), M(-9), M(2), LoadKind.Payload), new NamedLoad("feather", Mass.FromTonnes(0.01), M(-3), M(2), LoadKind.Payload)]);
        foreach (var driven in new[] { 1, 4, 7 })
            yield return new StuckMachine(tail.WithAxles(tail.Axles.Select((a, i) => a.WithDriven((driven & (1 << i)) != 0))), s.Soil, [M(0.02), M(0.02), M(0.02)], PullDirection.Rearwards);
        yield return s.Deflated();

        // A light two-axle machine that rolls: cargo over one axle or between them, from soft to firm, level and uphill, a belly that drags or takes the whole load of an axle.
        var tyre = new Tyre(M(0.8), M(2.0), M(0.5), KPa(200), KPa(100), Frac(0.25));
        foreach (var driven in new[] { 1, 2, 3 })
            foreach (var place in new[] { 0.0, -2, -4 })
                foreach (var grade in new[] { 0.0, 10, 20, 24, 30, 38 })
                    foreach (var index in new[] { 80.0, 160, 300, 500, 900 })
                        foreach (var belly in new Belly?[] { null, new Belly(M(2), M(1), M(0.05)), new Belly(M(4), M(2), M(0.1)), new Belly(M(2), M(3), M(0.1)) { Middle = M(0.5) } })
                        {
                            var machine = new Machine("sprayer", [new Axle("front", M(0), 2, tyre, (driven & 1) != 0, M(2)), new Axle("rear", M(-4), 2, tyre, (driven & 2) != 0, M(2))], [new NamedLoad("body", Mass.FromTonnes(8), M(-2), M(1.5)), new NamedLoad("cargo", Mass.FromTonnes(10), M(place), M(1.5), LoadKind.Payload)]);
                            yield return new StuckMachine(machine, Soil.FromConeIndex(KPa(index), Frac(1)), [M(0.1), M(0.1)], PullDirection.Forwards) { Grade = Grade.FromPercent(grade), Belly = belly };
                            if (grade == 0) yield return new StuckMachine(machine, Soil.FromConeIndex(KPa(index), Frac(1)), [M(0.1), M(0.1)], PullDirection.Forwards) { Belly = belly }.Without("cargo");
                        }

        // Light on large tyres in a deep hole, dug free beside.
        var light = new Machine("light", [new Axle("front", M(0), 2, tyre, true, M(2)), new Axle("rear", M(-4), 2, tyre, true, M(2))], [new NamedLoad("body", Mass.FromTonnes(8), M(-2), M(1.5))]);
        yield return new StuckMachine(light, Soil.FromConeIndex(KPa(200), Frac(0.7)), [M(0.5), M(0.5)], PullDirection.Forwards).Dug(Angle.FromDegrees(9), sides: true);
        yield return new StuckMachine(s.Machine.WithAxles(s.Machine.Axles.Select(a => a.WithBraked(false))), s.Soil, s.Sinkage, PullDirection.Forwards);
    }
}
