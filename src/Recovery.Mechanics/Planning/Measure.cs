using System;

namespace Recovery.Mechanics.Planning;

/// <summary>One thing that can be done to a plan before the pull: a named edit that gives a new plan.</summary>
/// <remarks>Immutable. Worths of measures do not add: every set is worked whole.</remarks>
public sealed class Measure
{
    private readonly Func<RecoveryPlan, RecoveryPlan> _edit;

    internal Measure(string key, string title, string caution, Func<RecoveryPlan, RecoveryPlan> edit)
    {
        Key = key;
        Title = title;
        Caution = caution;
        _edit = edit;
    }

    /// <summary>Gets the stable key, for example <c>unload:beet</c>.</summary>
    public string Key { get; }

    /// <summary>Gets what is done, in words.</summary>
    public string Title { get; }

    /// <summary>Gets what to mind while doing it; empty where there is nothing of its own.</summary>
    public string Caution { get; }

    /// <summary>Gives the plan after the measure.</summary>
    /// <param name="plan">The plan before.</param>
    /// <returns>The plan after.</returns>
    public RecoveryPlan ApplyTo(RecoveryPlan plan) => _edit(Provenance.Guard.NotNull(plan, nameof(plan)));

    /// <summary>Gives the title.</summary>
    /// <returns>The title.</returns>
    public override string ToString() => Title;
}
