using System;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>One input of a plan that can scatter. The spread that it is given is a factor on the plan's own value: median 1 where the plan holds the best estimate.</summary>
/// <remarks>Immutable. Inputs are listed for a plan by <see cref="PlanInputList"/>. Most are factors on compiled numbers and cost no allocation; masses, depths, places, slopes, tyres, lengths and ratings make the plan anew for every sample, which is slower by a factor of ten or more.</remarks>
public sealed class PlanInput
{
    internal PlanInput(string key, string title, string measurement, PlanFactor factor, int part = -1)
    {
        Key = key;
        Title = title;
        Measurement = measurement;
        Factor = factor;
        Part = part;
    }

    internal PlanInput(RecoveryPlan plan, string key, string title, string measurement, InputEdit edit)
        : this(key, title, measurement, PlanFactor.Count)
    {
        Edit = edit;
        var reach = edit.Reach(plan);
        (LeastFactor, MostFactor, IsZero) = (reach.LeastFactor, reach.MostFactor, reach.Value == 0);
    }

    /// <summary>An input that a plan does not have: a dimension that changes nothing.</summary>
    internal PlanInput(PlanInput elsewhere)
        : this(elsewhere.Key, elsewhere.Title, elsewhere.Measurement, PlanFactor.Count) => Absent = true;

    /// <summary>Gets the stable key, for example <c>stuck.cone-index</c> or <c>rig.strength:bridle</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what it is, in words.</summary>
    public string Title { get; }

    /// <summary>Gets how it can be measured before the pull; empty where nothing on the spot would tell.</summary>
    public string Measurement { get; }

    /// <summary>Gets whether something can be measured on the spot that narrows it.</summary>
    public bool IsMeasurable => Measurement.Length > 0;

    /// <summary>Gets whether every sample makes the plan anew.</summary>
    public bool RemakesThePlan => Edit is not null;

    /// <summary>Gets the least factor with which the plan can still be made; a lower one is taken as this. 0 where nothing limits it, or where the kernels hold it themselves (<see cref="Title"/> says so).</summary>
    public double LeastFactor { get; }

    /// <summary>Gets the greatest factor with which the plan can still be made; a higher one is taken as this. Infinite where nothing limits it, or where the kernels hold it themselves (<see cref="Title"/> says so).</summary>
    public double MostFactor { get; } = double.PositiveInfinity;

    internal PlanFactor Factor { get; }

    internal int Part { get; }

    internal InputEdit? Edit { get; }

    internal bool Absent { get; }

    /// <summary>Whether the plan holds it as 0, which a factor leaves as 0.</summary>
    internal bool IsZero { get; }

    /// <summary>Makes the plan anew; what cannot be made is refused with the name of the input.</summary>
    internal RecoveryPlan Apply(RecoveryPlan plan, double factor)
    {
        if (Edit is null || factor == 1) return plan;
        try
        {
            return Edit.Apply(plan, factor);
        }
        catch (ArgumentException e)
        {
            throw new ArgumentException("The input '" + Key + "' at " + Text.Number(factor) + " times the plan's value makes no plan: " + e.Message, nameof(factor), e);
        }
    }

    /// <summary>Gives key and title.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Key + ": " + Title;

    /// <summary>Place of the factor in a plan's scratch.</summary>
    internal int IndexIn(PlanNumbers numbers) => Part < 0 ? (int)Factor : Key.StartsWith("rig.wear:", StringComparison.Ordinal) ? numbers.WearOf(Part) : numbers.StrengthOf(Part);
}
