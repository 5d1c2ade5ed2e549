using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Something in or on the ground that a line is made fast to: a buried log, pickets, another machine.</summary>
/// <remarks>
/// <para>It is chosen on the planning high of the demand and checked as well against what the winch or the towing machine can impose, both brought to the anchor through the tackle <b>without friction</b>: friction lowers what reaches the casualty and never the load on an anchor.</para>
/// <para>Made by <see cref="Deadman"/>, <see cref="PicketHoldfast"/> and <see cref="MachineAnchor"/>. Immutable.</para>
/// </remarks>
public abstract class GroundAnchor
{
    private protected GroundAnchor(string name) => Name = Guard.Name(name, nameof(name));

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets what it holds; null where there is no number for it.</summary>
    public abstract Force? Holds { get; }

    /// <summary>Gets where the number comes from.</summary>
    public abstract Source Source { get; }

    /// <summary>Gets the limits of the model that were left.</summary>
    public abstract IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets what was filled in because it was not declared.</summary>
    public abstract IReadOnlyList<Assumption> Assumptions { get; }

    /// <summary>Gets the objections to the anchor taken by itself.</summary>
    public abstract IReadOnlyList<Finding> Findings { get; }

    /// <summary>Checks the anchor against both loads.</summary>
    /// <param name="fromPlanningHigh">Load on the anchor when the casualty takes the planning high of its demand, without friction in the tackle, 0.001 to 20,000 kN.</param>
    /// <param name="fromImposable">Load on the anchor when the winch stalls or the towing machine imposes its most, without friction, 0.001 to 20,000 kN.</param>
    /// <returns>The check.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A load is outside its range.</exception>
    public AnchorCheck Check(Force fromPlanningHigh, Force fromImposable) => Check(fromPlanningHigh, fromImposable, null);

    /// <summary>Checks the anchor against both loads and against the line made fast to it.</summary>
    /// <param name="fromPlanningHigh">Load on the anchor when the casualty takes the planning high of its demand, without friction in the tackle, 0.001 to 20,000 kN.</param>
    /// <param name="fromImposable">Load on the anchor when the winch stalls or the towing machine imposes its most, without friction, 0.001 to 20,000 kN.</param>
    /// <param name="lineBreakingStrength">Breaking strength of the line made fast to it, 0.001 to 20,000 kN; null where it is not known.</param>
    /// <returns>The check.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A load is outside its range.</exception>
    public AnchorCheck Check(Force fromPlanningHigh, Force fromImposable, Force? lineBreakingStrength) => new(
        this,
        Guard.Newtons(fromPlanningHigh, 0.001, 20000, nameof(fromPlanningHigh)),
        Guard.Newtons(fromImposable, 0.001, 20000, nameof(fromImposable)),
        lineBreakingStrength is { } line ? Guard.Newtons(line, 0.001, 20000, nameof(lineBreakingStrength)) : null);

    /// <summary>Works out what it holds step by step.</summary>
    /// <returns>The worked steps.</returns>
    public abstract Working Explain();

    /// <summary>Gives the anchor in words, invariant culture.</summary>
    /// <returns>Name and what it holds.</returns>
    public override string ToString() => Name + (Holds is { } force ? ", holds " + Text.Kilonewtons(force.Newtons, 3) : ", no number");
}
