using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class VehicleConeIndexTests
{
    private const double Psi = 6894.757293168361;
    private const double Kip = 4448.2216152605;

    private static readonly MobilityFactors Powerful = new(Length.FromMeters(0.40)) { EnginePower = Power.FromKilowatts(350), GrossMass = Mass.FromTonnes(30) };

    [Theory]
    [CheckRows("terramechanics", "vci1-wheels")]
    public void One_pass_matches(CheckRow row) => row.Matches(("VCI1", MobilityKernel.OnePassWheels(row.Si("MI"), row.Si("DCF"))));

    [Theory]
    [CheckRows("terramechanics", "vci1-wheels-deflection")]
    public void One_pass_at_a_deflection_matches(CheckRow row) => row.Matches(("VCI1", MobilityKernel.OnePassWheels(row.Si("MI"), MobilityKernel.DeflectionCorrection(row.Si("dh")))));

    [Theory]
    [CheckRows("terramechanics", "vci50-wheels")]
    public void Fifty_passes_match(CheckRow row) => row.Matches(("VCI50", MobilityKernel.FiftyPassesWheels(row.Si("MI"))));

    [Theory]
    [CheckRows("terramechanics", "vci1-tracks")]
    public void One_pass_of_tracks_matches(CheckRow row) => row.Matches(("VCI1", MobilityKernel.OnePassTracks(row.Si("MI"))));

    [Theory]
    [CheckRows("terramechanics", "vci50-tracks")]
    public void Fifty_passes_of_tracks_match(CheckRow row) => row.Matches(("VCI50", MobilityKernel.FiftyPassesTracks(row.Si("MI"))));

    [Theory]
    [CheckRows("terramechanics", "deflection-correction")]
    public void Deflection_correction_matches(CheckRow row) => row.Matches(("DCF", MobilityKernel.DeflectionCorrection(row.Si("dh"))));

    [Theory]
    [CheckRows("terramechanics", "axle-weight-factor")]
    public void Weight_factor_matches(CheckRow row) => row.Matches(("WF", MobilityKernel.AxleWeightFactor(row.Printed("X"))));

    [Theory]
    [CheckRows("terramechanics", "vci50-join")]
    public void Branches_at_the_join_match(CheckRow row) =>
        row.Matches(("linear", Psi * MobilityKernel.FiftyPassesLinear(row.Si("MI"))), ("power", Psi * MobilityKernel.FiftyPassesPower(row.Si("MI"))));

    [Theory]
    [CheckRows("terramechanics", "vci50-branches")]
    public void Branches_far_above_the_join_match(CheckRow row) => row.Matches(
        ("linear", Psi * MobilityKernel.FiftyPassesLinear(row.Si("MI"))), ("power", Psi * MobilityKernel.FiftyPassesPower(row.Si("MI"))), ("power_kPa", MobilityKernel.FiftyPassesWheels(row.Si("MI"))));

    [Theory]
    [CheckRows("terramechanics", "vci50-regained")]
    public void The_held_value_ends_where_the_upper_branch_regains_it(CheckRow row)
    {
        double low = 116, high = 140;
        while (high - low > 1e-6)
        {
            var middle = 0.5 * (low + high);
            if (MobilityKernel.FiftyPassesWheels(middle) > row.Si("VCI50") * 1.0000001) high = middle;
            else low = middle;
        }

        row.Matches(("MI", high));
    }

    [Theory]
    [CheckRows("terramechanics", "vci1-denominators")]
    public void Both_editions_of_the_denominator_match(CheckRow row)
    {
        double late = MobilityKernel.OnePassLinear(row.Si("MI"), 3.74), early = MobilityKernel.OnePassLinear(row.Si("MI"), 2.14);
        row.Matches(("den_3.74", Psi * late), ("den_2.14", Psi * early), ("difference", Psi * (late - early)));
    }

    [Theory]
    [CheckRows("terramechanics", "mobility-axle-factors")]
    public void Every_factor_of_an_axle_matches(CheckRow row)
    {
        var r = Axle(row);
        row.Matches(("CPF", r.ContactPressure.Pascals), ("WF", r.WeightFactor), ("TF", r.GearFactor), ("WLF", r.LoadFactor * Kip), ("MI", r.MobilityIndex), ("VCI1", r.OnePass.Pascals), ("VCI1_kPa", r.OnePass.Pascals));
        Assert.Equal(["W"], r.Flags.Select(f => f.Limit.Symbol));
    }

    [Theory]
    [CheckRows("terramechanics", "mobility-axle")]
    public void Index_of_an_axle_matches(CheckRow row)
    {
        var r = Axle(row);
        row.Matches(("MI", r.MobilityIndex), ("VCI1", r.OnePass.Pascals), ("VCI1_kPa", r.OnePass.Pascals));
        Assert.Empty(r.Flags);
        Assert.Empty(r.Assumptions);
    }

    [Theory]
    [CheckRows("terramechanics", "mobility-axle-printed")]
    public void Printed_axle_matches(CheckRow row) => row.Matches(("MI", Axle(row).MobilityIndex), ("VCI1_kPa", Axle(row).OnePass.Pascals));

    [Theory]
    [CheckRows("terramechanics", "mobility-axle-fifty")]
    public void Fifty_passes_of_an_axle_match(CheckRow row) => row.Matches(("VCI50", Axle(row).FiftyPasses.Pascals));

    [Theory]
    [CheckRows("terramechanics", "mobility-vehicle")]
    public void Averages_of_a_vehicle_match(CheckRow row)
    {
        var r = WheeledMobilityModel.Instance.Evaluate(Wheels.TwoAxles(row, 400), Powerful);
        foreach (var name in row.ExpectedNames)
            row.MatchesOne(name, name switch { "CPF" => r.ContactPressure.Pascals, "WF" => r.WeightFactor, "TF" => r.GearFactor, "MI" => r.MobilityIndex, _ => r.OnePass.Pascals });
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "vci-vehicle")]
    public void A_vehicle_agrees_with_SciPy(CheckRow row)
    {
        var r = WheeledMobilityModel.Instance.Evaluate(Wheels.TwoAxles(row, 400), Powerful);
        row.Matches(("MI", r.MobilityIndex), ("VCI1", r.OnePass.Pascals), ("VCI50", r.FiftyPasses.Pascals));
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "vci-wheels")]
    public void An_axle_agrees_with_SciPy(CheckRow row)
    {
        var factors = new MobilityFactors(Length.FromMeters(row.Si("clearance"))).WithPower(Power.FromWatts(row.Si("power")), Mass.FromKilograms(row.Si("mass")))
            .WithManualTransmission(row.Word("manual") == "true").WithWheelGrousers(row.Word("grousers") == "true");
        var axle = Axle(row.Si("W_axle"), (int)row.Si("wheels"), row.Si("b"), row.Si("d"), row.Si("dh"));
        var r = WheeledMobilityModel.Instance.Evaluate(axle, factors);
        row.Matches(("MI", r.MobilityIndex), ("VCI1", r.OnePass.Pascals), ("VCI50", r.FiftyPasses.Pascals));
        var batch = new double[1];
        WheeledMobilityModel.Instance.OnePass([row.Si("W_axle") / 1000], axle.Count, row.Si("b"), row.Si("d"), row.Si("dh"), factors, batch);
        Assert.Equal(r.OnePass.Kilopascals, batch[0], 9);
    }

    [Theory]
    [CheckRows("terramechanics-scipy", "vci-tracks")]
    public void Tracks_agree_with_SciPy(CheckRow row)
    {
        var gear = new TrackedGear(Force.FromNewtons(row.Si("W")), Length.FromMeters(row.Si("l")), Length.FromMeters(row.Si("b")), (int)row.Si("bogies"), Area.FromSquareMeters(row.Si("shoe")), Length.FromMeters(row.Si("grouser")));
        var factors = new MobilityFactors(Length.FromMeters(row.Si("clearance")));
        var r = TrackedMobilityModel.Instance.Evaluate(gear, factors);
        row.Matches(("MI", r.MobilityIndex), ("VCI1", r.OnePass.Pascals), ("VCI50", r.FiftyPasses.Pascals));
        Assert.Equal("assume.power-to-weight", Assert.Single(r.Assumptions).Id);
        var batch = new double[1];
        TrackedMobilityModel.Instance.OnePass([row.Si("W") / 1000], gear, factors, batch);
        Assert.Equal(r.OnePass.Kilopascals, batch[0], 9);
        var working = TrackedMobilityModel.Instance.Explain(gear, factors);
        Assert.Equal("VCI1", working.Steps[^1].Symbol);
        Assert.Equal(r.OnePass.Kilopascals, double.Parse(working.Steps[^1].Value.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 0.051);
    }

    /// <summary>Every break of the weight factor of an axle: below, at and above, with the value on each side.</summary>
    [Theory]
    [InlineData(2 - 1e-9, 1.106)]
    [InlineData(2, 1.116)]
    [InlineData(2 + 1e-9, 1.116)]
    [InlineData(13.5 - 1e-9, 1.4955)]
    [InlineData(13.5, 1.4955)]
    [InlineData(13.5 + 1e-9, 1.497)]
    [InlineData(20 - 1e-9, 2.42)]
    [InlineData(20, 2.42)]
    [InlineData(20 + 1e-9, 2.445)]
    public void Weight_factor_at_its_breaks(double kips, double expected) => Assert.Equal(expected, MobilityKernel.AxleWeightFactor(kips), 1e-8);

    [Theory]
    [InlineData(50 - 1e-9, 1.0)]
    [InlineData(50, 1.2)]
    [InlineData(50 + 1e-9, 1.2)]
    [InlineData(70 - 1e-9, 1.2)]
    [InlineData(70, 1.4)]
    [InlineData(70 + 1e-9, 1.4)]
    [InlineData(100 - 1e-9, 1.4)]
    [InlineData(100, 1.8)]
    [InlineData(100 + 1e-9, 1.8)]
    public void Weight_factor_of_tracks_at_its_breaks(double kips, double expected) => Assert.Equal(expected, MobilityKernel.GrossWeightFactor(kips));

    [Theory]
    [InlineData(1.5 - 1e-9, 1.0)]
    [InlineData(1.5, 1.0)]
    [InlineData(1.5 + 1e-9, 1.1)]
    public void Grouser_factor_of_tracks_at_its_break(double inches, double expected) => Assert.Equal(expected, MobilityKernel.TrackGrouserFactor(inches));

    [Theory]
    [InlineData(-1e-9, 1.05)]
    [InlineData(0, 1.00)]
    [InlineData(1e-9, 1.00)]
    public void Engine_factor_at_ten_horsepower_a_short_ton(double step, double expected) => Assert.Equal(expected, MobilityKernel.EngineFactor(MobilityKernel.EnginePowerLimit * (1 + step)));

    [Fact]
    public void Ten_horsepower_a_short_ton_is_8_2_kilowatts_a_tonne() => Assert.Equal(8.22, MobilityKernel.EnginePowerLimit * 9.80665, 0.005);

    [Theory]
    [InlineData(115 - 1e-9, 34.1499, 76.8991)]
    [InlineData(115, 34.1499, 76.8991)]
    [InlineData(115 + 1e-9, 34.1499, 76.8991)]
    [InlineData(122.7, 35.0, 76.8991)] // one pass: 4.1 x 122.7^0.446
    [InlineData(150, 38.3107, 84.0967)]
    public void Both_fits_are_held_across_the_join(double index, double onePsi, double fiftyPsi)
    {
        Assert.Equal(onePsi, MobilityKernel.OnePassWheels(index, 1) / Psi, index == 122.7 ? 0.1 : 0.0005);
        Assert.Equal(fiftyPsi, MobilityKernel.FiftyPassesWheels(index) / Psi, 0.0005);
    }

    [Fact]
    public void A_negative_index_counts_as_zero_and_is_flagged()
    {
        // 1 kN on broad wheels with a metre of clearance: the clearance outweighs the load.
        var r = WheeledMobilityModel.Instance.Evaluate(Axle(1000, 2, 1.0, 2.0, 0.15), new MobilityFactors(Length.FromMeters(1.0)));
        Assert.True(r.MobilityIndex < 0);
        Assert.Equal(["MI"], r.Flags.Select(f => f.Limit.Symbol));
        Assert.Equal(11.48 - (39.2 / 3.74), r.OnePass.Pascals / Psi, 9);
        Assert.Equal(7 - (39.2 / 5.6), MobilityKernel.OnePassTracks(-5) / Psi, 9);
        Assert.Equal(19.27 - (125.79 / 7.08), MobilityKernel.FiftyPassesTracks(-5) / Psi, 9);
        var tracks = new TrackedGear(Force.FromKilonewtons(5), Length.FromMeters(3), Length.FromMeters(1), 12, Area.FromSquareMeters(0.2), Length.FromMeters(0.05));
        Assert.Equal(["MI"], TrackedMobilityModel.Instance.Evaluate(tracks, new MobilityFactors(Length.FromMeters(1.0))).Flags.Select(f => f.Limit.Symbol));
        Assert.Empty(TrackedMobilityModel.Instance.Evaluate(new TrackedGear(Force.FromKilonewtons(200), Length.FromMeters(3), Length.FromMeters(0.6), 12, Area.FromSquareMeters(0.1), Length.FromMeters(0.05)), Powerful).Flags);
    }

    [Fact]
    public void An_axle_that_is_not_driven_is_flagged()
    {
        var axle = new WheelSet(Wheels.Of(400, 30), 2, driven: false);
        Assert.Equal(["driven"], WheeledMobilityModel.Instance.Evaluate(axle, Powerful).Flags.Select(f => f.Limit.Symbol));
        Assert.Empty(WheeledMobilityModel.Instance.Evaluate(new WheelSet(Wheels.Of(400, 30), 2), Powerful).Flags);
    }

    [Theory]
    [InlineData(-1e-6, false)]
    [InlineData(0, true)]
    [InlineData(1e-6, true)]
    public void Goes_from_its_vehicle_cone_index_on(double step, bool go)
    {
        var r = WheeledMobilityModel.Instance.Evaluate(new WheelSet(Wheels.Of(400, 30), 2), Powerful);
        Assert.Equal(go, r.GoesOnce(Pressure.FromPascals(r.OnePass.Pascals + step)));
        Assert.Equal(go, r.GoesFiftyTimes(Pressure.FromPascals(r.FiftyPasses.Pascals + step)));
    }

    [Fact]
    public void Explains_down_to_one_pass()
    {
        var axle = Axle(196.2e3, 2, 0.9, 2.05, 0.2);
        var working = WheeledMobilityModel.Instance.Explain(axle, Powerful);
        Assert.Equal("331", working.Steps.Single(s => s.Symbol == "MI").Value);
        Assert.Equal("349.9 kPa", working.Steps[^1].Value);
        Assert.Equal("VCI1", WheeledMobilityModel.Instance.Explain(Axle(60e3, 2, 0.9, 2.05, 0.2), Powerful).Steps[^1].Symbol);
    }

    [Fact]
    public void Refuses_an_empty_vehicle_and_a_bad_span()
    {
        Assert.Throws<ArgumentException>(() => WheeledMobilityModel.Instance.Evaluate([], Powerful));
        Assert.Throws<ArgumentNullException>(() => WheeledMobilityModel.Instance.Evaluate(new WheelSet(Wheels.Of(400, 30), 2), null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => WheeledMobilityModel.Instance.OnePass([double.NaN], 2, 0.6, 1.6, 0.2, Powerful, new double[1]));
        Assert.Throws<ArgumentException>(() => WheeledMobilityModel.Instance.OnePass([30], 2, 0.6, 1.6, 0.2, Powerful, new double[2]));
    }

    [Property]
    public Property A_heavier_axle_never_needs_less() => Prop.ForAll(Wheels.Any(), w =>
    {
        MobilityResult At(double factor) => WheeledMobilityModel.Instance.Evaluate(new WheelSet(w with { Load = w.Load * factor }, 2), Powerful);
        MobilityResult light = At(0.9), heavy = At(1);
        return heavy.OnePass >= light.OnePass && heavy.FiftyPasses >= light.FiftyPasses;
    });

    private static WheelSet Axle(double axleNewtons, int wheels, double b, double d, double dh) => new(Wheels.Of(400, axleNewtons / 1000 / wheels, b, d, dh), wheels);

    private static MobilityResult Axle(CheckRow row) => WheeledMobilityModel.Instance.Evaluate(Axle(row.Si("W_axle"), (int)row.Si("wheels"), row.Si("b"), row.Si("d"), row.Si("dh")), Powerful);
}
