using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One printed row of the table of wire rope slings, MIL-DTL-3903 Table II, uncoated (primary).</summary>
/// <remarks>Breaking over rating is 5 x 0.925, because 7.5 % is allowed for the test. Confirm a cell against the specification before one alone is relied on.</remarks>
public sealed record WireRopeSling
{
    internal WireRopeSling(double inches, double rating, double proof, double breaking, double splicePercent)
    {
        Diameter = Length.FromMeters(inches * PhysicalConstants.MetresPerInch);
        Rating = Marking.ShortTons(rating);
        ProofLoad = Marking.ShortTons(proof);
        Breaking = Marking.ShortTons(breaking);
        SpliceEfficiency = Ratio.FromDecimalFractions(splicePercent / 100);
    }

    /// <summary>Gets the diameter of the rope.</summary>
    public Length Diameter { get; }

    /// <summary>Gets the working load limit.</summary>
    public Marking Rating { get; }

    /// <summary>Gets the working load limit of galvanised rope: 0.9 of the uncoated one.</summary>
    public Marking Galvanised => Marking.ShortTons(Rating.Value * WireRopeKernel.Galvanised);

    /// <summary>Gets the proof load, a test and no capacity.</summary>
    public Marking ProofLoad { get; }

    /// <summary>Gets the breaking strength of the assembled sling, its splice included.</summary>
    public Marking Breaking { get; }

    /// <summary>Gets the splice efficiency, inside the breaking strength already.</summary>
    public Ratio SpliceEfficiency { get; }

    /// <summary>Gets the breaking strength by the rule of the table, rating x 5 x 0.925: the printed one lies within its rounding of it.</summary>
    public Force BreakingByRule => Force.FromNewtons(Rating.Newtons * WireRopeKernel.AssembledOverRating(5));

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Diameter, rating and breaking strength.</returns>
    public override string ToString() => Text.With(Diameter.Meters * 1000, "mm") + ", " + Rating + ", breaking " + Breaking;
}
