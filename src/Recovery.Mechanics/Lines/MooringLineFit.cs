using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Published fit of a kind of mooring line: axial stiffness and breaking strength over the square of its diameter.</summary>
/// <remarks>The ratio of the two is what the fit says of relative stiffness. The coefficient of the strength of chain is the leading one of its fit, so no strength is reckoned from it here: take that of the tag. Offshore lines, not farm gear: a number to set beside the band of <see cref="LineMaterial"/>. Source: mooring-line property fits, reported (secondary); the ratio derived.</remarks>
public sealed record MooringLineFit
{
    internal MooringLineFit(LineKind kind, double stiffness, double strength)
    {
        Kind = kind;
        StiffnessPascals = stiffness;
        StrengthPascals = strength;
    }

    /// <summary>Gets the kind of line.</summary>
    public LineKind Kind { get; }

    /// <summary>Gets axial stiffness over the square of the diameter.</summary>
    public Pressure StiffnessPerDiameterSquared => Pressure.FromPascals(StiffnessPascals);

    /// <summary>Gets breaking strength over the square of the diameter.</summary>
    public Pressure StrengthPerDiameterSquared => Pressure.FromPascals(StrengthPascals);

    /// <summary>Gets EA over breaking strength.</summary>
    public double RelativeStiffness => StiffnessPascals / StrengthPascals;

    /// <summary>Gets the source.</summary>
    public Source Source => LinesSources.MooringFits;

    private double StiffnessPascals { get; }

    private double StrengthPascals { get; }

    /// <summary>Gives the fit in words, invariant culture.</summary>
    /// <returns>Kind and relative stiffness.</returns>
    public override string ToString() => Kind + ": EA/MBS " + Text.Number(RelativeStiffness, 3) + " (" + Standings.Describe(Source.Standing) + ")";
}
