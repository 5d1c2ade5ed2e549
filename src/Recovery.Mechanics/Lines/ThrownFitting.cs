using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A fitting that flies: how far it can reach if it hits nothing.</summary>
/// <remarks>
/// <para>Vacuum R = (v cos th/g)(v sin th + sqrt(v^2 sin^2 th + 2 g h)). Quadratic drag dv/dt = -b |v| v - g, b = rho CD A/(2 M), area A = (M/k)^(2/3) with k 2600 kg/m3 for forged steel (DDESB TP-12, from memory), CD 1.2 (assumed), rho 1.225 kg/m3.</para>
/// <para>A reach, never a distance to stand at: no bounce or roll, no spread of direction is published, and drag may be less than assumed. Source: free flight (derived). Immutable.</para>
/// </remarks>
public sealed record ThrownFitting
{
    /// <summary>Describes a fitting at release.</summary>
    /// <param name="mass">Mass, 0.05 kg to 5 t.</param>
    /// <param name="speed">Speed at release, 0.1 to 400 m/s.</param>
    /// <param name="height">Height above the ground, 0.01 to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ThrownFitting(Mass mass, Speed speed, Length height)
    {
        Mass = Mass.FromKilograms(Guard.Kilograms(mass, 5e-5, 5, nameof(mass)));
        Speed = Speed.FromMetersPerSecond(Guard.Range(speed.MetersPerSecond, 0.1, 400, "m/s", nameof(speed)));
        Height = Length.FromMeters(Guard.Metres(height, 0.01, 10, nameof(height)));
    }

    /// <summary>Gets the mass.</summary>
    public Mass Mass { get; }

    /// <summary>Gets the speed at release.</summary>
    public Speed Speed { get; }

    /// <summary>Gets the height of release.</summary>
    public Length Height { get; }

    /// <summary>Gets the kinetic energy at release.</summary>
    public Energy KineticEnergy => Energy.FromJoules(Mass.Kilograms * Speed.MetersPerSecond * Speed.MetersPerSecond / 2);

    /// <summary>Gets the greatest range in vacuum over all elevations: an upper bound of the model.</summary>
    public Length GreatestVacuumReach => Length.FromMeters(BallisticsKernel.GreatestVacuumRange(Speed.MetersPerSecond, Height.Meters));

    /// <summary>Gets the area that it sweeps where it comes down, by bounce, skip and slide: 7 times its projected area, as a debris risk analysis takes it (14 CFR Part 417 Appendix C, primary). In place of a point.</summary>
    public Area SweptArea => Area.FromSquareMeters(BallisticsKernel.SweptArea(BallisticsKernel.FragmentArea(Mass.Kilograms, BallisticsKernel.ForgedSteelShape)));

    /// <summary>Gets the speed at which drag carries its weight: it comes down no faster from however high. sqrt(g/b).</summary>
    public Speed TerminalSpeed => Speed.FromMetersPerSecond(BallisticsKernel.TerminalSpeed(DragPerMetre));

    /// <summary>Gets the energy at that speed.</summary>
    public Energy TerminalEnergy => Energy.FromJoules(Mass.Kilograms * TerminalSpeed.MetersPerSecond * TerminalSpeed.MetersPerSecond / 2);

    /// <summary>Gets how high it rises above its release if thrown straight up, with drag: ln(1 + v^2/v_t^2)/(2b).</summary>
    public Length GreatestRise => Length.FromMeters(BallisticsKernel.Rise(Speed.MetersPerSecond, DragPerMetre));

    /// <summary>Gets the speed with which it comes back to the height of its release from there: v/sqrt(1 + v^2/v_t^2).</summary>
    public Speed ReturnSpeed => Speed.FromMetersPerSecond(BallisticsKernel.ReturnSpeed(Speed.MetersPerSecond, DragPerMetre));

    private double DragPerMetre => BallisticsKernel.DragPerMetre(Mass.Kilograms, BallisticsKernel.FragmentArea(Mass.Kilograms, BallisticsKernel.ForgedSteelShape), BallisticsKernel.DragCoefficient, BallisticsKernel.AirDensity);

    /// <summary>Gives the least speed at which something flew that was found at a distance: in vacuum, at 45 degrees, from the ground and back to it, sqrt(g R). Drag, a flatter flight and what it hit on its way ask for more; bounce and roll after landing, and a release above the ground, for less.</summary>
    /// <param name="reach">Where it came down, 0.1 to 1,000 m.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public static Speed LeastSpeedToReach(Length reach) => Speed.FromMetersPerSecond(BallisticsKernel.SpeedForRange(Guard.Metres(reach, 0.1, 1000, nameof(reach))));

    /// <summary>Gives the speed that drag leaves it after a level way, gravity left out: v exp(-b x).</summary>
    /// <param name="way">The way, 0 to 1,000 m.</param>
    /// <returns>The speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The way is outside its range.</exception>
    public Speed SpeedAfter(Length way) => Speed.FromMetersPerSecond(BallisticsKernel.LevelSpeed(Speed.MetersPerSecond, DragPerMetre, Guard.Metres(way, 0, 1000, nameof(way))));

    /// <summary>Gives the range in vacuum at an elevation.</summary>
    /// <param name="elevation">Elevation at release, 0 to 89 degrees.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is outside its range.</exception>
    public Length VacuumReach(Angle elevation) => Length.FromMeters(BallisticsKernel.VacuumRange(Speed.MetersPerSecond, Elevation(elevation), Height.Meters));

    /// <summary>Gives the flight with drag at an elevation.</summary>
    /// <param name="elevation">Elevation at release, 0 to 89 degrees.</param>
    /// <returns>Where and how it lands.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The elevation is outside its range.</exception>
    public ThrownReach Flight(Angle elevation) => Land(Elevation(elevation));

    /// <summary>Gives the flight with drag that reaches furthest.</summary>
    /// <returns>Where and how it lands.</returns>
    public ThrownReach FurthestFlight() => Land(BallisticsKernel.FurthestElevation(Speed.MetersPerSecond, Height.Meters, DragPerMetre));

    /// <summary>Works out the reach.</summary>
    /// <returns>The worked steps; the last is the furthest reach with drag.</returns>
    public Working Explain()
    {
        string m = Text.Number(Mass.Kilograms), v = Text.Number(Speed.MetersPerSecond), h = Text.Number(Height.Meters);
        double a = BallisticsKernel.FragmentArea(Mass.Kilograms, BallisticsKernel.ForgedSteelShape);
        var furthest = FurthestFlight();
        return new WorkingBuilder("Reach of a thrown fitting")
            .Step("A", "area from the shape of forged fragments", "(M/k)^(2/3)", "(" + m + "/" + Text.Number(BallisticsKernel.ForgedSteelShape) + ")^(2/3)", Text.With(a, "m2"), LinesSources.FragmentShape)
            .Step("b", "drag per metre", "rho CD A/(2 M)", Text.Number(BallisticsKernel.AirDensity) + " x " + Text.Number(BallisticsKernel.DragCoefficient) + " x " + Text.Number(a) + "/(2 x " + m + ")", Text.With(DragPerMetre, "1/m"), LinesSources.FragmentShape)
            .Step("R_0", "greatest reach in vacuum", "(v/g) sqrt(v^2 + 2 g h)", v + ", " + h, Text.With(GreatestVacuumReach.Meters, "m"), LinesSources.FreeFlight)
            .Step("R", "greatest reach with drag, at " + Text.With(furthest.Elevation.Degrees, "deg", 3), "flight to the ground", v + ", " + h, Text.With(furthest.Reach.Meters, "m"), LinesSources.FreeFlight)
            .Build();
    }

    /// <summary>Gives the fitting in words, invariant culture.</summary>
    /// <returns>Mass, speed and height.</returns>
    public override string ToString() => Text.With(Mass.Kilograms, "kg") + " at " + Text.With(Speed.MetersPerSecond, "m/s") + " from " + Text.With(Height.Meters, "m");

    private ThrownReach Land(double elevation)
    {
        var landing = BallisticsKernel.Fly(Speed.MetersPerSecond, elevation, Height.Meters, DragPerMetre);
        if (double.IsNaN(landing.Range)) throw new SolverException("flight of a thrown fitting", 0, elevation, Height.Meters, BallisticsKernel.MostSteps);
        return new ThrownReach(landing, elevation, Mass.Kilograms);
    }

    private static double Elevation(Angle elevation) => Guard.Radians(elevation, 0, 89, nameof(elevation));
}
