using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How one bound of a pull demand arises: the state of machine and soil that it is the sum of.</summary>
/// <remarks>All terms of one bound share one wall, one floor and one state; nothing is spread on top.</remarks>
public sealed record BoundBasis
{
    internal BoundBasis(DemandBound bound, in DemandTerms terms, in DemandState state, Suspension frame, IReadOnlyList<string> uncut, IReadOnlyList<Phrase> how)
    {
        Bound = bound;
        Force = Force.FromNewtons(terms.Total);
        Wall = Pressure.FromPascals(state.Wall);
        Floor = Pressure.FromPascals(state.Floor);
        ModelConeIndex = Pressure.FromPascals(state.Index);
        RollingRatio = state.Rho;
        Locked = state.Locked;
        SuctionShare = state.Sealed ? 1 - state.VentedShare : 0;
        UpliftShare = state.Sealed ? state.Uplift : 0;
        ExitSlope = Angle.FromRadians(state.Exit);
        MeetsUncutSoil = uncut;
        Frame = frame;
        TakesCentral = terms.StandsIn;
        Words = how;
    }

    /// <summary>Gets which bound it is.</summary>
    public DemandBound Bound { get; }

    /// <summary>Gets the demand along the ground.</summary>
    public Force Force { get; }

    /// <summary>Gets the strength of uncut soil that was taken.</summary>
    public Pressure Wall { get; }

    /// <summary>Gets the strength of the floor that was taken.</summary>
    public Pressure Floor { get; }

    /// <summary>Gets the cone index that the wheel model was fed with.</summary>
    public Pressure ModelConeIndex { get; }

    /// <summary>Gets the rolling share of the load of a buried wheel that turns (judgement).</summary>
    public double RollingRatio { get; }

    /// <summary>Gets whether braked wheels slide locked.</summary>
    public bool Locked { get; }

    /// <summary>Gets the share of the suction behind buried wheels, 0 to 1.</summary>
    public double SuctionShare { get; }

    /// <summary>Gets the share f of the uplift of a sealed belly, 0 to 1.</summary>
    public double UpliftShare { get; }

    /// <summary>Gets the slope on which the machine leaves the hole.</summary>
    public Angle ExitSlope { get; }

    /// <summary>Gets the names of the axles that meet uncut soil.</summary>
    public IReadOnlyList<string> MeetsUncutSoil { get; }

    /// <summary>Gets how the axles share the load in this bound.</summary>
    public Suspension Frame { get; }

    /// <summary>Gets whether the bound takes central, because its own sum would have crossed it.</summary>
    public bool TakesCentral { get; }

    /// <summary>Gets how the bound arises, in words without units.</summary>
    public string How => Said(static _ => null);

    private IReadOnlyList<Phrase> Words { get; }

    /// <summary>How the bound arises, by the templates of a language.</summary>
    internal string Said(Func<string, string?> find) => Phrase.Join("; ", Words, find);

    /// <summary>Gives the bound in words with its numbers, invariant culture.</summary>
    /// <returns>Force, state, strengths.</returns>
    public override string ToString() => Bound switch
    {
        DemandBound.Low => "low ",
        DemandBound.Central => "central ",
        _ => "high ",
    } + Text.Kilonewtons(Force.Newtons, 3) + ": " + How + "; wall " + Text.Kilopascals(Wall.Pascals, 3) + ", floor " + Text.Kilopascals(Floor.Pascals, 3) + ", wheel model at " + Text.Kilopascals(ModelConeIndex.Pascals, 3);
}
