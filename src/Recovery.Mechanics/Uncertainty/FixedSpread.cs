using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A number that does not scatter.</summary>
public sealed class FixedSpread : Spread
{
    internal FixedSpread(double value) => Value = Finite(value, nameof(value));

    /// <summary>Gets the value.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override double Mean => Value;

    /// <inheritdoc/>
    public override double StandardDeviation => 0;

    /// <inheritdoc/>
    public override bool IsFixed => true;

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>The value.</returns>
    public override string ToString() => "fixed at " + Text.Number(Value);

    internal override double FromNormal(double z) => Value;

    internal override double Cdf(double x) => x < Value ? 0 : 1;

    internal override void FromNormals(Span<double> numbers) => numbers.Fill(Value);
}
