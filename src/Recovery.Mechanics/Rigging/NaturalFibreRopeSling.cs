using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One printed row of the table of natural-fibre rope slings, 29 CFR 1918 Appendix II Table 2 (primary), design factor 5. A printed row governs over any formula; it says nothing of synthetic rope.</summary>
public sealed record NaturalFibreRopeSling
{
    internal NaturalFibreRopeSling(double inches, bool endless, double straight, double choker, double basket, double basket30, double basket45, double basket60)
    {
        Diameter = Length.FromMeters(inches * PhysicalConstants.MetresPerInch);
        Endless = endless;
        Straight = Marking.Pounds(straight);
        Choker = Marking.Pounds(choker);
        Basket = Marking.Pounds(basket);
        Basket30 = Marking.Pounds(basket30);
        Basket45 = Marking.Pounds(basket45);
        Basket60 = Marking.Pounds(basket60);
    }

    /// <summary>Gets the diameter of the rope.</summary>
    public Length Diameter { get; }

    /// <summary>Gets whether the sling is endless; eye and eye otherwise.</summary>
    public bool Endless { get; }

    /// <summary>Gets the straight limit.</summary>
    public Marking Straight { get; }

    /// <summary>Gets the choker limit.</summary>
    public Marking Choker { get; }

    /// <summary>Gets the limit of a parallel basket.</summary>
    public Marking Basket { get; }

    /// <summary>Gets the limit of a basket, legs 30 degrees from the line of pull.</summary>
    public Marking Basket30 { get; }

    /// <summary>Gets the limit of a basket, legs 45 degrees from the line of pull.</summary>
    public Marking Basket45 { get; }

    /// <summary>Gets the limit of a basket, legs 60 degrees from the line of pull.</summary>
    public Marking Basket60 { get; }

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Diameter, kind and straight limit.</returns>
    public override string ToString() => Text.With(Diameter.Meters * 1000, "mm") + (Endless ? " endless" : " eye and eye") + ", straight " + Straight;
}
