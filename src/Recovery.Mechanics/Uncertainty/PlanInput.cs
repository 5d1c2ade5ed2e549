using System;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>One input of a plan that can scatter. Its spread is one of a factor on the plan's own value, median 1 where the plan holds the best estimate, or, where the input has a <see cref="Unit"/>, one of a difference from it, median 0.</summary>
/// <remarks>Immutable. Inputs are listed for a plan by <see cref="PlanInputList"/>. Most are factors on compiled numbers and cost no allocation; masses, depths, places, slopes, tyres, lengths and ratings make the plan anew for every sample, and so does every difference, which is slower by a factor of ten or more.</remarks>
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

    /// <summary>An input whose factor makes the plan anew, and whose difference does where it has a unit.</summary>
    internal PlanInput(RecoveryPlan plan, string key, string title, string measurement, InputEdit edit, string unit = "")
        : this(key, title, measurement, PlanFactor.Count)
    {
        (Edit, Unit) = (edit, unit);
        var reach = edit.Reach(plan);
        (LeastFactor, MostFactor, TakesFactor) = (reach.LeastFactor, reach.MostFactor, reach.Value != 0);
        if (unit.Length > 0) (Mover, LeastShift, MostShift) = (edit, reach.LeastShift, reach.MostShift);
    }

    /// <summary>An input whose factor goes on a compiled number and whose difference makes the plan anew.</summary>
    internal PlanInput(RecoveryPlan plan, string key, string title, string measurement, PlanFactor factor, InputEdit mover, string unit)
        : this(key, title, measurement, factor)
    {
        (Mover, Unit) = (mover, unit);
        var reach = mover.Reach(plan);
        (LeastShift, MostShift, TakesFactor) = (reach.LeastShift, reach.MostShift, reach.Value != 0);
    }

    /// <summary>An input that a plan does not have: a dimension that changes nothing.</summary>
    internal PlanInput(PlanInput elsewhere)
        : this(elsewhere.Key, elsewhere.Title, elsewhere.Measurement, PlanFactor.Count) => (Absent, Unit) = (true, elsewhere.Unit);

    /// <summary>Gets the stable key, for example <c>stuck.cone-index</c> or <c>rig.strength:bridle</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what it is, in words.</summary>
    public string Title { get; }

    /// <summary>Gets how it can be measured before the pull; empty where nothing on the spot would tell.</summary>
    public string Measurement { get; }

    /// <summary>Gets whether something can be measured on the spot that narrows it.</summary>
    public bool IsMeasurable => Measurement.Length > 0;

    /// <summary>Gets the SI unit of a difference from the plan's value: m, rad, m/s, s, kg, Pa or N; empty where the input takes factors alone.</summary>
    public string Unit { get; } = string.Empty;

    /// <summary>Gets whether a factor moves it (<see cref="PlanSampler.With"/>): not where the plan holds it as 0.</summary>
    public bool TakesFactor { get; } = true;

    /// <summary>Gets whether a difference moves it (<see cref="PlanSampler.WithShift"/>).</summary>
    public bool TakesShift => Unit.Length > 0;

    /// <summary>Gets whether every sample of a factor makes the plan anew. A difference always does.</summary>
    public bool RemakesThePlan => Edit is not null;

    /// <summary>Gets the least factor with which the plan can still be made; a lower one is taken as this. 0 where nothing limits it, or where the kernels hold it themselves (<see cref="Title"/> says so).</summary>
    public double LeastFactor { get; }

    /// <summary>Gets the greatest factor with which the plan can still be made; a higher one is taken as this. Infinite where nothing limits it, or where the kernels hold it themselves (<see cref="Title"/> says so).</summary>
    public double MostFactor { get; } = double.PositiveInfinity;

    /// <summary>Gets the lowest difference, 0 or below in <see cref="Unit"/>, with which the plan can still be made; a lower one is taken as this. 0 where it takes none.</summary>
    public double LeastShift { get; }

    /// <summary>Gets the highest difference, 0 or above in <see cref="Unit"/>, with which the plan can still be made; a higher one is taken as this. 0 where it takes none.</summary>
    public double MostShift { get; }

    internal PlanFactor Factor { get; }

    internal int Part { get; }

    /// <summary>What a factor does; null where it goes on a compiled number.</summary>
    internal InputEdit? Edit { get; }

    /// <summary>What a difference does; null where it takes none.</summary>
    internal InputEdit? Mover { get; }

    internal bool Absent { get; }

    /// <summary>Gives key and title.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Key + ": " + Title;

    /// <summary>Makes the plan anew with a factor; what cannot be made is refused with the name of the input.</summary>
    internal RecoveryPlan Apply(RecoveryPlan plan, double factor) => Moved(plan, Edit, InputMove.Times(factor), nameof(factor));

    /// <summary>Makes the plan anew with a difference; what cannot be made is refused with the name of the input.</summary>
    internal RecoveryPlan Shift(RecoveryPlan plan, double difference) => Moved(plan, Mover, InputMove.By(difference), nameof(difference));

    /// <summary>Place of the factor in a plan's scratch.</summary>
    internal int IndexIn(PlanNumbers numbers) => Part < 0 ? (int)Factor
        : Key.StartsWith("ahead.cone-index:", StringComparison.Ordinal) ? numbers.ConeIndexOf(Part)
        : Key.StartsWith("ahead.remoulding-index:", StringComparison.Ordinal) ? numbers.RemouldingIndexOf(Part)
        : Key.StartsWith("rig.wear:", StringComparison.Ordinal) ? numbers.WearOf(Part) : numbers.StrengthOf(Part);

    private RecoveryPlan Moved(RecoveryPlan plan, InputEdit? edit, InputMove move, string name)
    {
        if (edit is null || move.Stays) return plan;
        try
        {
            return edit.Apply(plan, move);
        }
        catch (ArgumentException e)
        {
            throw new ArgumentException("The input '" + Key + "' at " + move.InWords + " makes no plan: " + e.Message, name, e);
        }
    }
}
