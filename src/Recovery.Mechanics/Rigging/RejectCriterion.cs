using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>One thing to look for that takes a piece of gear out of service. No factor rescues it.</summary>
public sealed record RejectCriterion
{
    internal RejectCriterion(string id, GearKind kind, string lookFor, string reason, Source source)
    {
        Id = id;
        Kind = kind;
        LookFor = lookFor;
        Reason = reason;
        Source = source;
    }

    /// <summary>Gets the stable id, <c>gear.what</c>, by which a host translates it.</summary>
    public string Id { get; }

    /// <summary>Gets the kind of gear.</summary>
    public GearKind Kind { get; }

    /// <summary>Gets what to look for.</summary>
    public string LookFor { get; }

    /// <summary>Gets why it matters.</summary>
    public string Reason { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the criterion in one line.</summary>
    /// <returns>What to look for and its standing.</returns>
    public override string ToString() => LookFor + " (" + Standings.Describe(Source.Standing) + ")";
}
