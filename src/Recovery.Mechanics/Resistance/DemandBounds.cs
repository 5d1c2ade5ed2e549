using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Low, central and high of the whole-machine sum. Each end is the extreme over the interval of the floor, which all terms of a sum share.</summary>
internal struct DemandBounds
{
    /// <summary>Rolling ratio of buried wheels at low, central and high (judgement).</summary>
    public const double RhoLow = 0.10, RhoCentral = 0.15, RhoHigh = 0.25;

    /// <summary>Width, over its piece, to which a hollow is narrowed down.</summary>
    private const double Narrowest = 1e-9;

    /// <summary>Step, over its piece, by which a slope is looked at.</summary>
    private const double Step = 1e-6;

    /// <summary>What a floor must win, of the sum: less is rounding, and the floor with a name stays.</summary>
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

    /// <summary>The least (sign -1) or greatest (sign +1) sum over the interval of the floor. The greatest lies at an end or on a bend; the least may also lie in a hollow between two of them. Without a belly neither sum depends on the floor but for base shear, which is least and greatest at its ends.</summary>
    private static void Extreme(DemandFlat f, DemandState state, in DemandAssumptions a, int sign, out DemandTerms best)
    {
        double from = a.Strength.FloorLow, to = a.Strength.FloorHigh;
        state.Floor = from;
        DemandKernel.Compose(f, state, out best);
        if (!(to > from)) return;
        Sum(f, ref state, to, sign, ref best);
        if (!(f.BellyArea > 0)) return;
        Span<double> floors = stackalloc double[FloorBends.Most(f.Count.Length) + 2];
        var n = FloorBends.Of(f, state, from, to, floors);
        for (var i = 0; i < n; i++) Sum(f, ref state, floors[i], sign, ref best);
        if (sign > 0) return;
        (floors[n], floors[n + 1]) = (from, to);
        Sort(floors.Slice(0, n + 2));
        for (var i = 0; i <= n; i++) Hollow(f, ref state, floors[i], floors[i + 1], ref best);
    }

    /// <summary>The least between two bends, where the sum bends upwards: only where it falls away from both ends.</summary>
    private static void Hollow(DemandFlat f, ref DemandState state, double left, double right, ref DemandTerms best)
    {
        var step = Step * (right - left);
        if (!(step > 0) || !(Sum(f, ref state, left + step, -1, ref best) < Sum(f, ref state, left, -1, ref best)) || !(Sum(f, ref state, right - step, -1, ref best) < Sum(f, ref state, right, -1, ref best))) return;
        Sum(f, ref state, Least(f, state, left, right), -1, ref best);
    }

    private static double Least(DemandFlat f, DemandState state, double left, double right) => GoldenSection.Crest(
        floor =>
        {
            state.Floor = floor;
            DemandKernel.Compose(f, state, out var terms);
            return -terms.Total;
        },
        left,
        right,
        Narrowest * (right - left));

    private static void Sort(Span<double> floors)
    {
        for (var i = 1; i < floors.Length; i++)
        {
            for (var k = i; k > 0 && floors[k] < floors[k - 1]; k--) (floors[k], floors[k - 1]) = (floors[k - 1], floors[k]);
        }
    }

    private static double Sum(DemandFlat f, ref DemandState state, double floor, int sign, ref DemandTerms best)
    {
        state.Floor = floor;
        DemandKernel.Compose(f, state, out var terms);
        if (sign * (terms.Total - best.Total) > Won * Math.Abs(best.Total)) best = terms;
        return terms.Total;
    }
}
