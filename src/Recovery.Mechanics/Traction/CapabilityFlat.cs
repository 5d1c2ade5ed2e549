using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>A towing machine as plain numbers: what the capability kernel reads. SI throughout.</summary>
internal sealed class CapabilityFlat
{
    private double[]? _deflected;

    private CapabilityFlat(int axles)
    {
        NumericTimesLoad = new double[axles];
        Load = new double[axles];
        LevelLoad = new double[axles];
        LoadPerPull = new double[axles];
        Count = new int[axles];
        Driven = new bool[axles];
    }

    /// <summary>Wheel numeric times wheel load per pascal: b d (1 + 5 delta/h)/(1 + 3 b/d), m2; delta/h held at the end of the fit.</summary>
    public double[] NumericTimesLoad { get; private set; }

    /// <summary>Greatest deflection over section height of the tyres, before it is held at the end of the fit.</summary>
    public double GreatestDeflection { get; private set; }

    /// <summary>Axle loads without a pull, on the grade.</summary>
    public double[] Load { get; private set; }

    /// <summary>Axle loads without a pull, on level ground: what counts for the imposable pull, because the machine may stand elsewhere.</summary>
    public double[] LevelLoad { get; private set; }

    /// <summary>Change of the axle loads per newton of pull.</summary>
    public double[] LoadPerPull { get; private set; }

    /// <summary>Tyres of each axle.</summary>
    public int[] Count { get; private set; }

    /// <summary>Whether the axle is driven.</summary>
    public bool[] Driven { get; private set; }

    /// <summary>Weight component against the pull, W sin(theta); negative downhill.</summary>
    public double GradeForce { get; private set; }

    /// <summary>Force by which another machine draws this one ahead; part of the pull behind it, taken off <see cref="GradeForce"/>.</summary>
    public double LeadForce { get; private set; }

    /// <summary>Weight.</summary>
    public double Weight { get; private set; }

    /// <summary>Moment that holds the leading end down, W_f L, about the trailing contact, on the grade.</summary>
    public double NoseMoment { get; private set; }

    /// <summary>Height of the centre of mass.</summary>
    public double CentreHeight { get; private set; }

    /// <summary>Height at which the line of pull passes over the trailing axle, h_d + a_h tan(pitch)/cos(yaw).</summary>
    public double LineHeight { get; private set; }

    /// <summary>Part down on the hitch for each newton along the ground, tan(pitch)/cos(yaw); negative where the line rises.</summary>
    public double DownPerPull { get; private set; }

    /// <summary>Pull at which the leading end would lift.</summary>
    public double NoseLimit { get; private set; }

    /// <summary>Pull along the ground at which a line off the centre line would turn the machine over, on no side slope; infinite for a line straight behind it.</summary>
    public double SideLimit { get; private set; } = double.PositiveInfinity;

    /// <summary>Angle by which the line falls from the hitch, radians.</summary>
    public double LinePitch { get; private set; }

    /// <summary>Angle of the line off the direction of the pull, radians.</summary>
    public double LineYaw { get; private set; }

    /// <summary>Force that power puts on the wheels at the stated speed; infinite where it is not known.</summary>
    public double PowerForce { get; private set; }

    /// <summary>Pull that power allows at the stated speed, what the grade takes off and a machine ahead adds; infinite where it is not known.</summary>
    public double PowerLimit => CapabilityKernel.Power(this, 1);

    /// <summary>Rating of the hitch; infinite where it is not known.</summary>
    public double RatingLimit { get; private set; }

    /// <summary>Cone index of the firmest ground in reach.</summary>
    public double FirmestIndex { get; private set; }

    /// <summary>Greatest net traction over load on a hard surface in reach; 0 where there is none.</summary>
    public double HardFriction { get; private set; }

    /// <summary>Sine of the steepest slope on which it may face downhill.</summary>
    public double DownhillSine { get; private set; }

    /// <summary>Makes the numbers.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="pitchRadians">Angle by which the line falls from the hitch, positive downwards.</param>
    /// <param name="yawRadians">Angle of the line off the direction of the pull: for each newton along it the line carries 1/(cos(pitch) cos(yaw)), and tan(pitch)/cos(yaw) down.</param>
    public static CapabilityFlat From(TowingMachine tower, double pitchRadians, double yawRadians = 0)
    {
        var machine = tower.Machine;
        var n = machine.Axles.Count;
        var flat = new CapabilityFlat(n);
        var sign = Machine.Sign(tower.Direction);
        double theta = tower.Grade.Radians, down = Math.Tan(pitchRadians) / Math.Cos(yawRadians), xh = tower.HitchPosition.Meters, zh = tower.HitchHeight.Meters;
        var equalised = machine.Resolve(Suspension.Undeclared) != Suspension.StraightFrame;
        AxleStaticsKernel.Share(machine.AxlePositions, equalised, AxleStaticsKernel.NormalSum(machine.WeightNewtons, theta, 0), Moment(0), flat.Load);
        AxleStaticsKernel.Share(machine.AxlePositions, equalised, machine.WeightNewtons, machine.WeightNewtons * machine.CentreX, flat.LevelLoad);
        // The loads are linear in the pull as long as no axle lifts: a thousandth of the weight shows the slope. Beyond lift the kernel shares what is left.
        var probe = 1e-3 * machine.WeightNewtons;
        AxleStaticsKernel.Share(machine.AxlePositions, equalised, AxleStaticsKernel.NormalSum(machine.WeightNewtons, theta, -probe * down), Moment(probe), flat.LoadPerPull);
        var deflected = new double[n];
        for (var i = 0; i < n; i++)
        {
            var axle = machine.Axles[i];
            double b = axle.Tyre.SectionWidth.Meters, d = axle.Tyre.OverallDiameter.Meters;
            flat.LoadPerPull[i] = (flat.LoadPerPull[i] - flat.Load[i]) / probe;
            var deflection = axle.Tyre.DeflectionRatio(flat.Load[i] / axle.Tyres);
            flat.GreatestDeflection = Math.Max(flat.GreatestDeflection, deflection);
            flat.NumericTimesLoad[i] = BrixiusKernel.Numeric(1, b, d, BrixiusKernel.Held(deflection), 1);
            deflected[i] = BrixiusKernel.Numeric(1, b, d, deflection, 1);
            flat.Count[i] = axle.Tyres;
            flat.Driven[i] = axle.Driven;
        }

        if (flat.GreatestDeflection > BrixiusKernel.MostDeflection) flat._deflected = deflected;
        var trailing = Trailing(machine.AxlePositions, tower.Direction, equalised);
        flat.Weight = machine.WeightNewtons;
        flat.GradeForce = machine.WeightNewtons * Math.Sin(theta);
        flat.NoseMoment = machine.WeightNewtons * ((sign * (machine.CentreX - trailing) * Math.Cos(theta)) - (machine.CentreZ * Math.Sin(theta)));
        flat.CentreHeight = machine.CentreZ;
        flat.DownPerPull = down;
        flat.LineHeight = NoseKernel.LineHeight(zh, sign * (trailing - xh), Math.Atan(down));
        flat.NoseLimit = NoseKernel.Lift(flat.NoseMoment, flat.LineHeight, flat.CentreHeight);
        flat.LinePitch = pitchRadians;
        flat.LineYaw = yawRadians;
        if (Math.Abs(yawRadians) > 1e-9) flat.SideLimit = SidePullKernel.OverturningAlong(machine.WeightNewtons, machine.CentreZ, machine.NarrowestTrack, zh, pitchRadians, Math.Abs(yawRadians));
        flat.PowerForce = tower.EnginePower is { } power ? tower.Efficiency.DecimalFractions * (double)power.Watts / tower.PullSpeed.MetersPerSecond : double.PositiveInfinity;
        flat.RatingLimit = tower.HitchRating?.Newtons ?? double.PositiveInfinity;
        flat.FirmestIndex = Math.Max(tower.FirmestConeIndex?.Pascals ?? 0, tower.Soil.ConeIndex.Pascals);
        flat.HardFriction = tower.HardSurfaceInReach ? Math.Min(ImposableKernel.HardSurfaceRatio, tower.HardSurfaceFriction?.DecimalFractions ?? ImposableKernel.HardSurfaceRatio) : 0;
        flat.DownhillSine = Math.Max(0, Math.Max(Math.Sin(tower.DownhillInReach.Radians), -Math.Sin(theta)));
        return flat;

        double Moment(double pull) => AxleStaticsKernel.MomentSum(machine.WeightNewtons, machine.CentreX, machine.CentreZ, theta, sign, -sign * pull, -pull * down, xh, zh);
    }

    /// <summary>The same machine drawn ahead by another one, with a level line at its leading end.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="lead">Force of that line.</param>
    /// <param name="frontHeight">Height of the point it draws at.</param>
    public CapabilityFlat WithLead(TowingMachine tower, double lead, double frontHeight)
    {
        if (!(lead > 0)) return this;
        var led = Copy();
        led.Lead(this, LoadPerLead(tower, frontHeight), lead, frontHeight);
        return led;
    }

    /// <summary>Change of the axle loads per newton of a level line at the leading end.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="frontHeight">Height of the point it draws at.</param>
    public double[] LoadPerLead(TowingMachine tower, double frontHeight)
    {
        var machine = tower.Machine;
        var sign = Machine.Sign(tower.Direction);
        var theta = tower.Grade.Radians;
        var equalised = machine.Resolve(Suspension.Undeclared) != Suspension.StraightFrame;
        var probe = 1e-3 * machine.WeightNewtons;
        var change = new double[Load.Length];
        AxleStaticsKernel.Share(machine.AxlePositions, equalised, AxleStaticsKernel.NormalSum(machine.WeightNewtons, theta, 0), AxleStaticsKernel.MomentSum(machine.WeightNewtons, machine.CentreX, machine.CentreZ, theta, sign, sign * probe, 0, 0, frontHeight), change);
        for (var i = 0; i < change.Length; i++) change[i] = (change[i] - Load[i]) / probe;
        return change;
    }

    /// <summary>The same numbers in arrays of their own, to be led in place.</summary>
    public CapabilityFlat Copy()
    {
        var copy = (CapabilityFlat)MemberwiseClone();
        copy.Load = (double[])Load.Clone();
        copy.LevelLoad = (double[])LevelLoad.Clone();
        return copy;
    }

    /// <summary>Makes this copy the machine drawn ahead by a line. Allocates nothing.</summary>
    /// <param name="alone">The machine without that line, of which this is a copy.</param>
    /// <param name="loadPerLead">Change of its axle loads per newton of that line.</param>
    /// <param name="lead">Force of that line, 0 or more.</param>
    /// <param name="frontHeight">Height of the point it draws at.</param>
    public void Lead(CapabilityFlat alone, double[] loadPerLead, double lead, double frontHeight)
    {
        for (var i = 0; i < Load.Length; i++)
        {
            var change = loadPerLead[i] * lead;
            Load[i] = alone.Load[i] + change;
            LevelLoad[i] = alone.LevelLoad[i] + change;
        }

        LeadForce = lead;
        GradeForce = alone.GradeForce - lead;
        NoseMoment = alone.NoseMoment + (lead * frontHeight);
        NoseLimit = NoseKernel.Lift(NoseMoment, LineHeight, CentreHeight);
    }

    /// <summary>The same machine on its tyres as soft as they are: nothing that may raise the load on the gear is held back.</summary>
    public CapabilityFlat OnSoftTyres()
    {
        if (_deflected is not { } deflected || ReferenceEquals(NumericTimesLoad, deflected)) return this;
        var soft = (CapabilityFlat)MemberwiseClone();
        soft.NumericTimesLoad = deflected;
        return soft;
    }

    /// <summary>The same machine with all wheels rolling, none driven.</summary>
    public CapabilityFlat Rolling()
    {
        var rolling = (CapabilityFlat)MemberwiseClone();
        rolling.Driven = new bool[Driven.Length];
        return rolling;
    }

    /// <summary>Place about which the leading end lifts: the last axle in the direction away from the pull, the middle of an equalised rear group.</summary>
    private static double Trailing(ReadOnlySpan<double> x, PullDirection direction, bool equalised)
    {
        if (direction == PullDirection.Rearwards) return x[0];
        if (!equalised) return x[x.Length - 1];
        double sum = 0;
        for (var i = 1; i < x.Length; i++) sum += x[i];
        return sum / (x.Length - 1);
    }
}
