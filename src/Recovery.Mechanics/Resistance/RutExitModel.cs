using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Coming up out of a hole: the climb on a ramp or an entry rut, and the rigid step where nothing is cut.</summary>
/// <remarks>
/// <para>Climb W sin(beta); rigid step F/W = sqrt(1 - (1 - z/r)^2)/(1 - z/r) at the axle; spoil of a ramp 0.5 n z^2 b a wheel for a slope of 1:n. W weight in kN, z depth, r radius, b width in m.</para>
/// <para>The step has no answer from the hub upwards: either the soil fails or a ramp is cut. Every sum of a machine with a buried wheel holds the climb.</para>
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
        return Volume.FromCubicMeters(0.5 * z * z * Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)) / Math.Tan(Guard.Radians(slope, 2, 45, nameof(slope))));
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
