using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What belongs to a drawbar category: the greatest power take-off power and the pin.</summary>
/// <remarks>
/// <para>Categories 0 to 5: at most 28, 48, 115, 185, 300, 500 kW; pins of categories 2 to 5: 30, 38, 50, 70 mm. No category has a published pull, and none a strength against snatching: the rating comes from the plate or the manual of the tractor.</para>
/// <para>Source: ISO 6489-3 (scope primary, these values from memory).</para>
/// </remarks>
public static class DrawbarCategories
{
    // ISO 6489-3, from memory; 0 where no pin is remembered.
    private static readonly double[] Kilowatts = [28, 48, 115, 185, 300, 500];
    private static readonly double[] PinMillimetres = [0, 0, 30, 38, 50, 70];

    /// <summary>Gives the greatest power take-off power of a category (from memory).</summary>
    /// <param name="category">The category.</param>
    /// <returns>The power.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The category is not defined.</exception>
    public static Power GreatestPower(DrawbarCategory category) => Power.FromKilowatts(Kilowatts[Index(category)]);

    /// <summary>Gives the pin diameter of a category (from memory); null where it is not known.</summary>
    /// <param name="category">The category.</param>
    /// <returns>The diameter, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The category is not defined.</exception>
    public static Length? Pin(DrawbarCategory category) => PinMillimetres[Index(category)] is > 0 and var pin ? Length.FromMeters(pin / 1000) : null;

    /// <summary>Gives the least category for a power take-off power; null above all of them.</summary>
    /// <param name="power">The power, 1 to 2,000 kW.</param>
    /// <returns>The category, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside its range.</exception>
    public static DrawbarCategory? For(Power power)
    {
        var kilowatts = Guard.Watts(power, 1, 2000, nameof(power)) / 1000;
        for (var i = 0; i < Kilowatts.Length; i++)
        {
            if (kilowatts <= Kilowatts[i]) return (DrawbarCategory)i;
        }

        return null;
    }

    private static int Index(DrawbarCategory category) => (int)Guard.Defined(category, category is >= DrawbarCategory.Category0 and <= DrawbarCategory.Category5, nameof(category));
}
