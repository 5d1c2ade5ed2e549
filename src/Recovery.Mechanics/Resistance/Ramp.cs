using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>A ramp dug out of the hole, ahead of the buried wheels in the direction of the pull: what it costs to climb and to dig.</summary>
public sealed record Ramp
{
    internal Ramp(double slope, double climb, double weight, IReadOnlyList<RampOfAxle> axles)
    {
        Slope = Angle.FromRadians(slope);
        RunOverRise = 1 / Math.Tan(slope);
        Climb = Force.FromNewtons(climb);
        ShareOfWeight = Ratio.FromDecimalFractions(climb / weight);
        Axles = axles;
        Spoil = Volume.FromCubicMeters(axles.Sum(a => a.Spoil.CubicMeters));
        Length = UnitsNet.Length.FromMeters(axles.Count == 0 ? 0 : axles.Max(a => a.Length.Meters));
    }

    /// <summary>Gets the slope.</summary>
    public Angle Slope { get; }

    /// <summary>Gets run over rise, the n of a slope 1:n.</summary>
    public double RunOverRise { get; }

    /// <summary>Gets the pull to climb it, W sin(beta), without rolling. A flatter entry rut stays as flat as it is.</summary>
    public Force Climb { get; }

    /// <summary>Gets the climb over the present weight.</summary>
    public Ratio ShareOfWeight { get; }

    /// <summary>Gets the ramps of the axles with buried wheels.</summary>
    public IReadOnlyList<RampOfAxle> Axles { get; }

    /// <summary>Gets the soil to move for all buried wheels, each with its own ramp: where tracks of two axles overlap it is less.</summary>
    public Volume Spoil { get; }

    /// <summary>Gets the length of the longest ramp along the ground.</summary>
    public Length Length { get; }

    /// <summary>Gives the ramp in one line, invariant culture.</summary>
    /// <returns>Slope, climb, spoil and length.</returns>
    public override string ToString() => "ramp 1:" + Text.Number(RunOverRise, 3) + ": climb " + Text.Kilonewtons(Climb.Newtons, 3) + " (" + Text.Number(ShareOfWeight.DecimalFractions, 3) + " of the weight), " + Text.With(Spoil.CubicMeters, "m3", 3) + " to dig, " + Text.With(Length.Meters, "m", 3) + " long";
}
