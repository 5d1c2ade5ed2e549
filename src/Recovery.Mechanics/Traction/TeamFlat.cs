namespace Recovery.Mechanics.Traction;

/// <summary>A team in line as plain numbers, the foremost first: what the kernel of a team reads. SI throughout, immutable.</summary>
internal sealed class TeamFlat
{
    private TeamFlat(int members)
    {
        Alone = new CapabilityFlat[members];
        LoadPerLead = new double[members][];
        FrontHeight = new double[members];
        FrontRating = new double[members];
        ConeIndex = new double[members];
        RemouldingIndex = new double[members];
        FirmestDeclared = new double[members];
    }

    /// <summary>Gets the number of members.</summary>
    public int Count => Alone.Length;

    /// <summary>Gets each member with a level line and nothing ahead.</summary>
    public CapabilityFlat[] Alone { get; }

    /// <summary>Gets the change of its axle loads per newton by which it is drawn.</summary>
    public double[][] LoadPerLead { get; }

    /// <summary>Gets the height of the point by which it is drawn.</summary>
    public double[] FrontHeight { get; }

    /// <summary>Gets the rating of that point; infinite where it is not known or nothing draws it.</summary>
    public double[] FrontRating { get; }

    /// <summary>Gets the cone index under it.</summary>
    public double[] ConeIndex { get; }

    /// <summary>Gets the remoulding index under it.</summary>
    public double[] RemouldingIndex { get; }

    /// <summary>Gets the cone index of the firmest ground that it may reach, as declared; 0 where it was not.</summary>
    public double[] FirmestDeclared { get; }

    /// <summary>Makes the numbers of a team in line.</summary>
    /// <param name="team">The team.</param>
    public static TeamFlat Of(TowingTeam team)
    {
        var flat = new TeamFlat(team.Members.Count);
        for (var i = 0; i < flat.Count; i++)
        {
            var member = team.Members[i];
            flat.Alone[i] = CapabilityFlat.From(member.Tower, 0);
            flat.FrontHeight[i] = member.FrontHeight.Meters;
            flat.FrontRating[i] = i > 0 && member.FrontRating is { } rating ? rating.Newtons : double.PositiveInfinity;
            flat.LoadPerLead[i] = flat.Alone[i].LoadPerLead(member.Tower, flat.FrontHeight[i]);
            flat.ConeIndex[i] = member.Tower.Soil.ConeIndex.Pascals;
            flat.RemouldingIndex[i] = member.Tower.Soil.RemouldingIndex.DecimalFractions;
            flat.FirmestDeclared[i] = member.Tower.FirmestConeIndex?.Pascals ?? 0;
        }

        return flat;
    }
}
