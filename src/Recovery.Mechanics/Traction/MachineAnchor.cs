using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Another machine as an anchor: it holds by its own grip on its own ground and slope.</summary>
/// <remarks>
/// <para>F = least of [net traction of the axles that are driven and braked at slip up to 0.30, bias constants, weakest rating cone index, with the load that the line transfers, less W sin(theta)], nose lift and the rating of the hitch. Power does not count: it stands.</para>
/// <para>Grade of the machine positive where the ground rises away from the casualty: its weight then pulls it towards the casualty. Axles marked as unbraked, and axles without drive, count with their resistance against the grip: a parking brake mostly acts on the drive.</para>
/// <para>The resistance of locked wheels to being dragged and of a blade or spade let into the ground are not credited. A machine on soft ground that creeps has lost its hold: bars, chocks or a second machine behind it need data of their own.</para>
/// <para>Source: engineering judgement on the wheel model of Brixius (secondary). Immutable.</para>
/// </remarks>
public sealed class MachineAnchor : GroundAnchor
{
    private static readonly Assumption Brakes = new(
        "assume.anchor-brakes", "which axles of the anchoring machine its parking brake locks", "every driven axle that is not named unbraked", "A brake on one axle alone holds about half as much.", AnchorSources.MachineAnchor);

    /// <summary>Describes a machine as an anchor with a level line.</summary>
    /// <param name="machine">The machine, its ground, its slope and the point the line is made fast to.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public MachineAnchor(TowingMachine machine)
        : this(machine, Angle.Zero)
    {
    }

    /// <summary>Describes a machine as an anchor.</summary>
    /// <param name="machine">The machine, its ground, its slope and the point the line is made fast to.</param>
    /// <param name="linePitch">Angle by which the line falls from the machine, -40 to 40 degrees; a rising line takes load off its wheels.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public MachineAnchor(TowingMachine machine, Angle linePitch)
        : base(Guard.NotNull(machine, nameof(machine)).Machine.Name)
    {
        var axles = machine.Machine.Axles;
        Standing = machine with { Machine = machine.Machine.WithAxles(axles.Select(a => a with { Driven = a.Braked && a.Driven })), EnginePower = null };
        Capability = PullCapability.Estimate(Standing, linePitch);
        IsBraked = axles.Any(a => a.Braked && a.Driven);
    }

    /// <summary>Gets the machine with its braked axles as those that grip.</summary>
    public TowingMachine Standing { get; }

    /// <summary>Gets the capability behind it; only its low bound counts for an anchor.</summary>
    public PullCapability Capability { get; }

    /// <summary>Gets whether any driven axle is braked.</summary>
    public bool IsBraked { get; }

    /// <inheritdoc/>
    public override Force? Holds => Capability.LowBound.Pull;

    /// <inheritdoc/>
    public override Source Source => AnchorSources.MachineAnchor;

    /// <inheritdoc/>
    public override IReadOnlyList<ValidityFlag> Flags => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Assumption> Assumptions => Capability.Assumptions.Where(a => a.Id is not ("assume.puller-engine-power" or "assume.puller-firmest-ground")).Prepend(Brakes).ToList().AsReadOnly();

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings => IsBraked ? [] : [new Finding(AnchorFindings.MachineNotBraked, Name)];

    /// <inheritdoc/>
    public override Working Explain()
    {
        var low = Capability.LowBound;
        return new WorkingBuilder("What " + Name + " holds as an anchor")
            .Include(Capability.Explain())
            .Step("F", "load that it holds: the same on its weakest reading", "low bound", low.LimitedBy + " on " + Text.Kilopascals(low.ConeIndex.Pascals), Text.Kilonewtons(low.Pull.Newtons), Source)
            .Build();
    }
}
