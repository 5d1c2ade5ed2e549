using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A disc that a host can draw. Outside it nobody is out of danger.</summary>
public sealed record HazardDisc
{
    internal HazardDisc(string key, PlanPoint centre, double radius, string meaning, Source source)
    {
        Key = key;
        Centre = centre;
        Radius = Length.FromMeters(radius);
        Meaning = meaning;
        Source = source;
    }

    /// <summary>Gets the stable key: <c>sweep</c> or <c>published-rule</c>.</summary>
    public string Key { get; }

    /// <summary>Gets the centre.</summary>
    public PlanPoint Centre { get; }

    /// <summary>Gets the radius.</summary>
    public Length Radius { get; }

    /// <summary>Gets what it means.</summary>
    public string Meaning { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the disc in one line, invariant culture.</summary>
    /// <returns>Meaning, centre and radius.</returns>
    public override string ToString() => Meaning + ": " + Text.With(Radius.Meters, "m", 3) + " about " + Centre;
}
