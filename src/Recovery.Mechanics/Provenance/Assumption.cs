namespace Recovery.Mechanics.Provenance;

/// <summary>A fact that the caller did not give and that was filled in: listed apart as still to measure.</summary>
/// <param name="Id">Stable id, <c>assume.what</c>, for example <c>assume.remoulding-index</c>.</param>
/// <param name="Subject">What it concerns, in the words a person would use in the field.</param>
/// <param name="Taken">What was taken in its place, with its unit.</param>
/// <param name="WouldChange">Which results a measurement would change, and which way.</param>
/// <param name="Source">Where the value taken comes from.</param>
public sealed record Assumption(string Id, string Subject, string Taken, string WouldChange, Source Source)
{
    /// <summary>Gives the assumption in one line.</summary>
    /// <returns>Subject, what was taken and what it would change.</returns>
    public override string ToString() => Subject + ": taken as " + Taken + ". " + WouldChange;
}
