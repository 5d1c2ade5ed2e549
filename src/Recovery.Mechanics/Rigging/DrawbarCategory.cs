using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Category of an agricultural drawbar, ISO 6489-3 (from memory: confirm against the standard or the plate). Not to be confused with three-point linkage pins.</summary>
public sealed record DrawbarCategory
{
    private DrawbarCategory(int category, double kilowatts, double? pin, double? hole)
    {
        Category = category;
        GreatestPower = Power.FromKilowatts(kilowatts);
        PinDiameter = pin is { } p ? Length.FromMillimeters(p) : null;
        ClevisHole = hole is { } h ? Length.FromMillimeters(h) : null;
    }

    /// <summary>Gets the categories, 0 to 5.</summary>
    public static IReadOnlyList<DrawbarCategory> All { get; } = Array.AsReadOnly<DrawbarCategory>([new(0, 28, null, null), new(1, 48, null, null), new(2, 115, 30, 33), new(3, 185, 38, 41), new(4, 300, 50, 53), new(5, 500, 70, 73)]);

    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.DrawbarCategories;

    /// <summary>Gets the category.</summary>
    public int Category { get; }

    /// <summary>Gets the greatest power at the power take-off.</summary>
    public Power GreatestPower { get; }

    /// <summary>Gets the diameter of the pin; null where none is held.</summary>
    public Length? PinDiameter { get; }

    /// <summary>Gets the hole of the clevis; null where none is held.</summary>
    public Length? ClevisHole { get; }

    /// <summary>Gets how much the hole is wider than the pin; null where they are not held.</summary>
    public Length? Clearance => ClevisHole is { } hole && PinDiameter is { } pin ? Length.FromMeters(hole.Meters - pin.Meters) : null;

    /// <summary>Finds the category of a tractor.</summary>
    /// <param name="powerTakeOff">Power at the power take-off, 1 to 1,000 kW.</param>
    /// <returns>The smallest category that covers it; null above the last.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside its range.</exception>
    public static DrawbarCategory? For(Power powerTakeOff)
    {
        var watts = Guard.Watts(powerTakeOff, 1, 1000, nameof(powerTakeOff));
        foreach (var category in All)
        {
            if (watts <= (double)category.GreatestPower.Watts * (1 + 1e-12)) return category;
        }

        return null;
    }

    /// <summary>Gives the D-value of EU coupling law, g T R/(T + R) (2015/208 Annex XXXIV, from memory): a rating for towing on roads, not for recovery.</summary>
    /// <param name="towing">Mass of the towing machine T, 0.5 to 100 t.</param>
    /// <param name="towed">Mass of the towed one R, 0.1 to 100 t.</param>
    /// <returns>The D-value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass is outside its range.</exception>
    public static Force DValue(Mass towing, Mass towed) => Force.FromNewtons(DrawbarKernel.DValue(Guard.Kilograms(towing, 0.5, 100, nameof(towing)), Guard.Kilograms(towed, 0.1, 100, nameof(towed))));

    /// <summary>Gives the category in one line, invariant culture.</summary>
    /// <returns>Category, power and pin.</returns>
    public override string ToString() => "category " + Text.Number(Category) + ", to " + Text.With((double)GreatestPower.Watts / 1000, "kW") + (PinDiameter is { } pin ? ", pin " + Text.With(pin.Meters * 1000, "mm") : string.Empty);
}
