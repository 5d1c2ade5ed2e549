namespace Recovery.Mechanics.Planning;

/// <summary>What the plan kernel gives for one set of numbers, SI.</summary>
internal struct PlanOutcome
{
    /// <summary>Most places of a rig that <see cref="Parted"/> can tell apart.</summary>
    public const int MostPlaces = 64;

    /// <summary>Central demand, as declared.</summary>
    public double Demand;

    /// <summary>Central demand with all wheels turning.</summary>
    public double Turning;

    /// <summary>Gross traction of the stuck machine's own driven axles.</summary>
    public double OwnGross;

    /// <summary>Pull that is sustained on the line: by the towing machine, by the team, through the tackle.</summary>
    public double Sustained;

    /// <summary>Pull that the towing machine sustains by itself.</summary>
    public double Own;

    /// <summary>The most that can come into the line, along the ground.</summary>
    public double Imposable;

    /// <summary>The most at the hitch of the towing machine, along the ground.</summary>
    public double AtHitch;

    /// <summary>Greatest that was left of an equation of pull in a team, N.</summary>
    public double Residual;

    /// <summary>Steady line load; not a number where the line is not known.</summary>
    public double Steady;

    /// <summary>Procedure peak, stiff end; not a number where the line is not known.</summary>
    public double Procedure;

    /// <summary>Share of the nose moment used up.</summary>
    public double Nose;

    /// <summary>Whether the belly's uplift cannot develop, so that it drags.</summary>
    public bool BellyDrags;

    /// <summary>The verdict that these numbers give.</summary>
    public Verdict Verdict;

    /// <summary>Places of the rig whose own strength is below the procedure peak they carry, one bit each.</summary>
    public ulong Parted;
}
