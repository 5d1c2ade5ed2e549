using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>An input of a plan with the spread that is put on it, of a factor or of a difference, and where that spread comes from.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SampledInput
{
    internal SampledInput(PlanInput input, Spread factor, Source source, bool isShift = false)
    {
        Input = input;
        Factor = factor;
        Source = source;
        IsShift = isShift;
    }

    /// <summary>Gets the input.</summary>
    public PlanInput Input { get; }

    /// <summary>Gets whether the spread is one of a difference from the plan's value, in the input's <see cref="PlanInput.Unit"/>, and not of a factor on it.</summary>
    public bool IsShift { get; }

    /// <summary>Gets how the factor scatters; where <see cref="IsShift"/>, how the difference does.</summary>
    public Spread Factor { get; }

    /// <summary>Gets where the spread comes from, with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gets whether the spread reaches beyond what the plan can take; such factors are held at <see cref="PlanInput.LeastFactor"/> and <see cref="PlanInput.MostFactor"/>, such differences at <see cref="PlanInput.LeastShift"/> and <see cref="PlanInput.MostShift"/>.</summary>
    public bool IsHeld => Factor.FromNormal(-Spread.Furthest) < Least || Factor.FromNormal(Spread.Furthest) > Most;

    /// <summary>Whether its samples make the plan anew.</summary>
    internal bool RemakesThePlan => !Input.Absent && (IsShift || Input.RemakesThePlan);

    /// <summary>Whether it holds the plan's own value throughout.</summary>
    internal bool Stays => Factor.IsFixed && Factor.FromNormal(0) == (IsShift ? 0 : 1);

    private double Least => IsShift ? Input.LeastShift : Input.LeastFactor;

    private double Most => IsShift ? Input.MostShift : Input.MostFactor;

    /// <summary>Gives input, spread, where it is held and standing, invariant culture.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Input.Title + (IsShift ? ": difference in " + Input.Unit + ", " : ": factor ") + Factor + (IsHeld ? ", held between " + Text.Number(Least) + " and " + Text.Number(Most) : string.Empty) + " (" + Standings.Describe(Source.Standing) + ")";

    /// <summary>The plan with the sampled number; unchanged where the number goes on a compiled one.</summary>
    internal RecoveryPlan Apply(RecoveryPlan plan, double amount) => IsShift ? Input.Shift(plan, amount) : Input.Apply(plan, amount);
}
