using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Derated strengths and the weakest part over arrays: the kernel of <see cref="DeratedStrength"/>, nothing else. Lengths must agree, all elements are checked before anything is written.</summary>
public static class GearBatch
{
    /// <summary>Derated strengths, MBS x whole length x least place x straight parts.</summary>
    /// <param name="breakingKilonewtons">Breaking strengths, 0 to 20,000 kN.</param>
    /// <param name="wholeLength">Whole-length shares, 0 to 1.</param>
    /// <param name="section">Least share of any place, 0 to 1.</param>
    /// <param name="straightParts">Straight parts of the hitch, 1 to 3.</param>
    /// <param name="strengthKilonewtons">Receives the strengths.</param>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An element is outside its range.</exception>
    public static void Strengths(ReadOnlySpan<double> breakingKilonewtons, ReadOnlySpan<double> wholeLength, ReadOnlySpan<double> section, ReadOnlySpan<double> straightParts, Span<double> strengthKilonewtons)
    {
        Guard.SameLength(breakingKilonewtons.Length, wholeLength.Length, nameof(wholeLength));
        Guard.SameLength(breakingKilonewtons.Length, section.Length, nameof(section));
        Guard.SameLength(breakingKilonewtons.Length, straightParts.Length, nameof(straightParts));
        Guard.SameLength(breakingKilonewtons.Length, strengthKilonewtons.Length, nameof(strengthKilonewtons));
        Guard.All(breakingKilonewtons, 0, 20000, "kN", nameof(breakingKilonewtons));
        Guard.All(wholeLength, 0, 1, string.Empty, nameof(wholeLength));
        Guard.All(section, 0, 1, string.Empty, nameof(section));
        Guard.All(straightParts, 1, 3, string.Empty, nameof(straightParts));
        for (var i = 0; i < breakingKilonewtons.Length; i++) strengthKilonewtons[i] = SectionKernel.Strength(breakingKilonewtons[i], wholeLength[i], section[i], straightParts[i]);
    }

    /// <summary>Finds the part that governs: the least allowable over demand.</summary>
    /// <param name="allowableKilonewtons">What each part may carry, 0 to 100,000 kN.</param>
    /// <param name="demandKilonewtons">What each part carries, above 0 to 100,000 kN.</param>
    /// <returns>Its index; -1 for empty spans.</returns>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An element is outside its range.</exception>
    public static int Weakest(ReadOnlySpan<double> allowableKilonewtons, ReadOnlySpan<double> demandKilonewtons)
    {
        Guard.SameLength(allowableKilonewtons.Length, demandKilonewtons.Length, nameof(demandKilonewtons));
        Guard.All(allowableKilonewtons, 0, 1e5, "kN", nameof(allowableKilonewtons));
        Guard.All(demandKilonewtons, 1e-6, 1e5, "kN", nameof(demandKilonewtons));
        var weakest = -1;
        for (var i = 0; i < allowableKilonewtons.Length; i++)
        {
            if (weakest < 0 || allowableKilonewtons[i] / demandKilonewtons[i] < allowableKilonewtons[weakest] / demandKilonewtons[weakest]) weakest = i;
        }

        return weakest;
    }
}
