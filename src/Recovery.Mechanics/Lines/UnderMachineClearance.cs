using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How far the line runs below one low part of the machine it passes under, as found, and the rise of the front axle at which it touches it.</summary>
public sealed record UnderMachineClearance
{
    internal UnderMachineClearance(UndersidePart part, double gap, double rise)
    {
        Part = part;
        Gap = Length.FromMeters(gap);
        RiseAtContact = double.IsInfinity(rise) ? null : Length.FromMeters(rise);
    }

    /// <summary>Gets the part.</summary>
    public UndersidePart Part { get; }

    /// <summary>Gets the gap between the line and the part as found; negative where the line already bears on it.</summary>
    public Length Gap { get; }

    /// <summary>Gets the rise of the front axle at which the line touches, zero where it touches as found; null where it never does, because the part gains on the line.</summary>
    public Length? RiseAtContact { get; }

    /// <summary>Gives the clearance in one line, invariant culture.</summary>
    /// <returns>Part, gap and rise.</returns>
    public override string ToString() => Part.Name + ": gap " + Text.With(Gap.Meters, "m", 2) + (RiseAtContact is { } rise ? ", touched at a rise of " + Text.With(rise.Meters, "m", 2) : ", not touched by the climb");
}
