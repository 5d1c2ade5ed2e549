using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>What a stuck machine leaves open, as facts still to measure.</summary>
internal static class DemandAssumptionList
{
    private static readonly Assumption Exit = new("assume.exit-slope", "slope of the rut by which the machine has to come out", "1:10, 1:6 and 1:4 for low, central and high", "Each step steeper adds about 6 to 8 % of the weight to the demand.", ResistanceSources.ExitSlopes);
    private static readonly Assumption Uncut = new("assume.uncut-soil", "which wheels meet uncut soil", "none, the leading buried axle, all buried wheels", "Open ruts all the way take the soil ahead of the wheels out of the demand.", ResistanceSources.Composition);
    private static readonly Assumption Motion = new("assume.wheels-turn", "whether the wheels of the stuck machine turn", "turning at central; locked where that is worse at the high", "Knowing that they turn lowers the high.", ResistanceSources.Composition);
    private static readonly Assumption Sealed = new("assume.sealed", "whether air or water reaches the back of the wheels and the belly", "vented at the low, sealed at central and high", "Venting takes suction and uplift away.", ResistanceSources.Composition);
    private static readonly Assumption SealedBelly = new("assume.sealed-belly", "whether air or water reaches the belly", "sealed", "A vented belly no longer holds itself down; on rolling wheels nothing of that is in the pull.", ResistanceSources.Composition);

    public static IReadOnlyList<Assumption> From(StuckMachine stuck)
    {
        var assumptions = new List<Assumption>(stuck.Soil.Assumptions);
        if (!stuck.AnyWheelBuried)
        {
            // Nothing rises on rolling wheels, so the exit slope changes nothing; the seal decides whether the belly drags until it is freed.
            if (stuck.Belly is not null && stuck.Seal == Seal.Undeclared) assumptions.Add(SealedBelly);
            return assumptions.AsReadOnly();
        }

        if (stuck.ExitSlope is null) assumptions.Add(Exit);
        if (stuck.MeetsUncutSoil is null && stuck.DugSlope is null) assumptions.Add(Uncut);
        if (stuck.Wheels == WheelMotion.Undeclared) assumptions.Add(Motion);
        if (stuck.Seal == Seal.Undeclared) assumptions.Add(Sealed);
        return assumptions.AsReadOnly();
    }
}
