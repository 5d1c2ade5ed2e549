using System;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Lines.LineRows;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>Cases recomputed apart from the library with SciPy (<c>benchmarks/reference/lines.py</c>): initial-value problems with events, quadrature, root finding.</summary>
public class LinesReferenceTests
{
    [Theory]
    [CheckRows("lines-scipy", "take-up-in-time")]
    public void A_take_up_in_time_matches(CheckRow row)
    {
        var run = TakeUp.Simulate(Case(row));
        double Time(TakeUpEventKind kind) => run.Events.First(e => e.Kind == kind).Seconds;
        foreach (var name in row.ExpectedNames)
        {
            row.MatchesOne(name, name switch
            {
                "F" => run.Peak.Newtons,
                "F_1" => run.FirstPeak!.Value.Newtons,
                "t_1" => Time(TakeUpEventKind.Peak),
                "t_taut" => Time(TakeUpEventKind.Taut),
                "t_break" => Time(TakeUpEventKind.BreakOut),
                "t_stop" => Time(TakeUpEventKind.Stops),
                "t_slack" => Time(TakeUpEventKind.Slack),
                "v_slack" => run.Outcome.SlackPullerSpeed,
                _ => throw new InvalidOperationException(name),
            });
        }

        Assert.True(run.EnergyError < 1e-9, "energy " + run.EnergyError);
    }

    [Theory]
    [CheckRows("lines-scipy", "flight")]
    public void A_flight_matches(CheckRow row)
    {
        var flight = new ThrownFitting(Kg(row.Si("m")), Mps(row.Si("v0")), M(row.Si("h"))).Flight(Angle.FromDegrees(row.Printed("theta")));
        row.Matches(("range", flight.Reach.Meters), ("KE_land", flight.LandingEnergy.Joules), ("t", flight.FlightTime.Seconds));
    }

    [Theory]
    [CheckRows("lines-scipy", "drop-at")]
    public void A_hanging_line_matches(CheckRow row) =>
        row.Matches(("drop", new LineSag(PerMetre(row.Si("m_line")), M(row.Si("L")), N(row.Si("H")), M(row.Si("dh"))).DropAt(M(row.Si("x"))).Meters));

    [Theory]
    [CheckRows("lines-scipy", "slack-by-catenary")]
    public void The_slack_of_a_sag_matches(CheckRow row) => row.Matches(("slack", LineSag.SlackOf(M(row.Si("L")), M(row.Si("sag"))).Meters));

    [Theory]
    [CheckRows("lines-scipy", "curve-energy")]
    public void A_stiffening_curve_matches(CheckRow row)
    {
        var segment = new LineSegment("strap", Power(row), PerMetre(row.Si("m_line")));
        var f = N(row.Si("F"));
        row.Matches(("x", segment.Curve.Stretch(f).Meters), ("E", segment.Curve.StoredEnergy(f).Joules), ("v_tip", Recoil.OfLine(segment, f).Speed.MetersPerSecond));
    }

    [Theory]
    [CheckRows("lines-scipy", "fitting-by-trips")]
    public void A_fitting_on_a_released_line_matches(CheckRow row) => row.Matches(("f", RecoilKernel.FittingRatio(row.Si("a"))));

    internal static TakeUpCase Case(CheckRow row)
    {
        var length = M(row.Si("L"));
        LoadElongation curve = row.Word("line") == "table"
            ? LoadElongation.Tabulated(length, row.SiList("strains"), row.SiList("forces").Select(f => f / 1000).ToList(), Test)
            : row.Si("n") == 1 ? Linear(row.Si("L"), row.Si("Fb"), row.Si("eb")) : Power(row);
        var strap = new LineSegment("strap", curve, PerMetre(1));
        var line = new LineAssembly(row.Word("line") == "series" ? [strap, new LineSegment("rope", Linear(row.Si("L2"), row.Si("Fb2"), row.Si("eb2")), PerMetre(1))] : [strap], M(row.Si("s")));
        var drive = row.Word("drive") switch
        {
            "constant" => TowDrive.ConstantPull(N(row.Si("P"))),
            "raised" => TowDrive.RaisedPull(N(row.Si("P")), Duration.FromSeconds(row.Si("t_r"))),
            _ => TowDrive.LockedGear(N(row.Si("P")), Mps(row.Si("v_t")), row.Si("exponent")),
        };
        var take = new TakeUpCase(line, Kg(row.Si("m1")), drive, Mps(row.Si("v"))).WithSpan(Duration.FromSeconds(row.Si("end"))).WithPartsLetGo(false);
        return row.Has("m2") ? take.WithCasualty(Kg(row.Si("m2")), N(row.Si("Rs")), N(row.Si("Rk"))) : take;
    }
}
