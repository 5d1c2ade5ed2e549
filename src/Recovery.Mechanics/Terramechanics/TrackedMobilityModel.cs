using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Mobility index of a tracked machine and the rating cone index it needs for one pass and for fifty (army cone-index method).</summary>
/// <remarks>
/// <para>MI = (CPF WF/(TF GF) + BF - CF) EF TrF; VCI1 = 7.0 + 0.2 MI - 39.2/(MI + 5.6); VCI50 = 19.27 + 0.43 MI - 125.79/(MI + 7.08), psi.</para>
/// <para>CPF contact pressure W/(2 L w) in psi of both tracks; WF 1.0 below 50,000 lbf, 1.2 below 70,000, 1.4 below 100,000, 1.8 from there; TF track width in inches over 100; GF 1.1 with grousers above 1.5 in; BF (W/10)/(bogies x shoe area) in lbf and in2; CF, EF, TrF as for wheels.</para>
/// <para>A negative index counts as zero and is flagged.</para>
/// <para>Source: FM 5-430-00-1 Vol. 1 ch. 7 (index and VCI1 reported by two texts; VCI50 from memory).</para>
/// </remarks>
public sealed class TrackedMobilityModel : IModel
{
    private TrackedMobilityModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static TrackedMobilityModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Vehicle cone index of tracks";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.MobilityIndex;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("MI", "mobility index", 0, double.PositiveInfinity, string.Empty, GeneralSources.Judgement));

    /// <summary>Gives mobility index and vehicle cone index.</summary>
    /// <param name="gear">The tracks.</param>
    /// <param name="factors">The rest of the machine; its wheel grousers do not enter.</param>
    /// <returns>The result with its factors and flags.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public MobilityResult Evaluate(TrackedGear gear, MobilityFactors factors)
    {
        Guard.NotNull(gear, nameof(gear));
        Guard.NotNull(factors, nameof(factors));
        var result = new MobilityResult(
            this,
            true,
            MobilityKernel.TrackContactPressure(gear.Weight.Newtons, gear.ContactLength.Meters, gear.TrackWidth.Meters),
            MobilityKernel.GrossWeightFactor(gear.Weight.Newtons / MobilityKernel.NewtonsPerKip),
            MobilityKernel.TrackFactor(gear.TrackWidth.Meters),
            MobilityKernel.TrackGrouserFactor(gear.GrouserHeight.Meters / PhysicalConstants.MetresPerInch),
            MobilityKernel.BogieFactor(gear.Weight.Newtons, gear.Bogies, gear.ShoeArea.SquareMeters),
            MobilityKernel.ClearanceFactor(factors.GroundClearance.Meters),
            factors.EngineFactor,
            MobilityKernel.TransmissionFactor(factors.ManualTransmission),
            null,
            factors.Assumptions);
        return result with { Flags = Validity.Flag(result.MobilityIndex) };
    }

    /// <summary>Works the vehicle cone index out step by step.</summary>
    /// <param name="gear">The tracks.</param>
    /// <param name="factors">The rest of the machine.</param>
    /// <returns>The worked steps; the last is VCI1.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public Working Explain(TrackedGear gear, MobilityFactors factors)
    {
        var r = Evaluate(gear, factors);
        var mi = Text.Number(r.MobilityIndex);
        return MobilitySteps.Of(
                new WorkingBuilder(Name),
                r,
                "W/(2 L w) in psi",
                Text.Number(gear.Weight.Newtons / PhysicalConstants.NewtonsPerPoundForce) + "/(2 x " + Text.Number(gear.ContactLength.Inches) + " x " + Text.Number(gear.TrackWidth.Inches) + ")",
                "by " + Text.Number(gear.Weight.Newtons / MobilityKernel.NewtonsPerKip) + " kips gross",
                "track width in inches/100",
                "bogie factor")
            .Step("VCI50", "rating cone index needed for fifty passes", "19.27 + 0.43 MI - 125.79/(MI + 7.08) psi", "MI " + mi, Text.Kilopascals(r.FiftyPasses.Pascals), TerramechanicsSources.FiftyPassesTracks)
            .Step("VCI1", "rating cone index needed for one pass", "7.0 + 0.2 MI - 39.2/(MI + 5.6) psi", "MI " + mi, Text.Kilopascals(r.OnePass.Pascals), TerramechanicsSources.OnePassTracks)
            .Build();
    }

    /// <summary>Gives the vehicle cone index for one pass at many weights of one gear: the same kernel over spans.</summary>
    /// <param name="weightKilonewtons">Gross weight, 1 to 2,000 kN, one per case.</param>
    /// <param name="gear">The tracks; its own weight does not enter.</param>
    /// <param name="factors">The rest of the machine; where its power and mass are given the engine factor is that of all cases.</param>
    /// <param name="onePassKilopascals">Receives VCI1, kPa, one per case.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside its range or not a number; nothing is written then.</exception>
    public void OnePass(ReadOnlySpan<double> weightKilonewtons, TrackedGear gear, MobilityFactors factors, Span<double> onePassKilopascals)
    {
        Guard.SameLength(weightKilonewtons.Length, onePassKilopascals.Length, nameof(onePassKilopascals));
        Guard.All(weightKilonewtons, 1, 2000, "kN", nameof(weightKilonewtons));
        Guard.NotNull(gear, nameof(gear));
        Guard.NotNull(factors, nameof(factors));
        double length = gear.ContactLength.Meters, width = gear.TrackWidth.Meters, grouser = MobilityKernel.TrackGrouserFactor(gear.GrouserHeight.Meters / PhysicalConstants.MetresPerInch);
        double clearance = MobilityKernel.ClearanceFactor(factors.GroundClearance.Meters), engine = factors.EngineFactor, transmission = MobilityKernel.TransmissionFactor(factors.ManualTransmission);
        for (var i = 0; i < weightKilonewtons.Length; i++)
        {
            var weight = weightKilonewtons[i] * 1000;
            var index = MobilityKernel.Index(
                MobilityKernel.TrackContactPressure(weight, length, width), MobilityKernel.GrossWeightFactor(weight / MobilityKernel.NewtonsPerKip), MobilityKernel.TrackFactor(width), grouser, MobilityKernel.BogieFactor(weight, gear.Bogies, gear.ShoeArea.SquareMeters), clearance, engine, transmission);
            onePassKilopascals[i] = MobilityKernel.OnePassTracks(index) / 1000;
        }
    }
}
