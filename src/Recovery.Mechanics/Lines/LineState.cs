using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>State of a line that changes its load-elongation curve: bedded in by earlier pulls, worn, wet.</summary>
/// <remarks>
/// <para>Stiffening factor: k of this pull over k of the curve as tested, for a pull from slack to peak; the whole curve is drawn together in stretch. A rope bedded in to half of break takes about half of its first energy, so about 2 (reported); a range of 1 to 2.5 is from memory, small cycles about a mean load reach about 4. No value is published for strap webbing.</para>
/// <para>Remaining strength: strength of the worn line over that of the new one. Force falls at every strain and the strain at break stays, because strength falls with age and stretch at break hardly does (reported).</para>
/// <para>Wet: nylon is taken as stiff wet as dry, and the result says so; no curve of wet webbing is published.</para>
/// <para>Immutable, equality by value.</para>
/// </remarks>
public sealed record LineState
{
    /// <summary>Gets a line as tested: new, dry, first pull.</summary>
    public static LineState AsTested { get; } = new();

    /// <summary>Gets the factor on stiffness; 1 unless declared. Accepted range 1 to 4.</summary>
    public double StiffeningFactor { get; init => field = Guard.Range(value, 1, 4, string.Empty, nameof(StiffeningFactor)); } = 1;

    /// <summary>Gets the remaining strength; 1 unless declared. Accepted range 0.05 to 1.</summary>
    public Ratio RemainingStrength { get; init => field = Ratio.FromDecimalFractions(Guard.Fraction(value, 0.05, 1, nameof(RemainingStrength))); } = Ratio.FromDecimalFractions(1);

    /// <summary>Gets whether the line is wet.</summary>
    public bool IsWet { get; init; }

    /// <summary>Gives the same with another value: the factor on stiffness. For callers whose language has no <c>with</c>.</summary>
    /// <param name="stiffeningFactor">The value, as in <see cref="StiffeningFactor"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public LineState WithStiffeningFactor(double stiffeningFactor) => this with { StiffeningFactor = stiffeningFactor };

    /// <summary>Gives the same with another value: the remaining strength. For callers whose language has no <c>with</c>.</summary>
    /// <param name="remainingStrength">The value, as in <see cref="RemainingStrength"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public LineState WithRemainingStrength(Ratio remainingStrength) => this with { RemainingStrength = remainingStrength };

    /// <summary>Gives the same with another value: whether the line is wet. For callers whose language has no <c>with</c>.</summary>
    /// <param name="isWet">The value, as in <see cref="IsWet"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineState WithIsWet(bool isWet) => this with { IsWet = isWet };

    /// <summary>Gives the state in words, invariant culture.</summary>
    /// <returns>Stiffening, remaining strength, wet or dry.</returns>
    public override string ToString() => "stiffness x " + Text.Number(StiffeningFactor) + ", remaining strength " + Text.Number(RemainingStrength.DecimalFractions) + (IsWet ? ", wet" : ", dry");
}
