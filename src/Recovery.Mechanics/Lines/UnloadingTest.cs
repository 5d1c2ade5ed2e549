using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Result of a test that unloaded a line: which fraction of its stored energy it gave back. Only a test makes a fraction below 1.</summary>
/// <remarks>
/// <para>eta_r = area under unloading over area under loading. For loading as (eps/em)^n and unloading as ((eps - ep)/(em - ep))^q with a permanent set ep it is (n + 1)/(q + 1) (1 - ep/em).</para>
/// <para>No value for strap webbing is published; ranges from memory are too wide to use as a credit. Immutable, equality by value.</para>
/// </remarks>
public sealed record UnloadingTest
{
    /// <summary>Describes a test.</summary>
    /// <param name="recovered">Fraction of the stored energy that came back, above 0 to 1.</param>
    /// <param name="report">The test report.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is outside its range.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    public UnloadingTest(Ratio recovered, Source report)
    {
        Recovered = Ratio.FromDecimalFractions(Guard.Fraction(recovered, 1e-3, 1, nameof(recovered)));
        Report = Guard.NotNull(report, nameof(report));
    }

    /// <summary>Gets the fraction recovered.</summary>
    public Ratio Recovered { get; }

    /// <summary>Gets the test report.</summary>
    public Source Report { get; }

    /// <summary>Makes a test from the exponents of both branches and the permanent set.</summary>
    /// <param name="loadingExponent">Exponent n of the loading branch, 0.5 to 6.</param>
    /// <param name="unloadingExponent">Exponent q of the unloading branch, 0.5 to 12.</param>
    /// <param name="setOverStrain">Permanent set over greatest strain, 0 to 0.95.</param>
    /// <param name="report">The test report.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the branches would give back more than was stored.</exception>
    public static UnloadingTest FromBranches(double loadingExponent, double unloadingExponent, Ratio setOverStrain, Source report) => new(
        Ratio.FromDecimalFractions(ElasticKernel.RecoveredFraction(
            Guard.Range(loadingExponent, 0.5, 6, string.Empty, nameof(loadingExponent)),
            Guard.Range(unloadingExponent, 0.5, 12, string.Empty, nameof(unloadingExponent)),
            Guard.Fraction(setOverStrain, 0, 0.95, nameof(setOverStrain)))),
        report);

    /// <summary>Gives the test in words, invariant culture.</summary>
    /// <returns>The fraction and the report.</returns>
    public override string ToString() => "recovers " + Text.Number(Recovered.DecimalFractions) + " (" + Report.Citation + ")";
}
