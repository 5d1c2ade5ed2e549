using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>The straight, taut line past low parts of the casualty and humps of the ground, while the casualty rises and comes on.</summary>
/// <remarks>
/// <para>Side view. x from the front axle towards the puller, z up. The line runs straight from the attachment to the drawbar; under tension the eye of a bridle lies on it. As the front axle rises by h and the rear axle, L behind it, by r, a place of the body at x rises by h (1 - x/L) + r x/L and the attachment with it; the drawbar keeps its height. The puller goes on as far as the casualty comes, so that humps of the ground move along the line.</para>
/// <para>Clearance c = underside of the part (or line, over ground) less the line (or top of the ground) less half the thickness. Worst place and first contact are exact, not sampled. Small angles of the body; machines in one line; no sag: a taut line is straight. Source: geometry (derived). Immutable.</para>
/// </remarks>
public sealed record LineClearance
{
    /// <summary>Describes the way of the line as found.</summary>
    /// <param name="attachmentHeight">Height of the attachment on the casualty, -2 to 5 m.</param>
    /// <param name="drawbarDistance">Distance of the drawbar from the front axle in plan, 0.5 to 300 m.</param>
    /// <param name="drawbarHeight">Height of the drawbar, -5 to 10 m.</param>
    /// <param name="wheelbase">Distance of the rear axle behind the front axle, 0.5 to 30 m.</param>
    /// <param name="parts">Low parts of the casualty that the line passes below.</param>
    /// <exception cref="ArgumentNullException"><paramref name="parts"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LineClearance(Length attachmentHeight, Length drawbarDistance, Length drawbarHeight, Length wheelbase, IEnumerable<UndersidePart> parts)
    {
        AttachmentHeight = Length.FromMeters(Guard.Metres(attachmentHeight, -2, 5, nameof(attachmentHeight)));
        DrawbarDistance = Length.FromMeters(Guard.Metres(drawbarDistance, 0.5, 300, nameof(drawbarDistance)));
        DrawbarHeight = Length.FromMeters(Guard.Metres(drawbarHeight, -5, 10, nameof(drawbarHeight)));
        Wheelbase = Length.FromMeters(Guard.Metres(wheelbase, 0.5, 30, nameof(wheelbase)));
        Parts = Guard.NotNull(parts, nameof(parts)).ToList().AsReadOnly();
    }

    /// <summary>Gets the height of the attachment.</summary>
    public Length AttachmentHeight { get; }

    /// <summary>Gets the distance of the drawbar from the front axle.</summary>
    public Length DrawbarDistance { get; }

    /// <summary>Gets the height of the drawbar.</summary>
    public Length DrawbarHeight { get; }

    /// <summary>Gets the distance of the rear axle behind the front axle.</summary>
    public Length Wheelbase { get; }

    /// <summary>Gets the low parts of the casualty.</summary>
    public IReadOnlyList<UndersidePart> Parts { get; }

    /// <summary>Gets the humps of the ground; none unless declared.</summary>
    public IReadOnlyList<GroundObstacle> Ground { get; init => field = Guard.NotNull(value, nameof(Ground)).ToList().AsReadOnly(); } = [];

    /// <summary>Gets the distance of the attachment behind the front axle, towards the puller; 0 unless declared. Accepted range 0 to 30 m.</summary>
    public Length AttachmentBehindAxle { get; init => field = Length.FromMeters(Guard.Metres(value, 0, 30, nameof(AttachmentBehindAxle))); }

    /// <summary>Gets the rise of the front axle over the whole motion; 0 unless declared. Accepted range -1 to 3 m.</summary>
    public Length FrontRise { get; init => field = Length.FromMeters(Guard.Metres(value, -1, 3, nameof(FrontRise))); }

    /// <summary>Gets the rise of the rear axle over the whole motion; 0 unless declared: what is not known to rise stays. Accepted range -1 to 3 m.</summary>
    public Length RearRise { get; init => field = Length.FromMeters(Guard.Metres(value, -1, 3, nameof(RearRise))); }

    /// <summary>Gets how far the casualty comes on over the whole motion; 0 unless declared. Accepted range 0 to 100 m.</summary>
    public Length Advance { get; init => field = Length.FromMeters(Guard.Metres(value, 0, 100, nameof(Advance))); }

    /// <summary>Gets the thickness of the line; 0.02 m unless declared. Accepted range 0.002 to 0.2 m.</summary>
    public Length Thickness { get; init => field = Length.FromMeters(Guard.Metres(value, 0.002, 0.2, nameof(Thickness))); } = Length.FromMeters(0.02);

    /// <summary>Gives the same with other obstacles of the ground. For callers whose language has no <c>with</c>.</summary>
    /// <param name="ground">The obstacles, as in <see cref="Ground"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineClearance WithGround(IReadOnlyList<GroundObstacle> ground) => this with { Ground = ground };

    /// <summary>Gives the same with another place of the attachment. For callers whose language has no <c>with</c>.</summary>
    /// <param name="attachmentBehindAxle">The value, as in <see cref="AttachmentBehindAxle"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineClearance WithAttachmentBehindAxle(Length attachmentBehindAxle) => this with { AttachmentBehindAxle = attachmentBehindAxle };

    /// <summary>Gives the same with a motion of the casualty.</summary>
    /// <param name="frontRise">The value, as in <see cref="FrontRise"/>.</param>
    /// <param name="rearRise">The value, as in <see cref="RearRise"/>.</param>
    /// <param name="advance">The value, as in <see cref="Advance"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineClearance WithMotion(Length frontRise, Length rearRise, Length advance) => this with { FrontRise = frontRise, RearRise = rearRise, Advance = advance };

    /// <summary>Gives the same with another thickness of the line. For callers whose language has no <c>with</c>.</summary>
    /// <param name="thickness">The value, as in <see cref="Thickness"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineClearance WithThickness(Length thickness) => this with { Thickness = thickness };

    /// <summary>Share of the way after which the axles have risen, above 0; they rise evenly until then.</summary>
    internal double RisenAfter { get; init; } = 1;

    /// <summary>Share of the rise that is done when a share of the way is.</summary>
    internal double Risen(double t) => Math.Min(1, t / RisenAfter);

    /// <summary>Sweeps the motion from as found to its end.</summary>
    /// <returns>Clearance of every obstacle and the worst of them.</returns>
    /// <exception cref="ArgumentException">The drawbar does not lie beyond the attachment.</exception>
    public ClearanceSweep Sweep()
    {
        if (DrawbarDistance.Meters - AttachmentBehindAxle.Meters < 0.1) throw new ArgumentException("AttachmentBehindAxle must be at least 0.1 m short of the drawbar at " + Text.With(DrawbarDistance.Meters, "m") + "; it was " + Text.With(AttachmentBehindAxle.Meters, "m") + ".", nameof(AttachmentBehindAxle));
        var places = new List<ObstacleClearance>();
        foreach (var part in Parts) Add(places, part.Name, false, part.BehindAxle.Meters, part.Height.Meters);
        foreach (var hump in Ground) Add(places, hump.Name, true, hump.BehindAxle.Meters, hump.Height.Meters);
        return new ClearanceSweep(this, places.AsReadOnly());
    }

    /// <summary>Gives the way in words, invariant culture.</summary>
    /// <returns>Ends and obstacles.</returns>
    public override string ToString() => "line from " + Text.With(AttachmentHeight.Meters, "m") + " to " + Text.With(DrawbarHeight.Meters, "m") + " high over " + Text.With(DrawbarDistance.Meters - AttachmentBehindAxle.Meters, "m") + ", " + Text.Number(Parts.Count + Ground.Count) + " obstacles";

    /// <summary>Clearance of a place when a share t of the motion is done; null where the line does not pass it.</summary>
    internal double? Clearance(bool ground, double x, double height, double t)
    {
        double xa = AttachmentBehindAxle.Meters, span = DrawbarDistance.Meters - xa, risen = Risen(t), h = FrontRise.Meters * risen, r = RearRise.Meters * risen, l = Wheelbase.Meters;
        var at = ground ? x - (Advance.Meters * t) : x;
        if (at < xa || at > xa + span) return null;
        var line = ClearanceKernel.LineHeight(AttachmentHeight.Meters + ClearanceKernel.BodyRise(h, r, l, xa), DrawbarHeight.Meters, span, at - xa);
        return (ground ? line - height : height + ClearanceKernel.BodyRise(h, r, l, x) - line) - (Thickness.Meters / 2);
    }

    private void Add(List<ObstacleClearance> places, string name, bool ground, double x, double height)
    {
        // A hump is passed only while it lies between the ends.
        double xa = AttachmentBehindAxle.Meters, advance = ground ? Advance.Meters : 0, from = 0, to = 1;
        if (advance > 0)
        {
            from = Math.Max(0, (x - DrawbarDistance.Meters) / advance);
            to = Math.Min(1, (x - xa) / advance);
        }

        if (!(from <= to) || Clearance(ground, x, height, from) is not { } first || Clearance(ground, x, height, to) is null) return;
        double least = double.PositiveInfinity, leastAt = from, contactAt = double.NaN;
        // Within each part the clearance is a parabola of the share done.
        if (RisenAfter > from && RisenAfter < to) Part(from, RisenAfter);
        Part(RisenAfter > from && RisenAfter < to ? RisenAfter : from, to);
        places.Add(new ObstacleClearance(this, name, ground, x, height, from, first, least, leastAt, contactAt));

        void Part(double a, double b)
        {
            double start = Clearance(ground, x, height, a)!.Value, half = Clearance(ground, x, height, (a + b) / 2)!.Value, end = Clearance(ground, x, height, b)!.Value;
            var lowest = ClearanceKernel.Least(start, half, end, out var at);
            if (lowest < least) (least, leastAt) = (lowest, a + (at * (b - a)));
            if (double.IsNaN(contactAt)) contactAt = a + (ClearanceKernel.FirstContact(start, half, end) * (b - a));
        }
    }
}
