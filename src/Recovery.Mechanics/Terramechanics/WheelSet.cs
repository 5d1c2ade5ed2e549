using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Like wheels of one axle on one soil: one of them, how many there are, and whether they are driven.</summary>
/// <remarks>Immutable, equality by value, canonical units. One wheel alone is a set of one. Duals: the number of all tyres, each with its own load.</remarks>
public sealed record WheelSet
{
    /// <summary>Describes a set of like wheels.</summary>
    /// <param name="wheel">One of the wheels with its own load.</param>
    /// <param name="count">Number of wheels, 1 to 8.</param>
    /// <param name="driven">Whether they are driven.</param>
    /// <exception cref="ArgumentNullException">The wheel is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public WheelSet(WheelOnSoil wheel, int count, bool driven = true)
    {
        Wheel = wheel;
        Count = Guard.Count(count, 1, 8, nameof(count));
        Driven = driven;
    }

    /// <summary>Gets one of the wheels with its own load.</summary>
    public WheelOnSoil Wheel { get; init => field = Guard.NotNull(value, "wheel"); }

    /// <summary>Gets the number of wheels.</summary>
    public int Count { get; }

    /// <summary>Gets whether the wheels are driven.</summary>
    public bool Driven { get; init; }

    /// <summary>Gets the section height of the tyre, which turns the deflection ratio into a deflection; null where it is not known. Accepted range 0.03 to 1 m.</summary>
    public Length? SectionHeight { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.03, 1, "sectionHeight")) : null; }

    /// <summary>Gets inflation plus the pressure that the carcass carries; null for a wheel taken as rigid. Accepted range 1 to 2,000 kPa.</summary>
    public Pressure? TyrePressure { get; init => field = value is { } v ? Pressure.FromPascals(Guard.Pascals(v, 1, 2000, "tyrePressure")) : null; }

    /// <summary>Load of all of them, N.</summary>
    internal double LoadNewtons => Wheel.Load.Newtons * Count;

    /// <summary>Takes the wheels of an axle of a machine.</summary>
    /// <param name="axle">The axle with its tyres.</param>
    /// <param name="axleLoad">Load of the axle, shared alike by its tyres, above 0 to 4,000 kN.</param>
    /// <param name="coneIndex">Cone index fed to the models, above 0 to 20,000 kPa: on fine-grained soil the rating cone index.</param>
    /// <returns>The set, with the section height of the tyre. The pressure of the carcass is not known, so that none is set.</returns>
    /// <exception cref="ArgumentNullException">The axle is null.</exception>
    /// <exception cref="ArgumentException">The axle runs on tracks.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WheelSet Of(Axle axle, Force axleLoad, Pressure coneIndex)
    {
        Guard.NotNull(axle, nameof(axle));
        axle.OnTyres(nameof(axle), "For a track there is TrackModel.");
        var load = Guard.Newtons(axleLoad, 1e-3, 4000, nameof(axleLoad)) / axle.Tyres;
        var tyre = axle.Tyre;
        var wheel = new WheelOnSoil(tyre.SectionWidth, tyre.OverallDiameter, Ratio.FromDecimalFractions(tyre.Deflection(Force.FromNewtons(load)).Meters / tyre.SectionHeight.Meters), Force.FromNewtons(load), coneIndex);
        return new WheelSet(wheel, axle.Tyres, axle.Driven) { SectionHeight = tyre.SectionHeight };
    }

    /// <summary>Gives the same wheels on another soil.</summary>
    /// <param name="coneIndex">Cone index fed to the models, above 0 to 20,000 kPa.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public WheelSet On(Pressure coneIndex) => this with { Wheel = Wheel with { ConeIndex = coneIndex } };

    /// <summary>Gives the same with another value: driven or not. For callers whose language has no <c>with</c>.</summary>
    /// <param name="driven">The value, as in <see cref="Driven"/>.</param>
    /// <returns>The changed copy.</returns>
    public WheelSet WithDriven(bool driven) => this with { Driven = driven };

    /// <summary>Gives the same with another value: the section height. For callers whose language has no <c>with</c>.</summary>
    /// <param name="sectionHeight">The value, as in <see cref="SectionHeight"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is outside its range.</exception>
    public WheelSet WithSectionHeight(Length? sectionHeight) => this with { SectionHeight = sectionHeight };

    /// <summary>Gives the same with another value: inflation plus carcass pressure. For callers whose language has no <c>with</c>.</summary>
    /// <param name="tyrePressure">The value, as in <see cref="TyrePressure"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside its range.</exception>
    public WheelSet WithTyrePressure(Pressure? tyrePressure) => this with { TyrePressure = tyrePressure };

    /// <summary>Gives the set in words, invariant culture.</summary>
    /// <returns>Number, wheel and drive.</returns>
    public override string ToString() => Text.Number(Count) + " x " + Wheel + (Driven ? ", driven" : ", not driven");
}
