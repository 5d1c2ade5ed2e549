using System;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>An interval of a probability in words: between rungs of even, 1 in 10, 1 in 100 and so on, rounded outwards, so that nothing is said finer than an order of magnitude.</summary>
/// <remarks>An end within a factor of 1.25 of a rung is called by that rung (judgement, as for the share itself).</remarks>
internal static class IntervalWords
{
    private const int Rarest = 12;

    /// <summary>The rungs between which both ends lie.</summary>
    public static string Of(double low, double high)
    {
        int from = Rung(low, down: true), to = Rung(high, down: false);
        if (from == int.MinValue) return to == int.MaxValue ? "anything" : to == 0 ? "below even" : "below " + Name(to);
        if (to == int.MaxValue) return from == 0 ? "above even" : "above " + Name(from);
        return from == to ? Name(from) : Name(from) + " to " + Name(to);
    }

    /// <summary>Whether the words of a share say the interval already.</summary>
    public static bool Says(string words, double low, double high)
    {
        int from = Rung(low, down: true), to = Rung(high, down: false);
        return from == to ? words == (from == 0 ? "about even" : from < 0 ? "about " + Name(from) : "all but about 1 in " + SampledProbability.Grouped(from)) : words == Of(low, high);
    }

    /// <summary>Rung below or above a probability: -n for 1 in 10^n, 0 for even, n for all but 1 in 10^n; beyond the rarest there is none.</summary>
    private static int Rung(double p, bool down)
    {
        if (p <= 0.5)
        {
            // Rungs are 10^-n and even; the nearest on the wanted side, one within the factor counting as reached.
            if (p * SampledProbability.Near >= 0.5) return 0;
            if (down)
            {
                for (var n = 1; n <= Rarest; n++)
                {
                    if (Math.Pow(10, -n) <= p * SampledProbability.Near) return -n;
                }

                return int.MinValue;
            }

            for (var n = Rarest; n >= 1; n--)
            {
                if (Math.Pow(10, -n) * SampledProbability.Near >= p) return -n;
            }

            return 0;
        }

        var other = Rung(1 - p, !down);
        return other == int.MinValue ? int.MaxValue : -other;
    }

    private static string Name(int rung) => rung switch
    {
        0 => "even",
        1 => "9 in 10",
        2 => "99 in 100",
        3 => "999 in 1,000",
        < 0 => "1 in " + SampledProbability.Grouped(-rung),
        _ => "all but 1 in " + SampledProbability.Grouped(rung),
    };
}
