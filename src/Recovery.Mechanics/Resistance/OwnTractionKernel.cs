using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the stuck machine's own wheels grip, once: Brixius, bias constants, slip 0.30, on the loads beside the belly. SI in, SI out.</summary>
internal static class OwnTractionKernel
{
    /// <summary>Gross traction of one axle; 0 where it is not driven or carries nothing.</summary>
    public static double Gross(DemandFlat f, int axle, double carry, double indexPascals)
    {
        if (!f.Driven[axle] || !(f.Load[axle] > 0)) return 0;
        return f.Load[axle] * carry * BrixiusKernel.GrossTractionRatio(Numeric(f, axle, carry, indexPascals), CriticalIndexKernel.PlanningSlip, BrixiusConstants.Bias);
    }

    /// <summary>Motion resistance of one axle by the wheel model: at the planning slip where it is driven, towed where not.</summary>
    public static double Resistance(DemandFlat f, int axle, double carry, double indexPascals)
    {
        if (!(f.Load[axle] > 0)) return 0;
        return f.Load[axle] * carry * BrixiusKernel.MotionResistanceRatio(Numeric(f, axle, carry, indexPascals), f.Driven[axle] ? CriticalIndexKernel.PlanningSlip : 0, BrixiusConstants.Bias);
    }

    /// <summary>Gross traction of all driven axles.</summary>
    public static double Gross(DemandFlat f, double carry, double indexPascals)
    {
        double sum = 0;
        for (var i = 0; i < f.Count.Length; i++) sum += Gross(f, i, carry, indexPascals);
        return sum;
    }

    /// <summary>Wheel numeric on the load beside the belly; 0 where the axle carries nothing.</summary>
    public static double Numeric(DemandFlat f, int axle, double carry, double indexPascals) => f.Load[axle] > 0 ? indexPascals * f.NumericPerPascal[axle] / carry : 0;
}
