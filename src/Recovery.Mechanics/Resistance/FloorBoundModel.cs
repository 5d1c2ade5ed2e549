using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Static equilibrium bound on the floor: a machine that stands still in its hole tells the least strength that carries it.</summary>
/// <remarks>
/// <para>One wheel s_b = (W_i/(b c) - gamma z)/N_c; whole machine s_b = (W - gamma sum(z b c) - gamma z_b A)/(N_c (sum(b c) + A)), c = 2 sqrt(d z - z^2), d from the hub upwards; a wheel that is not buried stands on at least the chord of its deflection.</para>
/// <para>W weight of the machine <b>as it sank</b>, W_i wheel load in kN; b, d width and diameter, z sinkage, z_b immersion of the belly in m; A area of the belly in m2; gamma unit weight in kN/m3; N_c bearing factor, 5.14 unless declared.</para>
/// <para>It is the least that carries the machine at rest, so a lower bound: wheels that dug themselves in by slipping may stand on more, and statics set no upper limit. It balances the whole machine, not each axle. At or below zero the weight of displaced soil alone carries it: 1 kPa is taken and no floor value can be trusted.
/// A bound far below the strength that a cone reads beside the machine means that the walls are stronger than the floor was.</para>
/// <para>Source: statics (derived); bearing factor 2 + pi, API RP 2GEO 2011 (secondary); least of 1 kPa judgement.</para>
/// </remarks>
public sealed class FloorBoundModel : IModel
{
    private FloorBoundModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static FloorBoundModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Static equilibrium bound on the floor";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.BearingFactor;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("N_c", "bearing factor of a shallow contact", 5, 6.2, string.Empty, ResistanceSources.BearingFactor),
        new ValidityLimit("s_b", "bound on the floor", 1, double.PositiveInfinity, "kPa", GroundSources.WallAndFloor));

    /// <summary>Gives the floor that carries one wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0.01 m to the diameter.</param>
    /// <param name="load">Wheel load as it sank, 0.1 to 500 kN.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="bearingFactor">Bearing factor N_c, 4 to 10; 5.14 unless declared.</param>
    /// <returns>The bound with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FloorBound OneWheel(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, SpecificWeight unitWeight, double bearingFactor = UnderbodyKernel.BearingFactor)
    {
        double b = Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), d = Guard.Metres(overallDiameter, 0.4, 3, nameof(overallDiameter)), z = Guard.Metres(sinkage, 0.01, d, nameof(sinkage));
        double w = Guard.Newtons(load, 0.1, 500, nameof(load)), gamma = Guard.NewtonsPerCubicMetre(unitWeight, 9, 24, nameof(unitWeight)), n = Guard.Range(bearingFactor, 4, 10, string.Empty, nameof(bearingFactor));
        var area = b * BuriedWheelKernel.ContactLength(d, z);
        return Bound(w, area * z, area, 0, gamma, n);
    }

    /// <summary>Gives the floor that carries a whole machine on its wheels and belly, as it sank.</summary>
    /// <param name="stuck">The stuck machine; the weight and the belly as found count, whatever was taken off since.</param>
    /// <param name="bearingFactor">Bearing factor N_c, 4 to 10; 5.14 unless declared.</param>
    /// <returns>The bound with its flags.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public FloorBound WholeMachine(StuckMachine stuck, double bearingFactor = UnderbodyKernel.BearingFactor)
    {
        var c = Compiled(stuck);
        return Bound(c.FoundWeight, c.FoundVolume, c.FoundWheelArea, c.FoundBellyArea, c.Flat.UnitWeight, Guard.Range(bearingFactor, 4, 10, string.Empty, nameof(bearingFactor)));
    }

    /// <summary>Works the bound of one wheel out step by step.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="overallDiameter">Tyre diameter d, 0.4 to 3 m.</param>
    /// <param name="sinkage">Sinkage z, 0.01 m to the diameter.</param>
    /// <param name="load">Wheel load as it sank, 0.1 to 500 kN.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="bearingFactor">Bearing factor N_c, 4 to 10.</param>
    /// <returns>The worked steps; the last is the bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length sectionWidth, Length overallDiameter, Length sinkage, Force load, SpecificWeight unitWeight, double bearingFactor = UnderbodyKernel.BearingFactor)
    {
        var r = OneWheel(sectionWidth, overallDiameter, sinkage, load, unitWeight, bearingFactor);
        string d = Text.Number(overallDiameter.Meters), z = Text.Number(sinkage.Meters), b = Text.Number(sectionWidth.Meters), c = Text.Number(r.WheelArea.SquareMeters / sectionWidth.Meters);
        return new WorkingBuilder(Name)
            .Step("c", "chord at the surface", "2 sqrt(d z - z^2), d from the hub upwards", $"2 sqrt({d} x {z} - {z}^2)", c + " m", GeneralSources.Statics)
            .Step("s_b", "floor that just bears the wheel", "(W_i/(b c) - gamma z)/N_c", $"({Text.Number(load.Kilonewtons)}/({b} x {c}) - {Text.Number(unitWeight.KilonewtonsPerCubicMeter)} x {z})/{Text.Number(bearingFactor)}", Text.Kilopascals(r.Strength.Pascals), Source)
            .Build();
    }

    /// <summary>Works the bound of a whole machine out step by step.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <param name="bearingFactor">Bearing factor N_c, 4 to 10.</param>
    /// <returns>The worked steps; the last is the bound.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public Working ExplainWholeMachine(StuckMachine stuck, double bearingFactor = UnderbodyKernel.BearingFactor)
    {
        var r = WholeMachine(stuck, bearingFactor);
        var c = Compiled(stuck);
        string wheels = Text.Number(c.FoundWheelArea), belly = Text.Number(c.FoundBellyArea), gamma = Text.Number(c.Flat.UnitWeight / 1000), n = Text.Number(bearingFactor);
        return new WorkingBuilder(Name)
            .Step("sum(b c)", "area on which the wheels stand", "sum over the wheels", "c = 2 sqrt(d z - z^2)", wheels + " m2", GeneralSources.Statics)
            .Step("V", "soil displaced by wheels and belly", "sum(z b c) + z_b A", "A = " + belly + " m2", Text.With(c.FoundVolume, "m3"), GeneralSources.Statics)
            .Step("s_b", "floor that just carries the machine as it sank", "(W - gamma V)/(N_c (sum(b c) + A))", $"({Text.Number(c.FoundWeight / 1000)} - {gamma} x {Text.Number(c.FoundVolume)})/({n} ({wheels} + {belly}))", Text.Kilopascals(r.Strength.Pascals), Source)
            .Build();
    }

    private static CompiledStuckMachine Compiled(StuckMachine stuck) => CompiledStuckMachine.From(Guard.NotNull(stuck, nameof(stuck)), stuck.Machine.Resolve(Suspension.Undeclared));

    private FloorBound Bound(double weight, double volume, double wheelArea, double bellyArea, double gamma, double factor)
    {
        var s = UnderbodyKernel.EquilibriumBound(weight, volume, wheelArea + bellyArea, gamma, factor);
        return new FloorBound(s, wheelArea, bellyArea, factor, Validity.Flag(factor, s / 1000));
    }
}
