using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What one measurement would take off the doubt about the pull and about the gear.</summary>
/// <remarks>Immutable. The share is that of a perfect reading; a real one takes off a little less.</remarks>
public sealed class MeasurementWorth
{
    internal MeasurementWorth(SampledInput input, InputSensitivity pull, InputSensitivity? gear)
    {
        Input = input;
        Pull = pull;
        Gear = gear;
    }

    /// <summary>Gets the input.</summary>
    public SampledInput Input { get; }

    /// <summary>Gets its share in the variance of ln(sustained/demand).</summary>
    public InputSensitivity Pull { get; }

    /// <summary>Gets its share in the variance of ln(strength/load) of the weakest part; null where that is not known.</summary>
    public InputSensitivity? Gear { get; }

    /// <summary>Gets the larger of the two first-order shares, 0 or more.</summary>
    public double Share => Math.Max(0, Math.Max(Pull.First, Gear?.First ?? 0));

    /// <summary>Gives the measurement and its shares to a tenth, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Input.Input.Measurement + " (" + Input.Input.Title + "): " + Tenths(Pull.First) + " of the doubt about the pull" + (Gear is { } gear ? ", " + Tenths(gear.First) + " about the gear" : string.Empty);

    private static string Tenths(double share) => Math.Round(10 * share) switch
    {
        <= 0 => "next to nothing",
        1 => "about a tenth",
        5 => "about half",
        >= 10 => "nearly all",
        var tenths => "about " + Text.Number(tenths) + " tenths",
    };
}
