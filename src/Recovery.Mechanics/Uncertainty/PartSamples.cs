using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What sampling says of one place of a rig at the load that the puller can impose.</summary>
/// <remarks>Immutable. The two checks use the marked strength, as the assessment does; parting uses the strength that the part has: new strength times wear, as far as they were given. Nobody can predict that gear will hold.</remarks>
public sealed class PartSamples
{
    private readonly PlaceTallies _tallies;
    private readonly long _count;

    internal PartSamples(string name, PlaceKind kind, double floor, PlaceTallies tallies, long count)
    {
        Name = name;
        Kind = kind;
        Floor = floor;
        _tallies = tallies;
        _count = count;
    }

    /// <summary>Gets the name of the part.</summary>
    public string Name { get; }

    /// <summary>Gets what kind of place of it is meant.</summary>
    public PlaceKind Kind { get; }

    /// <summary>Gets the least strength over load that is asked of it under the procedure peak.</summary>
    public double Floor { get; }

    /// <summary>Gets how likely the steady load is above what is allowed; never counted where nothing is known to be allowed (<see cref="RatedUtilisation"/> is null).</summary>
    public SampledProbability OverRated => new(_tallies.OverRated, _count);

    /// <summary>Gets how likely marked strength over procedure peak is below its floor; never counted where the strength is not known (<see cref="PeakUtilisation"/> is null).</summary>
    public SampledProbability BelowFloor => new(_tallies.BelowFloor, _count);

    /// <summary>Gets how likely the procedure peak is above the strength that the part has; never counted where the strength is not known (<see cref="PeakUtilisation"/> is null).</summary>
    public SampledProbability Breaks => new(_tallies.Parted, _count);

    /// <summary>Gets how steady load over allowable spreads; null where the allowable is not known.</summary>
    public SampleSummary? RatedUtilisation => _tallies.Rated.Count == 0 ? null : new(_tallies.Rated);

    /// <summary>Gets how procedure peak times floor over strength spreads (1 is the floor); null where the strength is not known.</summary>
    public SampleSummary? PeakUtilisation => _tallies.Peak.Count == 0 ? null : new(_tallies.Peak);

    /// <summary>Gives name and both probabilities in words, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Name + " (" + Kind + "): over its rating " + (RatedUtilisation is null ? "not asked" : OverRated.ToString()) + ", below its floor " + BelowFloorInWords;

    /// <summary>Never "not once" of a part whose strength nobody knows.</summary>
    internal string BelowFloorInWords => PeakUtilisation is null ? "strength not known" : BelowFloor.ToString();
}
