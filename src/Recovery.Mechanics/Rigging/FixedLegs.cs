using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Two legs of fixed length from two anchors to one ring, equal or not: what each carries where the pull leans.</summary>
/// <remarks>
/// <para>T1 = P sin(phi2)/sin(phi1 + phi2), T2 = P sin(phi1)/sin(phi1 + phi2), phi the angles of the legs from the line of pull. Where the pull leans beyond a leg, that leg carries all of it and the other is slack.</para>
/// <para>It does not equalise: with the same triangle a pull 10 degrees off the middle puts 0.74 of it into one leg, where a running eye would keep both at 0.57. Two nearly parallel stiff legs with a length error share as T1 - T2 = (EA/L) error: of chain or HMPE assume that one leg takes all unless the lengths are matched.</para>
/// <para>Immutable. Source: statics of two legs (derived).</para>
/// </remarks>
public sealed record FixedLegs
{
    private readonly double _spacing;
    private readonly double _lean;

    /// <summary>Describes two fixed legs.</summary>
    /// <param name="first">Leg on the side that a positive lean turns away from.</param>
    /// <param name="second">Leg on the other side.</param>
    /// <param name="anchorSpacing">Distance between the anchors, 0.2 to 6 m.</param>
    /// <param name="lean">Angle of the pull from the middle line of the anchors, towards the second one positive, -60 to 60 degrees.</param>
    /// <exception cref="ArgumentNullException">A leg is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The legs and the spacing make no triangle.</exception>
    public FixedLegs(Strap first, Strap second, Length anchorSpacing, Angle lean)
    {
        First = Guard.NotNull(first, nameof(first));
        Second = Guard.NotNull(second, nameof(second));
        _spacing = Guard.Metres(anchorSpacing, 0.2, 6, nameof(anchorSpacing));
        _lean = Guard.Radians(lean, -60, 60, nameof(lean));
        double a = first.Length.Meters, b = second.Length.Meters;
        if (a + b <= _spacing || Math.Abs(a - b) >= _spacing)
            throw new ArgumentException("Legs of " + Text.With(a, "m") + " and " + Text.With(b, "m") + " and anchors " + Text.With(_spacing, "m") + " apart make no triangle.", nameof(anchorSpacing));
    }

    /// <summary>Gets the leg on the side that a positive lean turns away from.</summary>
    public Strap First { get; }

    /// <summary>Gets the leg on the other side.</summary>
    public Strap Second { get; }

    /// <summary>Gets the distance between the anchors.</summary>
    public Length AnchorSpacing => Length.FromMeters(_spacing);

    /// <summary>Gets the angle of the pull from the middle line of the anchors.</summary>
    public Angle Lean => Angle.FromRadians(_lean);

    /// <summary>Gets the angle between the legs.</summary>
    public Angle IncludedAngle => Angle.FromRadians(BridleKernel.AngleBetween(_spacing, First.Length.Meters, Second.Length.Meters));

    /// <summary>Gets the angle of the first leg from the line of pull; negative where the pull leans beyond it.</summary>
    public Angle FirstAngle => Angle.FromRadians(BridleKernel.FixedDirection(_spacing, First.Length.Meters, Second.Length.Meters, -_spacing / 2) - _lean);

    /// <summary>Gets the angle of the second leg from the line of pull; negative where the pull leans beyond it.</summary>
    public Angle SecondAngle => Angle.FromRadians(_lean - BridleKernel.FixedDirection(_spacing, First.Length.Meters, Second.Length.Meters, _spacing / 2));

    /// <summary>Gets the share of the pull in the first leg; 0 where it is slack.</summary>
    public double FirstShare => BridleKernel.FixedFirst(1, FirstAngle.Radians, SecondAngle.Radians);

    /// <summary>Gets the share of the pull in the second leg; 0 where it is slack.</summary>
    public double SecondShare => BridleKernel.FixedFirst(1, SecondAngle.Radians, FirstAngle.Radians);

    /// <summary>Gets the share of the pull in the harder leg.</summary>
    public double WorstShare => Math.Max(FirstShare, SecondShare);

    /// <summary>Gives by how much the tensions of two nearly parallel legs differ where one is longer than meant: EA/L times the error, stiff end.</summary>
    /// <param name="error">How much too long one leg is, 0 to 2 m.</param>
    /// <returns>The difference; null where the stiffness of the first leg is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error is outside its range.</exception>
    public Force? DifferenceOf(Length error)
    {
        var metres = Guard.Metres(error, 0, 2, nameof(error));
        return First.Elastic is { } line ? Force.FromNewtons(line.StiffNewtons / line.LengthMetres * metres) : null;
    }

    /// <summary>Works out the shares step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string one = Text.Number(FirstAngle.Degrees) + " deg", two = Text.Number(SecondAngle.Degrees) + " deg";
        return new WorkingBuilder("Fixed legs " + First.Name + " and " + Second.Name)
            .Step("phi1", "first leg from the line of pull", "triangle of legs and spacing, less the lean", Text.Number(First.Length.Meters) + ", " + Text.Number(Second.Length.Meters) + ", " + Text.Number(_spacing) + " m, lean " + Text.Number(Lean.Degrees) + " deg", one, RiggingSources.Bridle)
            .Step("phi2", "second leg from the line of pull", "the same", "the same", two, RiggingSources.Bridle)
            .Step("T1/P", "share in the first leg", "sin(phi2)/sin(phi1 + phi2)", "sin(" + two + ")/sin(" + one + " + " + two + ")", Text.Number(FirstShare), RiggingSources.Bridle)
            .Step("T2/P", "share in the second leg", "sin(phi1)/sin(phi1 + phi2)", "sin(" + one + ")/sin(" + one + " + " + two + ")", Text.Number(SecondShare), RiggingSources.Bridle)
            .Build();
    }

    /// <summary>Gives the legs in words, invariant culture.</summary>
    /// <returns>Both legs with their shares.</returns>
    public override string ToString() => First.Name + " " + Text.Number(FirstShare, 3) + ", " + Second.Name + " " + Text.Number(SecondShare, 3) + " of the pull";
}
