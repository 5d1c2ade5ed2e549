using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What the parts of a winch rig must hold: sized to stall, not to the job.</summary>
/// <remarks>
/// <para>Connectors in the line: at least 2 x stall pull at failure. Blocks, what holds them and their anchors: a further 2:1, so 4 x stall for a block with two parallel parts.</para>
/// <para>A place with more than two parts is sized at twice the force that the stall pull puts on it without friction, where that is more (judgement). The stall pull is that of the first layer.</para>
/// <para>Source: WorkSafe Queensland incident alert, September 2018 (primary).</para>
/// </remarks>
public sealed record StallSizing
{
    private StallSizing(double stall) => Stall = Force.FromNewtons(stall);

    /// <summary>Gets the stall pull.</summary>
    public Force Stall { get; }

    /// <summary>Gets the least failing load of connectors in the line.</summary>
    public Force Connectors => Force.FromNewtons(Factor * Stall.Newtons);

    /// <summary>Gets the least failing load of a block, what holds it and its anchor.</summary>
    public Force BlockAndAnchor => Force.FromNewtons(Factor * Factor * Stall.Newtons);

    /// <summary>Gets the factor on the stall pull, and the further one on blocks.</summary>
    internal static double Factor => 2;

    /// <summary>Sizes for a stall pull.</summary>
    /// <param name="stall">Stall pull on the first layer, or the most a machine can impose, 0.1 to 5,000 kN.</param>
    /// <returns>The sizing.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public static StallSizing For(Force stall) => new(Guard.Newtons(stall, 0.1, 5000, nameof(stall)));

    /// <summary>Gives the least failing load of what holds a place of a tackle.</summary>
    /// <param name="tackle">The tackle.</param>
    /// <param name="point">One of its places: the casualty, an anchor or a traveller.</param>
    /// <returns>The greater of the rule for a block and twice the force at stall without friction.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">It is no place of the tackle.</exception>
    public Force Of(Tackle tackle, TacklePoint point)
    {
        var force = Guard.NotNull(tackle, nameof(tackle)).Forces(Stall, Ratio.FromDecimalFractions(1)).At(point).Newtons;
        var runs = false;
        foreach (var rope in tackle.Ropes)
        {
            foreach (var block in rope.Blocks) runs |= block.At == point;
        }

        return Force.FromNewtons(Math.Max(runs ? BlockAndAnchor.Newtons : Connectors.Newtons, Factor * force));
    }

    /// <summary>Gives the sizing in words, invariant culture.</summary>
    /// <returns>Stall, connectors and blocks.</returns>
    public override string ToString() => "stall " + Text.Kilonewtons(Stall.Newtons, 3) + ": connectors " + Text.Kilonewtons(Connectors.Newtons, 3) + ", blocks and anchors " + Text.Kilonewtons(BlockAndAnchor.Newtons, 3);
}
