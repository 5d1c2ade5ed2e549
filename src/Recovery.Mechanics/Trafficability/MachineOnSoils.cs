using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Trafficability;

/// <summary>One machine over many soils: what it has left to pull with, where it goes and where not, and how full it may be.</summary>
/// <remarks>
/// <para>Mobility: greatest net traction of all wheels at slip up to 0.30, less the grade, over the weight: above zero the machine moves itself. Go: cone index at or above the critical one, where that is zero. Fill limit: the greatest share of a payload at which it still goes.</para>
/// <para>Brixius; bias constants are the cautious set. Wheels rolling in a shallow rut, loads at rest on the grade, no belly, no load transfer. Go says that no rule of this model is broken, and no more: where soil lies between readings it is not known.</para>
/// <para>Immutable; many threads may use it at once. Source: wheel model Brixius (secondary), slip limit judgement.</para>
/// </remarks>
public sealed class MachineOnSoils
{
    private const string Tracks = "For a machine on two tracks there is TrackedMobilityModel.";

    private readonly MobilityFlat _flat;
    private readonly Grade _grade;
    private readonly BrixiusConstants _constants;

    private MachineOnSoils(Machine machine, Grade grade, bool radial)
    {
        Machine = machine;
        _grade = grade;
        _constants = radial ? BrixiusConstants.Radial : BrixiusConstants.Bias;
        _flat = MobilityFlat.From(machine, grade);
        var critical = _flat.Critical(_constants);
        CriticalPascals = critical;
    }

    /// <summary>Gets the machine.</summary>
    public Machine Machine { get; }

    /// <summary>Gets the cone index below which it does not move itself, kPa; null where no soil would do.</summary>
    public double? CriticalConeIndexKilopascals => double.IsNaN(CriticalPascals) ? null : CriticalPascals / 1000;

    private double CriticalPascals { get; }

    /// <summary>Makes it with the cautious constants (bias-ply).</summary>
    /// <param name="machine">The machine with its loads.</param>
    /// <param name="grade">Slope along the way, positive uphill.</param>
    /// <returns>The machine over soils.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentException">An axle runs on tracks.</exception>
    public static MachineOnSoils Of(Machine machine, Grade grade = default) => new(Guard.NotNull(machine, nameof(machine)).OnTyres(nameof(machine), Tracks), grade, radial: false);

    /// <summary>Makes it with the constants of radial tyres.</summary>
    /// <param name="machine">The machine with its loads.</param>
    /// <param name="grade">Slope along the way, positive uphill.</param>
    /// <returns>The machine over soils.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentException">An axle runs on tracks.</exception>
    public static MachineOnSoils WithRadialConstants(Machine machine, Grade grade = default) => new(Guard.NotNull(machine, nameof(machine)).OnTyres(nameof(machine), Tracks), grade, radial: true);

    /// <summary>Gives net traction at the best slip up to 0.30, less the grade, over the weight.</summary>
    /// <param name="coneIndexKilopascals">Rating cone index on fine soils, 0.001 to 20,000 kPa, one an element.</param>
    /// <param name="pullOverWeight">Receives what is left over the weight; below zero it does not move itself.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Mobility(ReadOnlySpan<double> coneIndexKilopascals, Span<double> pullOverWeight)
    {
        Guard.SameLength(coneIndexKilopascals.Length, pullOverWeight.Length, nameof(pullOverWeight));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        _flat.Surplus(coneIndexKilopascals, _constants, pullOverWeight);
    }

    /// <summary>Gives where it goes.</summary>
    /// <param name="coneIndexKilopascals">Rating cone index on fine soils, 0.001 to 20,000 kPa, one an element.</param>
    /// <param name="goes">Receives true where it moves itself.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Goes(ReadOnlySpan<double> coneIndexKilopascals, Span<bool> goes)
    {
        Guard.SameLength(coneIndexKilopascals.Length, goes.Length, nameof(goes));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));
        var critical = double.IsNaN(CriticalPascals) ? double.PositiveInfinity : CriticalPascals / 1000;
        for (var i = 0; i < goes.Length; i++) goes[i] = coneIndexKilopascals[i] >= critical;
    }

    /// <summary>Gives how full it may be: the greatest share of a payload, in steps of 1/256, at which it and every smaller share still goes.</summary>
    /// <param name="payload">Name of a payload or attachment that the machine carries.</param>
    /// <param name="coneIndexKilopascals">Rating cone index on fine soils, 0.001 to 20,000 kPa, one an element.</param>
    /// <param name="share">Receives the share of the mass that the machine carries now, 0 to 1; 0 where it does not even go empty.</param>
    /// <param name="goesEmpty">Receives whether it goes at all.</param>
    /// <exception cref="ArgumentException">The spans differ in length, or there is no such load.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void FillLimit(string payload, ReadOnlySpan<double> coneIndexKilopascals, Span<double> share, Span<bool> goesEmpty)
    {
        const int Steps = 256;
        Guard.SameLength(coneIndexKilopascals.Length, share.Length, nameof(share));
        Guard.SameLength(coneIndexKilopascals.Length, goesEmpty.Length, nameof(goesEmpty));
        Guard.All(coneIndexKilopascals, 1e-3, 20000, "kPa", nameof(coneIndexKilopascals));

        // Critical index of every share; made to rise, so that a share counts only where all smaller ones go too.
        var needed = new double[Steps + 1];
        double most = 0;
        for (var i = 0; i <= Steps; i++)
        {
            var critical = MobilityFlat.From(Machine.WithShareOf(payload, UnitsNet.Ratio.FromDecimalFractions((double)i / Steps)), _grade).Critical(_constants);
            most = Math.Max(most, double.IsNaN(critical) ? double.PositiveInfinity : critical / 1000);
            needed[i] = most;
        }

        for (var i = 0; i < share.Length; i++)
        {
            var at = Array.BinarySearch(needed, coneIndexKilopascals[i]);
            if (at < 0) at = ~at - 1;
            while (at >= 0 && at < Steps && needed[at + 1] <= coneIndexKilopascals[i]) at++;
            goesEmpty[i] = at >= 0;
            share[i] = Math.Max(0, at) / (double)Steps;
        }
    }

    /// <summary>Gives machine and critical cone index, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Machine.Name + ", goes from " + (CriticalConeIndexKilopascals is { } critical ? Text.With(critical, "kPa", 3) : "no cone index") + " upwards";
}
