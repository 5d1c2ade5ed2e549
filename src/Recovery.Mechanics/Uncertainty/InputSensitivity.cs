using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>First-order and total sensitivity of one input, each with its error.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record InputSensitivity
{
    internal InputSensitivity(int input, double first, double firstError, double total, double totalError) =>
        (Input, First, FirstError, Total, TotalError) = (input, first, firstError, total, totalError);

    /// <summary>Gets the number of the input, 0 the first.</summary>
    public int Input { get; }

    /// <summary>Gets the share of the variance that goes away when this input becomes known.</summary>
    public double First { get; }

    /// <summary>Gets the standard error of <see cref="First"/>.</summary>
    public double FirstError { get; }

    /// <summary>Gets the share of the variance that is left when every other input is known.</summary>
    public double Total { get; }

    /// <summary>Gets the standard error of <see cref="Total"/>.</summary>
    public double TotalError { get; }

    /// <summary>Gives both shares, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => "input " + Text.Number(Input) + ", first order " + Text.Number(First, 2) + ", total " + Text.Number(Total, 2);
}
