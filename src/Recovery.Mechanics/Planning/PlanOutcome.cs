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

    /// <summary>Net traction of the stuck machine's own driven axles; not a number where no wheel model covers them (none is driven, or one is buried).</summary>
    public double OwnNet;

    /// <summary>What holds the machine, its wheels turning, beside the rolling of its driven axles.</summary>
    public double OwnHolding;

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

    /// <summary>Pull of the slope on the freed machine, downhill along the pull; 0 or less where it runs level or uphill.</summary>
    public double Slope;

    /// <summary>What its rolling wheels hold back, at the rating cone index.</summary>
    public double RollingHolds;

    /// <summary>The same on the firmest ground on its way.</summary>
    public double RollingHoldsOnFirmest;

    /// <summary>Load down on the hitch.</summary>
    public double Down;

    /// <summary>Share of the moment used up that keeps the puller from going over sideways; 0 where the line runs straight.</summary>
    public double Sideways;

    /// <summary>Share of the line load that the worse attachment of the stuck machine carries.</summary>
    public double CasualtyEnd;

    /// <summary>Whether the belly's uplift cannot develop, so that it drags.</summary>
    public bool BellyDrags;

    /// <summary>The verdict that these numbers give.</summary>
    public Verdict Verdict;

    /// <summary>Places of the rig whose own strength is below the procedure peak they carry, one bit each.</summary>
    public ulong Parted;
}
