namespace Recovery.Mechanics.Traction;

/// <summary>What scatters in a team in line beside the ground under its members: factors.</summary>
internal struct TeamScatter
{
    /// <summary>Factor of the wheel model, on what every member adds of its own.</summary>
    public double Model;

    /// <summary>Factor of the power of the last member.</summary>
    public double Power;

    /// <summary>Factor of the grip of the last member on a hard surface.</summary>
    public double HardFriction;
}
