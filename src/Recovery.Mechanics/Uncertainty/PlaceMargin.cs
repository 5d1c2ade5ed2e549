using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How far one place of a rig is from a limit: below zero it is past it; infinite where nothing is asked of it, not a number where it is not known.</summary>
/// <param name="place">The place.</param>
/// <param name="outcome">Its outcome.</param>
internal delegate double PlaceMargin(in RigPlace place, in RigOutcome outcome);
