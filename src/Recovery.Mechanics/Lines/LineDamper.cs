using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A weight, blanket or bag laid on the line: present or not, without numeric credit.</summary>
/// <remarks>
/// <para>Ideal bound only: were it fully captured, v' = v m/(m + M_d) and the kinetic energy kept m/(m + M_d). The release wave passes under it, it does nothing for hardware on its other side, it becomes a missile itself, and no measured reduction is published. Never subtract the bound from anything.</para>
/// <para>Source: plastic collision (derived); instructions ask for it (reported). Immutable, equality by value.</para>
/// </remarks>
public sealed record LineDamper
{
    /// <summary>Describes a damper.</summary>
    /// <param name="mass">Mass, 0.5 to 500 kg.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public LineDamper(Mass mass)
    {
        Kilograms = Guard.Range(mass.Kilograms, 0.5, 500, "kg", nameof(mass));
    }

    /// <summary>Gets the mass.</summary>
    public Mass Mass => Mass.FromKilograms(Kilograms);

    internal double Kilograms { get; }

    /// <summary>Gives the fraction of kinetic energy that even an ideal capture leaves: a bound, no credit.</summary>
    /// <param name="moving">Moving mass that it would have to capture, 0.01 kg to 50 t.</param>
    /// <returns>The fraction kept.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public Ratio IdealBoundOnEnergyKept(Mass moving) => Ratio.FromDecimalFractions(DamperKernel.EnergyKept(Guard.Kilograms(moving, 1e-5, 50, nameof(moving)), Kilograms));

    /// <summary>Gives the speed that even an ideal capture leaves: a bound, no credit.</summary>
    /// <param name="moving">Moving mass that it would have to capture, 0.01 kg to 50 t.</param>
    /// <param name="speed">Its speed, 0 to 400 m/s.</param>
    /// <returns>The speed kept.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Speed IdealBoundOnSpeedKept(Mass moving, Speed speed) => Speed.FromMetersPerSecond(
        DamperKernel.EnergyKept(Guard.Kilograms(moving, 1e-5, 50, nameof(moving)), Kilograms) * Guard.Range(speed.MetersPerSecond, 0, 400, "m/s", nameof(speed)));

    /// <summary>Gives the sag that it adds at mid-span, W L/(4 H).</summary>
    /// <param name="span">Span, 0.2 to 300 m.</param>
    /// <param name="tension">Horizontal tension, 0.01 to 20,000 kN.</param>
    /// <returns>The sag of a straight line of no weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length AddedSag(Length span, Force tension) => Length.FromMeters(
        DamperKernel.AddedSag(Kilograms, Guard.Metres(span, 0.2, 300, nameof(span)), Guard.Newtons(tension, 0.01, 20000, nameof(tension))));

    /// <summary>Gives the remark that goes with a damper.</summary>
    /// <returns>The note that no credit is taken.</returns>
    public Finding Remark() => new(LinesFindings.DamperNoCredit, "damper of " + Text.With(Kilograms, "kg"));

    /// <summary>Gives the damper in words, invariant culture.</summary>
    /// <returns>Its mass.</returns>
    public override string ToString() => "damper of " + Text.With(Kilograms, "kg") + ", no credit";
}
