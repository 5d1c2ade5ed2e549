using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Planning;

/// <summary>What holds a freed machine back on a slope: the rolling resistance of its wheels on the surface, nothing else.</summary>
internal static class RollingAway
{
    /// <summary>The least on its way out: the firmest of its own ground, the puller's and what the puller may reach; 0.04 of the weight where a road or yard is in reach.</summary>
    public static double HoldsOnFirmest(RecoveryPlan plan) => HoldsOnFirmest(plan.Compiled.Stuck.Flat, plan.Tower.HardSurfaceInReach, plan.Stuck.Soil.ConeIndex.Pascals, plan.Compiled.Tower.FirmestIndex);

    /// <summary>The same from plain numbers.</summary>
    public static double HoldsOnFirmest(DemandFlat f, bool hardSurface, double ownIndexPascals, double towerIndexPascals) => Holds(f, hardSurface ? double.PositiveInfinity : System.Math.Max(ownIndexPascals, towerIndexPascals));

    /// <summary>Rolling resistance of the whole machine at slip 0 on a cone index, radial constants, N.</summary>
    public static double Holds(RecoveryPlan plan, double coneIndexPascals) => Holds(plan.Compiled.Stuck.Flat, coneIndexPascals);

    /// <summary>The same from plain numbers.</summary>
    public static double Holds(DemandFlat f, double coneIndexPascals)
    {
        double sum = 0;
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (f.Load[i] > 0) sum += f.Load[i] * BrixiusKernel.MotionResistanceRatio(coneIndexPascals * f.NumericPerPascal[i], 0, BrixiusConstants.Radial);
        }

        return sum;
    }
}
