using System.Collections.Generic;

namespace Recovery.Mechanics.Planning;

/// <summary>A section of a report.</summary>
public sealed record ReportSection
{
    internal ReportSection(string key, string heading, IReadOnlyList<ReportBlock> blocks)
    {
        Key = key;
        Heading = heading;
        Blocks = blocks;
    }

    /// <summary>Gets the stable key, for example <c>demand</c>, by which a host translates or leaves out.</summary>
    public string Key { get; }

    /// <summary>Gets the heading.</summary>
    public string Heading { get; }

    /// <summary>Gets the blocks in their order.</summary>
    public IReadOnlyList<ReportBlock> Blocks { get; }

    /// <summary>Gives the heading.</summary>
    /// <returns>The heading.</returns>
    public override string ToString() => Heading;
}
