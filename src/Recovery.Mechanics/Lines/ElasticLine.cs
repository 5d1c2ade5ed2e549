using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A line that is linear to break, its stiffness a band from the soft to the stiff end.</summary>
/// <remarks>
/// <para>k = EA/L; stretch F/k; energy F^2/(2 k); release speed F0/Z with Z = sqrt(EA m'). F in N, L unstretched length in m, EA per unit strain in N, m' in kg per unstretched metre.</para>
/// <para>Valid for a monotone first loading. Real webbing stiffens with load and with repeated pulls: peaks take the stiff end, energy and recoil each end with its own peak. Never one stiffness for both.</para>
/// <para>Immutable, equality by value. Source: linear spring and release wave (derived); the default bands are from memory unless measured.</para>
/// </remarks>
public sealed record ElasticLine
{
    /// <summary>Describes a line by its axial stiffness.</summary>
    /// <param name="length">Unstretched length, 0.2 to 300 m.</param>
    /// <param name="softStiffness">Axial stiffness EA per unit strain at the soft end, 10 to 1,000,000 kN.</param>
    /// <param name="stiffStiffness">Axial stiffness EA at the stiff end, not below the soft one.</param>
    /// <param name="massPerMetre">Mass of an unstretched metre, 0.02 to 60 kg/m.</param>
    /// <param name="source">Where the stiffness comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ElasticLine(Length length, Force softStiffness, Force stiffStiffness, LinearDensity massPerMetre, Source source)
    {
        LengthMetres = Guard.Metres(length, 0.2, 300, nameof(length));
        SoftNewtons = Guard.Newtons(softStiffness, 10, 1e6, nameof(softStiffness));
        StiffNewtons = Guard.Newtons(stiffStiffness, SoftNewtons / 1000, 1e6, nameof(stiffStiffness));
        KilogramsPerMetre = Guard.Range(massPerMetre.KilogramsPerMeter, 0.02, 60, "kg/m", nameof(massPerMetre));
        Source = Guard.NotNull(source, nameof(source));
    }

    /// <summary>Gets the unstretched length.</summary>
    public Length Length => Length.FromMeters(LengthMetres);

    /// <summary>Gets the axial stiffness at the soft end.</summary>
    public Force SoftStiffness => Force.FromNewtons(SoftNewtons);

    /// <summary>Gets the axial stiffness at the stiff end.</summary>
    public Force StiffStiffness => Force.FromNewtons(StiffNewtons);

    /// <summary>Gets the mass of an unstretched metre.</summary>
    public LinearDensity MassPerMetre => LinearDensity.FromKilogramsPerMeter(KilogramsPerMetre);

    /// <summary>Gets where the stiffness comes from.</summary>
    public Source Source { get; }

    internal double LengthMetres { get; }

    internal double SoftNewtons { get; }

    internal double StiffNewtons { get; }

    internal double KilogramsPerMetre { get; }

    internal double MassKilograms => KilogramsPerMetre * LengthMetres;

    /// <summary>Makes a line of a kind with its default band.</summary>
    /// <param name="material">The kind of line.</param>
    /// <param name="breakingStrength">Breaking strength, 1 to 10,000 kN.</param>
    /// <param name="length">Unstretched length, 0.2 to 300 m.</param>
    /// <returns>The line.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ElasticLine Of(LineMaterial material, Force breakingStrength, Length length)
    {
        Guard.NotNull(material, nameof(material));
        var mbs = Guard.Newtons(breakingStrength, 1, 10000, nameof(breakingStrength));
        return new ElasticLine(length, Force.FromNewtons(material.Soft * mbs), Force.FromNewtons(material.Stiff * mbs), LinearDensity.FromKilogramsPerMeter(material.GramsPerMetrePerKilonewton * mbs / 1e6), material.Source);
    }

    /// <summary>Gives the stretch at a tension at the stiff end of the band.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The least stretch a tape would show.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Length LeastStretch(Force tension) => Length.FromMeters(ElasticKernel.Stretch(Guard.Newtons(tension, 0, 20000, nameof(tension)), ElasticKernel.Stiffness(StiffNewtons, LengthMetres)));

    /// <summary>Gives the stretch at a tension at the soft end of the band.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The greatest stretch a tape would show.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Length GreatestStretch(Force tension) => Length.FromMeters(ElasticKernel.Stretch(Guard.Newtons(tension, 0, 20000, nameof(tension)), ElasticKernel.Stiffness(SoftNewtons, LengthMetres)));

    /// <summary>Gives the energy stored at a tension, at the soft end of the band where it is greatest.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The stored energy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Energy StoredEnergy(Force tension) => Energy.FromJoules(ElasticKernel.Energy(Guard.Newtons(tension, 0, 20000, nameof(tension)), ElasticKernel.Stiffness(SoftNewtons, LengthMetres)));

    /// <summary>Gives the speed of the released line itself when it parts at a tension, at the soft end where it is greatest. It does not depend on length. A mean axial speed: a whipping tip can be faster.</summary>
    /// <param name="tension">Tension at release, 0 to 20,000 kN.</param>
    /// <returns>The speed; print it to one figure, rounded up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Speed RecoilSpeed(Force tension) => Speed.FromMetersPerSecond(RecoilKernel.Line(Guard.Newtons(tension, 0, 20000, nameof(tension)), ElasticKernel.Impedance(SoftNewtons, KilogramsPerMetre)));

    /// <summary>Works out stretch, energy and recoil at a tension, soft end of the band.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Working Explain(Force tension)
    {
        var f = Guard.Newtons(tension, 0, 20000, nameof(tension));
        double k = ElasticKernel.Stiffness(SoftNewtons, LengthMetres), z = ElasticKernel.Impedance(SoftNewtons, KilogramsPerMetre);
        string fk = Text.Number(f / 1000), ks = Text.Number(k / 1000);
        return new WorkingBuilder("Line at " + fk + " kN, soft end")
            .Step("k", "stiffness", "EA/L", Text.Number(SoftNewtons / 1000) + "/" + Text.Number(LengthMetres), ks + " kN/m", Source)
            .Step("x", "stretch", "F/k", fk + "/" + ks, Text.With(ElasticKernel.Stretch(f, k), "m"), LinesSources.Spring)
            .Step("E", "stored energy", "F^2/(2 k)", fk + "^2/(2 x " + ks + ")", Text.With(ElasticKernel.Energy(f, k) / 1000, "kJ"), LinesSources.Spring)
            .Step("v", "speed of the released line", "F/sqrt(EA m')", fk + "/" + Text.Number(z), Text.With(RecoilKernel.Line(f, z), "m/s"), LinesSources.ReleaseWave)
            .Build();
    }

    /// <summary>The same laid as two legs side by side, its ends on one point: k = 4 cos(beta)^2 EA/L, all its mass over the length it reaches.</summary>
    internal ElasticLine AsBasket(double radians)
    {
        var reach = Math.Max(0.2, ElasticKernel.BasketReach(LengthMetres, radians));
        return new ElasticLine(Length.FromMeters(reach), Force.FromNewtons(reach * ElasticKernel.RunningBridleStiffness(SoftNewtons, LengthMetres, 2 * radians)), Force.FromNewtons(reach * ElasticKernel.RunningBridleStiffness(StiffNewtons, LengthMetres, 2 * radians)), LinearDensity.FromKilogramsPerMeter(MassKilograms / reach), Source);
    }

    /// <summary>Gives the line in words, invariant culture.</summary>
    /// <returns>Length and stiffness band.</returns>
    public override string ToString() => Text.With(LengthMetres, "m") + ", EA " + Text.Number(SoftNewtons / 1000) + " to " + Text.Kilonewtons(StiffNewtons);
}
