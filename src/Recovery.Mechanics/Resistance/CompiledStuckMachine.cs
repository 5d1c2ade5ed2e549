using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>A stuck machine in plain numbers for one suspension: what the kernels read, made once per plan.</summary>
internal sealed class CompiledStuckMachine
{
    /// <summary>Undeclared exit slopes, rise over run (judgement).</summary>
    public const double ExitLow = 1.0 / 10, ExitCentral = 1.0 / 6, ExitHigh = 1.0 / 4;

    /// <summary>The ramp that is offered where none is dug: the central exit, 1:6.</summary>
    public static UnitsNet.Angle OfferedRamp { get; } = UnitsNet.Angle.FromRadians(Math.Atan(ExitCentral));

    private CompiledStuckMachine(DemandFlat flat, in DemandAssumptions assumptions, double equilibriumBound, double criticalIndex)
    {
        Flat = flat;
        Assumptions = assumptions;
        EquilibriumBoundPascals = equilibriumBound;
        CriticalIndexPascals = criticalIndex;
    }

    public DemandFlat Flat { get; }

    public DemandAssumptions Assumptions { get; }

    /// <summary>Static equilibrium bound on the floor of the machine as it sank, Pa; may be negative.</summary>
    public double EquilibriumBoundPascals { get; }

    /// <summary>Cone index at which the machine as it sank would just move itself, Pa; not a number where no soil would do.</summary>
    public double CriticalIndexPascals { get; }

    /// <summary>How its axles share the load.</summary>
    public Suspension Frame { get; private init; }

    /// <summary>Weight of the machine as it sank.</summary>
    public double FoundWeight { get; private init; }

    /// <summary>Area on which its wheels stood, as it sank.</summary>
    public double FoundWheelArea { get; private init; }

    /// <summary>Area of its belly on the ground, as it sank.</summary>
    public double FoundBellyArea { get; private init; }

    /// <summary>Soil displaced by wheels and belly, as it sank.</summary>
    public double FoundVolume { get; private init; }

    /// <summary>Makes the numbers.</summary>
    /// <param name="s">The stuck machine.</param>
    /// <param name="suspension">How its axles share the load.</param>
    /// <param name="coneFactor">Cone factor N_k.</param>
    /// <param name="asBuried">Axles taken as buried whatever their sinkage, one bit each.</param>
    /// <param name="asRolling">Axles taken as rolling whatever their sinkage, one bit each.</param>
    /// <returns>The numbers.</returns>
    public static CompiledStuckMachine From(StuckMachine s, Suspension suspension, double coneFactor = SoilKernel.ConeFactor, int asBuried = 0, int asRolling = 0)
    {
        Machine now = s.Machine, found = s.AsFound;
        var n = now.Axles.Count;
        int sign = Machine.Sign(s.Direction);
        double theta = s.Grade.Radians, gamma = s.Soil.UnitWeight.NewtonsPerCubicMeter;
        double[] loads = Loads(now, theta, sign, suspension), asFound = Loads(found, theta, sign, suspension), x = new double[n];
        var (count, width, diameter, sinkage) = (new int[n], new double[n], new double[n], new double[n]);
        var (contact, segment, step, numeric, foundNumeric, share) = (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
        var (buried, driven, braked) = (new bool[n], new bool[n], new bool[n]);
        double deflection = 0, wheelArea = 0, foundArea = 0, foundVolume = 0, foundSum = 0;
        var anyBuried = false;
        for (var i = 0; i < n; i++)
        {
            var axle = now.Axles[i];
            count[i] = axle.Tyres;
            width[i] = axle.Tyre.SectionWidth.Meters;
            diameter[i] = axle.Tyre.OverallDiameter.Meters;
            sinkage[i] = s.Sinkage[i].Meters;
            segment[i] = BuriedWheelKernel.SegmentArea(diameter[i], sinkage[i]);
            step[i] = BuriedWheelKernel.RigidStepRatio(diameter[i], sinkage[i]);
            numeric[i] = NumericPerPascal(axle, loads[i]);
            if (loads[i] > 0) deflection = Math.Max(deflection, axle.Tyre.DeflectionRatio(loads[i] / axle.Tyres));
            foundNumeric[i] = NumericPerPascal(found.Axles[i], asFound[i]);
            buried[i] = (s.IsBuried(i) || (asBuried & (1 << i)) != 0) && (asRolling & (1 << i)) == 0;
            contact[i] = Contact(axle, loads[i], sinkage[i], buried[i]);
            driven[i] = axle.Driven;
            braked[i] = axle.Braked;
            anyBuried |= buried[i];
            wheelArea += count[i] * width[i] * contact[i];
            var foundContact = count[i] * width[i] * Contact(found.Axles[i], asFound[i], sinkage[i], buried[i]);
            foundArea += foundContact;
            foundVolume += foundContact * sinkage[i];
            foundSum += asFound[i];
        }

        for (var i = 0; i < n; i++) share[i] = asFound[i] / foundSum;
        Belly? down = s.Belly, downAsFound = s.BellyAsFound;
        var takes = Takes(now, suspension, down?.Middle ?? downAsFound?.Middle);
        var flat = new DemandFlat
        {
            Count = count,
            Width = width,
            Diameter = diameter,
            Sinkage = sinkage,
            Contact = contact,
            Segment = segment,
            Step = step,
            NumericPerPascal = numeric,
            GreatestDeflection = deflection,
            Load = loads,
            UpliftShare = takes ?? share,
            BellyTakes = down is null ? null : takes,
            Buried = buried,
            Driven = driven,
            Braked = braked,
            Weight = now.WeightNewtons,
            Grade = theta,
            BellyLength = down?.Length.Meters ?? 0,
            BellyWidth = down?.Width.Meters ?? 0,
            BellyImmersion = down?.Immersion.Meters ?? 0,
            WheelArea = wheelArea,
            UnitWeight = gamma,
            AdhesionFactor = s.Soil.AdhesionFactor.DecimalFractions,
            Dug = s.DugSlope is not null,
            SidesDug = s.SidesDug,
            Face = s.FaceMethod.Law,
            AnyBuried = anyBuried,
        };
        var bellyArea = downAsFound is null ? 0 : downAsFound.Length.Meters * downAsFound.Width.Meters;
        var displaced = foundVolume + (bellyArea * (downAsFound?.Immersion.Meters ?? 0));
        var bound = UnderbodyKernel.EquilibriumBound(found.WeightNewtons, displaced, foundArea + bellyArea, gamma);
        var entry = s.EntryGrade?.Radians ?? -theta;
        var critical = CriticalIndexKernel.Find(foundNumeric, asFound, driven, found.WeightNewtons * Math.Sin(Math.Max(theta, entry)), BrixiusConstants.Radial);
        return new CompiledStuckMachine(flat, Assume(s, flat, bound, critical, coneFactor), bound, critical)
        {
            Frame = now.Resolve(suspension),
            FoundWeight = found.WeightNewtons,
            FoundWheelArea = foundArea,
            FoundBellyArea = bellyArea,
            FoundVolume = displaced,
        };
    }

    private static DemandAssumptions Assume(StuckMachine s, DemandFlat flat, double bound, double critical, double coneFactor)
    {
        double ci = s.Soil.ConeIndex.Pascals, rci = s.Soil.RatingConeIndex.Pascals, weakest = s.Soil.WeakestRatingConeIndex.Pascals;
        int declared = 0, all = 0, leading = 0;
        for (var k = 0; k < flat.Count.Length; k++)
        {
            var i = s.Direction == PullDirection.Rearwards ? flat.Count.Length - 1 - k : k;
            if (s.MeetsUncutSoil is { } meets && meets[i]) declared |= 1 << i;
            if (!flat.Buried[i]) continue;
            if (leading == 0) leading = 1 << i;
            all |= 1 << i;
        }

        var looked = s.MeetsUncutSoil is not null;
        return new DemandAssumptions
        {
            Strength = SoilKernel.Stuck(ci, rci, bound, coneFactor),
            IndexLow = Cap(ci, critical),
            IndexCentral = Cap(rci, critical),
            IndexHigh = Cap(weakest, critical),
            ExitLow = Exit(s, ExitLow),
            ExitCentral = Exit(s, ExitCentral),
            ExitHigh = Exit(s, ExitHigh),
            MeetsLow = looked ? declared : 0,
            MeetsCentral = looked ? declared : leading,
            MeetsHigh = looked ? declared : all,
            Turning = s.Wheels == WheelMotion.Undeclared ? null : s.Wheels == WheelMotion.Turning,
            Vented = s.Seal == Seal.Vented,
            PartVented = s.Seal == Seal.PartVented,
        };
    }

    private static double Exit(StuckMachine s, double undeclared)
    {
        var slope = s.ExitSlope?.Radians ?? Math.Atan(undeclared);
        return s.DugSlope is { } dug ? Math.Min(slope, dug.Radians) : slope;
    }

    private static double Cap(double index, double critical) => critical < index ? critical : index;

    /// <summary>How a vertical force at the middle of the belly is shared among the axles, negative on an axle that it relieves; null where its place is not known.</summary>
    private static double[]? Takes(Machine machine, Suspension suspension, UnitsNet.Length? middle)
    {
        if (middle is not { } place) return null;
        var shares = new double[machine.Axles.Count];
        AxleStaticsKernel.Influence(machine.AxlePositions, machine.Resolve(suspension) != Suspension.StraightFrame, place.Meters, shares);
        return shares;
    }

    private static double[] Loads(Machine machine, double theta, int sign, Suspension suspension)
    {
        var loads = new double[machine.Axles.Count];
        AxleStaticsKernel.Share(machine.AxlePositions, machine.Resolve(suspension) != Suspension.StraightFrame, AxleStaticsKernel.NormalSum(machine.WeightNewtons, theta, 0), AxleStaticsKernel.MomentSum(machine.WeightNewtons, machine.CentreX, machine.CentreZ, theta, sign, 0, 0, 0, 0), loads);
        return loads;
    }

    private static double Contact(Axle axle, double axleLoad, double sinkage, bool buried) =>
        BuriedWheelKernel.StandingLength(axle.Tyre.OverallDiameter.Meters, sinkage, axle.Tyre.DeflectionMetres(Math.Max(0, axleLoad) / axle.Tyres), buried);

    private static double NumericPerPascal(Axle axle, double axleLoad)
    {
        var load = axleLoad / axle.Tyres;
        return load > 0 ? BrixiusKernel.Numeric(1, axle.Tyre.SectionWidth.Meters, axle.Tyre.OverallDiameter.Meters, BrixiusKernel.Held(axle.Tyre.DeflectionRatio(load)), load) : double.PositiveInfinity;
    }
}
