namespace Recovery.Mechanics.Traction;

/// <summary>Kind of arrangement.</summary>
public enum PullOptionKind
{
    /// <summary>One machine on a line.</summary>
    Machine,

    /// <summary>Several machines.</summary>
    Team,

    /// <summary>A winch on a single line.</summary>
    Winch,

    /// <summary>A winch through a tackle to an anchor.</summary>
    WinchTackle,

    /// <summary>A machine that hauls through a tackle to an anchor.</summary>
    MachineTackle,
}
