using System;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>One input of a plan that can scatter. The spread that it is given is a factor on the plan's own value: median 1 where the plan holds the best estimate.</summary>
/// <remarks>Immutable. Inputs are listed for a plan by <see cref="PlanInputList"/>. Most are factors on compiled numbers and cost no allocation; masses, depths, slopes and the belly make the plan anew for every sample, which is slower by a factor of ten or more.</remarks>
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

    internal PlanInput(string key, string title, string measurement, Func<RecoveryPlan, double, RecoveryPlan> edit)
        : this(key, title, measurement, PlanFactor.Count) => Edit = edit;

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

    internal PlanFactor Factor { get; }

    internal int Part { get; }

    internal Func<RecoveryPlan, double, RecoveryPlan>? Edit { get; }

    /// <summary>Gives key and title.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Key + ": " + Title;

    /// <summary>Place of the factor in a plan's scratch.</summary>
    internal int IndexIn(PlanNumbers numbers) => Part < 0 ? (int)Factor : Key.StartsWith("rig.wear:", StringComparison.Ordinal) ? numbers.WearOf(Part) : numbers.StrengthOf(Part);
}
