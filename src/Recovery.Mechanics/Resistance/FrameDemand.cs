using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>The pull demand of a stuck machine whose axles share the load in one way.</summary>
public sealed record FrameDemand
{
    internal FrameDemand(Suspension frame, double low, double central, double high)
    {
        Frame = frame;
        Total = ForceBand.FromNewtons(low, central, high);
    }

    /// <summary>Gets how the axles share the load.</summary>
    public Suspension Frame { get; }

    /// <summary>Gets the demand along the ground on that frame.</summary>
    public ForceBand Total { get; }

    /// <summary>Gives the demand in one line, invariant culture.</summary>
    /// <returns>Frame and band.</returns>
    public override string ToString() => BoundPhrases.Of(Frame).English + ": " + Total;
}
