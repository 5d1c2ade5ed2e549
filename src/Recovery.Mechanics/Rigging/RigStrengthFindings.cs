using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Turns utilisations into findings by the levels of the rig check.</summary>
internal static class RigStrengthFindings
{
    private const double Near = 1.1;

    public static void Add(RigCheck check, List<Finding> findings)
    {
        var weakest = -1;
        for (var i = 0; i < check.Places.Length; i++)
        {
            ref readonly var p = ref check.Places[i];
            ref readonly var o = ref check.Outcomes[i];
            if (double.IsNaN(p.Strength) && p.Kind != PlaceKind.Shackle) continue;
            Peak(check, i, p, o, findings);
            Rated(check, i, p, o, findings);
            if (double.IsNaN(o.CarelessReserve)) continue;
            if (o.CarelessReserve < RigKernel.CarelessFloor)
                findings.Add(new Finding(RiggingFindings.CarelessLow, Name(check, i), RigKernel.CarelessFloor, o.CarelessReserve));
            if (weakest < 0 || o.CarelessReserve < check.Outcomes[weakest].CarelessReserve) weakest = i;
            if (check.Loads.Procedure.SecondPull is null && o.Reserve >= p.Floor && o.SecondReserve < p.Floor)
                findings.Add(new Finding(RiggingFindings.SecondPullLow, Name(check, i), p.Floor, o.SecondReserve));
        }

        if (weakest >= 0 && check.Outcomes[weakest].CarelessReserve >= RigKernel.CarelessFloor)
            findings.Add(new Finding(RiggingFindings.CarelessHolds, Name(check, weakest), RigKernel.CarelessFloor, check.Outcomes[weakest].CarelessReserve));
    }

    private static void Peak(RigCheck check, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight)
        {
            findings.Add(o.Reserve < p.Floor
                ? new Finding(RiggingFindings.BightBelow, Name(check, i), p.Floor, o.Reserve)
                : new Finding(RiggingFindings.BightNoEvidence, Name(check, i), p.Floor, o.Reserve));
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
            findings.Add(new Finding(RiggingFindings.WithinTenPercent, Name(check, i), p.Full, o.Reserve));
        }
    }

    private static void Rated(RigCheck check, int i, in RigPlace p, in RigOutcome o, List<Finding> findings)
    {
        if (p.Kind == PlaceKind.Bight || double.IsNaN(o.RatedUtilisation)) return;
        double steady = p.Share * check.Loads.Output.Steady / 1000, allowed = p.Rated / 1000;
        if (o.RatedUtilisation > 1)
            findings.Add(new Finding(p.Kind == PlaceKind.Shackle ? RiggingFindings.ShackleRated : RiggingFindings.RatedExceeded, Name(check, i), steady, allowed, "kN"));
        else if (o.RatedUtilisation * Near > 1)
            findings.Add(new Finding(RiggingFindings.WithinTenPercent, Name(check, i), steady, allowed, "kN"));
    }

    private static string Name(RigCheck check, int i) => check.Part(i).Name;
}
