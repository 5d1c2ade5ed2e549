using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A bridle: one strap whose middle runs free through the eye of the line and whose ends go to two anchors.</summary>
/// <remarks>
/// <para>Included angle theta = 2 asin(w/L) with the pull in the middle; off the middle the eye sits on the ellipse with the anchors as foci. Leg share 1/(2 cos(theta/2)) without friction, and r/sqrt(r^2 + 2 r cos(theta) + 1), r = exp(mu (pi - theta)), in the harder leg at the friction limit, mu 0.15 to 0.30.
/// The harder leg at 0.30 counts, once, against the straight capacity of the strap: no basket or mode factor on top. Inward force at each anchor tan(theta/2)/2 of the pull.</para>
/// <para>It has no redundancy: where one end lets go it runs out through the eye. Its bight in the eye is a place: the maker's figure, else 0.5 from memory.</para>
/// <para>Source: statics and capstan rule (derived); friction from memory.</para>
/// </remarks>
public sealed record Bridle : RigPart
{
    private Bridle(Strap strap, double spacing)
        : base(strap.Name)
    {
        Strap = strap;
        SpacingMetres = spacing;
    }

    /// <summary>Gets the strap.</summary>
    public Strap Strap { get; }

    /// <summary>Gets the distance between the anchors.</summary>
    public Length AnchorSpacing => Length.FromMeters(SpacingMetres);

    /// <summary>Gets the angle by which the pull leans from the middle line of the anchors, -60 to 60 degrees. Where it was not declared it is that of the line of a plan, 0 without one.</summary>
    public Angle Lean { get => DeclaredLean ?? LeanOfSite; init => DeclaredLean = Angle.FromRadians(Guard.Radians(value, -60, 60, nameof(Lean))); }

    /// <summary>Gets whether an included angle beyond 90 and up to 120 degrees was accepted by somebody competent who knows the squeeze on the anchors. Beyond 120 nothing is accepted.</summary>
    public bool WideAngleAccepted { get; init; }

    /// <summary>Gets the inside length of the eye it runs through; null where nobody measured it. Accepted range 0.05 to 5 m.</summary>
    public Length? EyeLength { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.05, 5, nameof(EyeLength))) : null; }

    /// <summary>Gets the thickness of its bight where it lies in the eye, folded as it lies; null where nobody measured it. Accepted range 2 to 300 mm.</summary>
    public Length? BightThickness { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.002, 0.3, nameof(BightThickness))) : null; }

    /// <summary>Gets the angle by which its bight opens the eye; null where eye or bight was not measured. At most 20 degrees in a soft eye (EN 1492-1 annex, reported).</summary>
    public Angle? EyeOpening => EyeLength is { } eye && BightThickness is { } bight ? Angle.FromRadians(SectionKernel.EyeAngle(eye.Meters, bight.Meters)) : null;

    /// <summary>Gets the included angle between the legs.</summary>
    public Angle IncludedAngle => Angle.FromRadians(IncludedRadians);

    /// <summary>Gets the share of the pull in each leg without friction.</summary>
    public double LegShare => BridleKernel.LegShare(IncludedRadians);

    /// <summary>Gets the share of the pull in the harder leg at the upper end of friction: what gear is checked with.</summary>
    public double LegShareWithFriction => BridleKernel.LegShareHigh(IncludedRadians, BridleKernel.FrictionHigh);

    /// <summary>Gets the inward force at each anchor over the pull.</summary>
    public double InwardShare => BridleKernel.Inward(IncludedRadians);

    /// <summary>Gets the inward force at the worse anchor over the pull, its leg at the upper end of friction.</summary>
    public double InwardShareWithFriction
    {
        get
        {
            BridleKernel.Eye(SpacingMetres, Strap.Length.Meters, Math.Abs(Lean.Radians), out var x, out _, out var longer, out var shorter);
            var leg = LegShareWithFriction;
            return Math.Max(BridleKernel.InwardFirst(leg, x, SpacingMetres, longer), BridleKernel.InwardSecond(leg, x, SpacingMetres, shorter));
        }
    }

    internal Bridle WithSpacing(double metres) => new(Strap, metres) { DeclaredLean = DeclaredLean, LeanOfSite = LeanOfSite, WideAngleAccepted = WideAngleAccepted, EyeLength = EyeLength, BightThickness = BightThickness };

    internal Bridle WithStrap(Strap strap) => new(strap, SpacingMetres) { DeclaredLean = DeclaredLean, LeanOfSite = LeanOfSite, WideAngleAccepted = WideAngleAccepted, EyeLength = EyeLength, BightThickness = BightThickness };

    internal double SpacingMetres { get; }

    /// <summary>The lean as declared; null where nobody said.</summary>
    internal Angle? DeclaredLean { get; private init; }

    /// <summary>How far the line of a plan lies off the direction of the pull.</summary>
    internal Angle LeanOfSite { get; init; }

    /// <summary>Length of the longer leg at the lean of the pull.</summary>
    internal double LongerLegMetres
    {
        get
        {
            BridleKernel.Eye(SpacingMetres, Strap.Length.Meters, Math.Abs(Lean.Radians), out _, out _, out var longer, out _);
            return longer;
        }
    }

    internal double IncludedRadians => BridleKernel.IncludedAngle(SpacingMetres, Strap.Length.Meters, Lean.Radians);

    /// <summary>Makes a free-running bridle.</summary>
    /// <param name="strap">The strap, neither choked nor a basket.</param>
    /// <param name="anchorSpacing">Distance between the anchors, 0.2 to 6 m, less than the length of the strap.</param>
    /// <returns>The bridle.</returns>
    /// <exception cref="ArgumentException">The strap is not longer than its anchors are apart, or it is choked or lies as a basket.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is outside its range.</exception>
    public static Bridle FreeRunning(Strap strap, Length anchorSpacing)
    {
        Guard.NotNull(strap, nameof(strap));
        var spacing = Guard.Metres(anchorSpacing, 0.2, 6, nameof(anchorSpacing));
        if (strap.Choked) throw new ArgumentException("strap " + strap.Name + " is choked; a strap that runs free through an eye cannot be.", nameof(strap));
        if (strap.IsBasket) throw new ArgumentException("strap " + strap.Name + " lies as a basket; the two legs of a bridle are in its statics already.", nameof(strap));
        if (strap.Length.Meters <= spacing)
            throw new ArgumentException("The bridle " + strap.Name + " is " + Text.With(strap.Length.Meters, "m") + " long and its anchors are " + Text.With(spacing, "m") + " apart: it must be longer than anchorSpacing.", nameof(anchorSpacing));
        return new Bridle(strap, spacing);
    }

    /// <summary>Gives the length of strap for a wanted included angle, pull in the middle: w/sin(theta/2).</summary>
    /// <param name="anchorSpacing">Distance between the anchors, 0.2 to 6 m.</param>
    /// <param name="includedAngle">Wanted angle between the legs, 1 to 120 degrees.</param>
    /// <returns>The length of the whole strap.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Length LengthFor(Length anchorSpacing, Angle includedAngle) =>
        Length.FromMeters(BridleKernel.LengthFor(Guard.Metres(anchorSpacing, 0.2, 6, nameof(anchorSpacing)), Guard.Radians(includedAngle, 1, 120, nameof(includedAngle))));

    /// <summary>Works out angle and leg shares step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string w = Text.Number(SpacingMetres), l = Text.Number(Strap.Length.Meters), theta = Text.Number(IncludedRadians * 180 / Math.PI) + " deg";
        return new WorkingBuilder("Bridle " + Name)
            .Step("theta", "included angle", Lean.Radians == 0 ? "2 asin(w/L)" : "eye on the ellipse at the lean of the pull", "w " + w + ", L " + l + ", lean " + Text.Number(Lean.Radians * 180 / Math.PI) + " deg", theta, RiggingSources.Bridle)
            .Step("T/P", "share in each leg without friction", "1/(2 cos(theta/2))", "1/(2 cos(" + theta + "/2))", Text.Number(LegShare), RiggingSources.Bridle)
            .Step("T_high/P", "share in the harder leg, friction 0.30", "r/sqrt(r^2 + 2 r cos(theta) + 1), r = exp(mu (pi - theta))", "mu 0.30, theta " + theta, Text.Number(LegShareWithFriction), RiggingSources.WebbingFriction)
            .Build();
    }

    /// <summary>Gives the same with another value: the angle by which the pull leans from the middle line of the anchors, -60 to 60 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="lean">The value, as in <see cref="Lean"/>.</param>
    /// <returns>The changed copy.</returns>
    public Bridle WithLean(Angle lean) => this with { Lean = lean };

    /// <summary>Gives the same with another value: whether an included angle beyond 90 degrees was accepted. For callers whose language has no <c>with</c>.</summary>
    /// <param name="accepted">The value, as in <see cref="WideAngleAccepted"/>.</param>
    /// <returns>The changed copy.</returns>
    public Bridle WithWideAngleAccepted(bool accepted) => this with { WideAngleAccepted = accepted };

    /// <summary>Gives the same with the eye it runs through and its bight measured. For callers whose language has no <c>with</c>.</summary>
    /// <param name="eyeLength">Inside length of the eye, as in <see cref="EyeLength"/>.</param>
    /// <param name="bightThickness">Thickness of the bight, as in <see cref="BightThickness"/>.</param>
    /// <returns>The changed copy.</returns>
    public Bridle WithEye(Length? eyeLength, Length? bightThickness) => this with { EyeLength = eyeLength, BightThickness = bightThickness };

    /// <summary>Gives the bridle in words, invariant culture.</summary>
    /// <returns>Strap, spacing and angle.</returns>
    public override string ToString() => Strap + ", anchors " + Text.With(SpacingMetres, "m") + " apart, included angle " + Text.Number(IncludedRadians * 180 / Math.PI, 3) + " deg";
}
