using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Breakout over static resistance at one speed of pull.</summary>
public sealed record RateEffect
{
    internal RateEffect(double ratio, IReadOnlyList<ValidityFlag> flags)
    {
        Ratio = ratio;
        Flags = flags;
    }

    /// <summary>Gets breakout over static resistance.</summary>
    public double Ratio { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the ratio in one line, invariant culture.</summary>
    /// <returns>The ratio.</returns>
    public override string ToString() => "breakout " + Text.Number(Ratio, 3) + " times the static resistance";
}
