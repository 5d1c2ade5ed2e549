namespace Recovery.Mechanics.Provenance;

/// <summary>One line of a worked calculation, as a teacher would write it.</summary>
/// <param name="Symbol">Symbol of the result, for example <c>B_n</c>.</param>
/// <param name="Meaning">What the symbol stands for.</param>
/// <param name="Expression">The formula in symbols.</param>
/// <param name="Substitution">The formula with the numbers put in.</param>
/// <param name="Value">The result with its unit, invariant culture.</param>
/// <param name="Source">Where the formula comes from.</param>
public sealed record WorkedStep(string Symbol, string Meaning, string Expression, string Substitution, string Value, Source Source)
{
    /// <summary>Gives the step as one line of text.</summary>
    /// <returns>Symbol, expression, substitution and value.</returns>
    public override string ToString() => Symbol + " = " + Expression + " = " + Substitution + " = " + Value;
}
