using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index and rating cone index that a moisture fit gives for a soil class.</summary>
/// <remarks>Immutable. The fits scatter by a factor of 1.5 to 2 either way: show two digits at most. Canonical pascals inside.</remarks>
public sealed record MoistureStrength
{
    internal MoistureStrength(UscsClass uscs, double percent, double ci, double uncapped, IReadOnlyList<ValidityFlag> flags, IReadOnlyList<string> remarks, Source coneSource, Source ratingSource)
    {
        Class = uscs;
        Moisture = Ratio.FromDecimalFractions(percent / 100);
        ConeIndex = Pressure.FromPascals(ci);
        UncappedRatingConeIndex = Pressure.FromPascals(uncapped);
        RatingConeIndex = Pressure.FromPascals(uncapped < ci ? uncapped : ci);
        Flags = flags;
        Remarks = remarks;
        ConeIndexSource = coneSource;
        RatingConeIndexSource = ratingSource;
    }

    /// <summary>Gets the soil class.</summary>
    public UscsClass Class { get; }

    /// <summary>Gets the gravimetric moisture, water over dry mass.</summary>
    public Ratio Moisture { get; }

    /// <summary>Gets the cone index.</summary>
    public Pressure ConeIndex { get; }

    /// <summary>Gets the rating cone index, at most the cone index.</summary>
    public Pressure RatingConeIndex { get; }

    /// <summary>Gets the rating cone index as the fit gives it; above the cone index it has no meaning.</summary>
    public Pressure UncappedRatingConeIndex { get; }

    /// <summary>Gets whether the rating cone index had to be cut to the cone index.</summary>
    public bool RatingIsCapped => UncappedRatingConeIndex.Pascals > ConeIndex.Pascals;

    /// <summary>Gets the remoulding index that the two fits imply, at most 1.</summary>
    public Ratio RemouldingIndex => Ratio.FromDecimalFractions(RatingConeIndex.Pascals / ConeIndex.Pascals);

    /// <summary>Gets the low end of the scatter of the cone index, half of it (judgement).</summary>
    public Pressure ConeIndexLow => Pressure.FromPascals(ConeIndex.Pascals / MoistureKernel.WideScatter);

    /// <summary>Gets the high end of the scatter of the cone index, twice it (judgement).</summary>
    public Pressure ConeIndexHigh => Pressure.FromPascals(ConeIndex.Pascals * MoistureKernel.WideScatter);

    /// <summary>Gets where the coefficients of the cone index come from.</summary>
    public Source ConeIndexSource { get; }

    /// <summary>Gets where the coefficients of the rating cone index come from.</summary>
    public Source RatingConeIndexSource { get; }

    /// <summary>Gets the weakest standing of the two fits.</summary>
    public Standing Standing => Standings.Weakest(ConeIndexSource.Standing, RatingConeIndexSource.Standing);

    /// <summary>Gets the limits that the values lie outside of.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets what a reader of the numbers has to know, in English.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>Gives both indices in words, two digits, invariant culture.</summary>
    /// <returns>Class, moisture and the two indices.</returns>
    public override string ToString() => MoistureConeIndexModel.Label(Class) + " at " + Text.With(Moisture.Percent, "%", 3) + ": cone index about " + Rough.Kilopascals(ConeIndex.Pascals) + ", rating cone index about " + Rough.Kilopascals(RatingConeIndex.Pascals);
}
