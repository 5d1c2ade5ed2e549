using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>One thing that can be done to a plan before the pull: a named edit that gives a new plan.</summary>
/// <remarks>Immutable. Measures are made by <see cref="RecoveryMeasures"/> and listed for a plan by <see cref="MeasureList"/>. Worths of measures do not add: every set is worked whole.</remarks>
public sealed class Measure
{
    private readonly Func<RecoveryPlan, RecoveryPlan> _edit;

    internal Measure(string key, string textKey, IReadOnlyList<string> values, Func<RecoveryPlan, RecoveryPlan> edit)
        : this(key, textKey, values, edit, null)
    {
    }

    private Measure(string key, string textKey, IReadOnlyList<string> values, Func<RecoveryPlan, RecoveryPlan> edit, Effort? effort)
    {
        Key = key;
        TextKey = textKey;
        Values = values;
        Effort = effort;
        _edit = edit;
    }

    /// <summary>Gets the stable key, for example <c>unload:beet</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what is done, in words.</summary>
    public string Title => Wording.Default.Title(this);

    /// <summary>Gets what to mind while doing it; empty where there is nothing of its own.</summary>
    public string Caution => Wording.Default.Caution(this);

    /// <summary>Gets the key of its text, as in <see cref="ReportLanguage"/> behind <c>measure.</c>.</summary>
    public string TextKey { get; }

    /// <summary>Gets the values that its text takes.</summary>
    public IReadOnlyList<string> Values { get; }

    /// <summary>Gets what it costs the people on the spot; null where the caller has not said.</summary>
    public Effort? Effort { get; }

    /// <summary>Gives the same measure with an effort.</summary>
    /// <param name="effort">What it costs.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The effort is null.</exception>
    public Measure WithEffort(Effort effort) => new(Key, TextKey, Values, _edit, Guard.NotNull(effort, nameof(effort)));

    /// <summary>Gives the plan after the measure.</summary>
    /// <param name="plan">The plan before.</param>
    /// <returns>The plan after.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    /// <exception cref="ArgumentException">The measure does not fit the plan, for example a load that it does not carry.</exception>
    public RecoveryPlan ApplyTo(RecoveryPlan plan) => _edit(Guard.NotNull(plan, nameof(plan)));

    /// <summary>Gives the plan after the measure, or says that it does not fit.</summary>
    /// <param name="plan">The plan before.</param>
    /// <param name="edited">Receives the plan after; the plan before where the measure does not fit.</param>
    /// <returns>False where the measure does not fit the plan, for example a load that it no longer carries.</returns>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    public bool TryApplyTo(RecoveryPlan plan, out RecoveryPlan edited)
    {
        Guard.NotNull(plan, nameof(plan));
        try
        {
            edited = _edit(plan);
            return true;
        }
        catch (ArgumentException)
        {
            edited = plan;
            return false;
        }
    }

    /// <summary>Gives the title.</summary>
    /// <returns>The title.</returns>
    public override string ToString() => Title;
}
