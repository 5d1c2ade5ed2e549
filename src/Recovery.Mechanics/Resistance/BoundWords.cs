using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Puts into words how a bound arises.</summary>
internal static class BoundWords
{
    private const double Alike = 1e-9;

    public static BoundBasis Of(PullDemand demand, DemandBound bound)
    {
        var (frame, terms, state) = demand.At(bound);
        var f = frame.Flat;
        var uncut = new List<string>();
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (!f.Dug && f.Buried[i] && (state.Meets & (1 << i)) != 0) uncut.Add(demand.AxleName(i));
        }

        return new BoundBasis(bound, terms, state, frame.Frame, uncut.AsReadOnly(), How(demand, bound, frame, terms, state, uncut));
    }

    private static List<Phrase> How(PullDemand demand, DemandBound bound, CompiledStuckMachine frame, in DemandTerms terms, in DemandState s, List<string> uncut)
    {
        var f = frame.Flat;
        var words = new List<Phrase>();
        if (terms.StandsIn) words.Add(BoundPhrases.TakesCentral.With());
        words.Add(s.Locked ? BoundPhrases.Locked.With() : f.AnyBuried ? BoundPhrases.Turning.With(Text.Number(s.Rho)) : BoundPhrases.Rolling.With());
        if (f.AnyBuried)
        {
            words.Add(Seals(f, s));
            words.Add(f.Dug ? BoundPhrases.NoSoil.With() : uncut.Count == 0 ? BoundPhrases.OpenRuts.With() : BoundPhrases.Uncut.With(string.Join(", ", uncut)));
            words.Add(Exit(demand.Stuck, s.Exit));
        }

        if (f.BellyArea > 0 && s.Sealed && s.Uplift > 0) words.Add(Uplift(f, terms, s));
        if (f.AnyBuried || f.BellyArea > 0 || terms.Base > 0) words.Add(Soil(bound, frame, f, terms, s));
        if (demand.Stuck.Machine.SuspensionMatters) words.Add(BoundPhrases.Of(frame.Frame).With());
        return words;
    }

    private static Phrase Seals(DemandFlat f, in DemandState s)
    {
        if (!s.Sealed) return BoundPhrases.Vented.With();
        if (f.Dug) return (f.BellyArea > 0 ? BoundPhrases.DugSealed : BoundPhrases.Dug).With();
        return s.VentedShare > 0 ? BoundPhrases.PartVented.With(Text.Number(1 - s.VentedShare)) : BoundPhrases.Sealed.With();
    }

    private static Phrase Uplift(DemandFlat f, in DemandTerms terms, in DemandState s)
    {
        if (!f.AnyBuried) return BoundPhrases.NothingRises.With();
        if (!(terms.UpliftDeveloped > 0)) return BoundPhrases.NoUplift.With();
        return s.Uplift < 1 ? BoundPhrases.UpliftShare.With(Text.Number(s.Uplift)) : BoundPhrases.UpliftAll.With();
    }

    private static Phrase Exit(StuckMachine stuck, double exit)
    {
        object slope = exit > 0 ? "1:" + Text.Number(1 / Math.Tan(exit), 3) : BoundPhrases.Level.With();
        return (stuck.DugSlope is { } dug && Math.Abs(dug.Radians - exit) < Alike ? BoundPhrases.ExitDug : stuck.ExitSlope is null ? BoundPhrases.ExitOpen : BoundPhrases.ExitMeasured).With(slope);
    }

    private static Phrase Soil(DemandBound bound, CompiledStuckMachine frame, DemandFlat f, in DemandTerms terms, in DemandState s)
    {
        var strength = frame.Assumptions.Strength;
        if (bound == DemandBound.Central || terms.StandsIn) return BoundPhrases.Middle.With();
        Phrase wall = (bound == DemandBound.Low ? BoundPhrases.WeakestWall : BoundPhrases.StrongestWall).With(), most = (bound == DemandBound.Low ? BoundPhrases.Least : BoundPhrases.Greatest).With();
        if (!(strength.FloorHigh > strength.FloorLow)) return BoundPhrases.OneFloor.With(wall);
        if (Near(s.Floor, strength.FloorLow)) return BoundPhrases.WeakestFloor.With(wall, most);
        if (Near(s.Floor, strength.FloorHigh)) return BoundPhrases.StrongestFloor.With(wall, most);
        return (f.BellyArea > 0 && Near(s.Floor, UnderbodyKernel.ChangeOverFloor(f.Weight, f.BellyArea, f.WheelArea)) ? BoundPhrases.ChangeFloor : BoundPhrases.BetweenFloor).With(wall, most);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= Alike * b;
}
