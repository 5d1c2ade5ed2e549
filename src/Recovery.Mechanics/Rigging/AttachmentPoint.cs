using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What one end of a rig is made fast to.</summary>
/// <remarks>Steady load at most its working load, procedure peak at most its yield; no partial factor on yield. Behind a bridle, which holds on two sides, both numbers are those of one side. An approved point without a published number is a caution with the load printed. Immutable, equality by value.</remarks>
public sealed record AttachmentPoint
{
    /// <summary>Describes an attachment.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="approvedByMaker">Whether the maker of the machine names it for recovery.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public AttachmentPoint(string name, AttachmentKind kind, bool approvedByMaker)
    {
        Name = Guard.Name(name, nameof(name));
        Kind = Guard.Defined(kind, kind is >= AttachmentKind.Unidentified and <= AttachmentKind.AboveDrawbar, nameof(kind));
        ApprovedByMaker = approvedByMaker;
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets what it is.</summary>
    public AttachmentKind Kind { get; }

    /// <summary>Gets whether the maker names it for recovery.</summary>
    public bool ApprovedByMaker { get; }

    /// <summary>Gets its working load, of one side where a bridle holds on two; null where none is published. Accepted range 1 to 20,000 kN.</summary>
    public Force? WorkingLoad { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 20000, nameof(WorkingLoad))) : null; }

    /// <summary>Gets its yield load, of one side where a bridle holds on two; null where none is published. Accepted range 1 to 20,000 kN.</summary>
    public Force? Yield { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 20000, nameof(Yield))) : null; }

    /// <summary>Gets its place along its machine, x forward from the foremost axle; null where it was not measured, and then an axle is taken at its own place. Accepted range -40 to 15 m.</summary>
    public Length? Position { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, -40, 15, nameof(Position))) : null; }

    /// <summary>Gets its height above the ground; null where it was not measured. Accepted range 0 to 6 m.</summary>
    public Length? Height { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0, 6, nameof(Height))) : null; }

    internal bool Forbidden => Kind is AttachmentKind.TowBall or AttachmentKind.TieDownEye or AttachmentKind.AboveDrawbar || (Kind is AttachmentKind.RearAxle or AttachmentKind.TowEye && !ApprovedByMaker);

    /// <summary>Gives the same with another value: its working load. For callers whose language has no <c>with</c>.</summary>
    /// <param name="workingLoad">The value, as in <see cref="WorkingLoad"/>.</param>
    /// <returns>The changed copy.</returns>
    public AttachmentPoint WithWorkingLoad(Force? workingLoad) => this with { WorkingLoad = workingLoad };

    /// <summary>Gives the same with another value: its yield load. For callers whose language has no <c>with</c>.</summary>
    /// <param name="yield">The value, as in <see cref="Yield"/>.</param>
    /// <returns>The changed copy.</returns>
    public AttachmentPoint WithYield(Force? yield) => this with { Yield = yield };

    /// <summary>Gives the same with another value: its place along its machine. For callers whose language has no <c>with</c>.</summary>
    /// <param name="position">The value, as in <see cref="Position"/>.</param>
    /// <returns>The changed copy.</returns>
    public AttachmentPoint WithPosition(Length? position) => this with { Position = position };

    /// <summary>Gives the same with another value: its height above the ground. For callers whose language has no <c>with</c>.</summary>
    /// <param name="height">The value, as in <see cref="Height"/>.</param>
    /// <returns>The changed copy.</returns>
    public AttachmentPoint WithHeight(Length? height) => this with { Height = height };

    /// <summary>Gives the attachment in words, invariant culture.</summary>
    /// <returns>Name and kind.</returns>
    public override string ToString() => Name + " (" + Kind + (ApprovedByMaker ? ", named by the maker)" : ")");
}
