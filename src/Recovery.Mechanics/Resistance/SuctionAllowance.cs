using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>What suction holds in one state of the seal.</summary>
public sealed record SuctionAllowance
{
    internal SuctionAllowance(Seal seal, ForceBand force, IReadOnlyList<ValidityFlag> flags)
    {
        Seal = seal;
        Force = force;
        Flags = flags;
    }

    /// <summary>Gets the state of the seal.</summary>
    public Seal Seal { get; }

    /// <summary>Gets low (vented), central and high.</summary>
    public ForceBand Force { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the allowance in one line, invariant culture.</summary>
    /// <returns>State and force.</returns>
    public override string ToString() => Seal switch
    {
        Seal.Vented => "vented: ",
        Seal.PartVented => "part-vented: ",
        Seal.Sealed => "sealed: ",
        _ => "not declared: ",
    } + Force;
}
