using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>One term of a pull demand: what it adds to the low, the central and the high sum.</summary>
/// <remarks>The three are shares of three sums that are each worked whole; a single term need not rise from low to high (rolling falls to nothing where the high is the locked sum).</remarks>
public sealed record DemandTerm
{
    private readonly PhraseTemplate _name;

    internal DemandTerm(PhraseTemplate name, double low, double central, double high, Source source)
    {
        _name = name;
        Low = Force.FromNewtons(low);
        Central = Force.FromNewtons(central);
        High = Force.FromNewtons(high);
        Source = source;
    }

    /// <summary>Gets the stable key of the term, for example <c>face</c>.</summary>
    public string Key => TermPhrases.KeyOf(_name);

    /// <summary>Gets the name of the term in words.</summary>
    public string Name => _name.English;

    /// <summary>Gets what it adds to the low.</summary>
    public Force Low { get; }

    /// <summary>Gets what it adds to central.</summary>
    public Force Central { get; }

    /// <summary>Gets what it adds to the high.</summary>
    public Force High { get; }

    /// <summary>Gets the source of the term.</summary>
    public Source Source { get; }

    /// <summary>The name, for a translation.</summary>
    internal Phrase Called => _name.With();

    /// <summary>Gives the term in one line, invariant culture.</summary>
    /// <returns>Name and the three shares.</returns>
    public override string ToString() => Name + ": " + Text.Number(Low.Newtons / 1000, 3) + " / " + Text.Number(Central.Newtons / 1000, 3) + " / " + Text.Number(High.Newtons / 1000, 3) + " kN";
}
