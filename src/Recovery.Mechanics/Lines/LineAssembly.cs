using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A line made of parts one after the other, with slack: the tension is the same everywhere, stretches and energies add.</summary>
/// <remarks>
/// <para>x(F) = sum of x_i(F), E(F) = sum of E_i(F); linear parts 1/k = sum of 1/k_i and E_i/E = k/k_i. No tension and no energy until the slack is gone.</para>
/// <para>Energy belongs to the assembly, not to one line: an elastic tail arms a low-stretch part. Source: statics (derived). Immutable.</para>
/// </remarks>
public sealed class LineAssembly
{
    private readonly CurveShape _shape;

    /// <summary>Describes a line.</summary>
    /// <param name="segments">Its parts in order from the puller to the casualty, at least one.</param>
    /// <param name="slack">Slack before it is taut, 0 to 20 m.</param>
    /// <exception cref="ArgumentException">There is no part, or one is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The slack is outside its range.</exception>
    public LineAssembly(IEnumerable<LineSegment> segments, Length slack)
    {
        Segments = Guard.NotNull(segments, nameof(segments)).ToList().AsReadOnly();
        if (Segments.Count == 0) throw new ArgumentException("segments must have at least one part.", nameof(segments));
        foreach (var segment in Segments) Guard.NotNull(segment, nameof(segments));
        Slack = Length.FromMeters(Guard.Metres(slack, 0, 20, nameof(slack)));
        _shape = CurveShape.Series(Segments.Select(s => s.Curve.Shape).ToArray());
    }

    /// <summary>Describes a line of one part without slack.</summary>
    /// <param name="segment">The part.</param>
    /// <exception cref="ArgumentNullException"><paramref name="segment"/> is null.</exception>
    public LineAssembly(LineSegment segment)
        : this([segment], Length.Zero)
    {
    }

    /// <summary>Gets the parts.</summary>
    public IReadOnlyList<LineSegment> Segments { get; }

    /// <summary>Gets the slack.</summary>
    public Length Slack { get; }

    /// <summary>Gets the least force at which a curve of a part ends: its break, or the last point of its table.</summary>
    public Force EndForce => Force.FromNewtons(_shape.EndForce);

    /// <summary>Gets the part whose curve ends first.</summary>
    public LineSegment Weakest => Segments.OrderBy(s => s.Curve.Shape.EndForce).First();

    /// <summary>Gets the stiffness where every part is linear; null elsewhere.</summary>
    public ForcePerLength? Stiffness => _shape.IsLinear ? ForcePerLength.FromNewtonsPerMeter(_shape.LinearStiffness) : null;

    internal ref readonly CurveShape Shape => ref _shape;

    /// <summary>Gives the stretch at a tension, without the slack.</summary>
    /// <param name="tension">Tension, 0 to <see cref="EndForce"/>.</param>
    /// <returns>The stretch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Length Stretch(Force tension) => Length.FromMeters(CurveKernel.Stretch(_shape, Newtons(tension)));

    /// <summary>Gives the tension when the ends have moved apart from where the line hung slack.</summary>
    /// <param name="movement">Movement, 0 to slack and greatest stretch together.</param>
    /// <returns>The tension; zero up to the slack.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The movement is outside its range.</exception>
    public Force Tension(Length movement) =>
        Force.FromNewtons(CurveKernel.Force(_shape, Guard.Range(movement.Meters, 0, Slack.Meters + _shape.EndStretch, "m", nameof(movement)) - Slack.Meters));

    /// <summary>Gives the energy stored in each part and in the whole.</summary>
    /// <param name="tension">Tension, 0 to <see cref="EndForce"/>.</param>
    /// <returns>The energies.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public StoredEnergy StoredEnergy(Force tension) => Lines.StoredEnergy.Of(this, Newtons(tension));

    /// <summary>Gives the line in words, invariant culture.</summary>
    /// <returns>The parts in order.</returns>
    public override string ToString() => string.Join(" + ", Segments.Select(s => s.Name)) + ", slack " + Text.With(Slack.Meters, "m");

    private double Newtons(Force tension) => Guard.Range(tension.Newtons / 1000, 0, _shape.EndForce / 1000, "kN", nameof(tension)) * 1000;
}
