using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Facts of a rig that are still to measure.</summary>
internal static class RigAssumptions
{
    public static readonly Assumption Choke = new("assume.angle-of-choke", "angle of choke of the axle straps", "the lowest bin, 0.49 of the choker rating", "A look at the hitch can more than double what the axle straps may carry.", RiggingSources.ChokeAngle);
    public static readonly Assumption Bight = new("assume.bight", "maker's figure for the bridle's bight in the strap's eye", "0.5 of the strap, from memory", "A figure replaces the 0.5 and its level.", RiggingSources.Bight);
    public static readonly Assumption Wear = new("assume.wear", "how worn the gear is and how often somebody looks at it", "factor 1.2 on what is asked of a peak, as for yard slings", "Thoroughly inspected gear is asked 2.3 in place of 2.76 times the peak.", RiggingSources.PartialFactors);
    public static readonly Assumption Stretch = new("assume.strap-stretch", "load-stretch curves of the straps", "the stiffness bands of their fibres, both ends", "The share of straps side by side, stretch, energy and the speed of what flies.", RiggingSources.Bridle);
}
