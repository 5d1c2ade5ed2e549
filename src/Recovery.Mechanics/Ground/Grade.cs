using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>A slope along the pull: positive where the ground rises in the direction of the pull, for each machine apart.</summary>
/// <remarks>Immutable value, radians inside, equality by value. <c>default</c> is level ground. Range -45 to 45 degrees.</remarks>
public readonly record struct Grade
{
    private Grade(double radians) => Radians = radians;

    /// <summary>Gets level ground.</summary>
    public static Grade Level => default;

    /// <summary>Gets the slope angle.</summary>
    public Angle Angle => Angle.FromRadians(Radians);

    /// <summary>Gets rise over run.</summary>
    public Ratio RiseOverRun => Ratio.FromDecimalFractions(Math.Tan(Radians));

    /// <summary>Gets the slope angle in radians.</summary>
    public double Radians { get; }

    /// <summary>Makes a grade from the slope angle.</summary>
    /// <param name="angle">Slope angle, -45 to 45 degrees, positive where the ground rises along the pull.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range or not a number.</exception>
    public static Grade FromAngle(Angle angle) => new(Guard.Radians(angle, -45, 45, nameof(angle)));

    /// <summary>Makes a grade from percent, rise over run times a hundred.</summary>
    /// <param name="percent">Grade in percent, -100 to 100.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The percentage is outside its range or not a number.</exception>
    public static Grade FromPercent(double percent) => new(Math.Atan(Guard.Range(percent, -100, 100, "%", nameof(percent)) / 100));

    /// <summary>Makes a grade from rise over run.</summary>
    /// <param name="riseOverRun">Rise over run, -1 to 1.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its range or not a number.</exception>
    public static Grade FromRatio(Ratio riseOverRun) => new(Math.Atan(Guard.Fraction(riseOverRun, -1, 1, nameof(riseOverRun))));

    /// <summary>Gives the same slope seen in the opposite direction.</summary>
    /// <returns>The grade with its sign turned.</returns>
    public Grade Reversed() => new(-Radians);

    /// <summary>Gives the grade in percent, invariant culture.</summary>
    /// <returns>For example <c>2 %</c>.</returns>
    public override string ToString() => Text.Number(Math.Tan(Radians) * 100, 3) + " %";
}
