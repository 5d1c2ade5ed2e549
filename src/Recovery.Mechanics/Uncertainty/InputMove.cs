namespace Recovery.Mechanics.Uncertainty;

/// <summary>How far a sample takes an input from the plan's value: times a factor, or by a difference.</summary>
internal readonly struct InputMove
{
    private readonly double _amount;
    private readonly bool _byDifference;

    private InputMove(double amount, bool byDifference)
    {
        _amount = amount;
        _byDifference = byDifference;
    }

    /// <summary>Makes a move by a factor.</summary>
    /// <param name="factor">The factor; 1 stays.</param>
    public static InputMove Times(double factor) => new(factor, false);

    /// <summary>Makes a move by a difference.</summary>
    /// <param name="difference">The difference in the input's SI unit; 0 stays.</param>
    public static InputMove By(double difference) => new(difference, true);

    /// <summary>Whether the input stays where it is.</summary>
    public bool Stays => _amount == (_byDifference ? 0 : 1);

    /// <summary>What was done to the plan's value, for a message.</summary>
    public string InWords => _byDifference ? Provenance.Text.Number(_amount) + " from the plan's value" : Provenance.Text.Number(_amount) + " times the plan's value";

    /// <summary>The value that it comes to, held at the ends of what the plan can take.</summary>
    /// <param name="reach">Value in the plan with its ends.</param>
    public double Of(InputReach reach) => _byDifference ? reach.By(_amount) : reach.At(_amount);
}
