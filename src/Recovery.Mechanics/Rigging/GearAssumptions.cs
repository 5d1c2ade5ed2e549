using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is taken of a piece of gear where nobody says.</summary>
internal static class GearAssumptions
{
    public static readonly Assumption AngleOfChoke = new("assume.angle-of-choke", "angle of choke", "below 30 deg, 0.49 of the choker rating", "A look at the hitch can double what a choked strap may carry.", PartSources.UndeclaredChoke);
    public static readonly Assumption RopeEnd = new("assume.rope-end", "how the ends of the wire rope are made", "0.50 of the rope, the least published for any end", "A certificate of the finished rope, or a look at its ends, can double what it may carry.", PartSources.OffshoreTerminations);
    public static readonly Assumption ChainGrade = new("assume.chain-grade", "grade of the chain", "grade 30, as for any unmarked chain", "A mark on the links can triple what it may carry.", PartSources.CargoRules);
    public static readonly Assumption Bight = new("assume.bight", "maker's figure for a strap's bight in another's eye", "0.5 of the strap, from memory", "A figure replaces the 0.5 and its level.", RiggingSources.Bight);
}
