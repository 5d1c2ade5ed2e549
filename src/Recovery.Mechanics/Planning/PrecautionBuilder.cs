using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Collects precautions in one language, texts by key.</summary>
internal sealed class PrecautionBuilder(Wording wording)
{
    private readonly List<Precaution> _list = [];

    /// <summary>Gets language and units.</summary>
    public Wording Wording { get; } = wording;

    /// <summary>Adds what <c>do.key</c> and <c>why.key</c> say; the values belong to what is done.</summary>
    public void Add(string key, Source source, params string[] values) => AddAs(key, key, source, values, key, []);

    /// <summary>Adds a precaution whose texts have keys of their own.</summary>
    public void AddAs(string key, string action, Source source, string[] actionValues, string why, string[] whyValues) =>
        _list.Add(new Precaution(key, Wording.Say("do." + action, actionValues), Wording.Say("why." + why, whyValues), source));

    /// <summary>Gives the list.</summary>
    public IReadOnlyList<Precaution> Build() => _list.AsReadOnly();
}
