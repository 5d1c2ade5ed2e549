using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>Take-ups followed in time, against closed forms and independent runs of the same model.</summary>
public class SimulationTests
{
    [Theory]
    [CheckRows("lines", "sim-held")]
    public void A_take_up_without_pull_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(Case(row).WithEndsWhenSlack(true));
        row.Matches(("F", run.Peak.Newtons), ("t_peak", run.PeakTime!.Value.Seconds), ("v_release", run.Outcome.SlackPullerSpeed));
        Assert.Equal([TakeUpEventKind.Peak, TakeUpEventKind.Slack], run.Events.Select(e => e.Kind));
        Assert.True(run.EnergyError < 1e-12, "energy " + run.EnergyError);
    }

    [Theory]
    [CheckRows("lines", "sim-held-pull")]
    public void A_take_up_with_pull_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(Case(row).WithEndsWhenSlack(true));
        row.Matches(("F", run.Peak.Newtons), ("x", run.PeakStretch.Meters), ("t_peak", run.PeakTime!.Value.Seconds), ("t_release", run.SlackTime!.Value.Seconds));
    }

    [Theory]
    [CheckRows("lines", "sim-free")]
    public void Two_free_machines_match(CheckRow row)
    {
        double m1 = row.Si("m1"), m2 = row.Si("m2"), v = row.Si("v");
        var run = TakeUp.Simulate(new TakeUpCase(OfStiffness(row.Si("k")), Kg(m1), TowDrive.ConstantPull(Force.Zero), Mps(v)).WithCasualty(Kg(m2), Force.Zero, Force.Zero).WithEndsWhenSlack(true));
        row.Matches(("F", run.Peak.Newtons), ("T_contact", run.SlackTime!.Value.Seconds), ("v1_after", run.Outcome.SlackPullerSpeed), ("v2_after", run.Outcome.SlackCasualtySpeed));
        Assert.Equal(m1 * v, (m1 * run.Outcome.SlackPullerSpeed) + (m2 * run.Outcome.SlackCasualtySpeed), m1 * v * 1e-12);
        // It leaves faster than the common speed, so it can run into the tow machine.
        Assert.True(run.CasualtyGreatestSpeed.MetersPerSecond > m1 * v / (m1 + m2));
    }

    [Theory]
    [CheckRows("lines", "sim-break-out")]
    public void The_time_of_break_out_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(Case(row, "m1").WithCasualty(Kg(30000), N(row.Si("Rs")), N(row.Si("Rs"))).WithEndsWhenSlack(true));
        row.Matches(("t_break", run.BreakOutTime!.Value.Seconds));
    }

    [Theory]
    [CheckRows("lines", "break-out")]
    public void The_simulated_peak_of_a_break_out_is_that_of_the_closed_form(CheckRow row)
    {
        var run = TakeUp.Simulate(new TakeUpCase(Taut(Linear(row)), Kg(row.Si("m1")), TowDrive.ConstantPull(N(row.Si("P"))), Mps(row.Si("v"))).WithCasualty(Kg(row.Si("m2")), N(row.Si("Rs")), N(row.Si("Rk"))).WithEndsWhenSlack(true));
        row.MatchesOne("F_max", run.FirstPeak!.Value.Newtons);
        if (!row.ExpectedNames.Contains("t_break")) return;
        row.MatchesOne("t_break", run.BreakOutTime!.Value.Seconds);
        row.MatchesOne("t_peak", run.Outcome.FirstPeakTime);
    }

    [Theory]
    [CheckRows("lines", "sim-coulomb", "sim-coulomb-stop")]
    public void A_mass_that_rubs_to_rest_matches(CheckRow row)
    {
        double ff = row.Si("Ff"), x0 = row.Si("x0");
        List<TakeUpEvent> events = [];
        List<TakeUpSample> history = [];
        var o = TakeUpEngine.Run(new TakeUpProblem { Drive = TowDriveKind.Speed, Line = Spring(row.Si("k")), Bilateral = true, Stretch = x0, Casualty = row.Si("m"), StaticResistance = ff, KineticResistance = ff, FailForce = double.PositiveInfinity, EndTime = 3, Tolerance = 1e-11 }, history, events, CancellationToken.None);
        // It turns three times: twice at once, the third time for good.
        var turns = events.Select(e => e.Seconds).Distinct().ToList();
        if (row.Model == "sim-coulomb")
        {
            double X(double t) => history.Where(h => h.Seconds == t).Select(h => x0 - h.CasualtyMetres).First();
            row.MatchesOne("x_0", x0 - history[0].CasualtyMetres);
            var reversals = Reversals(history);
            Assert.Equal(3, reversals.Count);
            row.MatchesOne("x_1", x0 - reversals[0].CasualtyMetres);
            row.MatchesOne("x_2", x0 - reversals[1].CasualtyMetres);
            row.MatchesOne("x_3", X(turns[^1]));
        }
        else
        {
            var reversals = Reversals(history);
            row.Matches(("t_half", reversals[1].Seconds - reversals[0].Seconds), ("t_stop", events.Single(e => e.Kind == TakeUpEventKind.Stops).Seconds), ("F_residual", Math.Abs(row.Si("k") * (x0 - history[^1].CasualtyMetres))), ("heat", o.Heat));
            Assert.Equal(reversals[0].Seconds, reversals[1].Seconds - reversals[0].Seconds, 1e-10);
            Assert.True(o.EnergyError < 1e-12, "energy " + o.EnergyError);
        }
    }

    [Theory]
    [CheckRows("lines", "sim-stick-slip", "sim-stick-slip-force")]
    public void A_casualty_that_sticks_and_slips_matches(CheckRow row)
    {
        double k = row.Si("k"), m = row.Si("m"), v0 = row.Si("v0");
        List<TakeUpEvent> events = [];
        List<TakeUpSample> history = [];
        var o = TakeUpEngine.Run(new TakeUpProblem { Drive = TowDriveKind.Speed, Line = Spring(k), Casualty = m, Speed = v0, StaticResistance = row.Si("Fs"), KineticResistance = row.Si("Fk"), FailForce = double.PositiveInfinity, EndTime = 20, Tolerance = 1e-11 }, history, events, CancellationToken.None);
        var breaks = events.Where(e => e.Kind == TakeUpEventKind.BreakOut).ToList();
        var stops = events.Where(e => e.Kind == TakeUpEventKind.Stops).ToList();
        Assert.True(breaks.Count >= 3);
        double slip = stops[1].Seconds - breaks[1].Seconds, stick = breaks[1].Seconds - stops[0].Seconds, w = Math.Sqrt(k / m);
        double C(double t) => history.First(h => h.Seconds == t).CasualtyMetres;
        if (row.Model == "sim-stick-slip") row.Matches(("omega_t_slip", w * slip), ("t_slip", slip), ("t_stick", stick), ("period", breaks[2].Seconds - breaks[1].Seconds), ("slip_distance", C(stops[1].Seconds) - C(breaks[1].Seconds)));
        // The row's F_min is the force at which it sticks again; in the slip the force goes as far below Fk as it went above.
        else row.Matches(("F_min", stops[1].TensionNewtons), ("F_max", o.Peak), ("v_max", o.CasualtyGreatestSpeed));
        Assert.All(breaks, b => Assert.Equal(row.Si("Fs"), b.TensionNewtons, 1e-6));
        Assert.Equal((2 * row.Si("Fk")) - o.Peak, history.Where(h => h.Seconds > breaks[1].Seconds).Min(h => h.TensionNewtons), 1e-6);
        Assert.Equal(stops[0].Seconds - breaks[0].Seconds, slip, 1e-10);
    }

    [Theory]
    [CheckRows("lines", "sim-sliding-stop")]
    public void A_sliding_stop_matches(CheckRow row)
    {
        List<TakeUpEvent> events = [];
        var o = TakeUpEngine.Run(new TakeUpProblem { Drive = TowDriveKind.Constant, Puller = 20000, Line = Spring(1e5), Casualty = row.Si("m"), CasualtySpeed = row.Si("v"), Stretch = -5, StaticResistance = row.Si("R"), KineticResistance = row.Si("R"), FailForce = double.PositiveInfinity, EndTime = 1, Tolerance = 1e-11 }, null, events, CancellationToken.None);
        row.Matches(("distance", o.CasualtyTravel), ("t", events.Single(e => e.Kind == TakeUpEventKind.Stops).Seconds));
    }

    [Theory]
    [CheckRows("lines", "sim-power-pull")]
    public void A_stiffening_line_with_pull_matches(CheckRow row)
    {
        var take = new TakeUpCase(Taut(Power(row)), Kg(row.Si("m")), TowDrive.ConstantPull(N(row.Si("P"))), Mps(row.Si("v"))).WithEndsWhenSlack(true);
        var run = TakeUp.Simulate(take);
        row.Matches(("F", run.Peak.Newtons), ("x", run.PeakStretch.Meters), ("t_peak", run.PeakTime!.Value.Seconds));
        var held = TakeUp.PeakHeld(take.Line, take.PullerMass, N(row.Si("P")), take.Speed);
        row.MatchesOne("F", held.Peak!.Value.Newtons);
        Assert.Equal(1, run.Peak.Newtons / held.Peak!.Value.Newtons, 1e-9);
        Assert.True(run.EnergyError < 1e-9, "energy " + run.EnergyError);
    }

    [Theory]
    [CheckRows("lines", "power-take-up")]
    public void A_stiffening_line_without_pull_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(new TakeUpCase(Taut(Power(row)), Kg(row.Si("m")), TowDrive.ConstantPull(Force.Zero), Mps(row.Si("v"))).WithEndsWhenSlack(true));
        row.Matches(("F", run.Peak.Newtons), ("x", run.PeakStretch.Meters), ("T_contact", run.SlackTime!.Value.Seconds));
    }

    [Theory]
    [CheckRows("lines", "sim-bounce")]
    public void A_second_take_up_after_free_flight_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(Case(row));
        double slack = run.SlackTime!.Value.Seconds, taut = run.Events.First(e => e.Kind == TakeUpEventKind.Taut).Seconds;
        row.Matches(("v_release", run.Outcome.SlackPullerSpeed), ("t_flight", taut - slack), ("v_second", run.History.First(h => h.Seconds == taut).PullerMetresPerSecond), ("F_second", run.SecondPeak!.Value.Newtons));
    }

    [Theory]
    [CheckRows("lines", "sim-gear")]
    public void A_locked_gear_that_slips_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(new TakeUpCase(OfStiffness(row.Si("k"), row.Si("s")), Kg(row.Si("m")), TowDrive.LockedGear(N(row.Si("P")), Mps(row.Si("v_t"))), Mps(row.Si("v0"))));
        row.Matches(("F", run.Peak.Newtons));
        Assert.True(run.EnergyError < 1e-9, "energy " + run.EnergyError);
    }

    [Theory]
    [CheckRows("lines", "sim-raised")]
    public void A_raised_pull_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(new TakeUpCase(OfStiffness(row.Si("k")), Kg(row.Si("m")), TowDrive.RaisedPull(N(row.Si("P")), Duration.FromSeconds(row.Si("t_r"))), Speed.Zero));
        row.Matches(("F", run.Peak.Newtons));
        Assert.Equal(row.Si("t_r"), Assert.Single(run.Events, e => e.Kind == TakeUpEventKind.FullPull).Seconds);
        Assert.Equal(row.Si("P") * TakeUpKernel.ThrottleExact(row.Si("t_r") / TakeUpKernel.Period(row.Si("k"), row.Si("m"))), run.Peak.Newtons, 1e-3);
    }

    [Theory]
    [CheckRows("lines", "sim-tyres")]
    public void A_dropped_clutch_on_elastic_tyres_matches(CheckRow row)
    {
        double k = row.Si("k"), m = row.Si("m"), p = row.Si("P"), v = row.Si("v_t");
        var run = TakeUp.Simulate(new TakeUpCase(OfStiffness(k, row.Si("s")), Kg(m), TowDrive.LockedGearOnTyres(N(p), Mps(v), ForcePerLength.FromNewtonsPerMeter(row.Si("k_t")), Duration.FromSeconds(row.Si("t_c"))), Speed.Zero));
        row.Matches(("F_1", run.FirstPeak!.Value.Newtons), ("F_2", run.SecondPeak!.Value.Newtons), ("F_gear", TakeUpKernel.LockedGearPeak(p, k, m, v)));
    }

    private static TakeUpCase Case(CheckRow row, string mass = "m") => new(OfStiffness(row.Si("k")), Kg(row.Si(mass)), TowDrive.ConstantPull(N(row.Si("P", 0))), Mps(row.Si("v")));

    private static CurveShape Spring(double stiffness) => CurveShape.Power(stiffness * 100, 100, 1);

    /// <summary>Instants at which the casualty stands still between two ways, or for good.</summary>
    private static List<TakeUpSample> Reversals(List<TakeUpSample> history)
    {
        List<TakeUpSample> found = [];
        foreach (var h in history.Skip(1))
        {
            if (Math.Abs(h.CasualtyMetresPerSecond) < 1e-12 && (found.Count == 0 || h.Seconds - found[^1].Seconds > 0.01) && found.Count < 3) found.Add(h);
        }

        return found;
    }
}
