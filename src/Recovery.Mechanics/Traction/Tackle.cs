using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Ropes over fixed and moving blocks, as a small graph: what a pull at the haul does to the casualty, to every block and to every anchor.</summary>
/// <remarks>
/// <para>From the hauled end every sheave passes on eta times the tension; a place takes sqrt(T1^2 + T2^2 + 2 T1 T2 cos theta) from a sheave whose parts include theta, (T1 + T2) cos(theta/2) of it along the pull, and the tension of every rope end on it.
/// A rope that is hauled by a traveller carries what all other ropes put on that traveller. Load over haul is the advantage; without friction it is also the rope hauled over the way the casualty comes nearer.</para>
/// <para>eta 0.98 rolling bearing, 0.96 bronze bush, 0.90 to 0.91 a snatch block on whose cheeks the rope rubs (from memory). Places with several parts in different directions are summed by amount, which is on the upper side.</para>
/// <para>Friction lowers what reaches the casualty; it must never be counted in favour of an anchor, which is computed without it.</para>
/// <para>Source: statics (derived). Immutable.</para>
/// </remarks>
public sealed class Tackle
{
    private readonly TackleLayout _layout;

    /// <summary>Rigs a tackle.</summary>
    /// <param name="name">Name.</param>
    /// <param name="ropes">The ropes, one of them hauled at the haul, at most eight.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The ropes do not make a tackle; the message says what contradicts what.</exception>
    public Tackle(string name, IEnumerable<TackleRope> ropes)
    {
        Name = Guard.Name(name, nameof(name));
        Ropes = Array.AsReadOnly(Guard.NotNull(ropes, nameof(ropes)).ToArray());
        _layout = TackleLayout.From(Ropes);
        var unit = _layout.Solve(1, 1);
        MechanicalAdvantage = unit.Load;
        if (!(MechanicalAdvantage > 1e-9)) throw new ArgumentException("No part of this tackle pulls on the casualty.", nameof(ropes));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the ropes.</summary>
    public IReadOnlyList<TackleRope> Ropes { get; }

    /// <summary>Gets the places.</summary>
    public IReadOnlyList<TacklePoint> Points => _layout.Points;

    /// <summary>Gets the number of sheaves, each with its friction.</summary>
    public int Sheaves => Ropes.Sum(r => r.Blocks.Count);

    /// <summary>Gets the advantage without friction: load over haul, and rope hauled over the way of the casualty.</summary>
    public double MechanicalAdvantage { get; }

    /// <summary>Makes a plain line from the haul to the casualty.</summary>
    /// <returns>The tackle, advantage 1.</returns>
    public static Tackle SingleLine() => new("single line", [new TackleRope("line", TacklePoint.Haul, [], TacklePoint.Load)]);

    /// <summary>Makes a line over one fixed block that only changes its direction.</summary>
    /// <param name="includedAngle">Angle between the two parts, 0 to 170 degrees.</param>
    /// <returns>The tackle, advantage 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static Tackle ChangeOfDirection(Angle includedAngle)
    {
        Guard.Radians(includedAngle, 0, 170, nameof(includedAngle));
        return new Tackle("change of direction", [new TackleRope("line", TacklePoint.Haul, [new TackleBlock(TacklePoint.Anchor, includedAngle)], TacklePoint.Load)]);
    }

    /// <summary>Makes a purchase: one rope to and fro between casualty and anchor, parallel parts.</summary>
    /// <param name="parts">Parts of rope on the casualty, 1 to 12: the advantage.</param>
    /// <param name="leavesFixedBlock">Whether the fall leaves a fixed block, which costs one sheave more.</param>
    /// <returns>The tackle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static Tackle Purchase(int parts, bool leavesFixedBlock = false)
    {
        Guard.Count(parts, 1, 12, nameof(parts));
        return new Tackle(Text.Number(parts) + ":1 purchase", [Lay("fall", TacklePoint.Haul, TacklePoint.Load, parts, leavesFixedBlock)]);
    }

    /// <summary>Makes a purchase that hauls on the fall of another: the advantages multiply.</summary>
    /// <param name="hauling">Parts of the rope that the winch hauls, on the traveller, 2 to 6.</param>
    /// <param name="hauled">Parts of the rope that the traveller hauls, on the casualty, 2 to 6.</param>
    /// <returns>The tackle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Tackle PurchaseOnPurchase(int hauling, int hauled)
    {
        Guard.Count(hauling, 2, 6, nameof(hauling));
        Guard.Count(hauled, 2, 6, nameof(hauled));
        var traveller = new TacklePoint("traveller", TacklePointKind.Traveller);
        return new Tackle(
            Text.Number(hauling) + ":1 on " + Text.Number(hauled) + ":1",
            [Lay("fall", TacklePoint.Haul, traveller, hauling, false), Lay("second rope", traveller, TacklePoint.Load, hauled, false)]);
    }

    /// <summary>Gives load over haul with friction in every sheave.</summary>
    /// <param name="efficiency">Tension passed on by a sheave, 0.5 to 1.</param>
    /// <returns>The advantage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The efficiency is outside its range.</exception>
    public double Advantage(Ratio efficiency) => _layout.Solve(1, Guard.Fraction(efficiency, 0.5, 1, nameof(efficiency))).Load;

    /// <summary>Gives every force for a pull at the haul.</summary>
    /// <param name="haul">Pull at the haul, 0.001 to 5,000 kN.</param>
    /// <param name="efficiency">Tension passed on by a sheave, 0.5 to 1; 1 for anchors and gear.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TackleForces Forces(Force haul, Ratio efficiency)
    {
        double pull = Guard.Newtons(haul, 0.001, 5000, nameof(haul)), eta = Guard.Fraction(efficiency, 0.5, 1, nameof(efficiency));
        return new TackleForces(this, _layout, _layout.Solve(pull, eta), pull, eta);
    }

    /// <summary>Gives every force with the haul that a load needs.</summary>
    /// <param name="load">Resistance of the casualty, 0.001 to 10,000 kN.</param>
    /// <param name="efficiency">Tension passed on by a sheave, 0.5 to 1.</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TackleForces ForcesAtLoad(Force load, Ratio efficiency)
    {
        double newtons = Guard.Newtons(load, 0.001, 10000, nameof(load)), eta = Guard.Fraction(efficiency, 0.5, 1, nameof(efficiency)), pull = newtons / Advantage(efficiency);
        return new TackleForces(this, _layout, _layout.Solve(pull, eta), pull, eta);
    }

    /// <summary>Gives the fall-line force of the handbook: a tenth of the load for every sheave, over the advantage.</summary>
    /// <param name="load">Resistance of the casualty, 0.001 to 10,000 kN.</param>
    /// <returns>The fall-line force.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Force HandbookFallLine(Force load) => TackleRule.FallLine(load, Sheaves, MechanicalAdvantage);

    /// <summary>Gives the name and the advantage, invariant culture.</summary>
    /// <returns>Name, advantage and sheaves.</returns>
    public override string ToString() => Name + ", advantage " + Text.Number(MechanicalAdvantage, 3) + ", sheaves " + Text.Number(Sheaves);

    private static TackleRope Lay(string name, TacklePoint hauledAt, TacklePoint moving, int parts, bool leavesFixed)
    {
        var sheaves = leavesFixed ? parts : parts - 1;
        var blocks = new TackleBlock[sheaves];
        for (var i = 0; i < sheaves; i++) blocks[i] = new TackleBlock(Moves(i) ? moving : TacklePoint.Anchor);
        return new TackleRope(name, hauledAt, blocks, Moves(sheaves) ? moving : TacklePoint.Anchor);

        bool Moves(int place) => place % 2 == (leavesFixed ? 1 : 0);
    }
}
