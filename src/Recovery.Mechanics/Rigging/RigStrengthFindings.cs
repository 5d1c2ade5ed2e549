using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Turns utilisations into findings by the levels of the rig check. What one careless take-up would part stands first.</summary>
internal static class RigStrengthFindings
{
    /// <summary>A pass by less than this factor says so.</summary>
    public const double Near = 1.1;

    public static void Add(RigCheck check, List<Finding> findings)
    {
        var weakest = Careless(check, findings);
        for (var i = 0; i < check.Places.Length; i++)
        {
            ref readonly var p = ref check.Places[i];
            ref readonly var o = ref check.Outcomes[i];
            Rated(check, i, p, o, findings);
            if (double.IsNaN(p.Strength)) continue;
            Peak(check, i, p, o, findings);
            if (check.Loads.Procedure.SecondPull is null && o.Reserve >= p.Floor && o.SecondReserve < p.Floor)
                findings.Add(new Finding(RiggingFindings.SecondPullLow, Name(check, i), p.Floor, o.SecondReserve));
        }

        if (weakest >= 0 && check.Outcomes[weakest].CarelessReserve >= RigKernel.CarelessFloor)
            findings.Add(new Finding(RiggingFindings.CarelessHolds, Name(check, weakest), RigKernel.CarelessFloor, check.Outcomes[weakest].CarelessReserve));
    }

    /// <summary>Places in the order of their careless reserve: those that would part, those that keep too little, those that keep it by less than a tenth. Gives the weakest.</summary>
    private static int Careless(RigCheck check, List<Finding> findings)
    {
        const double Parts = 1;
        int weakest = -1, start = findings.Count;
        for (var i = 0; i < check.Outcomes.Length; i++)
        {
            var reserve = check.Outcomes[i].CarelessReserve;
            if (double.IsNaN(reserve)) continue;
            if (weakest < 0 || reserve < check.Outcomes[weakest].CarelessReserve) weakest = i;
            if (reserve >= Near * RigKernel.CarelessFloor) continue;
            var finding = reserve < Parts ? new Finding(RiggingFindings.CarelessParts, Name(check, i), Parts, reserve)
                : reserve < RigKernel.CarelessFloor ? new Finding(RiggingFindings.CarelessLow, Name(check, i), RigKernel.CarelessFloor, reserve)
                : new Finding(RiggingFindings.WithinTenPercent, Name(check, i) + " on a careless take-up", RigKernel.CarelessFloor, reserve);
            var k = findings.Count;
            while (k > start && findings[k - 1].Available > reserve) k--;
            findings.Insert(k, finding);
        }

        return weakest;
    }

    private static void Peak(RigCheck check, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight)
        {
            findings.Add(o.Reserve < p.Floor
                ? new Finding(RiggingFindings.BightBelow, Name(check, i), p.Floor, o.Reserve)
                : new Finding(RiggingFindings.BightNoEvidence, Name(check, i), p.Floor, o.Reserve));
            if (o.Reserve >= p.Floor && o.Reserve < Near * p.Floor) findings.Add(new Finding(RiggingFindings.WithinTenPercent, Name(check, i), p.Floor, o.Reserve));
            return;
        }

        if (o.Reserve < p.Floor)
        {
            findings.Add(new Finding(RiggingFindings.BelowFloor, Name(check, i), p.Floor, o.Reserve));
            return;
        }

        if (o.PeakUtilisation > 1)
        {
            findings.Add(p.Kind == PlaceKind.Shackle
                ? new Finding(RiggingFindings.ShacklePeak, Name(check, i), p.Share * check.Loads.Output.Procedure / 1000, p.PeakLimit / 1000, "kN")
                : new Finding(RiggingFindings.PartialFactors, Name(check, i), p.Full, o.Reserve));
            if (o.Reserve < Near * p.Floor) findings.Add(new Finding(RiggingFindings.WithinTenPercent, Name(check, i), p.Floor, o.Reserve));
        }
        else if (o.PeakUtilisation * Near > 1)
        {
            findings.Add(p.Kind == PlaceKind.Shackle
                ? new Finding(RiggingFindings.WithinTenPercent, Name(check, i), p.Share * check.Loads.Output.Procedure / 1000, p.PeakLimit / 1000, "kN")
                : new Finding(RiggingFindings.WithinTenPercent, Name(check, i), p.Full, o.Reserve));
        }
    }

    private static void Rated(RigCheck check, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight) return;
        double steady = p.Share * check.Loads.Output.Steady / 1000, allowed = p.Rated / 1000;
        if (double.IsNaN(o.RatedUtilisation))
        {
            // Where the strength is not known either, the rating itself is the finding.
            if (!double.IsNaN(p.Strength)) findings.Add(new Finding(RiggingFindings.WorkingUnknown, Name(check, i), steady, unit: "kN"));
        }
        else if (o.RatedUtilisation > 1)
        {
            findings.Add(new Finding(p.Kind == PlaceKind.Shackle ? RiggingFindings.ShackleRated : RiggingFindings.RatedExceeded, Name(check, i), steady, allowed, "kN"));
        }
        else if (o.RatedUtilisation * Near > 1)
        {
            findings.Add(new Finding(RiggingFindings.WithinTenPercent, Name(check, i), steady, allowed, "kN"));
        }
    }

    private static string Name(RigCheck check, int i) => check.Part(i).Name;
}
