using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A published energy that screens debris, shown as context and never as a filter: nothing is permitted by lying below it.</summary>
public sealed record InjuryThreshold
{
    internal const double JoulesPerFootPound = 1.3558179483314004;

    internal InjuryThreshold(string key, double joules, string meaning, Source source)
    {
        Key = key;
        Joules = joules;
        Meaning = meaning;
        Source = source;
    }

    /// <summary>Gets the stable key.</summary>
    public string Key { get; }

    /// <summary>Gets the energy.</summary>
    public Energy Energy => Energy.FromJoules(Joules);

    /// <summary>Gets what it was published for.</summary>
    public string Meaning { get; }

    /// <summary>Gets the source with its standing.</summary>
    public Source Source { get; }

    internal double Joules { get; }

    /// <summary>Gives the speed at which a mass carries that energy. Any realistic pull passes it by far.</summary>
    /// <param name="mass">Mass, 0.01 kg to 5 t.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public Speed SpeedOf(Mass mass) => Speed.FromMetersPerSecond(BallisticsKernel.SpeedOfEnergy(Joules, Guard.Kilograms(mass, 1e-5, 5, nameof(mass))));

    /// <summary>Gives the threshold in words, invariant culture.</summary>
    /// <returns>Energy and meaning.</returns>
    public override string ToString() => Text.With(Joules, "J", 3) + ", " + Meaning;
}
