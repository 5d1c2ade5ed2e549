using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Rigging;

/// <summary>Turns a rig into places, in the published order: whole-length factors multiply, places take the minimum, hitch multiplicity and leg shares last.</summary>
internal static class RigPlaces
{
    public static RigPlace[] From(Rig rig, DesignFactorPolicy policy, double wear)
    {
        policy.WithComputedPeak(nameof(policy));
        var places = new List<RigPlace>(rig.Parts.Count + 2);
        var bridle = rig.Bridle;
        var leg = bridle?.LegShareWithFriction ?? 1;
        for (var i = 0; i < rig.Parts.Count; i++)
        {
            var share = bridle is not null && i >= rig.BridleIndex ? leg : 1;
            OfPart(rig.Parts[i], i, share, i == rig.BridleIndex - 1, policy, wear, places);
        }

        return [.. places];
    }

    /// <summary>The places of one part: as a whole, and its bight where a strap lies in its eye or its middle runs through one.</summary>
    public static void OfPart(RigPart part, int i, double share, bool bight, DesignFactorPolicy policy, double wear, List<RigPlace> places)
    {
        switch (part)
        {
            case Strap strap:
                places.Add(OfStrap(strap, i, share, policy, wear));
                if (bight) places.Add(OfBight(strap, i, share, policy, wear));
                break;
            case Bridle b:
                places.Add(OfStrap(b.Strap, i, share, policy, wear));
                places.Add(OfBight(b.Strap, i, share, policy, wear));
                break;
            case SoftShackle soft:
                places.Add(Of(i, PlaceKind.Strap, soft.Rating, soft.Deratings, share, policy, PartialFactorKernel.Full(Fibre.Hmpe, wear), PartialFactorKernel.Floor * wear));
                break;
            case Chain chain:
                places.Add(OfSteel(i, chain.Strength, PartialMaterial.OtherFibre, share, policy, wear));
                break;
            case WireRope wire:
                places.Add(OfSteel(i, wire.Strength, wire.NewAndCertified ? PartialMaterial.NewCertifiedSteelWire : PartialMaterial.SteelWire, share, policy, wear));
                break;
            case SnatchBlock block:
                places.Add(Of(i, PlaceKind.Strap, block.Rating, 1, share, policy, PartialFactorKernel.FullSteel(wear), PartialFactorKernel.Floor * wear));
                break;
            case Shackle shackle:
                places.Add(OfShackle(shackle, i, share));
                break;
        }
    }

    private static RigPlace OfStrap(Strap strap, int part, double share, DesignFactorPolicy policy, double wear) =>
        Of(part, PlaceKind.Strap, strap.Rating, strap.Deratings, share, policy, PartialFactorKernel.Full(strap.Fibre, wear), PartialFactorKernel.Floor * wear);

    private static RigPlace OfBight(Strap strap, int part, double share, DesignFactorPolicy policy, double wear)
    {
        var figure = strap.MakersBightShare;
        return Of(part, figure is null ? PlaceKind.Bight : PlaceKind.BightWithFigure, strap.Rating, strap.WholeLength * (figure?.DecimalFractions ?? StrengthKernel.StrapOnStrap), share, policy, PartialFactorKernel.Full(strap.Fibre, wear), figure is null ? RigKernel.BightFloor : PartialFactorKernel.Floor * wear);
    }

    private static RigPlace Of(int part, PlaceKind kind, Rating rating, double deratings, double share, DesignFactorPolicy policy, double full, double floor)
    {
        var strength = (rating.BreakingNewtons ?? double.NaN) * deratings;
        return new RigPlace
        {
            Part = part,
            Kind = kind,
            Strength = strength,
            Share = share,
            Full = full,
            Floor = floor,
            PeakLimit = double.NaN,
            Rated = StrengthKernel.Allowable((rating.WorkingNewtons ?? double.NaN) * deratings, strength, policy.Factor),
        };
    }

    private static RigPlace OfSteel(int part, DeratedStrength strength, PartialMaterial material, double share, DesignFactorPolicy policy, double wear) =>
        Of(part, PlaceKind.Strap, strength.Rating, strength.Share ?? double.NaN, share, policy, PartialFactorKernel.Full(PartialFactorKernel.Load, PartialFactorKernel.Consequence, 1, PartialFactorKernel.Material(material), wear), PartialFactorKernel.FloorOf(1, wear));

    private static RigPlace OfShackle(Shackle shackle, int part, double share)
    {
        var breaking = shackle.BreakingNewtons ?? double.NaN;
        var third = breaking * PartialFactorKernel.ShackleShare;
        var limit = shackle.ProofLoad is { } proof ? (double.IsNaN(third) ? double.NaN : Math.Min(third, proof.Newtons)) : third;
        return new RigPlace
        {
            Part = part,
            Kind = PlaceKind.Shackle,
            Strength = breaking,
            Share = share,
            Full = 1 / PartialFactorKernel.ShackleShare,
            Floor = PartialFactorKernel.Floor,
            PeakLimit = limit,
            Rated = (shackle.Rating.WorkingNewtons ?? double.NaN) * shackle.LimitShare,
        };
    }
}
