using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A line off the centre line of a towing machine, on a side slope: what it puts across the machine and how near that is to turning it over.</summary>
/// <remarks>
/// <para>F_y = T cos(pitch) sin(yaw); used = (W h sin(a) + F_y h_d)/(0.5 B (W cos(a) - V)), with V = -T sin(pitch) where the line rises and 0 where it falls: a falling line is not credited.</para>
/// <para>T tension, kN; pitch positive where the line falls from the hitch; yaw off the centre line; a side slope, positive where it falls towards the side that the line pulls to; h height of the centre of mass, h_d of the hitch, B the smallest track width between the middles of the tyres, m; W weight.</para>
/// <para>1 is overturning, a Stop; above 0.8 a Caution. Soft ground under the loaded side, a bump or a jerk turn a machine over earlier. Grip across the machine is taken from the same wheels as grip along it: no pull beyond the traction limit in any direction.</para>
/// <para>Source: statics (derived), levels judgement.</para>
/// </remarks>
public sealed record SidePull
{
    // Angle from which a pull counts as off the centre line (judgement).
    private const double OffCentreDegrees = 10;

    private readonly string _name;
    private readonly double _yaw;

    internal SidePull(TowingMachine tower, double tension, double pitch, double yaw, double slope)
    {
        var machine = tower.Machine;
        _name = machine.Name;
        _yaw = Math.Abs(yaw);
        double track = machine.NarrowestTrack, w = machine.WeightNewtons, height = tower.HitchHeight.Meters;
        Tension = Force.FromNewtons(tension);
        Along = Force.FromNewtons(tension * Math.Cos(pitch) * Math.Cos(yaw));
        var sideways = SidePullKernel.Sideways(tension, pitch, _yaw);
        Sideways = Force.FromNewtons(sideways);
        Down = Force.FromNewtons(SidePullKernel.Vertical(tension, pitch));
        LoadedSideShare = SidePullKernel.LoadedSide(w, slope, machine.CentreZ, track, sideways, height);
        var used = SidePullKernel.MomentUsed(w, slope, machine.CentreZ, track, sideways, height, SidePullKernel.Vertical(tension, pitch));
        Used = double.IsInfinity(used) ? null : used;
        var lift = SidePullKernel.Overturning(w, slope, machine.CentreZ, track, height, pitch, _yaw);
        OverturningTension = lift < 0 ? null : PullBound.Finite(lift);
    }

    /// <summary>Gets the tension.</summary>
    public Force Tension { get; }

    /// <summary>Gets its part along the machine.</summary>
    public Force Along { get; }

    /// <summary>Gets its part across the machine.</summary>
    public Force Sideways { get; }

    /// <summary>Gets its part down on the hitch; negative where the line rises.</summary>
    public Force Down { get; }

    /// <summary>Gets the share of the weight on the wheels of the loaded side.</summary>
    public double LoadedSideShare { get; }

    /// <summary>Gets the share of what holds the machine upright that is used: 1 is overturning; null where a rising line takes all of its weight.</summary>
    public double? Used { get; }

    /// <summary>Gets the tension in this direction that would turn it over; null where the line has no part across, or the slope alone does.</summary>
    public Force? OverturningTension { get; }

    /// <summary>Gets the objections.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var list = new List<Finding>(2);
            if (NoseMargin.Judge(Used ?? 1) is { } severity) list.Add(new Finding(TowingFindings.Overturn, _name, Used ?? double.NaN, 1, string.Empty, severity));
            if (_yaw * 180 / Math.PI > OffCentreDegrees) list.Add(new Finding(TowingFindings.OffCentre, _name, OffCentreDegrees, _yaw * 180 / Math.PI, "deg"));
            return list.AsReadOnly();
        }
    }

    /// <summary>Works a line out.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="tension">Tension in the line, 0 to 5,000 kN.</param>
    /// <param name="pitch">Angle by which the line falls from the hitch, -40 to 40 degrees.</param>
    /// <param name="yaw">Angle of the line off the centre line, -90 to 90 degrees; its side does not matter.</param>
    /// <param name="sideSlope">Side slope, positive where it falls towards the side that the line pulls to, -30 to 30 degrees.</param>
    /// <returns>The parts of the line and the margin.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static SidePull Of(TowingMachine tower, Force tension, Angle pitch, Angle yaw, Angle sideSlope) => new(
        Guard.NotNull(tower, nameof(tower)),
        Guard.Newtons(tension, 0, 5000, nameof(tension)),
        Guard.Radians(pitch, -40, 40, nameof(pitch)),
        Guard.Radians(yaw, -90, 90, nameof(yaw)),
        Guard.Radians(sideSlope, -30, 30, nameof(sideSlope)));

    /// <summary>Gives the margin in words, invariant culture.</summary>
    /// <returns>Part across and share used.</returns>
    public override string ToString() => _name + ": " + Text.Kilonewtons(Sideways.Newtons, 3) + " across, " + (Used is { } used ? Text.Number(used, 3) : "all") + " of what holds it upright (1 is overturning)";
}
