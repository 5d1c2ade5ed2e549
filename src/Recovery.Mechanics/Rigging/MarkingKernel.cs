using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Units of markings and what ratings say of each other, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="GearSources.MarkingReadings"/>; units by definition.</remarks>
internal static class MarkingKernel
{
    /// <summary>Pound-force, N.</summary>
    public const double Pound = PhysicalConstants.KilogramsPerPound * PhysicalConstants.StandardGravity;

    /// <summary>Tonne-force, N.</summary>
    public const double Tonne = 1000 * PhysicalConstants.StandardGravity;

    /// <summary>Short ton-force, N.</summary>
    public const double ShortTon = 2000 * Pound;

    /// <summary>Long ton-force, N.</summary>
    public const double LongTon = 2240 * Pound;

    /// <summary>Breaking strength of a lashing assembly over its lashing capacity (from memory).</summary>
    public const double LashingFactor = 2;

    /// <summary>Newtons a unit; not a number for a ton of which nobody knows which.</summary>
    public static double Newtons(MarkingUnit unit) => unit switch
    {
        MarkingUnit.Kilonewton => 1000,
        MarkingUnit.Decanewton => 10,
        MarkingUnit.Tonne => Tonne,
        MarkingUnit.ShortTon => ShortTon,
        MarkingUnit.LongTon => LongTon,
        MarkingUnit.Pound => Pound,
        _ => double.NaN,
    };

    /// <summary>Symbol of a unit.</summary>
    public static string Symbol(MarkingUnit unit) => unit switch
    {
        MarkingUnit.Kilonewton => "kN",
        MarkingUnit.Decanewton => "daN",
        MarkingUnit.Tonne => "t",
        MarkingUnit.ShortTon => "short ton",
        MarkingUnit.LongTon => "long ton",
        MarkingUnit.Pound => "lb",
        _ => "ton (which is not known)",
    };

    /// <summary>WLL = MBS/DF.</summary>
    public static double Working(double breakingNewtons, double designFactor) => breakingNewtons / designFactor;

    /// <summary>MBS = WLL x DF.</summary>
    public static double Breaking(double workingNewtons, double designFactor) => workingNewtons * designFactor;
}
