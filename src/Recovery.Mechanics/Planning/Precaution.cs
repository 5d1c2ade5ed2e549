using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>One thing to do, to look at or to stop for in this pull, with its reason.</summary>
/// <param name="Key">Stable key, by which a host translates it.</param>
/// <param name="Action">What to do.</param>
/// <param name="Why">Why.</param>
/// <param name="Source">Where it comes from; a rule of the trade says so.</param>
public sealed record Precaution(string Key, string Action, string Why, Source Source)
{
    /// <summary>Gives action and reason.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Action + " " + Why;
}
