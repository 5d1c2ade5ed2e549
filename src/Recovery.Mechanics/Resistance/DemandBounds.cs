using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>Low, central and high of the whole-machine sum. Each end is the extreme over the interval of the floor, which all terms of a sum share.</summary>
internal struct DemandBounds
{
    /// <summary>Rolling ratio of buried wheels at low, central and high (judgement).</summary>
    public const double RhoLow = 0.10, RhoCentral = 0.15, RhoHigh = 0.25;

    private const int Between = 6;

    /// <summary>Narrowings of the golden section: 0.618^16 of two steps of the grid, about a ten-thousandth of the interval.</summary>
    private const int Narrowings = 16;

    private const double Golden = 0.6180339887498949;

    /// <summary>What a narrowing must win, of the sum: less is rounding, and the named floor stays.</summary>
    private const double Won = 1e-9;

    /// <summary>Terms of the low.</summary>
    public DemandTerms Low;

    /// <summary>Terms of central.</summary>
    public DemandTerms Central;

    /// <summary>Terms of the high.</summary>
    public DemandTerms High;

    /// <summary>Whether the low or the high comes from the straight frame, where the suspension is undeclared and both are worked.</summary>
    public bool LowOnStraightFrame, HighOnStraightFrame;

    /// <summary>Works out all three.</summary>
    public static void Evaluate(DemandFlat f, in DemandAssumptions a, out DemandBounds result)
    {
        result.LowOnStraightFrame = result.HighOnStraightFrame = false;
        DemandKernel.Compose(f, CentralState(a, a.Turning == false), out result.Central);
        Extreme(f, LowState(a), a, -1, out result.Low);
        if (result.Low.Total > result.Central.Total)
        {
            result.Low = result.Central;
            result.Low.StandsIn = true;
        }

        var high = HighState(a, locked: false);
        Extreme(f, high, a, 1, out result.High);
        if (a.Turning != true)
        {
            high.Locked = true;
            Extreme(f, high, a, 1, out var locked);
            if (locked.Total > result.High.Total) result.High = locked;
        }

        if (result.High.Total < result.Central.Total)
        {
            result.High = result.Central;
            result.High.StandsIn = true;
        }
    }

    /// <summary>The state of the low sum, its floor still open: vented and turning.</summary>
    public static DemandState LowState(in DemandAssumptions a) => new() { Wall = a.Strength.WallLow, Index = a.IndexLow, Rho = RhoLow, Exit = a.ExitLow, Meets = a.MeetsLow };

    /// <summary>The state of the central sum.</summary>
    public static DemandState CentralState(in DemandAssumptions a, bool locked) => new()
    {
        Wall = a.Strength.WallCentral,
        Floor = a.Strength.FloorCentral,
        Index = a.IndexCentral,
        Rho = RhoCentral,
        Locked = locked,
        Sealed = !a.Vented,
        VentedShare = a.PartVented ? SuctionKernel.PartVentedShare : 0,
        Uplift = a.Vented ? 0 : a.PartVented ? SuctionKernel.UpliftPartVented : SuctionKernel.UpliftSealed,
        Exit = a.ExitCentral,
        Meets = a.MeetsCentral,
    };

    /// <summary>The state of the high sum, its floor still open.</summary>
    public static DemandState HighState(in DemandAssumptions a, bool locked) => new()
    {
        Wall = a.Strength.WallHigh,
        Index = a.IndexHigh,
        Rho = RhoHigh,
        Locked = locked,
        Sealed = !a.Vented,
        Uplift = a.Vented ? 0 : 1,
        Exit = a.ExitHigh,
        Meets = a.MeetsHigh,
    };

    /// <summary>The least (sign -1) or greatest (sign +1) sum over the interval of the floor: both ends, kinks that a formula gives, and points between.</summary>
    private static void Extreme(DemandFlat f, DemandState state, in DemandAssumptions a, int sign, out DemandTerms best)
    {
        double from = a.Strength.FloorLow, to = a.Strength.FloorHigh;
        state.Floor = from;
        DemandKernel.Compose(f, state, out best);
        if (!(to > from)) return;
        Try(f, ref state, to, sign, ref best);
        for (var i = 1; i <= Between; i++) Try(f, ref state, from + ((to - from) * i / (Between + 1)), sign, ref best);
        if (f.BellyArea > 0)
        {
            Inside(f, ref state, UnderbodyKernel.ChangeOverFloor(f.Weight, f.BellyArea, f.WheelArea), from, to, sign, ref best);
            Inside(f, ref state, BuriedWheelKernel.AdhesionCapPascals / f.AdhesionFactor, from, to, sign, ref best);
            if (state.Sealed)
            {
                Inside(f, ref state, (BreakoutKernel.SuctionLimitPascals + (f.UnitWeight * f.BellyImmersion)) / (state.Uplift * UnderbodyKernel.BearingFactor), from, to, sign, ref best);
                for (var i = 0; i < f.Count.Length; i++)
                {
                    var area = f.Count[i] * f.Width[i] * f.Contact[i];
                    Inside(f, ref state, ((f.Load[i] / area) - (f.UnitWeight * f.Sinkage[i])) / UnderbodyKernel.BearingFactor, from, to, sign, ref best);
                }
            }

            Narrow(f, state, a, sign, ref best);
        }
    }

    /// <summary>A golden section round the least or greatest point found, because no grid meets every kink: a hollow where a wheel goes over to the wheel model, a peak where a face gives way to its step or the uplift to the axle that limits it. Without a belly neither sum depends on the floor but for base shear, which is greatest at its end.</summary>
    private static void Narrow(DemandFlat f, DemandState state, in DemandAssumptions a, int sign, ref DemandTerms best)
    {
        var step = (a.Strength.FloorHigh - a.Strength.FloorLow) / (Between + 1);
        double from = Math.Max(a.Strength.FloorLow, best.Floor - step), to = Math.Min(a.Strength.FloorHigh, best.Floor + step);
        if (!(to > from)) return;
        double left = to - (Golden * (to - from)), right = from + (Golden * (to - from));
        double atLeft = Sum(f, ref state, left, sign, ref best), atRight = Sum(f, ref state, right, sign, ref best);
        for (var i = 0; i < Narrowings; i++)
        {
            if (sign * atLeft > sign * atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - (Golden * (to - from));
                atLeft = Sum(f, ref state, left, sign, ref best);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + (Golden * (to - from));
                atRight = Sum(f, ref state, right, sign, ref best);
            }
        }
    }

    private static double Sum(DemandFlat f, ref DemandState state, double floor, int sign, ref DemandTerms best)
    {
        state.Floor = floor;
        DemandKernel.Compose(f, state, out var terms);
        if (sign * (terms.Total - best.Total) > Won * Math.Abs(best.Total)) best = terms;
        return terms.Total;
    }

    private static void Inside(DemandFlat f, ref DemandState state, double floor, double from, double to, int sign, ref DemandTerms best)
    {
        if (floor > from && floor < to) Try(f, ref state, floor, sign, ref best);
    }

    private static void Try(DemandFlat f, ref DemandState state, double floor, int sign, ref DemandTerms best)
    {
        state.Floor = floor;
        DemandKernel.Compose(f, state, out var terms);
        if (sign * (terms.Total - best.Total) > 0) best = terms;
    }
}
