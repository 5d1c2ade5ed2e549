using System;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A number worked out from sampled inputs, in the order in which their spreads are given. As a limit, below zero is failure.</summary>
/// <param name="inputs">The values of the inputs.</param>
/// <returns>The number; finite.</returns>
public delegate double LimitFunction(ReadOnlySpan<double> inputs);
