using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A machine on tracks as an anchor, a dozer for example: it holds by its own grip on its own ground and slope.</summary>
/// <remarks>
/// <para>F = least of [traction of both tracks at slip 0.30 on the weakest terrain, less W sin(theta)], nose lift and the rating of the hitch, by <see cref="TrackedPull"/>. Power does not count: it stands with its tracks locked.</para>
/// <para>Grade positive where the ground rises away from the casualty: its weight then pulls it towards the casualty. A blade or ripper let into the ground is not credited: that needs a test of its own.</para>
/// <para>Source: engineering judgement on the track model. Immutable.</para>
/// </remarks>
public sealed class TrackedAnchor : GroundAnchor
{
    /// <summary>Describes a tracked machine as an anchor with a level line.</summary>
    /// <param name="machine">The machine, its ground, its slope and the point the line is made fast to.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public TrackedAnchor(TrackedTower machine)
        : this(machine, Angle.Zero)
    {
    }

    /// <summary>Describes a tracked machine as an anchor.</summary>
    /// <param name="machine">The machine, its ground, its slope and the point the line is made fast to.</param>
    /// <param name="linePitch">Angle by which the line falls from the machine, -40 to 40 degrees; a rising line takes load off its tracks.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public TrackedAnchor(TrackedTower machine, Angle linePitch)
        : base(Guard.NotNull(machine, nameof(machine)).Name) => Pull = TrackedPull.Estimate(machine with { EnginePower = null }, linePitch);

    /// <summary>Gets the pull behind it; only its low bound counts for an anchor.</summary>
    public TrackedPull Pull { get; }

    /// <inheritdoc/>
    public override Force? Holds => Pull.Sustained?.Low;

    /// <inheritdoc/>
    public override Source Source => AnchorSources.MachineAnchor;

    /// <inheritdoc/>
    public override IReadOnlyList<ValidityFlag> Flags => Pull.Flags;

    /// <inheritdoc/>
    public override IReadOnlyList<Assumption> Assumptions => Pull.Assumptions.Where(a => a != CapabilityAssumptions.EnginePower && a != CapabilityAssumptions.FirmestTerrain).ToList().AsReadOnly();

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => Holds is null ? [new Finding(TowingFindings.NoSupport, Name)] : [];

    /// <inheritdoc/>
    public override Working Explain()
    {
        var working = new WorkingBuilder("What " + Name + " holds as an anchor").Include(Pull.Explain());
        return (Holds is { } holds
            ? working.Step("F", "load that it holds: the same on its weakest terrain", "low bound", "low", Text.Kilonewtons(holds.Newtons), Source)
            : working.Step("F", "load that it holds: none, the ground gives no support", "none", "none", "none", Source)).Build();
    }
}
