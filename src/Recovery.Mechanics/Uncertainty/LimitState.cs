using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A limit between holding and failing: inputs that scatter and a function of them, below zero where it fails.</summary>
/// <remarks>Immutable. The function is called many times, from one thread; it must depend on its inputs alone. How the limit is written (R - S or R/S - 1) changes no reliability index here.</remarks>
public sealed class LimitState
{
    private readonly Spread[] _inputs;
    private readonly LimitFunction _function;

    /// <summary>Describes a limit.</summary>
    /// <param name="name">Name of the limit.</param>
    /// <param name="inputs">How each input scatters, 1 to 200.</param>
    /// <param name="function">The function: above zero it holds, below zero it fails.</param>
    /// <param name="correlation">Correlation of the normal numbers behind the inputs; null where they are independent.</param>
    /// <exception cref="ArgumentNullException">Inputs or function are null.</exception>
    /// <exception cref="ArgumentException">The name is empty, an input is null, or the correlation has another number of inputs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of inputs is outside its range.</exception>
    public LimitState(string name, IEnumerable<Spread> inputs, LimitFunction function, GaussianCopula? correlation = null)
    {
        Name = Guard.Name(name, nameof(name));
        _inputs = Guard.NotNull(inputs, nameof(inputs)).ToArray();
        Guard.Count(_inputs.Length, 1, 200, nameof(inputs));
        if (Array.IndexOf(_inputs, null) >= 0) throw new ArgumentException("inputs must not hold a null.", nameof(inputs));
        _function = Guard.NotNull(function, nameof(function));
        if (correlation is not null && correlation.Dimensions != _inputs.Length)
            throw new ArgumentException("correlation has " + Text.Number(correlation.Dimensions) + " inputs and the limit " + Text.Number(_inputs.Length) + ".", nameof(correlation));
        Correlation = correlation;
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets how each input scatters.</summary>
    public IReadOnlyList<Spread> Inputs => Array.AsReadOnly(_inputs);

    /// <summary>Gets the correlation; null where the inputs are independent.</summary>
    public GaussianCopula? Correlation { get; }

    internal int Dimensions => _inputs.Length;

    /// <summary>Gives the limit in words.</summary>
    /// <returns>Name and number of inputs.</returns>
    public override string ToString() => Name + ", " + Text.Number(_inputs.Length) + " inputs";

    /// <summary>The function at independent standard normal numbers; the inputs are left in <paramref name="values"/>.</summary>
    internal double At(ReadOnlySpan<double> standard, Span<double> values)
    {
        Map(standard, values);
        var g = _function(values);
        if (double.IsNaN(g) || double.IsInfinity(g)) throw new SolverException(Name + " gives " + (double.IsNaN(g) ? "no number" : "an infinite number") + " for inputs that its spreads reach.");
        return g;
    }

    /// <summary>The function at values of the inputs.</summary>
    internal double Of(ReadOnlySpan<double> values) => _function(values);

    /// <summary>Inputs of equal probability.</summary>
    internal void Map(ReadOnlySpan<double> standard, Span<double> values)
    {
        standard.CopyTo(values);
        Correlation?.Apply(values, 1, 1);
        for (var i = 0; i < _inputs.Length; i++) values[i] = _inputs[i].FromNormal(values[i]);
    }
}
