using System;

namespace Recovery.Mechanics.Provenance;

/// <summary>The place of the one crest of a function within two ends, by narrowing without derivatives. Where a value is not a number the crest is sought to the right of it.</summary>
internal static class GoldenSection
{
    /// <summary>Share of the bracket that every step leaves, (sqrt(5) - 1)/2 (arithmetic).</summary>
    private const double Share = 0.6180339887498949;

    /// <summary>Finds the crest to a width of the bracket, in the units of the argument; the middle of what is left.</summary>
    public static double Crest(Func<double, double> function, double lower, double upper, double width)
    {
        double left = upper - (Share * (upper - lower)), right = lower + (Share * (upper - lower)), atLeft = function(left), atRight = function(right);
        while (upper - lower > width)
        {
            if (atLeft > atRight)
            {
                (upper, right, atRight) = (right, left, atLeft);
                left = upper - (Share * (upper - lower));
                atLeft = function(left);
            }
            else
            {
                (lower, left, atLeft) = (left, right, atRight);
                right = lower + (Share * (upper - lower));
                atRight = function(right);
            }
        }

        return 0.5 * (lower + upper);
    }
}
