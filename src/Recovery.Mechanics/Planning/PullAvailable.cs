using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>What comes to the line of a plan: of the towing machine alone, of a team, through a tackle.</summary>
internal readonly struct PullAvailable
{
    public PullAvailable(PullCapability own, CompiledPlan compiled)
    {
        double sustained = compiled.Tackle?.SustainedAdvantage ?? 1, advantage = compiled.Tackle?.Parts ?? 1;
        if (compiled.Team is { } team)
        {
            (Low, Central, High) = (team.Sustained.LowNewtons * sustained, team.Sustained.CentralNewtons * sustained, team.Sustained.HighNewtons * sustained);
            AtHitch = team.Imposable.Newtons;
        }
        else
        {
            (Low, Central, High) = (own.LowNewtons * sustained, own.CentralNewtons * sustained, own.HighNewtons * sustained);
            AtHitch = own.ImposableNewtons;
        }

        Advantage = advantage;
        Imposable = AtHitch * advantage;
    }

    /// <summary>Sustained on the line along the ground, low, N.</summary>
    public double Low { get; }

    /// <summary>Sustained on the line along the ground, central, N.</summary>
    public double Central { get; }

    /// <summary>Sustained on the line along the ground, high, N.</summary>
    public double High { get; }

    /// <summary>The most that can come into the line, N.</summary>
    public double Imposable { get; }

    /// <summary>The most at the hitch of the towing machine, N.</summary>
    public double AtHitch { get; }

    /// <summary>Force in the line over that at the hitch, without friction.</summary>
    public double Advantage { get; }
}
