using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How long suction lasts by itself.</summary>
public sealed record SuctionDissipation
{
    internal SuctionDissipation(double seconds, IReadOnlyList<ValidityFlag> flags)
    {
        Time90 = Duration.FromSeconds(seconds);
        Flags = flags;
    }

    /// <summary>Gets the time after which a tenth of it is left.</summary>
    public Duration Time90 { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the time in one line, invariant culture.</summary>
    /// <returns>The time in days.</returns>
    public override string ToString() => "a tenth left after " + Text.With(Time90.Seconds / 86400, "days", 2);
}
