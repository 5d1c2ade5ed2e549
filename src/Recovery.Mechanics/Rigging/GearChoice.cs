using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Chooses gear: from the governing load and the named policy the least rating of each part, in the unit gear is marked in, with what marking to look for.</summary>
/// <remarks>The load is what the puller can put into the gear, never what somebody hopes the mud will need. Wear undeclared is 1.2. Sources: design factor of the policy; partial factors 0027/ND (primary, since replaced); deratings by their own.</remarks>
public static class GearChoice
{
    /// <summary>A strap, sling, rope, chain or soft shackle of its own.</summary>
    /// <param name="part">Its name.</param>
    /// <param name="kind">Its kind: a line or a soft shackle.</param>
    /// <param name="steady">Steady load on it, 0.1 to 20,000 kN.</param>
    /// <param name="peak">Procedure peak on it, at least the steady load, to 20,000 kN.</param>
    /// <param name="policy">The design factor policy, named.</param>
    /// <param name="factors">Partial factors of the peak.</param>
    /// <param name="share">Share of strength left after deratings, 0.05 to 2 (a basket counts two parts).</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The name is empty, the policy stands for a peak that nobody computed, or the kind is no line.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static GearNeed OfLine(string part, GearKind kind, Force steady, Force peak, DesignFactorPolicy policy, PartialFactor factors, double share)
    {
        Guard.Name(part, nameof(part));
        Guard.Defined(kind, kind is >= GearKind.Webbing and <= GearKind.Chain, nameof(kind));
        Guard.NotNull(policy, nameof(policy)).WithComputedPeak(nameof(policy));
        Guard.NotNull(factors, nameof(factors));
        double s = Guard.Newtons(steady, 0.1, 20000, nameof(steady)), p = Guard.Newtons(peak, s / 1000, 20000, nameof(peak)), k = Guard.Range(share, 0.05, 2, string.Empty, nameof(share));
        return new(part, kind, s, p, ChoiceKernel.Strength(s, policy.Factor, k), ChoiceKernel.Strength(p, factors.Full, k), ChoiceKernel.Strength(p, factors.Floor, k), ChoiceKernel.Strength(s, 1, k), double.NaN, policy);
    }

    /// <summary>A shackle of its own.</summary>
    /// <param name="part">Its name.</param>
    /// <param name="steady">Steady load on it, 0.1 to 20,000 kN.</param>
    /// <param name="peak">Procedure peak on it, at least the steady load, to 20,000 kN.</param>
    /// <param name="policy">The design factor policy, named; it is shown and not applied: a working load limit holds its own.</param>
    /// <param name="wear">Wear and twist factor of the gear, 1 to 3.</param>
    /// <param name="offAxis">Angle of the load off its axis, 0 to 90 degrees.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentNullException">The policy is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static GearNeed OfShackle(string part, Force steady, Force peak, DesignFactorPolicy policy, double wear, Angle offAxis)
    {
        Guard.Name(part, nameof(part));
        double s = Guard.Newtons(steady, 0.1, 20000, nameof(steady)), p = Guard.Newtons(peak, s / 1000, 20000, nameof(peak));
        return Shackle(part, s, p, Guard.NotNull(policy, nameof(policy)), Guard.Range(wear, 1, 3, string.Empty, nameof(wear)), StrengthKernel.OffAxis(Guard.Radians(offAxis, 0, 90, nameof(offAxis))));
    }

    /// <summary>Every part of a rig and both its attachments, each with its own share of the load, deratings and, in the line, its own growing stiffness.</summary>
    /// <param name="check">The check of the rig; ratings of its parts may be unknown.</param>
    /// <returns>The needs, drawbar first. A part that is out of service whatever its rating is left out: see the findings.</returns>
    /// <exception cref="ArgumentNullException">The check is null.</exception>
    public static IReadOnlyList<GearNeed> For(RigCheck check)
    {
        Guard.NotNull(check, nameof(check));
        var needs = new List<GearNeed>();
        var places = check.Parts;
        foreach (var part in check.Rig.Parts)
        {
            var own = places.Where(p => ReferenceEquals(p.Part, part)).ToList();
            if (own.Count == 0) continue;
            double steady = own[0].Steady.Newtons, peak = own[0].Procedure.Newtons;
            if (part is Shackle shackle)
            {
                if (shackle.LimitShare > 0) needs.Add(Shackle(part.Name, steady, peak, check.Policy, own[0].Floor / PartialFactorKernel.Floor, shackle.LimitShare));
                continue;
            }

            if (!(ShareOf(part) is var share && share > 0)) continue;
            // What the whole rig says where the part has a strength to scale, none where no strength would do; the plain quotient where it has none.
            var scales = RigRemedySearch.Breaking(part) is not null;
            double full = scales ? check.BreakingStrengthForFullFactors(part.Name)?.Newtons ?? double.NaN : ChoiceKernel.Strength(peak, own[0].Place.Full, share), floor = scales ? check.BreakingStrengthForFloor(part.Name)?.Newtons ?? double.NaN : ChoiceKernel.Strength(peak, own[0].Place.Floor, share);
            needs.Add(new(part.Name, KindOf(part), steady, peak, ChoiceKernel.Strength(steady, check.Policy.Factor, share), full, floor, ChoiceKernel.Strength(steady, 1, share), double.NaN, check.Policy));
        }

        needs.Insert(0, Attachment(check.DrawbarLoad, GearKind.Drawbar, check.Policy));
        needs.Add(Attachment(check.CasualtyLoad, GearKind.AttachmentPoint, check.Policy));
        return needs.AsReadOnly();
    }

    /// <summary>Every part of a rig of any arrangement and all its attachments, each with its own greatest load over both ends of the stretch and of friction.</summary>
    /// <param name="check">The check of the rig; ratings of its parts may be unknown.</param>
    /// <returns>The needs: pullers first, then lines and joiners, then anchors. A part that is out of service whatever its rating, or that carries nothing, is left out. The pulls of a graph are given, so no part raises its own load here.</returns>
    /// <exception cref="ArgumentNullException">The check is null.</exception>
    public static IReadOnlyList<GearNeed> For(RigGraphCheck check)
    {
        Guard.NotNull(check, nameof(check));
        var needs = new List<GearNeed>();
        foreach (var places in check.Parts.GroupBy(p => p.Part.Name, StringComparer.Ordinal))
        {
            var first = places.First();
            double steady = first.Steady.Newtons, peak = first.Procedure.Newtons;
            if (first.Part is Shackle shackle)
            {
                if (shackle.LimitShare > 0) needs.Add(Shackle(shackle.Name, steady, peak, check.Policy, first.Floor / PartialFactorKernel.Floor, shackle.LimitShare));
            }
            else if (ShareOf(first.Part) is var share && share > 0)
            {
                // Of all places of a part the one that asks most; a bight without a figure asks its own level of half the strap.
                double full = places.Max(p => ChoiceKernel.Strength(peak, p.Kind == PlaceKind.Bight ? p.Floor : p.Place.Full, PlaceShare(p, share))), floor = places.Max(p => ChoiceKernel.Strength(peak, p.Floor, PlaceShare(p, share)));
                needs.Add(new(first.Part.Name, KindOf(first.Part), steady, peak, ChoiceKernel.Strength(steady, check.Policy.Factor, share), full, floor, ChoiceKernel.Strength(steady, 1, share), double.NaN, check.Policy));
            }
        }

        var graph = check.Graph;
        var pullers = check.Attachments.Where(a => graph.Nodes.Any(n => n.Kind == RigNodeKind.Puller && ReferenceEquals(n.Point, a.Point))).ToList();
        needs.InsertRange(0, pullers.Select(a => Attachment(a, GearKind.Drawbar, check.Policy)));
        needs.AddRange(check.Attachments.Except(pullers).Select(a => Attachment(a, GearKind.AttachmentPoint, check.Policy)));
        return needs.AsReadOnly();
    }

    internal static GearKind KindOf(RigPart part) => part switch
    {
        Strap s => OfConstruction(s.Construction),
        Bridle b => OfConstruction(b.Strap.Construction),
        SoftShackle => GearKind.SoftShackle,
        WireRope => GearKind.WireRope,
        Chain => GearKind.Chain,
        SnatchBlock => GearKind.Block,
        _ => GearKind.Shackle,
    };

    private static GearKind OfConstruction(StrapConstruction construction) => construction switch
    {
        StrapConstruction.Roundsling => GearKind.Roundsling,
        StrapConstruction.Rope => GearKind.FibreRope,
        _ => GearKind.Webbing,
    };

    private static double ShareOf(RigPart part) => part switch
    {
        Strap s => s.Deratings,
        Bridle b => b.Strap.Deratings,
        Chain c => c.Strength.Share ?? double.NaN,
        WireRope w => w.Strength.Share ?? double.NaN,
        SoftShackle s => s.Deratings,
        _ => 1,
    };

    private static GearNeed Shackle(string part, double steady, double peak, DesignFactorPolicy policy, double wear, double step) =>
        new(part, GearKind.Shackle, steady, peak, double.NaN, peak / PartialFactorKernel.ShackleShare, PartialFactorKernel.FloorOf(1, wear) * peak, steady / step, peak, policy);

    /// <summary>Share of the breaking strength left at a place of a part.</summary>
    private static double PlaceShare(PartCheck place, double share) => place is { Part: Strap strap, Kind: PlaceKind.Bight or PlaceKind.BightWithFigure } ? strap.WholeLength * (strap.MakersBightShare?.DecimalFractions ?? StrengthKernel.StrapOnStrap) : share;

    private static GearNeed Attachment(AttachmentLoad load, GearKind kind, DesignFactorPolicy policy) =>
        new(load.Point.Name, kind, load.Steady.Newtons, load.Procedure.Newtons, double.NaN, load.Procedure.Newtons, load.Procedure.Newtons, load.Steady.Newtons, double.NaN, policy);
}
