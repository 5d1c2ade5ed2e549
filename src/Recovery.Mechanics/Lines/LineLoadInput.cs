namespace Recovery.Mechanics.Lines;

/// <summary>What the line-load kernel reads, SI. Values that are not declared are negative.</summary>
internal struct LineLoadInput
{
    /// <summary>Most that the puller can impose, N.</summary>
    public double Pull;

    /// <summary>Mass of the puller with the equivalent mass of what turns where its wheels cannot slip, kg.</summary>
    public double Mass;

    /// <summary>Part of that mass that turns, kg: its speed is at most that of the gear.</summary>
    public double Turning;

    /// <summary>Stiffness of the line without bridle, soft end, N/m.</summary>
    public double Soft;

    /// <summary>Stiffness of the line without bridle, stiff end, N/m.</summary>
    public double Stiff;

    /// <summary>Factor on the stiff end for a second pull.</summary>
    public double BeddedFactor;

    /// <summary>Theoretical speed of the locked gear, m/s; negative: none.</summary>
    public double GearSpeed;

    /// <summary>Whether a condition of the locked-gear rule is known not to be met: the speed of the gear still counts, the rule does not.</summary>
    public bool GearRuleBroken;

    /// <summary>Whether the clutch may be dropped with slack in the line: on a low-stretch line the rule then does not count either.</summary>
    public bool ClutchMayDrop;

    /// <summary>Whether the puller may stand facing downhill: its weight adds to the pull and the engine would have to brake it.</summary>
    public bool FacesDownhill;

    /// <summary>Slack, m; negative: not declared.</summary>
    public double Slack;

    /// <summary>Speed at the start of the slack, m/s; negative: not declared.</summary>
    public double Approach;

    /// <summary>Time of the throttle, s; negative: not declared.</summary>
    public double Rise;

    /// <summary>Slack of the careless load, m.</summary>
    public double CarelessSlack;

    /// <summary>Speed of the careless load, m/s.</summary>
    public double CarelessSpeed;

    /// <summary>Whether a second pull is declared.</summary>
    public bool SecondPull;
}
