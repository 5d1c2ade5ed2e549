using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>The strength a part would need, worked for the whole rig: the stronger part is put into the rig, the line loads are made anew with its stiffness, and every place is checked again.</summary>
internal static class RigRemedySearch
{
    // Bounds of the search, a numerical choice: a part twenty times as strong, 10 MN, no remedy.
    private const double LargestScale = 20, LargestNewtons = 1e7, LeastNewtons = 1e3;
    private const int MostRounds = 40;

    /// <summary>The least strength at which the places of a part meet a level; null where it has none of its own or none would do.</summary>
    public static RigRemedy? Find(RigCheck check, string part, Func<RigPlace, double> level)
    {
        var index = IndexOf(check.Rig, part);
        if (index < 0) throw new ArgumentException("The rig has no part named '" + part + "'.", nameof(part));
        if (Breaking(check.Rig.Parts[index]) is not { } mbs) return null;
        var (thinnest, thickest) = Sizes(check.Rig.Parts[index]);
        double low = Math.Max(LeastNewtons / mbs, thinnest), high = Math.Min(Math.Min(LargestScale, LargestNewtons / mbs), thickest);
        if (!(Surplus(check, index, high, level) >= 0)) return null;
        for (var i = 0; i < 60 && high - low > 1e-10 * high; i++)
        {
            var middle = 0.5 * (low + high);
            if (Surplus(check, index, middle, level) < 0) low = middle;
            else high = middle;
        }

        return new RigRemedy(check.Rig.Parts[index].Name, mbs * high, With(check, index, high));
    }

    /// <summary>Raises every part that is below its floor until none is: a stronger strap loads the rest harder, so it goes round. Null where no strength would do.</summary>
    public static RigCheck? Together(RigCheck check)
    {
        for (var round = 0; round < MostRounds; round++)
        {
            var weakest = -1;
            for (var i = 0; i < check.Outcomes.Length; i++)
            {
                if (double.IsNaN(check.Outcomes[i].Reserve)) return null;
                if (check.Outcomes[i].Reserve < check.Places[i].Floor && (weakest < 0 || check.Outcomes[i].Reserve / check.Places[i].Floor < check.Outcomes[weakest].Reserve / check.Places[weakest].Floor)) weakest = i;
            }

            if (weakest < 0) return check;
            if (Find(check, check.Rig.Parts[check.Places[weakest].Part].Name, static p => p.Floor) is not { } remedy) return null;
            check = remedy.After;
        }

        return null;
    }

    private static int IndexOf(Rig rig, string part)
    {
        for (var i = 0; i < rig.Parts.Count; i++)
        {
            if (rig.Parts[i].Name == part) return i;
        }

        return -1;
    }

    /// <summary>Breaking strength of a part by its mark, tag, document or grade, N; null where it is not known.</summary>
    internal static double? Breaking(RigPart part) => part switch
    {
        Strap s => s.Rating.BreakingNewtons,
        Bridle b => b.Strap.Rating.BreakingNewtons,
        SoftShackle s => s.Rating.BreakingNewtons,
        Shackle s => s.BreakingNewtons,
        Chain c => c.Rating.BreakingNewtons,
        WireRope w => w.Rating.BreakingNewtons,
        SnatchBlock b => b.Rating.BreakingNewtons,
        _ => null,
    };

    /// <summary>How far a part of steel can be scaled before no chain or rope is made in that size.</summary>
    private static (double Thinnest, double Thickest) Sizes(RigPart part) => part switch
    {
        Chain c => (Square(Chain.Thinnest / c.Diameter.Meters), Square(Chain.Thickest / c.Diameter.Meters)),
        WireRope w => (Square(WireRope.Thinnest / w.Diameter.Meters), Square(WireRope.Thickest / w.Diameter.Meters)),
        _ => (0, double.PositiveInfinity),
    };

    private static double Square(double ratio) => ratio * ratio;

    /// <summary>Least of R/F over level, less 1, over the places of a part in the rig with it scaled. R grows with the scale and the peak at most with its square root, so it rises.</summary>
    private static double Surplus(RigCheck check, int part, double scale, Func<RigPlace, double> level)
    {
        var after = With(check, part, scale);
        var least = double.PositiveInfinity;
        for (var i = 0; i < after.Places.Length; i++)
        {
            if (after.Places[i].Part == part) least = Math.Min(least, (after.Outcomes[i].Reserve / level(after.Places[i])) - 1);
        }

        return least;
    }

    private static RigCheck With(RigCheck check, int part, double scale)
    {
        var old = check.Rig.Parts[part];
        var rig = check.Rig.Replace(old.Name, Scaled(old, scale));
        var loads = check.Loads;
        // A line that was not the rig's own stays as it was given; a part behind the eye leaves it alone.
        if (old.IsLine && (check.Rig.BridleIndex < 0 || part < check.Rig.BridleIndex) && check.Rig.Line is { } was && Equals(was, loads.Line) && rig.Line is { } line)
            loads = loads.WithLine(line);
        return RigCheck.Of(rig, check.Policy, loads);
    }

    private static RigPart Scaled(RigPart part, double scale) => part switch
    {
        Strap s => Scaled(s, scale),
        Bridle b => b.WithStrap(Scaled(b.Strap, scale)),
        SoftShackle s => s with { Rating = Scaled(s.Rating, scale) },
        Shackle s => new Shackle(s.Name, Scaled(s.Rating, scale), Mass.FromKilograms(Math.Min(200, Math.Max(0.05, s.Mass.Kilograms * scale))), Force.FromNewtons(s.BreakingNewtons!.Value * scale), s.ProofLoad is { } proof ? Force.FromNewtons(proof.Newtons * scale) : null) { Pin = s.Pin, OffAxis = s.OffAxis, Damaged = s.Damaged, Shape = s.Shape } is var stronger && s.TwoLegs is { } legs ? stronger.WithTwoLegs(legs) : stronger,
        Chain c => new Chain(c.Name, c.Grade, Thicker(c.Diameter, scale, Chain.Thinnest, Chain.Thickest), c.Length, c.Tag is { } tag ? Scaled(tag, scale) : null) { Hitch = c.Hitch, Temperature = c.Temperature, Damaged = c.Damaged },
        WireRope w => new WireRope(w.Name, Scaled(w.Rating, scale), Thicker(w.Diameter, scale, WireRope.Thinnest, WireRope.Thickest), w.Core, w.Length) { FirstEnd = w.FirstEnd, SecondEnd = w.SecondEnd, Body = w.Body, Hitch = w.Hitch, Temperature = w.Temperature, NewAndCertified = w.NewAndCertified, Damaged = w.Damaged },
        SnatchBlock b => new SnatchBlock(b.Name, Scaled(b.Rating, scale), Mass.FromKilograms(Math.Min(500, Math.Max(0.1, b.Mass.Kilograms * scale)))) { Efficiency = b.Efficiency },
        _ => part,
    };

    /// <summary>Strength goes with the section of steel, and so do stiffness and mass.</summary>
    private static Length Thicker(Length diameter, double scale, double least, double most) => Length.FromMeters(Math.Min(most, Math.Max(least, diameter.Meters * Math.Sqrt(scale))));

    /// <summary>The same cloth, more of it: strength, stiffness and mass grow together.</summary>
    private static Strap Scaled(Strap strap, double scale) => strap with
    {
        Rating = Scaled(strap.Rating, scale),
        Measured = strap.Measured is { } line ? new ElasticLine(line.Length, Force.FromNewtons(line.SoftNewtons * scale), Force.FromNewtons(line.StiffNewtons * scale), LinearDensity.FromKilogramsPerMeter(line.KilogramsPerMetre * scale), line.Source) : null,
    };

    private static Rating Scaled(Rating rating, double scale) => rating is { Kind: RatingKind.WorkingLoadLimit, WorkingNewtons: { } working }
        ? Rating.WorkingLoadLimit(Force.FromNewtons(working * scale), rating.DesignFactor)
        : rating.BreakingNewtons is { } breaking ? Rating.BreakingStrength(Force.FromNewtons(breaking * scale)) : rating;
}
