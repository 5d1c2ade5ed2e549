namespace Recovery.Mechanics.Rigging;

/// <summary>What the rig kernel gives for one place.</summary>
internal struct RigOutcome
{
    /// <summary>Steady load over the rated allowable.</summary>
    public double RatedUtilisation;

    /// <summary>Strength over the procedure load.</summary>
    public double Reserve;

    /// <summary>Procedure load over what the full factors (for a shackle its peak limit) allow.</summary>
    public double PeakUtilisation;

    /// <summary>Strength over the load of a second pull.</summary>
    public double SecondReserve;

    /// <summary>Strength over the careless load.</summary>
    public double CarelessReserve;
}
