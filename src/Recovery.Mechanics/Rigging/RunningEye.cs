using System;
using MathNet.Numerics.RootFinding;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Where the eye of a running bridle sits in space for a puller anywhere, on the middle line or off it, higher or lower.</summary>
/// <remarks>
/// <para>The two legs add up to the length of the strap, so the eye lies on a spheroid with the anchors as foci; the pull draws it to the place nearest to the drawbar, in the plane of the anchors and the drawbar, where the line of pull halves the angle between the legs.</para>
/// <para>Found by Brent's method (MathNet) in the bracket about the nearest of a row of places. Source: ellipse of the running eye (derived), friction from memory.</para>
/// </remarks>
public sealed record RunningEye
{
    private readonly double _x;
    private readonly double _spacing;

    private RunningEye(Vector3 eye, double first, double second, double spacing, double x, double lean)
    {
        Eye = new RigPoint(eye);
        FirstLeg = Length.FromMeters(first);
        SecondLeg = Length.FromMeters(second);
        IncludedAngle = Angle.FromRadians(BridleKernel.AngleBetween(spacing, first, second));
        Lean = Angle.FromRadians(lean);
        _spacing = spacing;
        _x = x;
    }

    /// <summary>Gets the place of the eye.</summary>
    public RigPoint Eye { get; }

    /// <summary>Gets the leg to the first anchor.</summary>
    public Length FirstLeg { get; }

    /// <summary>Gets the leg to the second anchor.</summary>
    public Length SecondLeg { get; }

    /// <summary>Gets the angle between the legs.</summary>
    public Angle IncludedAngle { get; }

    /// <summary>Gets by how much the pull leans from the middle line of the anchors, in their plane, towards the second anchor positive: what <see cref="Bridle.Lean"/> takes.</summary>
    public Angle Lean { get; }

    /// <summary>Gets the share of the pull in each leg without friction.</summary>
    public double LegShare => BridleKernel.LegShare(IncludedAngle.Radians);

    /// <summary>Gets the share of the pull in the harder leg at a friction of 0.30: what gear is checked with.</summary>
    public double LegShareHigh => BridleKernel.LegShareHigh(IncludedAngle.Radians, BridleKernel.FrictionHigh);

    /// <summary>Gets the share of the pull in the easier leg at a friction of 0.30.</summary>
    public double LegShareLow => BridleKernel.LegShareLow(IncludedAngle.Radians, BridleKernel.FrictionHigh);

    /// <summary>Gets the inward force at the first anchor over the pull, without friction.</summary>
    public double InwardFirst => BridleKernel.InwardFirst(LegShare, _x, _spacing, FirstLeg.Meters);

    /// <summary>Gets the inward force at the second anchor over the pull, without friction; negative, outward, where the eye has passed it.</summary>
    public double InwardSecond => BridleKernel.InwardSecond(LegShare, _x, _spacing, SecondLeg.Meters);

    /// <summary>Finds the eye.</summary>
    /// <param name="length">Length of the bridle strap, 0.3 to 100 m.</param>
    /// <param name="firstAnchor">First anchor.</param>
    /// <param name="secondAnchor">Second anchor.</param>
    /// <param name="drawbar">Hitch of the puller.</param>
    /// <returns>The eye.</returns>
    /// <exception cref="ArgumentNullException">A place is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    /// <exception cref="ArgumentException">The strap is not longer than its anchors are apart, or it reaches past the drawbar.</exception>
    /// <exception cref="SolverException">The line of pull does not halve the angle of the legs.</exception>
    public static RunningEye For(Length length, RigPoint firstAnchor, RigPoint secondAnchor, RigPoint drawbar)
    {
        var strap = Guard.Metres(length, 0.3, 100, nameof(length));
        Vector3 a = Guard.NotNull(firstAnchor, nameof(firstAnchor)).Metres, b = Guard.NotNull(secondAnchor, nameof(secondAnchor)).Metres, d = Guard.NotNull(drawbar, nameof(drawbar)).Metres;
        var spacing = (b - a).Length;
        if (strap <= spacing) throw new ArgumentException("The bridle is " + Text.With(strap, "m") + " long and its anchors are " + Text.With(spacing, "m") + " apart: it must be longer.", nameof(length));
        if ((d - a).Length + (d - b).Length <= strap) throw new ArgumentException("The bridle of " + Text.With(strap, "m") + " reaches past the drawbar: it hangs slack.", nameof(drawbar));
        var middle = 0.5 * (a + b);
        var along = 1 / spacing * (b - a);
        var x = (d - middle).Dot(along);
        var off = d - middle - (x * along);
        var y = off.Length;
        if (y < 1e-9) throw new ArgumentException("The drawbar lies in line with both anchors.", nameof(drawbar));
        var towards = 1 / y * off;
        var lean = LeanTo(spacing, strap, x, y);
        BridleKernel.Eye(spacing, strap, lean, out var ex, out var ey, out var first, out var second);
        return new RunningEye(middle + (ex * along) + (ey * towards), first, second, spacing, ex, lean);
    }

    /// <summary>Gives the eye in one line, invariant culture.</summary>
    /// <returns>Place, legs and angle.</returns>
    public override string ToString() => "eye at " + Eye + ", legs " + Text.With(FirstLeg.Meters, "m") + " and " + Text.With(SecondLeg.Meters, "m") + ", included angle " + Text.Number(IncludedAngle.Degrees, 3) + " deg";

    private static double LeanTo(double spacing, double strap, double x, double y)
    {
        const int Places = 128;
        const double Least = 1e-12, Half = Math.PI / 2;
        double Aside(double lean)
        {
            BridleKernel.Eye(spacing, strap, lean, out var ex, out var ey, out _, out _);
            return ((x - ex) * Math.Cos(lean)) - ((y - ey) * Math.Sin(lean));
        }

        // The nearest place of a row first: a flat spheroid has more than one that halves the angle.
        var nearest = 0;
        var least = double.PositiveInfinity;
        for (var i = 0; i <= Places; i++)
        {
            BridleKernel.Eye(spacing, strap, Half * ((2.0 * i / Places) - 1), out var ex, out var ey, out _, out _);
            var distance = ((x - ex) * (x - ex)) + ((y - ey) * (y - ey));
            if (!(distance < least)) continue;
            least = distance;
            nearest = i;
        }

        double low = Half * ((2.0 * Math.Max(0, nearest - 1) / Places) - 1), high = Half * ((2.0 * Math.Min(Places, nearest + 1) / Places) - 1);
        if (!Brent.TryFindRoot(Aside, low, high, Least, 200, out var lean) || !(Math.Abs(Aside(lean)) < 1e-8 * (y + strap))) throw new SolverException("Running eye", low, high, Aside(0.5 * (low + high)), 200);
        return lean;
    }
}
