using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Clips that a wire rope end needs, 29 CFR 1918 Appendix II Table 1 (primary). The rule of thumb 3 D + 1 gives one clip fewer at 1 in: the table counts.</summary>
public sealed record WireRopeClips
{
    private WireRopeClips(double inches, int clips, double spacingInches)
    {
        Diameter = Length.FromMeters(inches * PhysicalConstants.MetresPerInch);
        Clips = clips;
        Spacing = Length.FromMeters(spacingInches * PhysicalConstants.MetresPerInch);
    }

    /// <summary>Gets the printed rows.</summary>
    public static IReadOnlyList<WireRopeClips> All { get; } = Array.AsReadOnly<WireRopeClips>([new(0.5, 3, 3), new(0.75, 4, 4.5), new(1, 5, 6)]);

    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.Clips;

    /// <summary>Gets the diameter of the rope.</summary>
    public Length Diameter { get; }

    /// <summary>Gets the number of clips.</summary>
    public int Clips { get; }

    /// <summary>Gets the distance between clips.</summary>
    public Length Spacing { get; }

    /// <summary>Finds what a rope needs: the smallest printed size that is not below it.</summary>
    /// <param name="diameter">Diameter of the rope, 3 to 150 mm.</param>
    /// <returns>The row; null above 1 in.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static WireRopeClips? For(Length diameter)
    {
        var metres = Guard.Metres(diameter, 0.003, 0.15, nameof(diameter));
        foreach (var row in All)
        {
            if (row.Diameter.Meters * 1.005 >= metres) return row;
        }

        return null;
    }

    /// <summary>The rule of thumb, rounded up: 3 D + 1 with D in inches (from memory). Shown beside, never counted.</summary>
    /// <param name="diameter">Diameter of the rope, 3 to 150 mm.</param>
    /// <returns>Number of clips.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static int RuleOfThumb(Length diameter) => (int)Math.Ceiling(Math.Round((3 * Guard.Metres(diameter, 0.003, 0.15, nameof(diameter)) / PhysicalConstants.MetresPerInch) + 1, 9));

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Diameter, clips and spacing.</returns>
    public override string ToString() => Text.With(Diameter.Meters * 1000, "mm") + ": " + Text.Number(Clips) + " clips, " + Text.With(Spacing.Meters * 1000, "mm") + " apart";
}
