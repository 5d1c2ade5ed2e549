using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index and rating cone index of a soil from its class and its moisture, where no cone is at hand.</summary>
/// <remarks>
/// <para>CI = exp(a + b ln w), RCI = exp(a' + b' ln w), RCI at most CI; psi, w gravimetric moisture in per cent of dry mass, four coefficients for each class.</para>
/// <para>The range of moisture of the fits is not stated. A result above the full scale of the instrument, 2,068 kPa, says no more than "at least"; it comes back flagged.
/// The fits scatter by a factor of 1.5 to 2 either way (judgement): never show three digits, and plan on the low end.</para>
/// <para>Clean sand (SW, SP) stiffens with moisture in this fit, with one pair for both indices: not to be used above field capacity, where sand turns quick.
/// The slope of CH is printed as -5.583, which would leave 0.001 psi at 40 %; -2.583 is taken (from memory). The rating pairs of CL-ML, MH and OL are from memory; those of MH and OL exceed the cone index on moist soil and are cut to it.</para>
/// <para>Source: SMSP II (Sullivan et al. 1997) in ERDC/CRREL SR-04-1 Table 5.2.1 (reported); rating pairs Sullivan and Anderson 2000 (reported).</para>
/// </remarks>
public sealed class MoistureConeIndexModel : IModel
{
    // What is taken as a moisture at all (judgement); the range of the fits is in the validity.
    private const double LeastPercent = 1, MostPercent = 200;

    private MoistureConeIndexModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static MoistureConeIndexModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Cone index from class and moisture";

    /// <inheritdoc/>
    public Source Source => GroundSources.MoistureCone;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("CI", "cone index against the full scale of the cone", double.NegativeInfinity, MoistureKernel.FullScalePascals / 1000, "kPa", GroundSources.ConeFullScale));

    /// <summary>Gives both indices.</summary>
    /// <param name="uscs">Soil class.</param>
    /// <param name="gravimetricMoisture">Water over dry mass, 1 to 200 %.</param>
    /// <returns>The indices with flags and remarks.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range, or the class is not defined.</exception>
    public MoistureStrength Evaluate(UscsClass uscs, Ratio gravimetricMoisture)
    {
        var c = MoistureCoefficients.Of(Known(uscs));
        var w = Guard.Range(gravimetricMoisture.DecimalFractions * 100, LeastPercent, MostPercent, "%", nameof(gravimetricMoisture));
        double ci = MoistureKernel.ConeIndex(c, w), uncapped = MoistureKernel.UncappedRatingConeIndex(c, w);
        var remarks = new List<string> { "The fit scatters by a factor of 1.5 to 2 either way; a cone reading replaces it." };
        if (uncapped > ci) remarks.Add("The fit of the rating cone index lies above the cone index; it is cut to it.");
        if (c.Kind == SoilKind.CleanSand) remarks.Add("Clean sand stiffens with moisture in this fit: not above field capacity, where sand turns quick.");
        if (uscs == UscsClass.CH) remarks.Add("The slope of this class is printed as -5.583, which cannot be; -2.583 is taken, from memory.");
        return new MoistureStrength(uscs, w, ci, uncapped, Validity.Flag(ci / 1000), remarks.AsReadOnly(), c.ConeSource, c.RatingSource);
    }

    /// <summary>Works both indices out step by step.</summary>
    /// <param name="uscs">Soil class.</param>
    /// <param name="gravimetricMoisture">Water over dry mass, 1 to 200 %.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range, or the class is not defined.</exception>
    public Working Explain(UscsClass uscs, Ratio gravimetricMoisture)
    {
        var result = Evaluate(uscs, gravimetricMoisture);
        var c = MoistureCoefficients.Of(uscs);
        string w = Text.Number(result.Moisture.Percent), ci = Text.Kilopascals(result.ConeIndex.Pascals), fit = Text.Kilopascals(result.UncappedRatingConeIndex.Pascals);
        return new WorkingBuilder(Name + ", " + Label(uscs))
            .Step("CI", "cone index", "exp(a + b ln w) psi", "exp(" + Text.Number(c.A, 5) + " + " + Text.Number(c.B, 5) + " ln " + w + ") x 6.895", ci, c.ConeSource)
            .Step("RCI_fit", "rating cone index as fitted", "exp(a' + b' ln w) psi", "exp(" + Text.Number(c.RatingA, 5) + " + " + Text.Number(c.RatingB, 5) + " ln " + w + ") x 6.895", fit, c.RatingSource)
            .Step("RCI", "rating cone index", "min(RCI_fit, CI)", "min(" + fit + ", " + ci + ")", Text.Kilopascals(result.RatingConeIndex.Pascals), GroundSources.RemouldingLimits)
            .Build();
    }

    /// <summary>Gives both indices of many moistures of one class at once: the same kernel over spans.</summary>
    /// <param name="uscs">Soil class.</param>
    /// <param name="moisturePercent">Water over dry mass, 1 to 200 %, one per place.</param>
    /// <param name="coneIndexKilopascals">Receives the cone index, kPa.</param>
    /// <param name="ratingConeIndexKilopascals">Receives the rating cone index, kPa.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(UscsClass uscs, ReadOnlySpan<double> moisturePercent, Span<double> coneIndexKilopascals, Span<double> ratingConeIndexKilopascals)
    {
        var c = MoistureCoefficients.Of(Known(uscs));
        Guard.SameLength(moisturePercent.Length, coneIndexKilopascals.Length, nameof(coneIndexKilopascals));
        Guard.SameLength(moisturePercent.Length, ratingConeIndexKilopascals.Length, nameof(ratingConeIndexKilopascals));
        Guard.All(moisturePercent, LeastPercent, MostPercent, "%", nameof(moisturePercent));
        for (var i = 0; i < moisturePercent.Length; i++)
        {
            coneIndexKilopascals[i] = MoistureKernel.ConeIndex(c, moisturePercent[i]) / 1000;
            ratingConeIndexKilopascals[i] = MoistureKernel.RatingConeIndex(c, moisturePercent[i]) / 1000;
        }
    }

    internal static string Label(UscsClass uscs) => uscs switch
    {
        UscsClass.SMSC => "SM-SC",
        UscsClass.CLML => "CL-ML",
        _ => uscs.ToString(),
    };

    private static UscsClass Known(UscsClass uscs) => Guard.Defined(uscs, uscs is >= UscsClass.SW and <= UscsClass.OH, nameof(uscs));
}
