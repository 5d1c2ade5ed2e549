using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>The straight, taut line between the drawbar and the attachment, in side view and in plan.</summary>
/// <remarks>
/// <para>sin(theta) = dh/L, L the taut length, dh the height of the drawbar above the attachment. Vertical part V = F dh/L: up on the lower end, down on the higher one, the same amount. Level part F cos(theta); what it lacks, 1 - cos(theta), is small, the vertical part is not.</para>
/// <para>A longer line is flatter: V falls as 1/L at the same heights. F in N, lengths in m. Exact for a straight line without weight; sag matters only while it is taken up (<see cref="LineSag"/>). Over a bend it is two lines.</para>
/// <para>Source: statics (derived). Immutable, equality by value.</para>
/// </remarks>
public sealed record LineOfPull
{
    /// <summary>Describes the line by its two ends.</summary>
    /// <param name="drawbar">Where it is made fast to the puller.</param>
    /// <param name="attachment">Where it is made fast to the casualty.</param>
    /// <exception cref="ArgumentNullException">A point is null.</exception>
    /// <exception cref="ArgumentException">In plan the ends are less than 0.1 m apart: no line of pull.</exception>
    public LineOfPull(SpacePoint drawbar, SpacePoint attachment)
    {
        Drawbar = Guard.NotNull(drawbar, nameof(drawbar));
        Attachment = Guard.NotNull(attachment, nameof(attachment));
        double dx = drawbar.X.Meters - attachment.X.Meters, dy = drawbar.Y.Meters - attachment.Y.Meters;
        Span = Math.Sqrt((dx * dx) + (dy * dy));
        if (Span < 0.1) throw new ArgumentException("attachment must lie at least 0.1 m from the drawbar in plan; it was " + Text.With(Span, "m") + ".", nameof(attachment));
        Rise = drawbar.Z.Meters - attachment.Z.Meters;
        Taut = Math.Sqrt((Span * Span) + (Rise * Rise));
        Direction = Math.Atan2(dy, dx);
    }

    /// <summary>Gets the end on the puller.</summary>
    public SpacePoint Drawbar { get; }

    /// <summary>Gets the end on the casualty.</summary>
    public SpacePoint Attachment { get; }

    /// <summary>Gets the length of the line when it is taut.</summary>
    public Length TautLength => Length.FromMeters(Taut);

    /// <summary>Gets its length in plan.</summary>
    public Length SpanInPlan => Length.FromMeters(Span);

    /// <summary>Gets the angle of the line to the level, positive where it rises from the casualty to the puller.</summary>
    public Angle Pitch => Angle.FromDegrees(LineOfPullKernel.Pitch(Rise, Taut) * 180 / Math.PI);

    /// <summary>Gets the direction in plan from the casualty to the puller, to the left of the x axis.</summary>
    public Angle Bearing => Angle.FromDegrees(Direction * 180 / Math.PI);

    internal double Span { get; }

    internal double Rise { get; }

    internal double Taut { get; }

    internal double Direction { get; }

    /// <summary>Gives the forces at both ends where both machines stand in the direction of the line.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public LineForces Forces(Force tension) => new(this, Guard.Newtons(tension, 0, 20000, nameof(tension)), Direction, Direction);

    /// <summary>Gives the forces at both ends.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <param name="pullerHeading">Direction in plan in which the puller pulls, to the left of the x axis, -360 to 360 degrees.</param>
    /// <param name="casualtyHeading">Direction in plan in which the casualty rolls, to the left of the x axis, -360 to 360 degrees.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LineForces Forces(Force tension, Angle pullerHeading, Angle casualtyHeading) =>
        new(this, Guard.Newtons(tension, 0, 20000, nameof(tension)), Guard.Radians(pullerHeading, -360, 360, nameof(pullerHeading)), Guard.Radians(casualtyHeading, -360, 360, nameof(casualtyHeading)));

    /// <summary>Gives the tension that puts a force along the ground on the casualty in the direction in which it rolls: demand/(cos pitch cos yaw).</summary>
    /// <param name="demand">Force along the ground, 0 to 10,000 kN.</param>
    /// <param name="casualtyHeading">Direction in plan in which it rolls, within 80 degrees of the line.</param>
    /// <returns>The tension.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force TensionFor(Force demand, Angle casualtyHeading)
    {
        var yaw = Guard.Radians(casualtyHeading, -360, 360, nameof(casualtyHeading)) - Direction;
        var cos = Math.Cos(yaw);
        Guard.Range(Math.Acos(Math.Max(-1, Math.Min(1, cos))) * 180 / Math.PI, 0, 80, "deg from the line", nameof(casualtyHeading));
        return Force.FromNewtons(Guard.Newtons(demand, 0, 10000, nameof(demand)) / (LineOfPullKernel.Level(1, Rise, Taut) * cos));
    }

    /// <summary>Gives the line with another taut length: the puller stands nearer or further off in the same direction, the heights stay.</summary>
    /// <param name="tautLength">Taut length, above the difference in height to 300 m.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public LineOfPull WithTautLength(Length tautLength)
    {
        var taut = Guard.Metres(tautLength, Math.Sqrt((Rise * Rise) + 0.01), 300, nameof(tautLength));
        var span = Math.Sqrt((taut - Rise) * (taut + Rise));
        return new LineOfPull(new SpacePoint(Length.FromMeters(Attachment.X.Meters + (span * Math.Cos(Direction))), Length.FromMeters(Attachment.Y.Meters + (span * Math.Sin(Direction))), Drawbar.Z), Attachment);
    }

    /// <summary>Gives the force on something the taut line is bent over.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <param name="deflection">How far the line is pushed aside, 0 to 2 m.</param>
    /// <param name="fromAttachment">Distance of the place along the line from the attachment, 0.05 m to 0.05 m short of the drawbar.</param>
    /// <returns>F d (1/a + 1/b). The line is also bent over an edge and weakened there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force ContactForce(Force tension, Length deflection, Length fromAttachment)
    {
        var a = Guard.Metres(fromAttachment, 0.05, Taut - 0.05, nameof(fromAttachment));
        return Force.FromNewtons(LineOfPullKernel.ContactForce(Guard.Newtons(tension, 0, 20000, nameof(tension)), Guard.Metres(deflection, 0, 2, nameof(deflection)), a, Taut - a));
    }

    /// <summary>Works the forces out.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The worked steps; the last is the vertical part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Working Explain(Force tension)
    {
        var forces = Forces(tension);
        string f = Text.Number(tension.Newtons / 1000), dh = Text.Number(Rise), l = Text.Number(Taut);
        return new WorkingBuilder("Line of pull")
            .Step("theta", "angle to the level", "asin(dh/L)", "asin(" + dh + "/" + l + ")", Text.With(Pitch.Degrees, "deg"), GeneralSources.Statics)
            .Step("H", "level part", "F cos(theta)", f + " cos(" + Text.Number(Pitch.Degrees) + " deg)", Text.Kilonewtons(forces.AlongGround.Newtons), GeneralSources.Statics)
            .Step("V", "vertical part, up on the lower end and down on the higher", "F dh/L", f + " x " + dh + "/" + l, Text.Kilonewtons(forces.UpOnCasualty.Newtons), GeneralSources.Statics)
            .Build();
    }

    /// <summary>Gives the line in words, invariant culture.</summary>
    /// <returns>Length, pitch and bearing.</returns>
    public override string ToString() => Text.With(Taut, "m") + " taut, pitch " + Text.With(Pitch.Degrees, "deg", 3) + ", bearing " + Text.With(Bearing.Degrees, "deg", 3);
}
