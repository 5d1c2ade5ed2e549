using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Working load limits by the colour of a sling made to EN 1492 (reported). The tag decides: a sling of one colour may be made to another practice.</summary>
public static class SlingColours
{
    /// <summary>Gets the source.</summary>
    public static Source Source => PartSources.En1492Modes;

    /// <summary>Gives the working load limit of a colour.</summary>
    /// <param name="colour">The colour.</param>
    /// <returns>The marking; null for orange, which begins at 10 t and has no one limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The colour is not a defined one.</exception>
    public static Marking? WorkingLoadLimit(SlingColour colour)
    {
        var tonnes = HitchKernel.ColourTonnes(Guard.Defined(colour, colour is >= SlingColour.Violet and <= SlingColour.Orange, nameof(colour)));
        return double.IsNaN(tonnes) ? null : Marking.Tonnes(tonnes);
    }
}
