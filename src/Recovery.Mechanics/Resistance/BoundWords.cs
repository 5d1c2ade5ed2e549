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

    private static string How(PullDemand demand, DemandBound bound, CompiledStuckMachine frame, in DemandTerms terms, in DemandState s, List<string> uncut)
    {
        var f = frame.Flat;
        var words = new List<string>();
        if (terms.StandsIn) words.Add("its own sum would cross central, so it takes central");
        words.Add(s.Locked ? "braked wheels slide locked" : f.AnyBuried ? "wheels turn, buried ones at " + Text.Number(s.Rho) + " of their load" : "wheels roll");
        if (f.AnyBuried)
        {
            words.Add(!s.Sealed ? "vented" : f.Dug ? "dug out" + (f.BellyArea > 0 ? ", belly sealed" : string.Empty) : s.VentedShare > 0 ? "part-vented, " + Text.Number(1 - s.VentedShare) + " of the suction" : "sealed");
            words.Add(f.Dug ? "no soil ahead of the wheels" : uncut.Count == 0 ? "drawn back along open ruts" : "uncut soil ahead of the " + string.Join(", ", uncut));
            words.Add("exit " + Exit(demand.Stuck, s.Exit));
        }

        if (f.BellyArea > 0 && s.Sealed && s.Uplift > 0) words.Add(!f.AnyBuried ? "no uplift of its belly, because on rolling wheels nothing rises" : terms.UpliftDeveloped > 0 ? (s.Uplift < 1 ? Text.Number(s.Uplift) + " of" : "all") + " the uplift of its belly, as far as the wheels bear it" : "no uplift of its belly, which the wheels could not bear");
        if (f.AnyBuried || f.BellyArea > 0 || terms.Base > 0) words.Add(Soil(bound, frame, f, terms, s));
        if (demand.Stuck.Machine.SuspensionMatters) words.Add(frame.Frame == Suspension.StraightFrame ? "straight frame" : "linked axles");
        return string.Join("; ", words);
    }

    private static string Exit(StuckMachine stuck, double exit)
    {
        var slope = exit > 0 ? "1:" + Text.Number(1 / Math.Tan(exit), 3) : "level";
        return slope + (stuck.DugSlope is { } dug && Math.Abs(dug.Radians - exit) < Alike ? " as dug" : stuck.ExitSlope is null ? ", not measured" : " as measured");
    }

    private static string Soil(DemandBound bound, CompiledStuckMachine frame, DemandFlat f, in DemandTerms terms, in DemandState s)
    {
        var strength = frame.Assumptions.Strength;
        if (bound == DemandBound.Central || terms.StandsIn) return "middle strengths of wall and floor";
        var wall = bound == DemandBound.Low ? "weakest wall" : "strongest wall";
        var most = bound == DemandBound.Low ? "least" : "greatest";
        if (!(strength.FloorHigh > strength.FloorLow)) return wall + ", the one floor there is";
        if (Near(s.Floor, strength.FloorLow)) return wall + ", weakest floor, where the sum is " + most;
        if (Near(s.Floor, strength.FloorHigh)) return wall + ", strongest floor, where the sum is " + most;
        return wall + (f.BellyArea > 0 && Near(s.Floor, UnderbodyKernel.ChangeOverFloor(f.Weight, f.BellyArea, f.WheelArea))
            ? ", floor at which the belly goes over to its share by area, where the sum is " + most
            : ", floor between its ends, where the sum is " + most);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= Alike * b;
}
