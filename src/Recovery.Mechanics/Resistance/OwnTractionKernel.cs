using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the stuck machine's own wheels grip, once: Brixius, bias constants, slip 0.30, on the loads beside the belly. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.Brixius"/>; slip limit and loads beside the belly are judgement (<see cref="ResistanceSources.Composition"/>).</remarks>
internal static class OwnTractionKernel
{
    /// <summary>Gross traction of one axle; 0 where it is not driven or carries nothing.</summary>
    public static double Gross(DemandFlat f, int axle, double bellyLoad, double indexPascals)
    {
        var load = Load(f, axle, bellyLoad);
        if (!f.Driven[axle] || !(load > 0)) return 0;
        return load * BrixiusKernel.GrossTractionRatio(Numeric(f, axle, bellyLoad, indexPascals), CriticalIndexKernel.PlanningSlip, BrixiusConstants.Bias);
    }

    /// <summary>Motion resistance of one axle by the wheel model: at the planning slip where it is driven, towed where not.</summary>
    public static double Resistance(DemandFlat f, int axle, double bellyLoad, double indexPascals)
    {
        var load = Load(f, axle, bellyLoad);
        if (!(load > 0)) return 0;
        return load * BrixiusKernel.MotionResistanceRatio(Numeric(f, axle, bellyLoad, indexPascals), f.Driven[axle] ? CriticalIndexKernel.PlanningSlip : 0, BrixiusConstants.Bias);
    }

    /// <summary>Gross traction of all driven axles.</summary>
    public static double Gross(DemandFlat f, double bellyLoad, double indexPascals)
    {
        double sum = 0;
        for (var i = 0; i < f.Count.Length; i++) sum += Gross(f, i, bellyLoad, indexPascals);
        return sum;
    }

    /// <summary>Net traction of all driven axles: what they grip less what they cost to roll while they slip.</summary>
    public static double Net(DemandFlat f, double bellyLoad, double indexPascals)
    {
        double sum = 0;
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (f.Driven[i]) sum += Gross(f, i, bellyLoad, indexPascals) - Resistance(f, i, bellyLoad, indexPascals);
        }

        return sum;
    }

    /// <summary>What the wheel model asks of the driven axles where they are towed, as a demand counts it: radial, slip 0. Their net traction holds their rolling already.</summary>
    public static double Towed(DemandFlat f, double bellyLoad, double indexPascals)
    {
        double sum = 0;
        for (var i = 0; i < f.Count.Length; i++)
        {
            var load = Load(f, i, bellyLoad);
            if (f.Driven[i] && load > 0) sum += load * BrixiusKernel.MotionResistanceRatio(Numeric(f, i, bellyLoad, indexPascals), 0, BrixiusConstants.Radial);
        }

        return sum;
    }

    /// <summary>Whether a wheel model covers the machine's own drive: some driven axle carries a load, and none of those is buried.</summary>
    public static bool Covers(DemandFlat f, double bellyLoad)
    {
        var any = false;
        for (var i = 0; i < f.Count.Length; i++)
        {
            if (!f.Driven[i] || !(Load(f, i, bellyLoad) > 0)) continue;
            if (f.Buried[i]) return false;
            any = true;
        }

        return any;
    }

    /// <summary>Wheel numeric on the load beside the belly; 0 where the axle carries nothing.</summary>
    public static double Numeric(DemandFlat f, int axle, double bellyLoad, double indexPascals) => Load(f, axle, bellyLoad) > 0 ? indexPascals * f.NumericPerPascal[axle] / f.Carry(axle, bellyLoad) : 0;

    /// <summary>Load of an axle beside the belly.</summary>
    public static double Load(DemandFlat f, int axle, double bellyLoad) => f.Load[axle] * f.Carry(axle, bellyLoad);
}
