using System;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>What a line does when a part lets go.</summary>
/// <remarks>
/// <para>The line itself: v = F0/Z, Z = sqrt(EA m'), the same for any length; a stiffening line has a tip at [2 sqrt(n)/(n + 1)] sqrt(F0 eps0/m') and an energy mean at sqrt(2/(n + 1)) sqrt(F0 eps0/m'). A fitting or a torn-off part of mass M on its end: f(a) F0/Z, a = m_L/M, f(a) = 2 exp(-exp(-2a)/2) - 1 from a = 0.1759, below it from the round trips of the wave.</para>
/// <para>At the end of a chain of lines: at most min(F0/Z_min, 1.02 sqrt(2E/(M + m_1/3))), Z_min the smallest impedance of the chain, m_1 the line it is tied to. On the loose end of a bridle that runs through its eye, and anywhere else: at most sqrt(2E/M). Friction in the eye is no credit.</para>
/// <para>One dimension, no air, no transverse motion, F linear in engineering strain unless said. With an unloading test the energy is multiplied by its fraction and the speed by the root of it. Take F0 as the procedure peak of that end of the stiffness band; the greater result counts.</para>
/// <para>Source: release wave and exact solution (derived); the bound was judged against lumped chains.</para>
/// </remarks>
public static class Recoil
{
    /// <summary>Gives the recoil of a line that parts with nothing on its end.</summary>
    /// <param name="segment">The line; linear or power law.</param>
    /// <param name="tension">Tension at release, above 0 to its break.</param>
    /// <returns>The speed: of the whole line if it is linear, of its tip if it stiffens.</returns>
    /// <exception cref="ArgumentException">The line is tabulated: its wave is not computed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public static RecoilResult OfLine(LineSegment segment, Force tension)
    {
        var (f, energy) = At(segment, tension);
        ref readonly var shape = ref segment.Curve.Shape;
        if (shape.Kind != CurveKind.Power) throw new ArgumentException("segment must be linear or a power law; the release wave of a table is not computed.", nameof(segment));
        var strain = CurveKernel.Stretch(shape, f) / segment.Curve.LengthMetres;
        var loss = Math.Sqrt(segment.Curve.RecoveredFraction.DecimalFractions);
        var speed = loss * RecoilKernel.StiffeningTip(f, strain, shape.Exponent, segment.MassPerMetre.KilogramsPerMeter);
        return new RecoilResult(speed, segment.MassKilograms, energy, shape.IsLinear ? "the released line, F0/Z" : "tip of the released, stiffening line", LinesSources.ReleaseWave);
    }

    /// <summary>Gives the energy mean of a stiffening line that parts: the speed at which all its mass would hold all its energy.</summary>
    /// <param name="segment">The line; linear or power law.</param>
    /// <param name="tension">Tension at release, above 0 to its break.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public static RecoilResult MeanOfLine(LineSegment segment, Force tension)
    {
        var (_, energy) = At(segment, tension);
        return new RecoilResult(RecoilKernel.EnergyOnly(energy, segment.MassKilograms), segment.MassKilograms, energy, "energy mean of the released line", LinesSources.ReleaseWave);
    }

    /// <summary>Gives the greatest speed of a fitting or torn-off part on the released end of one linear line, its other end held.</summary>
    /// <param name="segment">The line; linear.</param>
    /// <param name="tension">Tension at release, above 0 to its break.</param>
    /// <param name="hardware">Mass of the fitting, 0.01 kg to 50 t.</param>
    /// <returns>The exact speed of the stated model.</returns>
    /// <exception cref="ArgumentException">The line is not linear: use the bound.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RecoilResult OfFitting(LineSegment segment, Force tension, Mass hardware)
    {
        var (f, z, m, loss) = Fitting(segment, tension, hardware);
        var (_, energy) = At(segment, tension);
        return new RecoilResult(loss * RecoilKernel.FittingRatio(segment.MassKilograms / m) * RecoilKernel.Line(f, z), m, energy, "fitting on the released end, f(a) F0/Z", LinesSources.FittingWave);
    }

    /// <summary>Gives the speed of a fitting a time after release, before the wave is back from the held end: (F0/Z)(1 - exp(-Z t/M)).</summary>
    /// <param name="segment">The line; linear.</param>
    /// <param name="tension">Tension at release, above 0 to its break.</param>
    /// <param name="hardware">Mass of the fitting, 0.01 kg to 50 t.</param>
    /// <param name="after">Time after release, 0 to twice the length over the wave speed.</param>
    /// <returns>The speed then.</returns>
    /// <exception cref="ArgumentException">The line is not linear.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Speed FittingSpeedAfter(LineSegment segment, Force tension, Mass hardware, Duration after)
    {
        var (f, z, m, loss) = Fitting(segment, tension, hardware);
        return Speed.FromMetersPerSecond(loss * RecoilKernel.FirstPass(f, z, m, Guard.Seconds(after, 0, WaveIsBack(segment), nameof(after))));
    }

    /// <summary>Gives the way on which a fitting comes to a share of the speed F0/Z of the released line: mostly well within arm's reach of where it hung, so nobody gets out of its way.</summary>
    /// <param name="segment">The line; linear.</param>
    /// <param name="tension">Tension at release, above 0 to its break.</param>
    /// <param name="hardware">Mass of the fitting, 0.01 kg to 50 t.</param>
    /// <param name="share">Share of that speed, 0.01 to 0.99.</param>
    /// <returns>The way; null where the wave is back from the held end before it has that speed.</returns>
    /// <exception cref="ArgumentException">The line is not linear.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Length? FittingTravel(LineSegment segment, Force tension, Mass hardware, Ratio share)
    {
        var (f, z, m, loss) = Fitting(segment, tension, hardware);
        var reached = Guard.Fraction(share, 0.01, 0.99, nameof(share));
        if (RecoilKernel.FirstPass(f, z, m, WaveIsBack(segment)) < reached * RecoilKernel.Line(f, z)) return null;
        return Length.FromMeters(loss * RecoilKernel.TravelTo(reached, f, z, m));
    }

    /// <summary>Gives the bound on hardware for its place on the recoiling side, all the energy of that side counted.</summary>
    /// <param name="line">The line on that side, the part the hardware is tied to first.</param>
    /// <param name="tension">Tension at release, above 0 to the end of the line.</param>
    /// <param name="hardware">Mass of the hardware, 0.01 kg to 50 t.</param>
    /// <param name="place">Where it hangs.</param>
    /// <returns>The bound.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static RecoilResult Bound(LineAssembly line, Force tension, Mass hardware, HardwarePlace place)
    {
        Guard.NotNull(line, nameof(line));
        Guard.Defined(place, place is HardwarePlace.ChainEnd or HardwarePlace.RunningBridleEnd or HardwarePlace.Other, nameof(place));
        var f = Guard.Range(tension.Newtons / 1000, 1e-6, line.EndForce.Newtons / 1000, "kN", nameof(tension)) * 1000;
        var m = Guard.Kilograms(hardware, 1e-5, 50, nameof(hardware));
        double energy = 0;
        foreach (var part in line.Segments) energy += part.Curve.RecoverableEnergy(tension).Joules;
        // The impedance of a chain is that of linear parts; one that stiffens is bounded by energy alone.
        if (place == HardwarePlace.ChainEnd && line.Segments.All(s => s.Curve.Shape.IsLinear))
            return new RecoilResult(RecoilKernel.ChainEnd(f, line.Segments.Min(s => s.Impedance), energy, m, line.Segments[0].MassKilograms), m, energy, "end of a chain, min(F0/Z_min, 1.02 sqrt(2E/(M + m_1/3)))", LinesSources.HardwareBound);
        return new RecoilResult(RecoilKernel.EnergyOnly(energy, m), m, energy, "energy alone, sqrt(2E/M)", LinesSources.EnergyBound);
    }

    /// <summary>Works out the bound on hardware.</summary>
    /// <param name="line">The line on that side, the part the hardware is tied to first.</param>
    /// <param name="tension">Tension at release, above 0 to the end of the line.</param>
    /// <param name="hardware">Mass of the hardware, 0.01 kg to 50 t.</param>
    /// <param name="place">Where it hangs.</param>
    /// <returns>The worked steps; the last is the bound.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="line"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Working Explain(LineAssembly line, Force tension, Mass hardware, HardwarePlace place)
    {
        var result = Bound(line, tension, hardware, place);
        string e = Text.Number(result.StoredEnergy.Joules / 1000), m = Text.Number(hardware.Kilograms);
        var working = new WorkingBuilder("Hardware on a free end").Step("E", "energy of the line on that side", "sum over the parts", Text.Kilonewtons(tension.Newtons), e + " kJ", LinesSources.Spring);
        if (result.Source == LinesSources.HardwareBound)
        {
            var z = line.Segments.Min(s => s.Impedance);
            working.Step("Z_min", "smallest impedance", "sqrt(EA m')", "least of " + Text.Number(line.Segments.Count) + " parts", Text.With(z, "N s/m"), LinesSources.ReleaseWave)
                .Step("v_wave", "wave side of the bound", "F0/Z_min", Text.Kilonewtons(tension.Newtons) + "/" + Text.Number(z), Text.With(RecoilKernel.Line(tension.Newtons, z), "m/s"), LinesSources.ReleaseWave);
        }

        return working.Step("v", "bound on the speed", result.Rule, "E " + e + " kJ, M " + m + " kg", Text.With(result.MetresPerSecond, "m/s"), result.Source).Build();
    }

    /// <summary>Time after which the wave is back from the held end, 2 L/c.</summary>
    private static double WaveIsBack(LineSegment segment) => 2 * segment.Curve.LengthMetres / segment.WaveSpeed!.Value.MetersPerSecond;

    private static (double Force, double Impedance, double Mass, double Loss) Fitting(LineSegment segment, Force tension, Mass hardware)
    {
        var (f, _) = At(segment, tension);
        if (!segment.Curve.Shape.IsLinear) throw new ArgumentException("segment must be linear for the exact fitting speed; use Recoil.Bound.", nameof(segment));
        return (f, segment.Impedance, Guard.Kilograms(hardware, 1e-5, 50, nameof(hardware)), Math.Sqrt(segment.Curve.RecoveredFraction.DecimalFractions));
    }

    private static (double Force, double Energy) At(LineSegment segment, Force tension)
    {
        Guard.NotNull(segment, nameof(segment));
        var f = Guard.Range(tension.Newtons / 1000, 1e-6, segment.Curve.Shape.EndForce / 1000, "kN", nameof(tension)) * 1000;
        return (f, segment.Curve.RecoverableEnergy(Force.FromNewtons(f)).Joules);
    }
}
