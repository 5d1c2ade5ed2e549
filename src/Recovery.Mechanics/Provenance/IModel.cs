namespace Recovery.Mechanics.Provenance;

/// <summary>A published model: named, sourced and ranged.</summary>
public interface IModel
{
    /// <summary>Gets the name of the model, by author or standard.</summary>
    string Name { get; }

    /// <summary>Gets the source of the equations; the standing of single constants is in the documentation of the model.</summary>
    Source Source { get; }

    /// <summary>Gets the range in which the model was fitted or holds.</summary>
    Validity Validity { get; }
}
