namespace Recovery.Mechanics.Provenance;

/// <summary>What a kind of finding means. The id is public API and never changes its meaning.</summary>
/// <remarks>The templates hold the fields <c>{subject}</c>, <c>{required}</c>, <c>{available}</c> and <c>{ratio}</c>; a host translates them by <see cref="Id"/>.</remarks>
/// <param name="Id">Stable id, <c>area.reason</c>, for example <c>rig.rating-basis-unknown</c>.</param>
/// <param name="Severity">How it bears on the job unless the finding itself says otherwise.</param>
/// <param name="Message">What was found and why it matters, as a template.</param>
/// <param name="Remedy">What would change it, as a template.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record FindingDefinition(string Id, Severity Severity, string Message, string Remedy, Source Source)
{
    /// <summary>Gives the id.</summary>
    /// <returns>The id.</returns>
    public override string ToString() => Id;
}
