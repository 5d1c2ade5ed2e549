using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Every force of a tackle at one pull.</summary>
public sealed class TackleForces
{
    private readonly TackleLayout _layout;
    private readonly TackleSolution _solution;

    internal TackleForces(Tackle tackle, TackleLayout layout, TackleSolution solution, double haul, double efficiency)
    {
        Tackle = tackle;
        _layout = layout;
        _solution = solution;
        Haul = Force.FromNewtons(haul);
        Efficiency = Ratio.FromDecimalFractions(efficiency);
    }

    /// <summary>Gets the tackle.</summary>
    public Tackle Tackle { get; }

    /// <summary>Gets the fall-line force at the haul.</summary>
    public Force Haul { get; }

    /// <summary>Gets the share of the tension that each sheave passes on.</summary>
    public Ratio Efficiency { get; }

    /// <summary>Gets the pull on the casualty.</summary>
    public Force Load => Force.FromNewtons(_solution.Load);

    /// <summary>Gets load over haul.</summary>
    public double Advantage => _solution.Load / Haul.Newtons;

    /// <summary>Gets the force on every place; the haul itself is the fall line.</summary>
    public IReadOnlyList<TacklePointForce> Points
    {
        get
        {
            var list = new List<TacklePointForce>(_layout.Points.Count);
            for (var i = 0; i < _layout.Points.Count; i++) list.Add(new TacklePointForce(_layout.Points[i], _solution.At[i], _layout.Parts(_layout.Points[i])));
            return list.AsReadOnly();
        }
    }

    /// <summary>Gives the force on a place.</summary>
    /// <param name="point">The place.</param>
    /// <returns>The force.</returns>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    /// <exception cref="ArgumentException">It is no place of this tackle.</exception>
    public Force At(TacklePoint point) => Force.FromNewtons(_solution.At[_layout.Index(Guard.NotNull(point, nameof(point)))]);

    /// <summary>Gives the tension at the dead end of a rope.</summary>
    /// <param name="ropeName">Name of the rope.</param>
    /// <returns>The tension.</returns>
    /// <exception cref="ArgumentException">The tackle has no such rope.</exception>
    public Force DeadEnd(string ropeName)
    {
        for (var i = 0; i < _layout.Ordered.Count; i++)
        {
            if (string.Equals(_layout.Ordered[i].Name, ropeName, StringComparison.Ordinal)) return Force.FromNewtons(_solution.Ends[i]);
        }

        throw new ArgumentException("The tackle has no rope '" + ropeName + "'.", nameof(ropeName));
    }

    /// <summary>Works the load out step by step, sheave by sheave.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Forces of the tackle " + Tackle.Name).Step("T", "fall line", "pull at the haul", "given", Text.Kilonewtons(Haul.Newtons), GeneralSources.Caller);
        var eta = Efficiency.DecimalFractions;
        foreach (var rope in _layout.Ordered)
        {
            var tension = rope.HauledAt.Kind == TacklePointKind.Haul ? Haul.Newtons : At(rope.HauledAt).Newtons;
            foreach (var block in rope.Blocks)
            {
                var next = tension * eta;
                working.Step("T'", rope.Name + " after the block on " + block.At.Name, "eta T", Text.Number(eta) + " x " + Text.Number(tension / 1000), Text.Kilonewtons(next), TackleSources.BlockEfficiency);
                tension = next;
            }
        }

        return working.Step("R", "pull on the casualty", "sum of the parts on it", "advantage " + Text.Number(Advantage), Text.Kilonewtons(_solution.Load), GeneralSources.Statics).Build();
    }

    /// <summary>Gives haul and load, invariant culture.</summary>
    /// <returns>Haul, load and efficiency.</returns>
    public override string ToString() => Text.Kilonewtons(Haul.Newtons, 3) + " at the haul, " + Text.Kilonewtons(_solution.Load, 3) + " on the casualty (" + Text.Number(Efficiency.DecimalFractions, 3) + " a sheave)";
}
