using System;
using MathNet.Numerics.RootFinding;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Sag of a line under its own weight between two anchors.</summary>
/// <remarks>
/// <para>Catenary, a = H/w: mid-span a (cosh(L/(2a)) - 1), computed as 2 a sinh^2(L/(4a)) because the first form loses its digits at high tension. Parabola w L^2/(8 H) beside it; the catenary exceeds it by about (L/a)^2/48.</para>
/// <para>w = m' g in N/m, H level part of the tension in N, L span in plan in m. Uniform line without stretch. A taut line is straight for clearance; sag matters while it is taken up, and a mass laid on the line adds W L/(4 H) (<see cref="LineDamper"/>).</para>
/// <para>Source: catenary (derived). Immutable, equality by value.</para>
/// </remarks>
public sealed record LineSag
{
    private readonly double _a;
    private readonly double _span;
    private readonly double _rise;

    /// <summary>Describes a line that hangs.</summary>
    /// <param name="massPerMetre">Mass of a metre, 0.02 to 60 kg/m.</param>
    /// <param name="span">Distance of the anchors in plan, 0.2 to 300 m.</param>
    /// <param name="levelTension">Level part of the tension, 0.001 to 20,000 kN.</param>
    /// <param name="heightDifference">Height of the far anchor above the near one, -50 to 50 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the tension is so low that the line would hang more than three times its span.</exception>
    public LineSag(LinearDensity massPerMetre, Length span, Force levelTension, Length heightDifference = default)
    {
        var w = Guard.Range(massPerMetre.KilogramsPerMeter, 0.02, 60, "kg/m", nameof(massPerMetre)) * PhysicalConstants.StandardGravity;
        _span = Guard.Metres(span, 0.2, 300, nameof(span));
        _a = Guard.Newtons(levelTension, 0.001, 20000, nameof(levelTension)) / w;
        _rise = Guard.Metres(heightDifference, -50, 50, nameof(heightDifference));
        Guard.Range(_a * w / 1000, _span * w / 8000, 20000, "kN", nameof(levelTension));
    }

    /// <summary>Gets the sag at mid-span of the level catenary.</summary>
    public Length Catenary => Length.FromMeters(SagKernel.Catenary(_span, _a));

    /// <summary>Gets the sag at mid-span of the parabola.</summary>
    public Length Parabola => Length.FromMeters(SagKernel.Parabola(_span, _a));

    /// <summary>Gets how much the catenary exceeds the parabola, over the parabola.</summary>
    public Ratio CatenaryExcess => Ratio.FromDecimalFractions(SagKernel.RelativeExcess(_span, _a));

    /// <summary>Gives the length by which a line that sags at mid-span is longer than its level span: the slack that has to be drawn in before it is taut.</summary>
    /// <param name="span">Distance of the anchors, 0.2 to 300 m.</param>
    /// <param name="sag">Sag at mid-span, 0 to twice the span.</param>
    /// <returns>The slack of the catenary.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="SolverException">The shape was not found.</exception>
    public static Length SlackOf(Length span, Length sag)
    {
        var l = Guard.Metres(span, 0.2, 300, nameof(span));
        var ratio = Guard.Metres(sag, 0, 2 * l, nameof(sag)) / l;
        if (ratio == 0) return Length.Zero;
        // sinh^2(u/2)/u is at least u/4, so the root lies below 4 s/L.
        var high = 4 * ratio;
        if (!Brent.TryFindRoot(u => (SagKernel.SagOverSpan(u) / ratio) - 1, high * 1e-3, high, 1e-14, 200, out var root) || Math.Abs((SagKernel.SagOverSpan(root) / ratio) - 1) > 1e-10)
            throw new SolverException("catenary of a sag", 0, high, (SagKernel.SagOverSpan(root) / ratio) - 1, 200);
        return Length.FromMeters(SagKernel.CatenarySlack(l, root));
    }

    /// <summary>Gives the same slack by the parabola, 8 s^2/(3 L): what is reckoned in the field, a little more than that of the catenary.</summary>
    /// <param name="span">Distance of the anchors, 0.2 to 300 m.</param>
    /// <param name="sag">Sag at mid-span, 0 to a fifth of the span.</param>
    /// <returns>The slack of the parabola.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Length ParabolaSlackOf(Length span, Length sag)
    {
        var l = Guard.Metres(span, 0.2, 300, nameof(span));
        return Length.FromMeters(SagKernel.ParabolaSlack(l, Guard.Metres(sag, 0, l / 5, nameof(sag))));
    }

    /// <summary>Gives how far the line hangs below its chord.</summary>
    /// <param name="fromNearAnchor">Distance in plan from the near anchor, 0 to the span.</param>
    /// <returns>The drop of the catenary, its anchors at their heights.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public Length DropAt(Length fromNearAnchor) => Length.FromMeters(SagKernel.CatenaryAt(_span, _a, _rise, Guard.Metres(fromNearAnchor, 0, _span, nameof(fromNearAnchor))));

    /// <summary>Works the sag out.</summary>
    /// <returns>The worked steps; the last is the catenary.</returns>
    public Working Explain()
    {
        string a = Text.Number(_a), l = Text.Number(_span);
        return new WorkingBuilder("Sag at mid-span")
            .Step("f_p", "parabola", "L^2/(8 a), a = H/w", l + "^2/(8 x " + a + ")", Text.With(Parabola.Meters, "m"), LinesSources.Catenary)
            .Step("f", "catenary", "2 a sinh^2(L/(4a))", "2 x " + a + " sinh^2(" + l + "/(4 x " + a + "))", Text.With(Catenary.Meters, "m"), LinesSources.Catenary)
            .Build();
    }

    /// <summary>Gives the sag in one line, invariant culture.</summary>
    /// <returns>Sag and span.</returns>
    public override string ToString() => Text.With(Catenary.Meters, "m") + " at mid-span of " + Text.With(_span, "m");
}
