using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Turns utilisations into findings by the levels of the rig check. What one careless take-up would part stands first.</summary>
internal static class RigStrengthFindings
{
    /// <summary>A pass by less than this factor says so (judgement; <see cref="RiggingSources.Levels"/>).</summary>
    public const double Near = 1.1;

    public static void Add(RigCheck check, List<Finding> findings) => Add(check.Places, check.Outcomes, check.Loads.Output, check.PlaceName, check.Loads.Procedure.SecondPull is null, findings);

    /// <summary>The same for any arrangement.</summary>
    public static void Add(RigPlace[] places, RigOutcome[] outcomes, in LineLoadOutput loads, Func<int, Phrase> name, bool secondPullOpen, List<Finding> findings)
    {
        // Where the procedure is the careless take-up or worse, its own levels already say all of it.
        var weakest = loads.Careless > loads.Procedure ? Careless(outcomes, name, findings) : -1;
        for (var i = 0; i < places.Length; i++)
        {
            ref readonly var p = ref places[i];
            ref readonly var o = ref outcomes[i];
            Rated(loads, name, i, p, o, findings);
            if (double.IsNaN(p.Strength))
            {
                // A strength that nobody knows is a stop; most parts have one of their own by then, with the reason.
                if (!findings.Exists(f => f.Severity == Severity.Stop && (name(i).ToString() + ",").StartsWith(f.Subject + ",", StringComparison.Ordinal))) findings.Add(new Finding(RiggingFindings.RatingUnknown, name(i)));
                continue;
            }

            Peak(loads, name, i, p, o, findings);
            if (secondPullOpen && o.Reserve >= p.Floor && o.SecondReserve < p.Floor)
                findings.Add(new Finding(RiggingFindings.SecondPullLow, name(i), p.Floor, o.SecondReserve));
        }

        if (weakest >= 0 && outcomes[weakest].CarelessReserve >= RigKernel.CarelessFloor)
            findings.Add(new Finding(RiggingFindings.CarelessHolds, name(weakest), RigKernel.CarelessFloor, outcomes[weakest].CarelessReserve));
    }

    /// <summary>Places in the order of their careless reserve: those that would part, those that keep too little, those that keep it by less than a tenth. Gives the weakest.</summary>
    private static int Careless(RigOutcome[] outcomes, Func<int, Phrase> name, List<Finding> findings)
    {
        const double Parts = 1;
        int weakest = -1, start = findings.Count;
        for (var i = 0; i < outcomes.Length; i++)
        {
            var reserve = outcomes[i].CarelessReserve;
            if (double.IsNaN(reserve)) continue;
            if (weakest < 0 || reserve < outcomes[weakest].CarelessReserve) weakest = i;
            if (reserve >= Near * RigKernel.CarelessFloor) continue;
            var finding = reserve < Parts ? new Finding(RiggingFindings.CarelessParts, name(i), Parts, reserve)
                : reserve < RigKernel.CarelessFloor ? new Finding(RiggingFindings.CarelessLow, name(i), RigKernel.CarelessFloor, reserve)
                : new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtCareless.With(name(i)), RigKernel.CarelessFloor, reserve);
            var k = findings.Count;
            while (k > start && findings[k - 1].Available > reserve) k--;
            findings.Insert(k, finding);
        }

        return weakest;
    }

    private static void Peak(in LineLoadOutput loads, Func<int, Phrase> name, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight)
        {
            findings.Add(o.Reserve < p.Floor
                ? new Finding(RiggingFindings.BightBelow, name(i), p.Floor, o.Reserve)
                : new Finding(RiggingFindings.BightNoEvidence, name(i), p.Floor, o.Reserve));
            if (o.Reserve >= p.Floor && o.Reserve < Near * p.Floor) findings.Add(new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtStop.With(name(i)), p.Floor, o.Reserve));
            return;
        }

        if (o.Reserve < p.Floor)
        {
            findings.Add(new Finding(RiggingFindings.BelowFloor, name(i), p.Floor, o.Reserve));
            return;
        }

        if (o.PeakUtilisation > 1)
        {
            findings.Add(p.Kind == PlaceKind.Shackle
                ? new Finding(RiggingFindings.ShacklePeak, name(i), p.Share * loads.Procedure / 1000, p.PeakLimit / 1000, "kN")
                : new Finding(RiggingFindings.PartialFactors, name(i), p.Full, o.Reserve));
            if (o.Reserve < Near * p.Floor) findings.Add(new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtStop.With(name(i)), p.Floor, o.Reserve));
        }
        else if (o.PeakUtilisation * Near > 1)
        {
            findings.Add(p.Kind == PlaceKind.Shackle
                ? new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtPeak.With(name(i)), p.Share * loads.Procedure / 1000, p.PeakLimit / 1000, "kN")
                : new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtFull.With(name(i)), p.Full, o.Reserve));
        }
    }

    private static void Rated(in LineLoadOutput loads, Func<int, Phrase> name, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight) return;
        double steady = p.Share * loads.Steady / 1000, allowed = p.Rated / 1000;
        if (double.IsNaN(o.RatedUtilisation))
        {
            // Where the strength is not known either, the rating itself is the finding.
            if (!double.IsNaN(p.Strength)) findings.Add(new Finding(RiggingFindings.WorkingUnknown, name(i), steady, unit: "kN"));
        }
        else if (o.RatedUtilisation > 1)
        {
            findings.Add(new Finding(p.Kind == PlaceKind.Shackle ? RiggingFindings.ShackleRated : RiggingFindings.RatedExceeded, name(i), steady, allowed, "kN"));
        }
        else if (o.RatedUtilisation * Near > 1)
        {
            findings.Add(new Finding(RiggingFindings.WithinTenPercent, RiggingPhrases.AtRated.With(name(i)), steady, allowed, "kN"));
        }
    }
}
