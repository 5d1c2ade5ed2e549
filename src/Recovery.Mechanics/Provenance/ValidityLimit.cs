namespace Recovery.Mechanics.Provenance;

/// <summary>One limit of the range in which a model was fitted or holds.</summary>
/// <param name="Symbol">Symbol of the limited quantity, for example <c>B_n</c>.</param>
/// <param name="Meaning">What the symbol stands for.</param>
/// <param name="Minimum">Lower end, inclusive; negative infinity where there is none.</param>
/// <param name="Maximum">Upper end, inclusive; positive infinity where there is none.</param>
/// <param name="Unit">Unit of both ends; empty for a pure number.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record ValidityLimit(string Symbol, string Meaning, double Minimum, double Maximum, string Unit, Source Source)
{
    /// <summary>Tells whether a value lies within the limit.</summary>
    /// <param name="value">The value, in <see cref="Unit"/>.</param>
    /// <returns>True within the limit, its ends included.</returns>
    public bool Contains(double value) => value >= Minimum && value <= Maximum;

    /// <summary>Gives the limit in words.</summary>
    /// <returns>Symbol, range and unit.</returns>
    public override string ToString()
    {
        var range = double.IsNegativeInfinity(Minimum) ? "at most " + Text.With(Maximum, Unit)
            : double.IsPositiveInfinity(Maximum) ? "at least " + Text.With(Minimum, Unit)
            : Text.Number(Minimum) + " to " + Text.With(Maximum, Unit);
        return Symbol + " " + range + " (" + Meaning + ")";
    }
}
