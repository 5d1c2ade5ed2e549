using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>A stuck machine as plain numbers: what the demand kernel reads. SI throughout.</summary>
internal sealed class DemandFlat
{
    private readonly double _grade;

    /// <summary>Tyres of each axle.</summary>
    public required int[] Count { get; init; }

    /// <summary>Tyre width.</summary>
    public required double[] Width { get; init; }

    /// <summary>Tyre diameter.</summary>
    public required double[] Diameter { get; init; }

    /// <summary>Sinkage.</summary>
    public required double[] Sinkage { get; init; }

    /// <summary>Chord at the surface.</summary>
    public required double[] Contact { get; init; }

    /// <summary>Side area below the surface.</summary>
    public required double[] Segment { get; init; }

    /// <summary>Rigid step over load.</summary>
    public required double[] Step { get; init; }

    /// <summary>Wheel numeric per pascal of cone index on the full wheel load.</summary>
    public required double[] NumericPerPascal { get; init; }

    /// <summary>Greatest deflection over section height of the tyres under their load, before it is held at the end of the fit.</summary>
    public double GreatestDeflection { get; init; }

    /// <summary>Present axle loads with the belly let go.</summary>
    public required double[] Load { get; init; }

    /// <summary>Shares of the axle loads as found, for the uplift.</summary>
    public required double[] UpliftShare { get; init; }

    /// <summary>Share of the belly's load that comes off each axle, by statics where the place of the belly is known, negative where a belly outside the axles loads one; null: the same fraction off every axle.</summary>
    public double[]? BellyTakes { get; init; }

    /// <summary>Whether wheels are sunk more than a tenth of their diameter.</summary>
    public required bool[] Buried { get; init; }

    /// <summary>Whether the axle is driven.</summary>
    public required bool[] Driven { get; init; }

    /// <summary>Whether the axle can be locked.</summary>
    public required bool[] Braked { get; init; }

    /// <summary>Present weight.</summary>
    public double Weight { get; init; }

    /// <summary>Slope along the pull, radians.</summary>
    public double Grade
    {
        get => _grade;
        init => (_grade, GradeSine) = (value, Math.Sin(value));
    }

    /// <summary>Sine of the slope along the pull.</summary>
    public double GradeSine { get; private init; }

    /// <summary>Length of the belly on the ground; 0 where it is clear or free.</summary>
    public double BellyLength { get; init; }

    /// <summary>Width of the belly.</summary>
    public double BellyWidth { get; init; }

    /// <summary>Immersion of the belly.</summary>
    public double BellyImmersion { get; init; }

    /// <summary>Contact area of all wheels.</summary>
    public double WheelArea { get; init; }

    /// <summary>Unit weight of the soil.</summary>
    public double UnitWeight { get; init; }

    /// <summary>Adhesion factor; set only on a copy that samples.</summary>
    public double AdhesionFactor { get; set; }

    /// <summary>Whether faces, step and suction are dug away.</summary>
    public bool Dug { get; init; }

    /// <summary>Whether the side walls are dug free.</summary>
    public bool SidesDug { get; init; }

    /// <summary>Law of the soil ahead of buried wheels.</summary>
    public FaceLaw Face { get; init; }

    /// <summary>Whether any wheel is buried.</summary>
    public bool AnyBuried { get; init; }

    /// <summary>Area of the belly on the ground.</summary>
    public double BellyArea => BellyLength * BellyWidth;

    /// <summary>Share of its load that an axle still carries beside a belly that carries a load.</summary>
    public double Carry(int axle, double bellyLoad) =>
        BellyTakes is not { } takes ? 1 - (bellyLoad / Weight)
        : Load[axle] > 0 ? Math.Max(0, 1 - (bellyLoad * takes[axle] / Load[axle]))
        : 0;

    /// <summary>Load of the belly beside which an axle still carries a share of its load: <see cref="Carry"/> the other way round; not reached where the belly takes nothing off the axle.</summary>
    public double BellyLoadLeaving(int axle, double share) =>
        BellyTakes is not { } takes ? Weight * (1 - share) : takes[axle] == 0 ? double.PositiveInfinity : Load[axle] * (1 - share) / takes[axle];

    /// <summary>Pull to climb the rigid step under a load; infinite from the hub upwards, under no load as well.</summary>
    public double StepForce(int axle, double load) => double.IsInfinity(Step[axle]) ? Step[axle] : load * Step[axle];

    /// <summary>Gives a copy whose single numbers may be set; the arrays are shared and never written.</summary>
    public DemandFlat Copy() => (DemandFlat)MemberwiseClone();
}
