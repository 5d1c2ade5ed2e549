using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Coming up out of a hole: the lesser of soil failure and rigid step where nothing is cut, the climb on a ramp or an entry rut, and the soil to dig for a ramp.</summary>
/// <remarks>
/// <para>Undug, one wheel min(P, W_i F/W), P the face by one method on the wall strength; climb W sin(beta); rigid step F/W = sqrt(1 - (1 - z/r)^2)/(1 - z/r) at the axle; spoil of a ramp 0.5 n z^2 b a wheel for a slope of 1:n. W weight in kN, z depth, r radius, b width in m.</para>
/// <para>A wheel that rests at its equilibrium bound climbs over a Rankine face only where wall/floor is above N_c (1 + r/(r - z)), never below 2 N_c, about 10. The step has no answer from the hub upwards: either the soil fails or a ramp is cut. Every sum of a machine with a buried wheel holds the climb.</para>
/// <para>Source: statics (derived).</para>
/// </remarks>
public sealed class RutExitModel : IModel
{
    private RutExitModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static RutExitModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Rut exit";

    /// <inheritdoc/>
    public Source Source => GeneralSources.Statics;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("z/r", "depth over radius", 0, 1, string.Empty, GeneralSources.Statics));

    /// <summary>Gives the pull to climb a slope.</summary>
    /// <param name="weight">Weight, 1 to 5,000 kN.</param>
    /// <param name="slope">Slope, 0 to 45 degrees; 1:6 is 9.46 degrees.</param>
    /// <returns>The pull, without rolling.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force Climb(Force weight, Angle slope) => Force.FromNewtons(Guard.Newtons(weight, 1, 5000, nameof(weight)) * Math.Sin(Guard.Radians(slope, 0, 45, nameof(slope))));

    /// <summary>Gives the pull at the axle to climb a rigid step.</summary>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <param name="overallDiameter">Tyre diameter, 0.4 to 3 m.</param>
    /// <param name="step">Height of the step, 0 m to the diameter.</param>
    /// <returns>The pull; null from the hub upwards, where no pull along the ground would do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force? RigidStep(Force load, Length overallDiameter, Length step)
    {
        var d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter));
        var ratio = BuriedWheelKernel.RigidStepRatio(d, Guard.Metres(step, 0, d, nameof(step)));
        var newtons = Guard.Newtons(load, 0, 500, nameof(load));
        return double.IsInfinity(ratio) ? null : Force.FromNewtons(newtons * ratio);
    }

    /// <summary>Gives the soil to dig for the ramp of one wheel.</summary>
    /// <param name="sectionWidth">Tyre width, 0.1 to 1.5 m.</param>
    /// <param name="depth">Depth of the hole, 0 to 2 m.</param>
    /// <param name="slope">Slope of the ramp, 2 to 45 degrees.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Volume Spoil(Length sectionWidth, Length depth, Angle slope)
    {
        var z = Guard.Metres(depth, 0, 2, nameof(depth));
        return Volume.FromCubicMeters(BuriedWheelKernel.Spoil(Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), z, Guard.Radians(slope, 2, 45, nameof(slope))));
    }

    /// <summary>Gives the ramps of a stuck machine: climb of the whole machine, spoil and length for every buried wheel.</summary>
    /// <param name="stuck">The stuck machine with its present loads.</param>
    /// <param name="slope">Slope of the ramps, 2 to 45 degrees; 1:4 or flatter is the usual advice, 1:6 is 9.46 degrees.</param>
    /// <returns>The ramp; without axles where no wheel is buried.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside its range.</exception>
    public Ramp RampFor(StuckMachine stuck, Angle slope)
    {
        Guard.NotNull(stuck, nameof(stuck));
        double beta = Guard.Radians(slope, 2, 45, nameof(slope)), weight = stuck.Machine.WeightNewtons;
        var axles = new List<RampOfAxle>(stuck.Sinkage.Count);
        for (var i = 0; i < stuck.Sinkage.Count; i++)
        {
            if (!stuck.IsBuried(i)) continue;
            var axle = stuck.Machine.Axles[i];
            var z = stuck.Sinkage[i].Meters;
            axles.Add(new RampOfAxle(axle.Name, axle.Tyres, BuriedWheelKernel.Spoil(axle.Tyre.SectionWidth.Meters, z, beta), z / Math.Tan(beta)));
        }

        return new Ramp(beta, weight * Math.Sin(beta), weight, axles.AsReadOnly());
    }

    /// <summary>Works out how one wheel leaves an undug hole: the soil ahead fails or the wheel climbs over it, whichever takes less.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="depth">Depth z, 0 m to the diameter.</param>
    /// <param name="load">Wheel load W_i, 0 to 500 kN.</param>
    /// <param name="wall">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <param name="method">Method for the soil ahead; Rankine, undrained, where none is given.</param>
    /// <returns>Both, and which counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RutExit Leave(Length sectionWidth, Length overallDiameter, Length depth, Force load, Pressure wall, SpecificWeight unitWeight, FaceMethod? method = null)
    {
        var face = (method ?? FaceMethod.Rankine).Evaluate(sectionWidth, overallDiameter, depth, wall, unitWeight);
        double d = overallDiameter.Meters, z = depth.Meters, w = Guard.Newtons(load, 0, 500, nameof(load));
        var ratio = BuriedWheelKernel.RigidStepRatio(d, z);
        var step = double.IsInfinity(ratio) ? ratio : w * ratio;
        return new RutExit(face.Method, face.Force.Newtons, step, BuriedWheelKernel.ClimbsAbove(d, z, UnderbodyKernel.BearingFactor), Validity.Flag(2 * z / d));
    }

    /// <summary>Explains how one wheel leaves an undug hole step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="depth">Depth z, 0 m to the diameter.</param>
    /// <param name="load">Wheel load W_i, 0 to 500 kN.</param>
    /// <param name="wall">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 5 to 24 kN/m3.</param>
    /// <param name="method">Method for the soil ahead; Rankine, undrained, where none is given.</param>
    /// <returns>The worked steps; the last is what counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length depth, Force load, Pressure wall, SpecificWeight unitWeight, FaceMethod? method = null)
    {
        var r = Leave(sectionWidth, overallDiameter, depth, load, wall, unitWeight, method);
        var step = r.Step is { } s ? Text.Kilonewtons(s.Newtons) : "no answer from the hub upwards";
        return new WorkingBuilder(Name)
            .Include(r.Method.Explain(sectionWidth, overallDiameter, depth, wall, unitWeight))
            .Step("F_step", "rigid step in its place", "W_i sqrt(1 - (1 - z/r)^2)/(1 - z/r)", Text.Number(load.Kilonewtons) + " at z/r " + Text.Number(2 * depth.Meters / overallDiameter.Meters), step, Source)
            .Step("R", "what the wheel takes to leave", "min(P, F_step)", $"min({Text.Kilonewtons(r.SoilFailure.Newtons)}, {step})", Text.Kilonewtons(r.Counts.Newtons), ResistanceSources.Composition)
            .Build();
    }

    /// <summary>Works climb and step out step by step.</summary>
    /// <param name="weight">Weight, 1 to 5,000 kN.</param>
    /// <param name="slope">Slope, 0 to 45 degrees.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Force weight, Angle slope) => new WorkingBuilder(Name)
        .Step("R_climb", "climb out of the hole", "W sin(beta)", Text.Number(weight.Kilonewtons) + " sin(" + Text.Number(slope.Degrees) + " deg)", Text.Kilonewtons(Climb(weight, slope).Newtons), Source)
        .Build();
}
