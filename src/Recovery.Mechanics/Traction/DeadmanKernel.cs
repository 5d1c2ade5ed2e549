using System;

namespace Recovery.Mechanics.Traction;

/// <summary>A log buried across the line of pull: holding power, length, slenderness and place. SI in, SI out, no allocation.</summary>
/// <remarks>Sources: <see cref="AnchorSources.Deadman"/>, <see cref="AnchorSources.DeadmanStraightUp"/>, <see cref="AnchorSources.DeadmanTrench"/>; units by definition.</remarks>
internal static class DeadmanKernel
{
    /// <summary>One foot, m.</summary>
    public const double Foot = Provenance.PhysicalConstants.MetresPerFoot;

    /// <summary>One pound-force a square foot, Pa.</summary>
    public const double PoundPerSquareFoot = Provenance.PhysicalConstants.PascalsPerPsf;

    /// <summary>Least mean depth of the table, m.</summary>
    public const double LeastDepth = 3 * Foot;

    /// <summary>Greatest mean depth of the table, m.</summary>
    public const double GreatestDepth = 7 * Foot;

    /// <summary>Flattest slope of the table: run over rise.</summary>
    public const double FlattestRun = 4;

    /// <summary>Least width taken for the trench of the line, m.</summary>
    public const double LeastTrench = Foot;

    /// <summary>Greatest length over diameter of a log.</summary>
    public const double LogSlenderness = 5;

    /// <summary>Greatest length over thickness of a squared timber.</summary>
    public const double TimberSlenderness = 9;

    /// <summary>Factor for rock or hardpan.</summary>
    public const double RockFactor = 5;

    /// <summary>Factor for fine-grained or wet sandy soil.</summary>
    public const double WetFactor = 0.5;

    /// <summary>Psf in loam: rows mean depth 3 to 7 ft, columns run 0 (straight up, from memory) to 4 for one of rise.</summary>
    private static readonly double[] Table =
    [
        600, 950, 1300, 1450, 1500,
        1050, 1750, 2200, 2600, 2700,
        1700, 2800, 3600, 4000, 4100,
        2400, 3800, 5100, 5800, 6000,
        3200, 5100, 7000, 8000, 8400,
    ];

    /// <summary>Holding power of loam on the bearing face, Pa: linear between the entries; deeper and flatter than the table, its last entry; -1 shallower than the table, where there is none.</summary>
    public static double HoldingPower(double meanDepth, double slopeRun)
    {
        double row = (meanDepth / Foot) - 3, column = Math.Min(slopeRun, FlattestRun);
        if (row < -1e-9) return -1;
        row = Math.Min(Math.Max(row, 0), 4);
        int i = Math.Min((int)row, 3), j = Math.Min((int)column, 3);
        double u = row - i, v = column - j;
        return PoundPerSquareFoot * (((1 - u) * ((At(i, j) * (1 - v)) + (At(i, j + 1) * v))) + (u * ((At(i + 1, j) * (1 - v)) + (At(i + 1, j + 1) * v))));

        static double At(int row, int column) => Table[(5 * row) + column];
    }

    /// <summary>Length of log for a load: load/(HP face) + trench.</summary>
    public static double Length(double load, double holdingPower, double face, double trench) => (load / (holdingPower * face)) + trench;

    /// <summary>Load that a log holds: HP face (length - trench), not below zero.</summary>
    public static double Holds(double length, double holdingPower, double face, double trench) => Math.Max(0, holdingPower * face * (length - trench));

    /// <summary>Distance from the upper end of the line back to the deadman: (height + mean depth) run.</summary>
    public static double Distance(double lineHeight, double meanDepth, double slopeRun) => (lineHeight + meanDepth) * slopeRun;
}
