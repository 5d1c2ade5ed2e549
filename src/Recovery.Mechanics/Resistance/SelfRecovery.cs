using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Whether a stuck machine can move itself: what its own axles grip in their present state against what holds it, and on what soil it would move.</summary>
/// <remarks>
/// <para>Axle by axle gross traction less motion resistance, Brixius with bias constants, slip 0.30, on the loads beside the belly: GTR = 0.88 (1 - e^(-0.1 B_n))(1 - e^(-7.5 s)) + 0.04, MRR = 1/B_n + 0.04 + 0.5 s/sqrt(B_n). The sum of the driven axles stands against the demand with wheels turning, less the rolling that those axles' own resistance already holds.</para>
/// <para>Critical cone index: where the greatest net traction at slip up to 0.30 (radial constants), on full wheel loads and less the resistance of undriven wheels, just meets the grade along the pull. It is a number for wheels that roll: a buried wheel is in no wheel model's range, and climbing out of the hole asks for more.</para>
/// <para>Soil: low the rating cone index of the weakest reading, central the rating cone index, high the cone index, each held at the critical value of the machine as it sank, because it is seen to be stuck. Gross traction is a resource listed apart, never taken off a demand.</para>
/// <para>Known bias: bias constants give about a tenth less net traction than radial ones, the cautious side here. Wheel loads of harvesters lie above the tests behind the fit, which is flagged; an axle with a flag is listed, never credited.</para>
/// <para>Source: Brixius 1987, ASABE D497 (secondary); index of a stuck machine and composition judgement.</para>
/// </remarks>
public sealed class SelfRecovery
{
    private readonly double _critical;

    private SelfRecovery(PullDemand demand)
    {
        Demand = demand;
        Axles = OwnWheels.Axles(demand);
        _critical = SelfRecoverySteps.Critical(demand.Stuck);
        (Outlook, NetTraction, Holding) = SelfRecoverySteps.Balance(demand, Axles);
    }

    /// <summary>Gets the demand of the machine in its present state, its wheels turning.</summary>
    public PullDemand Demand { get; }

    /// <summary>Gets the axles, the foremost first.</summary>
    public IReadOnlyList<AxleTraction> Axles { get; }

    /// <summary>Gets what can be said.</summary>
    public SelfRecoveryOutlook Outlook { get; }

    /// <summary>Gets the gross traction of all driven axles at central: listed, not counted where wheels are buried or the model is left.</summary>
    public Force GrossTraction => Demand.OwnGrossTraction;

    /// <summary>Gets gross traction over the central demand.</summary>
    public Ratio ShareOfDemand => Ratio.FromDecimalFractions(Demand.CentralNewtons > 0 ? GrossTraction.Newtons / Demand.CentralNewtons : 0);

    /// <summary>Gets the net traction of the driven axles over the soil; null where a driven wheel is buried or none is driven.</summary>
    public ForceBand? NetTraction { get; }

    /// <summary>Gets what holds it beside the rolling of its driven axles; null where a driven wheel is buried or none is driven.</summary>
    public ForceBand? Holding { get; }

    /// <summary>Gets the cone index at which it would move itself in its present state, wheels rolling, drawn in the direction of the pull; null where no soil would do.</summary>
    public Pressure? CriticalConeIndex => double.IsNaN(_critical) ? null : Pressure.FromPascals(_critical);

    /// <summary>Gets the cone index at which it would just have moved itself as it sank, in the less mobile of entry and pull; null where no soil would do.</summary>
    public Pressure? CriticalAsSunk => Demand.CriticalConeIndex;

    /// <summary>Gets the rating cone index beside it, as read.</summary>
    public Pressure RatingConeIndex => Demand.Stuck.Soil.RatingConeIndex;

    /// <summary>Gets what can be said, in words without units. The two bands it sets against each other are <see cref="NetTraction"/> and <see cref="Holding"/>; gross traction is never set against the demand, because wheels that slip cost more to roll than the towed wheels of the demand.</summary>
    public string Statement => Words.ToString();

    internal Phrase Words => SelfRecoverySteps.Words(this);

    /// <summary>Works out whether a stuck machine can move itself.</summary>
    /// <param name="stuck">The machine in its hole, with its present loads. Its wheels are taken to turn: it drives them.</param>
    /// <returns>Grip against hold, and the soil it would need.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="stuck"/> is null.</exception>
    public static SelfRecovery Estimate(StuckMachine stuck) => new(PullDemand.Estimate(Guard.NotNull(stuck, nameof(stuck)).DrivingItsWheels()));

    /// <summary>Gives what each step that is left does: every payload and every detachable part off, tyres at their lowest inflation, the ground ahead of buried wheels dug to 1:6, vented, the belly freed, all of that together, and the pull turned round. Each is worked whole.</summary>
    /// <remarks>Digging, venting and freeing the belly do not move the critical index, which is for wheels that roll on their full load; the step says so and shows what holds the machine after it. Turning round moves it by the slope along the pull alone.</remarks>
    /// <returns>The steps, turning round the last; one that does not move the critical index says why.</returns>
    public IReadOnlyList<SelfRecoveryStep> Steps() => SelfRecoveryActions.Of(Demand, _critical);

    /// <summary>Works grip and hold out step by step.</summary>
    /// <returns>The worked steps; the last is the critical cone index.</returns>
    public Working Explain() => SelfRecoverySteps.Explain(this);

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Statement, grip, both bands and critical index.</returns>
    public override string ToString() => Statement + " Grip " + Text.Kilonewtons(GrossTraction.Newtons, 3) + " gross, " + (NetTraction is { } net && Holding is { } hold ? "net " + net + " against " + hold + " that hold it beside its rolling, " : string.Empty) + "towed it takes " + Text.Kilonewtons(Demand.CentralNewtons, 3) + ", critical cone index "
        + (CriticalConeIndex is { } index ? Text.Kilopascals(index.Pascals, 3) : "none") + " against " + Text.Kilopascals(RatingConeIndex.Pascals, 3) + " beside it.";
}
