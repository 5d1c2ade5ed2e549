namespace Recovery.Mechanics.Traction;

/// <summary>What scatters in a team in line: cone indices under the last member, and factors.</summary>
internal struct TeamScatter
{
    /// <summary>Cone index that the last member sustains its pull on, Pa.</summary>
    public double SustainedIndex;

    /// <summary>Cone index for the most that the last member can impose, Pa.</summary>
    public double ImposableIndex;

    /// <summary>Factor of the wheel model, on what every member adds of its own.</summary>
    public double Model;

    /// <summary>Factor of the power of the last member.</summary>
    public double Power;

    /// <summary>Factor of the grip of the last member on a hard surface.</summary>
    public double HardFriction;
}
