using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What one document requires of a tow eye, recovery point, fitting or chain. A requirement on new goods is no certificate of the point at hand.</summary>
public sealed record AttachmentRequirement
{
    internal AttachmentRequirement(string document, AttachmentPurpose purpose, string text, double? factor, string factorOf, Source source)
    {
        Document = document;
        Purpose = purpose;
        Requirement = text;
        Factor = factor;
        FactorOf = factorOf;
        Source = source;
    }

    /// <summary>Gets the document.</summary>
    public string Document { get; }

    /// <summary>Gets what it is for.</summary>
    public AttachmentPurpose Purpose { get; }

    /// <summary>Gets the requirement, retold.</summary>
    public string Requirement { get; }

    /// <summary>Gets the number in it; null where there is none.</summary>
    public double? Factor { get; }

    /// <summary>Gets what the number multiplies.</summary>
    public string FactorOf { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the requirement in one line.</summary>
    /// <returns>Document and requirement.</returns>
    public override string ToString() => Document + ": " + Requirement;
}
