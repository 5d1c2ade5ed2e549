namespace Recovery.Mechanics.Traction;

/// <summary>Working memory of one thread for a team in line: what its kernel writes into, so that it allocates nothing.</summary>
internal sealed class TeamScratch
{
    /// <summary>Makes the memory.</summary>
    /// <param name="team">The team.</param>
    public TeamScratch(TeamFlat team)
    {
        Held = new CapabilityFlat[team.Count];
        Soft = new CapabilityFlat[team.Count];
        Imposable = new double[team.Count];
        SustainedIndex = new double[team.Count];
        ImposableIndex = new double[team.Count];
        for (var i = 0; i < team.Count; i++)
        {
            Held[i] = team.Alone[i].Copy();
            Soft[i] = team.Alone[i].OnSoftTyres().Copy();
        }
    }

    /// <summary>Gets each member drawn by what those ahead of it sustain.</summary>
    public CapabilityFlat[] Held { get; }

    /// <summary>Gets each member on tyres as soft as they are, drawn by the most that those ahead of it can impose.</summary>
    public CapabilityFlat[] Soft { get; }

    /// <summary>Gets the cone index on which each member sustains its pull, Pa; set by the caller.</summary>
    public double[] SustainedIndex { get; }

    /// <summary>Gets the cone index for the most that each member can impose, Pa; set by the caller.</summary>
    public double[] ImposableIndex { get; }

    /// <summary>Gets the most that can come into the line behind each member.</summary>
    public double[] Imposable { get; }
}
