using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Proof loads and scopes of gear standards, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="GearSources.ShackleProof"/>, <see cref="GearSources.ShackleFactor"/>, <see cref="GearSources.ProofNoCapacity"/>, <see cref="GearSources.NavalShackle"/>, <see cref="GearSources.Lashing"/>.</remarks>
internal static class GearKernel
{
    /// <summary>Working load limit up to which a US shackle has factor 5, N.</summary>
    public const double ShackleLimit = 150 * MarkingKernel.ShortTon;

    /// <summary>Proof load of a web sling or a single-leg chain sling over its rating.</summary>
    public const double SlingProof = 2;

    /// <summary>Whether EN 13889 speaks about a shackle: 0.5 to 25 t.</summary>
    public static bool InEuropeanShackleScope(double workingNewtons)
    {
        // The limits are whole and half tonnes; a value within rounding of one belongs to the scope.
        var tonnes = Math.Round(workingNewtons / MarkingKernel.Tonne, 9);
        return tonnes is >= 0.5 and <= 25;
    }

    /// <summary>Lower multiple of the limit at which a shackle is proof tested.</summary>
    public static double ShackleProofLow(double workingNewtons) => workingNewtons <= ShackleLimit ? 2 : 1.33;

    /// <summary>Upper multiple of the limit at which a shackle is proof tested.</summary>
    public static double ShackleProofHigh(double workingNewtons) => workingNewtons <= ShackleLimit ? 2.2 : 2;

    /// <summary>Naval working load of a shackle over its proof load.</summary>
    public static double NavalShare(bool gradeA) => gradeA ? 0.5 : 0.4;
}
