namespace Recovery.Mechanics.Lines;

/// <summary>One simulated take-up as flat data, SI.</summary>
internal struct TakeUpProblem
{
    /// <summary>Puller with the equivalent mass of what rotates, kg.</summary>
    public double Puller;

    /// <summary>Casualty, kg; infinite where it is held.</summary>
    public double Casualty;

    public TowDriveKind Drive;

    /// <summary>Pull, N: full contact force.</summary>
    public double Pull;

    /// <summary>Time over which it is raised, s; or over which the clutch is let in with tyres.</summary>
    public double Rise;

    /// <summary>Theoretical speed of the gear, m/s.</summary>
    public double GearSpeed;

    /// <summary>Exponent of the slip curve.</summary>
    public double SlipExponent;

    /// <summary>Stiffness of the tyres along the ground, N/m.</summary>
    public double TyreStiffness;

    public CurveShape Line;

    /// <summary>Dashpot beside the line, N s/m.</summary>
    public double Damping;

    /// <summary>Force at which the weakest part lets go, N; infinite for never.</summary>
    public double FailForce;

    /// <summary>Whether the line also pushes: only to hold the solver against textbook problems.</summary>
    public bool Bilateral;

    /// <summary>Stretch at the start, m; negative for slack.</summary>
    public double Stretch;

    /// <summary>Speed of the puller at the start, m/s.</summary>
    public double Speed;

    /// <summary>Speed of the casualty at the start, m/s.</summary>
    public double CasualtySpeed;

    /// <summary>Static resistance of the casualty, N.</summary>
    public double StaticResistance;

    /// <summary>Kinetic resistance, N, at most the static one.</summary>
    public double KineticResistance;

    /// <summary>End of the simulation, s.</summary>
    public double EndTime;

    /// <summary>Stop when the line goes slack.</summary>
    public bool EndAtSlack;

    /// <summary>Relative tolerance of the Runge-Kutta pair.</summary>
    public double Tolerance;
}
