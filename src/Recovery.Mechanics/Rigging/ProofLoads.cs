using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Proof loads of gear: a test that must leave no damage. A proof load is no capacity, and a pull that was survived is no proof.</summary>
/// <remarks>Sling 2 x rating (DOE-STD-1090-96, primary); shackle 2.0 to 2.2 x the limit up to 150 short tons, 1.33 to 2 above (ASME B30.26-2010, reported); naval working load 50 % of proof for grade A, 40 % for grade B (TB 55-1900-232-10, primary).</remarks>
public static class ProofLoads
{
    /// <summary>Proof load of a web sling or of a single-leg alloy chain sling.</summary>
    /// <param name="rating">Its straight rating, 1 to 20,000 kN.</param>
    /// <returns>The proof load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside its range.</exception>
    public static Force OfSling(Force rating) => Force.FromNewtons(GearKernel.SlingProof * Guard.Newtons(rating, 1, 20000, nameof(rating)));

    /// <summary>Least proof load of a shackle.</summary>
    /// <param name="workingLoadLimit">Its working load limit, 1 to 20,000 kN.</param>
    /// <returns>The lower end of the test load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    public static Force OfShackleLeast(Force workingLoadLimit)
    {
        var wll = Guard.Newtons(workingLoadLimit, 1, 20000, nameof(workingLoadLimit));
        return Force.FromNewtons(wll * GearKernel.ShackleProofLow(wll));
    }

    /// <summary>Greatest proof load of a shackle.</summary>
    /// <param name="workingLoadLimit">Its working load limit, 1 to 20,000 kN.</param>
    /// <returns>The upper end of the test load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    public static Force OfShackleMost(Force workingLoadLimit)
    {
        var wll = Guard.Newtons(workingLoadLimit, 1, 20000, nameof(workingLoadLimit));
        return Force.FromNewtons(wll * GearKernel.ShackleProofHigh(wll));
    }

    /// <summary>Naval working load of a shackle from its proof load.</summary>
    /// <param name="proofLoad">Its proof load, 1 to 20,000 kN.</param>
    /// <param name="gradeA">True for grade A (50 %), false for grade B (40 %).</param>
    /// <returns>The working load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The proof load is outside its range.</exception>
    public static Force NavalWorkingLoad(Force proofLoad, bool gradeA) => Force.FromNewtons(GearKernel.NavalShare(gradeA) * Guard.Newtons(proofLoad, 1, 20000, nameof(proofLoad)));
}
