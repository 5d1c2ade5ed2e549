using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What engine and wheels that turn add to the line if the ground does not let the wheels slip: dug in, chained, on a step, on a hard surface.</summary>
/// <remarks>
/// <para>m_r = (J_e i^2 + J_w)/r^2; E = 0.5 (m + m_r) v_t^2; F = P + v_t sqrt(k (m + m_r)).</para>
/// <para>J_e inertia on the engine shaft and J_w of all driven wheels, kg m2; i turns of the engine for one of the wheels; r rolling radius, m; m mass of the machine, kg; v_t speed of the wheels in that gear, m/s; k stiffness of the line at its stiff end, N/m; P steady pull, N.</para>
/// <para>While the wheels slip, grip caps what they push and this does not reach the line. In the lowest gears i is in the hundreds and m_r is many times the machine: a locked gear does not bound the peak then. An engine that stalls or a clutch that slips takes some of it away; neither is credited. Its equivalent mass, declared with the procedure of a pull, raises every line load of that pull.</para>
/// <para>Source: energy of rotating parts reflected to the line, held by a linear line (derived). Inertias come from the caller.</para>
/// </remarks>
public sealed record RotatingInertia
{
    /// <summary>Describes the turning parts.</summary>
    /// <param name="engineKilogramSquareMetres">Inertia on the engine shaft with flywheel and clutch, 0 to 100 kg m2.</param>
    /// <param name="wheelsKilogramSquareMetres">Inertia of all driven wheels about their axles, 0 to 20,000 kg m2.</param>
    /// <param name="ratio">Turns of the engine for one turn of the wheels in the gear used, 1 to 5,000.</param>
    /// <param name="rollingRadius">Rolling radius of the driven wheels, 0.2 to 1.5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RotatingInertia(double engineKilogramSquareMetres, double wheelsKilogramSquareMetres, double ratio, Length rollingRadius)
    {
        EngineKilogramSquareMetres = Guard.Range(engineKilogramSquareMetres, 0, 100, "kg m2", nameof(engineKilogramSquareMetres));
        WheelsKilogramSquareMetres = Guard.Range(wheelsKilogramSquareMetres, 0, 20000, "kg m2", nameof(wheelsKilogramSquareMetres));
        Ratio = Guard.Range(ratio, 1, 5000, string.Empty, nameof(ratio));
        RollingRadius = Length.FromMeters(Guard.Metres(rollingRadius, 0.2, 1.5, nameof(rollingRadius)));
    }

    /// <summary>Gets the inertia on the engine shaft, kg m2.</summary>
    public double EngineKilogramSquareMetres { get; }

    /// <summary>Gets the inertia of all driven wheels, kg m2.</summary>
    public double WheelsKilogramSquareMetres { get; }

    /// <summary>Gets the turns of the engine for one turn of the wheels.</summary>
    public double Ratio { get; }

    /// <summary>Gets the rolling radius.</summary>
    public Length RollingRadius { get; }

    /// <summary>Gets the mass that the turning parts stand for at the wheels.</summary>
    public Mass EquivalentMass => Mass.FromKilograms(RotatingKernel.EquivalentMass(EngineKilogramSquareMetres, WheelsKilogramSquareMetres, Ratio, RollingRadius.Meters));

    /// <summary>Gives the energy of machine and turning parts.</summary>
    /// <param name="machine">Mass of the machine, 0 to 100 t.</param>
    /// <param name="wheelSpeed">Speed of the wheels in that gear, 0 to 40 km/h.</param>
    /// <returns>The energy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Energy EnergyAt(Mass machine, Speed wheelSpeed) => Energy.FromJoules(RotatingKernel.Energy(
        Guard.Kilograms(machine, 0, 100, nameof(machine)) + EquivalentMass.Kilograms, Guard.MetresPerSecond(wheelSpeed, 0, 40, nameof(wheelSpeed))));

    /// <summary>Gives the peak in a line while the wheels cannot slip.</summary>
    /// <param name="steady">Steady pull, 0 to 5,000 kN.</param>
    /// <param name="machine">Mass of the machine, 0 to 100 t.</param>
    /// <param name="wheelSpeed">Speed of the wheels in that gear, 0 to 40 km/h.</param>
    /// <param name="stiffnessNewtonsPerMetre">Stiffness of the line at its stiff end, 1,000 to 1e9 N/m.</param>
    /// <returns>The peak.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force PeakWithoutSlip(Force steady, Mass machine, Speed wheelSpeed, double stiffnessNewtonsPerMetre) => Force.FromNewtons(RotatingKernel.Peak(
        Guard.Newtons(steady, 0, 5000, nameof(steady)),
        Guard.Kilograms(machine, 0, 100, nameof(machine)) + EquivalentMass.Kilograms,
        Guard.MetresPerSecond(wheelSpeed, 0, 40, nameof(wheelSpeed)),
        Guard.Range(stiffnessNewtonsPerMetre, 1e3, 1e9, "N/m", nameof(stiffnessNewtonsPerMetre))));

    /// <summary>Gives the equivalent mass in words, invariant culture.</summary>
    /// <returns>Equivalent mass and ratio.</returns>
    public override string ToString() => "turning parts stand for " + Text.With(EquivalentMass.Kilograms / 1000, "t", 3) + " at " + Text.Number(Ratio, 3) + ":1";
}
