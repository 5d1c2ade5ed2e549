namespace Recovery.Mechanics.Provenance;

/// <summary>Says that a value lay outside one limit of a model. The result still stands, with less support.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="Value">The value, in the unit of the limit.</param>
public sealed record ValidityFlag(ValidityLimit Limit, double Value)
{
    /// <summary>Gives the flag in words.</summary>
    /// <returns>The value and the limit it lies outside of.</returns>
    public override string ToString() => Limit.Symbol + " " + Text.With(Value, Limit.Unit) + " is outside " + Limit;
}
