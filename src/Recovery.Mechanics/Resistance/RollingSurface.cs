using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>A surface of a published table of rolling resistance over weight.</summary>
/// <remarks>For wheels on the surface. Tables disagree because their tyres do: state surface and table, never one number for all.</remarks>
public sealed record RollingSurface
{
    internal RollingSurface(string name, double low, double high, Source source)
    {
        Name = name;
        Low = Ratio.FromDecimalFractions(low);
        High = Ratio.FromDecimalFractions(high);
        Source = source;
    }

    /// <summary>Gets the surface, with the tyres where the table names them.</summary>
    public string Name { get; }

    /// <summary>Gets the low end of resistance over weight.</summary>
    public Ratio Low { get; }

    /// <summary>Gets the high end; the same where the table prints one number.</summary>
    public Ratio High { get; }

    /// <summary>Gets the table.</summary>
    public Source Source { get; }

    /// <summary>Gives the resistance of a weight on it.</summary>
    /// <param name="weight">Weight on the wheels, 0 to 5,000 kN.</param>
    /// <returns>Low, their middle, and high.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The weight is outside its range.</exception>
    public ForceBand Resistance(Force weight)
    {
        double w = Guard.Newtons(weight, 0, 5000, nameof(weight)), low = Low.DecimalFractions * w, high = High.DecimalFractions * w;
        return ForceBand.FromNewtons(low, 0.5 * (low + high), high);
    }

    /// <summary>Gives the surface in one line, invariant culture.</summary>
    /// <returns>Name and ratio.</returns>
    public override string ToString() => Name + ": " + Text.Number(Low.DecimalFractions, 3) + (High.DecimalFractions > Low.DecimalFractions ? " to " + Text.Number(High.DecimalFractions, 3) : string.Empty) + " of the weight";
}
