using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What the line meets on its way under a machine that is drawn out rearwards by its front axle.</summary>
/// <remarks>
/// <para>x runs backwards from the front axle. Legs: half spacing y(x) = (w/2)(1 - x/x_e), height z(x) = z_a + (z_e - z_a) x/x_e; behind the apex x_e the line runs in the middle. Under a belly on the ground a leg must pass beside it all along, tightest at its rear end; under a clear part it must pass below.
/// A gap g at x lasts to a rise h = (g + r x/L)/(x (1/L - 1/D)) of the front axle, wheelbase L, rise r of the rear axle 0 unless known, D the distance of the end that keeps its height: of the drawbar where the line beyond the eye is known, because under tension bridle and line are straight in side view; of the eye where it is held.</para>
/// <para>Source: geometry (derived). Immutable.</para>
/// </remarks>
public sealed record UnderMachineLine
{
    /// <summary>Describes the way under the machine.</summary>
    /// <param name="tailBehindAxle">Distance of the rearmost part behind the front axle, 0.5 to 30 m.</param>
    /// <param name="wheelbase">Distance of the rear axle that stays down behind the front axle, 0.5 to 30 m.</param>
    /// <param name="anchorHeight">Height of the axle straps above the ground as found, 0 to 3 m.</param>
    /// <param name="apexHeight">Height of the eye above the ground, 0 to 3 m.</param>
    /// <param name="parts">Low parts that the line passes below.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public UnderMachineLine(Length tailBehindAxle, Length wheelbase, Length anchorHeight, Length apexHeight, IEnumerable<UndersidePart> parts)
    {
        TailBehindAxle = Length.FromMeters(Guard.Metres(tailBehindAxle, 0.5, 30, nameof(tailBehindAxle)));
        Wheelbase = Length.FromMeters(Guard.Metres(wheelbase, 0.5, 30, nameof(wheelbase)));
        AnchorHeight = Length.FromMeters(Guard.Metres(anchorHeight, 0, 3, nameof(anchorHeight)));
        ApexHeight = Length.FromMeters(Guard.Metres(apexHeight, 0, 3, nameof(apexHeight)));
        Parts = Guard.NotNull(parts, nameof(parts)).ToList().AsReadOnly();
    }

    /// <summary>Gets the distance of the rearmost part behind the front axle.</summary>
    public Length TailBehindAxle { get; }

    /// <summary>Gets the distance of the rear axle behind the front axle.</summary>
    public Length Wheelbase { get; }

    /// <summary>Gets the height of the axle straps as found.</summary>
    public Length AnchorHeight { get; }

    /// <summary>Gets the height of the eye.</summary>
    public Length ApexHeight { get; }

    /// <summary>Gets the low parts that the line passes below.</summary>
    public IReadOnlyList<UndersidePart> Parts { get; }

    /// <summary>Gets the distance of the rear end of the belly behind the front axle; null where it was not measured. Accepted range 0 to 30 m.</summary>
    public Length? BellyEndBehindAxle { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0, 30, nameof(BellyEndBehindAxle))) : null; }

    /// <summary>Gets the width of the strap; 0.15 m unless declared. Accepted range 0.02 to 0.6 m.</summary>
    public Length StrapWidth { get; init => field = Length.FromMeters(Guard.Metres(value, 0.02, 0.6, nameof(StrapWidth))); } = Length.FromMeters(0.15);

    /// <summary>Gets the thickness of the strap; 0.02 m unless declared. Accepted range 0.002 to 0.2 m.</summary>
    public Length StrapThickness { get; init => field = Length.FromMeters(Guard.Metres(value, 0.002, 0.2, nameof(StrapThickness))); } = Length.FromMeters(0.02);

    /// <summary>Gives the distance of the eye behind the front axle.</summary>
    /// <param name="legLength">Length of one leg with its axle strap, 0.2 to 100 m.</param>
    /// <param name="anchorSpacing">Distance between the anchors, 0.1 to 6 m.</param>
    /// <returns>The distance; zero where the leg is too short to reach the heights given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length ApexBehindAxle(Length legLength, Length anchorSpacing) =>
        Length.FromMeters(Apex(Guard.Metres(legLength, 0.2, 100, nameof(legLength)), Guard.Metres(anchorSpacing, 0.1, 6, nameof(anchorSpacing))));

    /// <summary>Gives the length of a bridle strap whose eye lies behind the tail.</summary>
    /// <param name="anchorSpacing">Distance between the anchors, 0.1 to 6 m.</param>
    /// <param name="behindTail">Distance of the eye behind the tail with the line slack, which is nearest to the tail, 0 to 20 m.</param>
    /// <param name="axleStrapReach">Reach of the axle straps, counted as part of the legs, 0 to 5 m and 0.1 m short of a leg.</param>
    /// <returns>Twice the leg less the reach. A longer bridle does not relieve its legs: the strap wraps further round the eye.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length BridleLengthFor(Length anchorSpacing, Length behindTail, Length axleStrapReach)
    {
        var apex = TailBehindAxle.Meters + Guard.Metres(behindTail, 0, 20, nameof(behindTail));
        var leg = UnderMachineKernel.Leg(apex, Guard.Metres(anchorSpacing, 0.1, 6, nameof(anchorSpacing)), ApexHeight.Meters - AnchorHeight.Meters);
        return Length.FromMeters(2 * (leg - Guard.Metres(axleStrapReach, 0, Math.Min(5, leg - 0.1), nameof(axleStrapReach))));
    }

    /// <summary>Gives the least anchor spacing at which the legs pass beside a belly on the ground.</summary>
    /// <param name="bellyWidth">Width of the belly, 0.1 to 4 m.</param>
    /// <param name="eyeBehindAxle">Distance of the eye behind the front axle, 0.5 to 100 m.</param>
    /// <returns>(belly width + strap width)/(1 - x/x_e) at the rear end of the belly; null where that end is not known or the eye does not lie behind it, and then no spacing does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length? LeastAnchorSpacing(Length bellyWidth, Length eyeBehindAxle)
    {
        double width = Guard.Metres(bellyWidth, 0.1, 4, nameof(bellyWidth)), apex = Guard.Metres(eyeBehindAxle, 0.5, 100, nameof(eyeBehindAxle));
        return BellyEndBehindAxle is { } end && end.Meters < apex ? Length.FromMeters(UnderMachineKernel.LeastSpacing(width + StrapWidth.Meters, apex, end.Meters)) : null;
    }

    /// <summary>Gives the clearance of every low part, as found and over the climb.</summary>
    /// <param name="legLength">Length of one leg with its axle strap, 0.2 to 100 m.</param>
    /// <param name="anchorSpacing">Distance between the anchors, 0.1 to 6 m.</param>
    /// <param name="beyondEye">Length of the line from the eye to the drawbar, 0.5 to 300 m: under tension bridle and line are straight in side view.</param>
    /// <returns>One entry a part, in their order; the least rise is the tightest place.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public IReadOnlyList<UnderMachineClearance> Clearances(Length legLength, Length anchorSpacing, Length beyondEye) =>
        Clearances(Guard.Metres(legLength, 0.2, 100, nameof(legLength)), Guard.Metres(anchorSpacing, 0.1, 6, nameof(anchorSpacing)), Guard.Metres(beyondEye, 0.5, 300, nameof(beyondEye)));

    /// <summary>Gives the same with another value: the distance of the rear end of the belly behind the front axle. For callers whose language has no <c>with</c>.</summary>
    /// <param name="bellyEndBehindAxle">The value, as in <see cref="BellyEndBehindAxle"/>.</param>
    /// <returns>The changed copy.</returns>
    public UnderMachineLine WithBellyEndBehindAxle(Length? bellyEndBehindAxle) => this with { BellyEndBehindAxle = bellyEndBehindAxle };

    /// <summary>Gives the same with another value: the width of the strap. For callers whose language has no <c>with</c>.</summary>
    /// <param name="strapWidth">The value, as in <see cref="StrapWidth"/>.</param>
    /// <returns>The changed copy.</returns>
    public UnderMachineLine WithStrapWidth(Length strapWidth) => this with { StrapWidth = strapWidth };

    /// <summary>Gives the same with another value: the thickness of the strap. For callers whose language has no <c>with</c>.</summary>
    /// <param name="strapThickness">The value, as in <see cref="StrapThickness"/>.</param>
    /// <returns>The changed copy.</returns>
    public UnderMachineLine WithStrapThickness(Length strapThickness) => this with { StrapThickness = strapThickness };

    /// <summary>Gives the way in words, invariant culture.</summary>
    /// <returns>Tail and parts.</returns>
    public override string ToString() => "tail " + Text.With(TailBehindAxle.Meters, "m") + " behind the front axle, " + Text.Number(Parts.Count) + " low parts";

    internal double Apex(double leg, double spacing) => UnderMachineKernel.Apex(leg, spacing, ApexHeight.Meters - AnchorHeight.Meters);

    internal IReadOnlyList<UnderMachineClearance> Clearances(double leg, double spacing, double beyondEye)
    {
        var apex = Apex(leg, spacing);
        var list = new List<UnderMachineClearance>(Parts.Count);
        foreach (var part in Parts)
        {
            var gap = Gap(part, apex);
            list.Add(new UnderMachineClearance(part, gap, gap < 0 ? 0 : Rise(part, gap, apex + beyondEye)));
        }

        return list.AsReadOnly();
    }

    /// <summary>Checks the way of the line; <paramref name="beyondEye"/> is the line from the eye to the drawbar. Under tension bridle and line are straight in side view, so the far end that keeps its height is the drawbar and not the eye.</summary>
    internal void AddFindings(double leg, double spacing, double beyondEye, double? bellyWidth, double climb, List<Finding> findings)
    {
        var apex = Apex(leg, spacing);
        if (bellyWidth is { } width) Belly(apex, spacing, width, findings);
        double least = double.PositiveInfinity;
        var tightest = string.Empty;
        foreach (var part in Parts)
        {
            var gap = Gap(part, apex);
            if (gap < 0)
            {
                findings.Add(new Finding(LinesFindings.FoulsMachine, LinesPhrases.BearsOn.With(part.Name)));
                continue;
            }

            var rise = Rise(part, gap, apex + beyondEye);
            if (rise >= least) continue;
            least = rise;
            tightest = part.Name;
        }

        if (least < climb) findings.Add(new Finding(LinesFindings.FoulsInClimb, LinesPhrases.The.With(tightest), climb, least, "m"));
    }

    private double Gap(UndersidePart part, double apex)
    {
        double x = part.BehindAxle.Meters, ze = ApexHeight.Meters;
        return part.Height.Meters - (x < apex ? UnderMachineKernel.Height(AnchorHeight.Meters, ze, apex, x) : ze) - (StrapThickness.Meters / 2);
    }

    /// <summary>Rise of the front axle at which a part that is clear as found is touched; infinite where it never is, and behind the drawbar.</summary>
    private double Rise(UndersidePart part, double gap, double drawbar) =>
        part.BehindAxle.Meters >= drawbar ? double.PositiveInfinity : UnderMachineKernel.RiseToFoul(gap, part.BehindAxle.Meters, Wheelbase.Meters, drawbar, 0);

    private void Belly(double apex, double spacing, double width, List<Finding> findings)
    {
        if (BellyEndBehindAxle is not { } end)
        {
            findings.Add(new Finding(LinesFindings.GeometryUnknown, LinesPhrases.TheBelly.With()));
            return;
        }

        if (end.Meters >= apex) findings.Add(new Finding(LinesFindings.FoulsMachine, LinesPhrases.EyeBeforeBelly.With()));
        else if (UnderMachineKernel.HalfSpacing(spacing, apex, end.Meters) - (StrapWidth.Meters / 2) <= width / 2) findings.Add(new Finding(LinesFindings.FoulsMachine, LinesPhrases.LegsBesideBelly.With(Text.With(width, "m", 3))));
    }
}
