using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is taken of a piece of gear where nobody says.</summary>
internal static class GearAssumptions
{
    public static readonly Assumption AngleOfChoke = new("assume.angle-of-choke", "angle of choke", "below 30 deg, 0.49 of the choker rating", "A look at the hitch can double what a choked strap may carry.", PartSources.UndeclaredChoke);
}
