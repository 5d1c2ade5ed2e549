using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Pickets as an anchor. Any check of it says what they cannot do.</summary>
/// <remarks>By <see cref="PicketModel"/>. Without a declared soil there is no number. Immutable.</remarks>
public sealed class PicketHoldfast : GroundAnchor
{
    /// <summary>Describes a holdfast.</summary>
    /// <param name="name">Name.</param>
    /// <param name="kind">The holdfast.</param>
    /// <param name="soil">The soil down to the points of the pickets.</param>
    /// <exception cref="System.ArgumentException">The name is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is not one of the defined ones.</exception>
    public PicketHoldfast(string name, PicketKind kind, PicketSoil soil)
        : base(name)
    {
        Holds = PicketModel.Instance.Load(kind, soil);
        Kind = kind;
        Soil = soil;
    }

    /// <summary>Gets the holdfast.</summary>
    public PicketKind Kind { get; }

    /// <summary>Gets the soil.</summary>
    public PicketSoil Soil { get; }

    /// <inheritdoc/>
    public override Force? Holds { get; }

    /// <inheritdoc/>
    public override Source Source => PicketModel.Instance.SourceOf(Kind, Soil);

    /// <inheritdoc/>
    public override IReadOnlyList<ValidityFlag> Flags => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Assumption> Assumptions => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Holds is null ? [new Finding(AnchorFindings.PicketSoilUnknown, Name)] : [];

    /// <inheritdoc/>
    public override Working Explain() => new WorkingBuilder("What the pickets " + Name + " hold")
        .Step("F", "published load of the holdfast", "table", Kind + " in " + Soil, Holds is { } force ? Text.Kilonewtons(force.Newtons) : "none", Source)
        .Build();
}
