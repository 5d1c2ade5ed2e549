using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>A vertical breakout by one model.</summary>
public sealed record BreakoutEstimate
{
    internal BreakoutEstimate(IModel model, ForceBand force, IReadOnlyList<ValidityFlag> flags)
    {
        Model = model;
        Force = force;
        Flags = flags;
    }

    /// <summary>Gets the model.</summary>
    public IModel Model { get; }

    /// <summary>Gets the breakout; all three alike where no accuracy is published.</summary>
    public ForceBand Force { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the estimate in one line, invariant culture.</summary>
    /// <returns>Model and force.</returns>
    public override string ToString() => Model.Name + ": " + Force;
}
