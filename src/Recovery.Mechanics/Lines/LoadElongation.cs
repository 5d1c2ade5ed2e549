using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How the tension of one line grows with its stretch: linear, a power law, or a measured table.</summary>
/// <remarks>
/// <para>Linear F = k x, k = EA/L; power law F = Fb (eps/eb)^n; table straight between its points, so that its energy is exact for what it says and reads high on a smooth convex curve (by 1/(2 N^2) for a parabola in N equal strips). eps = x/L on the unstretched length.</para>
/// <para>Stored energy is the area under the loading curve. Nothing is lost on the way back unless an <see cref="UnloadingTest"/> is supplied. A table is never read past its last point, and no curve past its break: such input is refused.</para>
/// <para>Closed hierarchy: <see cref="LinearElongation"/>, <see cref="PowerLawElongation"/>, <see cref="TabulatedElongation"/>. Immutable. Source of the laws: work of a spring (derived).</para>
/// </remarks>
public abstract class LoadElongation
{
    private readonly CurveShape _shape;

    private protected LoadElongation(double lengthMetres, in CurveShape shape, Source source, LineState state, UnloadingTest? unloading)
    {
        LengthMetres = lengthMetres;
        _shape = shape.Scaled(state.RemainingStrength.DecimalFractions, 1 / StretchScale(state));
        Source = source;
        State = state;
        Unloading = unloading;
    }

    /// <summary>Gets the unstretched length.</summary>
    public Length UnstretchedLength => Length.FromMeters(LengthMetres);

    /// <summary>Gets the force at the end of the curve: break, or the last point of a table.</summary>
    public Force EndForce => Force.FromNewtons(_shape.EndForce);

    /// <summary>Gets the stretch at the end of the curve.</summary>
    public Length EndStretch => Length.FromMeters(_shape.EndStretch);

    /// <summary>Gets where the curve comes from.</summary>
    public Source Source { get; }

    /// <summary>Gets the state the curve stands for.</summary>
    public LineState State { get; }

    /// <summary>Gets the test of its unloading; null where none was supplied, and then nothing is lost.</summary>
    public UnloadingTest? Unloading { get; }

    /// <summary>Gets the fraction of the stored energy that recoil is reckoned with: 1 without a test.</summary>
    public Ratio RecoveredFraction => Unloading?.Recovered ?? Ratio.FromDecimalFractions(1);

    internal double LengthMetres { get; }

    internal ref readonly CurveShape Shape => ref _shape;

    /// <summary>Makes a line that is linear to break.</summary>
    /// <param name="length">Unstretched length, 0.1 to 300 m.</param>
    /// <param name="breakForce">Force at break, 0.1 to 20,000 kN.</param>
    /// <param name="strainAtBreak">Strain at break, 0.001 to 1.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LinearElongation Linear(Length length, Force breakForce, Ratio strainAtBreak, Source source) => new(length, breakForce, strainAtBreak, source);

    /// <summary>Makes a power-law line.</summary>
    /// <param name="length">Unstretched length, 0.1 to 300 m.</param>
    /// <param name="breakForce">Force at break, 0.1 to 20,000 kN.</param>
    /// <param name="strainAtBreak">Strain at break, 0.001 to 1.</param>
    /// <param name="exponent">Exponent n, 1 to 6; above 1 it stiffens.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static PowerLawElongation PowerLaw(Length length, Force breakForce, Ratio strainAtBreak, double exponent, Source source) => new(length, breakForce, strainAtBreak, exponent, source);

    /// <summary>Makes a measured line.</summary>
    /// <param name="length">Unstretched length, 0.1 to 300 m.</param>
    /// <param name="strains">Strains of the points without the origin, rising.</param>
    /// <param name="kilonewtons">Forces of the points in kN, rising.</param>
    /// <param name="source">The test report.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">The lists differ in length, are empty or do not rise.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TabulatedElongation Tabulated(Length length, IReadOnlyList<double> strains, IReadOnlyList<double> kilonewtons, Source source) => new(length, strains, kilonewtons, source);

    /// <summary>Gives the stretch at a tension.</summary>
    /// <param name="tension">Tension, 0 to the end of the curve.</param>
    /// <returns>The stretch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is negative or past the end of the curve.</exception>
    public Length Stretch(Force tension) => Length.FromMeters(CurveKernel.Stretch(_shape, Newtons(tension)));

    /// <summary>Gives the tension at a stretch.</summary>
    /// <param name="stretch">Stretch, 0 to the end of the curve.</param>
    /// <returns>The tension.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The stretch is negative or past the end of the curve.</exception>
    public Force Tension(Length stretch) => Force.FromNewtons(CurveKernel.Force(_shape, Guard.Range(stretch.Meters, 0, _shape.EndStretch, "m", nameof(stretch))));

    /// <summary>Gives the energy stored at a tension.</summary>
    /// <param name="tension">Tension, 0 to the end of the curve.</param>
    /// <returns>The area under the loading curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is negative or past the end of the curve.</exception>
    public Energy StoredEnergy(Force tension) => Energy.FromJoules(Joules(Newtons(tension)));

    /// <summary>Gives the energy that recoil is reckoned with: all of it, unless a test of unloading was supplied.</summary>
    /// <param name="tension">Tension, 0 to the end of the curve.</param>
    /// <returns>Stored energy times recovered fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is negative or past the end of the curve.</exception>
    public Energy RecoverableEnergy(Force tension) => Energy.FromJoules(RecoveredFraction.DecimalFractions * Joules(Newtons(tension)));

    /// <summary>Gives tension over stretch at a tension.</summary>
    /// <param name="tension">Tension, above 0 to the end of the curve.</param>
    /// <returns>The secant stiffness.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is not above 0 or past the end of the curve.</exception>
    public ForcePerLength SecantStiffness(Force tension)
    {
        var f = Guard.Range(tension.Newtons / 1000, 1e-6, _shape.EndForce / 1000, "kN", nameof(tension)) * 1000;
        return ForcePerLength.FromNewtonsPerMeter(f / CurveKernel.Stretch(_shape, f));
    }

    /// <summary>Gives the curve of the same line in another state.</summary>
    /// <param name="state">Bedded in, worn or wet.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="state"/> is null.</exception>
    public LoadElongation In(LineState state) => Copy(Guard.NotNull(state, nameof(state)), Unloading);

    /// <summary>Gives the same curve with a test of its unloading.</summary>
    /// <param name="test">The test.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="test"/> is null.</exception>
    public LoadElongation WithUnloading(UnloadingTest test) => Copy(State, Guard.NotNull(test, nameof(test)));

    /// <summary>Gives what a reader of the curve has to know: a wet line taken as dry.</summary>
    /// <returns>The remarks; empty where there are none.</returns>
    public IReadOnlyList<Finding> Remarks() => State.IsWet ? [new Finding(LinesFindings.WetAsDry, "line")] : [];

    /// <summary>Works out stretch and energy at a tension.</summary>
    /// <param name="tension">Tension, 0 to the end of the curve.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is negative or past the end of the curve.</exception>
    public Working Explain(Force tension)
    {
        var f = Newtons(tension);
        double x = CurveKernel.Stretch(_shape, f), e = CurveKernel.Energy(_shape, x);
        return new WorkingBuilder("Line at " + Text.Kilonewtons(f))
            .Step("x", "stretch", StretchLaw, Text.Kilonewtons(f) + " on " + this, Text.With(x, "m"), Source)
            .Step("E", "stored energy", EnergyLaw, Text.Kilonewtons(f) + ", " + Text.With(x, "m"), Text.With(e / 1000, "kJ"), LinesSources.Spring)
            .Build();
    }

    /// <summary>Gives the curve in words, invariant culture.</summary>
    /// <returns>Form, length and end of the curve.</returns>
    public sealed override string ToString() => Form + ", " + Text.With(LengthMetres, "m") + ", to " + Text.Kilonewtons(_shape.EndForce) + " at " + Text.With(_shape.EndStretch / LengthMetres * 100, "%");

    private protected abstract string Form { get; }

    private protected abstract string StretchLaw { get; }

    private protected abstract string EnergyLaw { get; }

    private protected abstract LoadElongation Copy(LineState state, UnloadingTest? unloading);

    /// <summary>A stiffer line of the same strength is drawn together in stretch; where wear lowers the force at every strain, stiffness and strength fall together and the strain at break stays.</summary>
    private static double StretchScale(LineState state) => state.StiffeningFactor;

    private double Newtons(Force tension) => Guard.Range(tension.Newtons / 1000, 0, _shape.EndForce / 1000, "kN", nameof(tension)) * 1000;

    private double Joules(double newtons) => CurveKernel.Energy(_shape, CurveKernel.Stretch(_shape, newtons));
}
