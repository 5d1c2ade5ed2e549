using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Mobility index of wheels and the rating cone index they need for one pass and for fifty (army cone-index method).</summary>
/// <remarks>
/// <para>MI = (CPF WF/(TF GF) + WLF - CF) EF TrF; VCI1 = DCF (11.48 + 0.2 MI - 39.2/(MI + 3.74)) to MI 115, DCF 4.1 MI^0.446 above; VCI50 = 28.23 + 0.43 MI - 92.67/(MI + 3.67) to MI 115, 9.0 MI^0.446 above; DCF = (0.15/(delta/h))^0.25. psi.</para>
/// <para>CPF contact pressure W/(0.5 n d b) in psi; WF by X kips per axle: below 2 0.553 X, to 13.5 0.033 X + 1.050, to 20 0.142 X - 0.420, above 0.278 X - 3.115; TF (10 + b)/100, b in inches; GF 1.05 with chains or grousers; WLF kips per wheel; CF clearance in inches over 10; EF 1.05 below 10 hp per short ton; TrF 1.05 manual.</para>
/// <para>At MI 115 both fits drop a little (one pass 0.1 psi, fifty 2.2 psi): the value at 115 is held until the upper branch regains it, so that a worse vehicle never scores better (judgement). A negative index counts as zero and is flagged.</para>
/// <para>Assumes all wheels driven (primary): an axle that is not is flagged, because no penalty has a source. From trucks: wheel loads beyond 60 kN are extrapolation and a warning only. Deflection corrects one pass only.</para>
/// <para>Source: FM 5-430-00-1 Vol. 1 ch. 7 and Priddy 1999 (index, reported); Priddy and Willoughby 2006 (VCI1 and DCF, primary); VCI50 reported, above MI 115 by weak carriers.</para>
/// </remarks>
public sealed class WheeledMobilityModel : IModel
{
    private WheeledMobilityModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static WheeledMobilityModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Vehicle cone index of wheels";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.MobilityIndex;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("MI", "mobility index", 0, double.PositiveInfinity, string.Empty, GeneralSources.Judgement),
        new ValidityLimit("driven", "share of driven wheels: the method assumes all", 1, 1, string.Empty, TerramechanicsSources.OnePassWheels),
        WheelLimits.Load);

    /// <summary>Gives mobility index and vehicle cone index of one axle.</summary>
    /// <param name="axle">The wheels of the axle; their cone index does not enter.</param>
    /// <param name="factors">The rest of the machine.</param>
    /// <returns>The result with its factors and flags.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public MobilityResult Evaluate(WheelSet axle, MobilityFactors factors) => Evaluate([Guard.NotNull(axle, nameof(axle))], factors);

    /// <summary>Gives mobility index and vehicle cone index of a whole vehicle from the averages of its axles: gross weight on all wheels, mean size, mean axle load.</summary>
    /// <param name="axles">The wheels axle by axle, one or more; their cone index does not enter.</param>
    /// <param name="factors">The rest of the machine.</param>
    /// <returns>The result with its factors and flags. The worst axle alone can need more than the average says.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no axle.</exception>
    public MobilityResult Evaluate(IReadOnlyList<WheelSet> axles, MobilityFactors factors)
    {
        Guard.NotNull(axles, nameof(axles));
        Guard.NotNull(factors, nameof(factors));
        if (axles.Count == 0) throw new ArgumentException("axles must hold at least one axle.", nameof(axles));
        double load = 0, wheels = 0, driven = 0, b = 0, d = 0, dh = 0, heaviest = 0;
        foreach (var axle in axles)
        {
            var wheel = Guard.NotNull(axle, nameof(axles)).Wheel;
            load += axle.LoadNewtons;
            wheels += axle.Count;
            driven += axle.Driven ? axle.Count : 0;
            b += wheel.SectionWidth.Meters / axles.Count;
            d += wheel.OverallDiameter.Meters / axles.Count;
            dh += wheel.DeflectionRatio.DecimalFractions / axles.Count;
            heaviest = Math.Max(heaviest, wheel.Load.Newtons);
        }

        var result = new MobilityResult(
            this,
            false,
            MobilityKernel.WheelContactPressure(load, wheels, d, b),
            MobilityKernel.AxleWeightFactor(load / axles.Count / MobilityKernel.NewtonsPerKip),
            MobilityKernel.TyreFactor(b),
            MobilityKernel.WheelGrouserFactor(factors.WheelGrousers),
            MobilityKernel.WheelLoadFactor(load, wheels),
            MobilityKernel.ClearanceFactor(factors.GroundClearance.Meters),
            factors.EngineFactor,
            MobilityKernel.TransmissionFactor(factors.ManualTransmission),
            MobilityKernel.DeflectionCorrection(dh),
            factors.Assumptions);
        return result with { Flags = Validity.Flag(result.MobilityIndex, driven / wheels, heaviest / 1000) };
    }

    /// <summary>Works the vehicle cone index of one axle out step by step.</summary>
    /// <param name="axle">The wheels of the axle.</param>
    /// <param name="factors">The rest of the machine.</param>
    /// <returns>The worked steps; the last is VCI1.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public Working Explain(WheelSet axle, MobilityFactors factors)
    {
        var r = Evaluate(axle, factors);
        var wheel = axle.Wheel;
        string mi = Text.Number(r.MobilityIndex), dcf = Text.Number(r.DeflectionCorrection!.Value), kips = Text.Number(axle.LoadNewtons / MobilityKernel.NewtonsPerKip);
        var low = r.MobilityIndex <= MobilityKernel.Join;
        return MobilitySteps.Of(
                new WorkingBuilder(Name),
                r,
                "W/(0.5 n d b) in psi",
                Text.Number(axle.LoadNewtons / PhysicalConstants.NewtonsPerPoundForce) + "/(0.5 x " + Text.Number(axle.Count) + " x " + Text.Number(wheel.OverallDiameter.Inches) + " x " + Text.Number(wheel.SectionWidth.Inches) + ")",
                "by X = " + kips + " kips per axle",
                "(10 + b)/100",
                "wheel load factor, kips per wheel")
            .Step("VCI50", "rating cone index needed for fifty passes", low ? "28.23 + 0.43 MI - 92.67/(MI + 3.67) psi" : "9.0 MI^0.446 psi, at least 76.90", "MI " + mi, Text.Kilopascals(r.FiftyPasses.Pascals), low ? TerramechanicsSources.FiftyPassesWheels : TerramechanicsSources.FiftyPassesHeavy)
            .Step("DCF", "deflection correction", "(0.15/(delta/h))^0.25", "(0.15/" + Text.Number(wheel.DeflectionRatio.DecimalFractions) + ")^0.25", dcf, TerramechanicsSources.OnePassWheels)
            .Step("VCI1", "rating cone index needed for one pass", low ? "DCF (11.48 + 0.2 MI - 39.2/(MI + 3.74)) psi" : "DCF 4.1 MI^0.446 psi, at least DCF 34.15", "DCF " + dcf + ", MI " + mi, Text.Kilopascals(r.OnePass.Pascals), TerramechanicsSources.OnePassWheels)
            .Build();
    }

    /// <summary>Gives the vehicle cone index for one pass of many axles at once: the same kernel over spans.</summary>
    /// <param name="axleLoadKilonewtons">Load of the axle, above 0 to 2,000 kN, one per axle.</param>
    /// <param name="wheelsOnAxle">Wheels of every axle, 1 to 8.</param>
    /// <param name="sectionWidthMetres">Section width of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter of all wheels, 0.2 to 4 m.</param>
    /// <param name="deflectionRatio">Deflection ratio of all wheels, 0.0005 to 0.6.</param>
    /// <param name="factors">The rest of the machine.</param>
    /// <param name="onePassKilopascals">Receives VCI1, kPa, one per axle.</param>
    /// <exception cref="ArgumentNullException">The factors are null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void OnePass(ReadOnlySpan<double> axleLoadKilonewtons, int wheelsOnAxle, double sectionWidthMetres, double overallDiameterMetres, double deflectionRatio, MobilityFactors factors, Span<double> onePassKilopascals)
    {
        Guard.SameLength(axleLoadKilonewtons.Length, onePassKilopascals.Length, nameof(onePassKilopascals));
        Guard.All(axleLoadKilonewtons, 1e-3, 2000, "kN", nameof(axleLoadKilonewtons));
        Guard.Count(wheelsOnAxle, 1, 8, nameof(wheelsOnAxle));
        WheelBatch.GuardWheel(sectionWidthMetres, overallDiameterMetres, deflectionRatio);
        Guard.NotNull(factors, nameof(factors));
        double tyre = MobilityKernel.TyreFactor(sectionWidthMetres), grouser = MobilityKernel.WheelGrouserFactor(factors.WheelGrousers), clearance = MobilityKernel.ClearanceFactor(factors.GroundClearance.Meters);
        double engine = factors.EngineFactor, transmission = MobilityKernel.TransmissionFactor(factors.ManualTransmission), correction = MobilityKernel.DeflectionCorrection(deflectionRatio);
        for (var i = 0; i < axleLoadKilonewtons.Length; i++)
        {
            var load = axleLoadKilonewtons[i] * 1000;
            var index = MobilityKernel.Index(
                MobilityKernel.WheelContactPressure(load, wheelsOnAxle, overallDiameterMetres, sectionWidthMetres), MobilityKernel.AxleWeightFactor(load / MobilityKernel.NewtonsPerKip), tyre, grouser, MobilityKernel.WheelLoadFactor(load, wheelsOnAxle), clearance, engine, transmission);
            onePassKilopascals[i] = MobilityKernel.OnePassWheels(index, correction) / 1000;
        }
    }
}
