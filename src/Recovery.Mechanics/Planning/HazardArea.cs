using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>An area that a host can draw round the pull. A reach estimate or a quoted rule; outside it people are not out of danger.</summary>
public sealed record HazardArea
{
    internal HazardArea(string key, string centre, double radius, string text, Source source)
    {
        Key = key;
        Centre = centre;
        Radius = Length.FromMeters(radius);
        Text = text;
        Source = source;
    }

    /// <summary>Gets the stable key: <c>line-of-pull</c>, <c>sweep</c> or <c>published-rule</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what it lies round.</summary>
    public string Centre { get; }

    /// <summary>Gets its radius; zero where the whole line of pull and both its ends are meant.</summary>
    public Length Radius { get; }

    /// <summary>Gets what it means, in words.</summary>
    public string Text { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the area in one line.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Text;
}
