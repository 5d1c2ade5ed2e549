using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One size of double-braided nylon rope, dry, cyclic loading.</summary>
/// <remarks>One size stands mended (<see cref="BreakIsInferred"/>). A constant AE hides a highly nonlinear curve, and wet strength is 15 % lower, as the table itself notes. Source: UFC 4-159-03 Table 6-8 (primary).</remarks>
public sealed record BraidedNylonRope
{
    internal BraidedNylonRope(double inches, double breakKips, double stiffnessKips)
    {
        Diameter = Length.FromMeters(inches * PhysicalConstants.MetresPerInch);
        BreakNewtons = breakKips * 1000 * PhysicalConstants.NewtonsPerPoundForce;
        StiffnessNewtons = stiffnessKips * 1000 * PhysicalConstants.NewtonsPerPoundForce;
    }

    /// <summary>A size whose AE is taken from the SI column and whose break is inferred from it by the ratio of the other sizes.</summary>
    internal BraidedNylonRope(double inches, double stiffnessNewtons)
    {
        Diameter = Length.FromMeters(inches * PhysicalConstants.MetresPerInch);
        StiffnessNewtons = stiffnessNewtons;
        BreakNewtons = stiffnessNewtons / FibreTable.BraidedNylonRatio;
        BreakIsInferred = true;
    }

    /// <summary>Gets the diameter.</summary>
    public Length Diameter { get; }

    /// <summary>Gets the average breaking force.</summary>
    public Force BreakingForce => Force.FromNewtons(BreakNewtons);

    /// <summary>Gets whether the row is mended: its AE is that of the SI column, because the printed one in kips is a misprint, and its break is AE over the ratio of the other sizes.</summary>
    public bool BreakIsInferred { get; }

    /// <summary>Gets the axial stiffness AE.</summary>
    public Force AxialStiffness => Force.FromNewtons(StiffnessNewtons);

    /// <summary>Gets AE over breaking force.</summary>
    public double RelativeStiffness => StiffnessNewtons / BreakNewtons;

    /// <summary>Gets the source.</summary>
    public Source Source => BreakIsInferred ? LinesSources.BraidedNylonMended : LinesSources.BraidedNylon;

    private double BreakNewtons { get; }

    private double StiffnessNewtons { get; }

    /// <summary>Gives the size in words, invariant culture.</summary>
    /// <returns>Diameter, break and AE.</returns>
    public override string ToString() => Text.With(Diameter.Meters * 1000, "mm", 3) + ", " + Text.Kilonewtons(BreakNewtons) + ", AE " + Text.Kilonewtons(StiffnessNewtons) + (BreakIsInferred ? ", break inferred" : string.Empty);
}
