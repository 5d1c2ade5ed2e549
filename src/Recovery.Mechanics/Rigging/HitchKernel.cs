using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Hitch factors on the straight rating, once. Angles in radians; what is not permitted is not a number.</summary>
/// <remarks>Sources: <see cref="PartSources.En1492Modes"/>, <see cref="PartSources.As1353Basket"/>, <see cref="PartSources.ChokerWireRope"/>, <see cref="PartSources.ChokerChainUs"/>, <see cref="PartSources.ChokerChainAu"/>, <see cref="PartSources.ChainChokeAngles"/>, <see cref="PartSources.WidestLegs"/>.</remarks>
internal static class HitchKernel
{
    /// <summary>Widest leg from the line of pull, degrees.</summary>
    public const double WidestLeg = 60;

    /// <summary>Widest leg of a basket that counts as parallel in Europe, degrees.</summary>
    public const double ParallelLeg = 7;

    /// <summary>Widest included angle of a basket, degrees.</summary>
    public const double WidestBasket = 120;

    private const double Degree = Math.PI / 180;

    /// <summary>Symmetric basket, 2 cos(beta); beta from the line of pull, to 60 degrees.</summary>
    public static double Basket(double beta) => Legs(2, beta);

    /// <summary>Legs that count, n cos(beta), to 60 degrees.</summary>
    public static double Legs(int counted, double beta) => Degrees(beta) <= WidestLeg ? counted * Math.Cos(beta) : double.NaN;

    /// <summary>Legs that count: of an even set all up to three; of an uneven one 1 of 2, 2 of 3 and 4.</summary>
    public static int Counted(int legs, bool even) => even ? Math.Min(legs, 3) : legs <= 2 ? 1 : 2;

    /// <summary>Mode factor of EN 1492. It holds the angle at the far end of its band; a basket counts as parallel to 7 degrees from the line of pull.</summary>
    public static double European(SlingMode mode, double beta)
    {
        var near = Degrees(beta) <= 45;
        if (mode >= SlingMode.BasketParallel && Degrees(beta) > WidestLeg) return double.NaN;
        return mode switch
        {
            SlingMode.Straight => 1,
            SlingMode.Choked => 0.8,
            SlingMode.BasketParallel when Degrees(beta) <= ParallelLeg => 2,
            SlingMode.ThreeOrFourLeg => near ? 2.1 : 1.5,
            _ => near ? 1.4 : 1,
        };
    }

    /// <summary>Basket factor of AS 1353 by included angle: the printed row at or beyond the angle, no interpolation.</summary>
    public static double Australian(double included)
    {
        var degrees = Degrees(included);
        return degrees <= 30 ? 1.9 : degrees <= 60 ? 1.73 : degrees <= 90 ? 1.41 : degrees <= WidestBasket ? 1 : double.NaN;
    }

    /// <summary>Choker factor on the straight rating.</summary>
    public static double Choker(ChokerKind kind) => kind switch
    {
        ChokerKind.Webbing or ChokerKind.ChainUnitedStates => StrengthKernel.Choker,
        ChokerKind.NaturalFibreRope => 0.5,
        _ => 0.75,
    };

    /// <summary>Choked fibre chain to European practice, share of the single-leg rating: from 120 deg 0.80, from 90 0.65, from 60 0.55, from 30 0.40; below not given. Never on top of a choker factor.</summary>
    public static double ChainChoke(double radians)
    {
        var degrees = Degrees(radians);
        return degrees >= 120 ? 0.80 : degrees >= 90 ? 0.65 : degrees >= 60 ? 0.55 : degrees >= 30 ? 0.40 : double.NaN;
    }

    /// <summary>Limit of a colour of EN 1492, t; not a number where the tag alone tells.</summary>
    public static double ColourTonnes(SlingColour colour) => colour switch
    {
        SlingColour.Violet => 1,
        SlingColour.Green => 2,
        SlingColour.Yellow => 3,
        SlingColour.Grey => 4,
        SlingColour.Red => 5,
        SlingColour.Brown => 6,
        SlingColour.Blue => 8,
        _ => double.NaN,
    };

    /// <summary>Whole degrees are edges; a value within rounding of one belongs to it.</summary>
    public static double Degrees(double radians) => Math.Round(radians / Degree, 9);
}
