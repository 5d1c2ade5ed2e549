namespace Recovery.Mechanics.Provenance;

/// <summary>Where an equation, constant or rule comes from, and how well that is confirmed.</summary>
/// <remarks>Immutable; many threads may use it at once. Every source of the library is listed in <see cref="SourceCatalogue.All"/> and in <c>docs/bibliography.md</c>.</remarks>
/// <param name="Key">Stable short key, for example <c>brixius-1987</c>.</param>
/// <param name="Citation">The citation, with clause, table or equation where one is known.</param>
/// <param name="Standing">How well the value taken from it is supported.</param>
public sealed record Source(string Key, string Citation, Standing Standing)
{
    /// <summary>Gives the citation followed by its standing in words.</summary>
    /// <returns>The citation and its standing.</returns>
    public override string ToString() => Citation + " (" + Standings.Describe(Standing) + ")";
}
