using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>An input of a plan with the spread that is put on it as a factor, and where that spread comes from.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SampledInput
{
    internal SampledInput(PlanInput input, Spread factor, Source source)
    {
        Input = input;
        Factor = factor;
        Source = source;
    }

    /// <summary>Gets the input.</summary>
    public PlanInput Input { get; }

    /// <summary>Gets how the factor scatters.</summary>
    public Spread Factor { get; }

    /// <summary>Gets where the spread comes from, with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gets whether the spread reaches beyond what the plan can take; such factors are held at <see cref="PlanInput.LeastFactor"/> and <see cref="PlanInput.MostFactor"/>.</summary>
    public bool IsHeld => Factor.FromNormal(-Spread.Furthest) < Input.LeastFactor || Factor.FromNormal(Spread.Furthest) > Input.MostFactor;

    /// <summary>Gives input, spread, where it is held and standing, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Input.Title + ": factor " + Factor + (IsHeld ? ", held between " + Text.Number(Input.LeastFactor) + " and " + Text.Number(Input.MostFactor) : string.Empty) + " (" + Standings.Describe(Source.Standing) + ")";
}
