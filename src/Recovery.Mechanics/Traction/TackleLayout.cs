using System;
using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Traction;

/// <summary>The graph of a tackle in the order in which its ropes can be solved.</summary>
internal sealed class TackleLayout
{
    private readonly TackleRope[] _ordered;

    private TackleLayout(TackleRope[] ordered, TacklePoint[] points)
    {
        _ordered = ordered;
        Points = Array.AsReadOnly(points);
    }

    public IReadOnlyList<TacklePoint> Points { get; }

    public IReadOnlyList<TackleRope> Ordered => _ordered;

    public static TackleLayout From(IReadOnlyList<TackleRope> ropes)
    {
        if (ropes.Count is < 1 or > 8) throw new ArgumentException("A tackle has one to eight ropes.", nameof(ropes));
        if (ropes.Count(r => r.HauledAt.Kind == TacklePointKind.Haul) != 1) throw new ArgumentException("Exactly one rope of a tackle is hauled at the haul.", nameof(ropes));
        if (ropes.Select(r => r.Name).Distinct(StringComparer.Ordinal).Count() != ropes.Count) throw new ArgumentException("Two ropes of a tackle bear one name.", nameof(ropes));
        var points = ropes.SelectMany(Places).Distinct().ToArray();
        if (points.Select(p => p.Name).Distinct(StringComparer.Ordinal).Count() != points.Length) throw new ArgumentException("One name stands for places of two kinds.", nameof(ropes));
        foreach (var traveller in points.Where(p => p.Kind == TacklePointKind.Traveller))
        {
            if (ropes.Count(r => r.HauledAt == traveller) != 1) throw new ArgumentException("The traveller '" + traveller.Name + "' must haul exactly one rope.", nameof(ropes));
            if (!ropes.Any(r => Holds(r, traveller))) throw new ArgumentException("Nothing hauls the traveller '" + traveller.Name + "'.", nameof(ropes));
        }

        return new TackleLayout(Order(ropes), points);
    }

    /// <summary>Forces for a pull at the haul.</summary>
    public TackleSolution Solve(double haul, double efficiency)
    {
        var at = new double[Points.Count];
        var ends = new double[_ordered.Length];
        double load = 0;
        for (var i = 0; i < _ordered.Length; i++)
        {
            var rope = _ordered[i];
            double tension = rope.HauledAt.Kind == TacklePointKind.Haul ? haul : at[Index(rope.HauledAt)];
            if (rope.HauledAt.Kind == TacklePointKind.Haul) at[Index(rope.HauledAt)] = haul;
            foreach (var block in rope.Blocks)
            {
                double next = tension * efficiency, angle = block.IncludedAngle.Radians;
                var along = TackleKernel.Along(tension, next, angle);
                at[Index(block.At)] += block.At.Kind == TacklePointKind.Anchor ? TackleKernel.Block(tension, next, angle) : along;
                if (block.At.Kind == TacklePointKind.Load) load += along;
                tension = next;
            }

            ends[i] = tension;
            at[Index(rope.DeadEnd)] += tension;
            if (rope.DeadEnd.Kind == TacklePointKind.Load) load += tension;
        }

        return new TackleSolution(at, ends, load);
    }

    public int Index(TacklePoint point)
    {
        for (var i = 0; i < Points.Count; i++)
        {
            if (Points[i] == point) return i;
        }

        throw new ArgumentException("'" + point.Name + "' is no place of this tackle.", nameof(point));
    }

    /// <summary>Parts of rope that make fast to a place: two for a sheave, one for an end.</summary>
    public int Parts(TacklePoint point) => _ordered.Sum(r => (2 * r.Blocks.Count(b => b.At == point)) + (r.DeadEnd == point ? 1 : 0));

    private static TackleRope[] Order(IReadOnlyList<TackleRope> ropes)
    {
        var left = ropes.ToList();
        var ordered = new List<TackleRope>(ropes.Count);
        while (left.Count > 0)
        {
            // A rope is known once everything that hauls on its traveller is.
            var next = left.Find(r => r.HauledAt.Kind == TacklePointKind.Haul || !left.Exists(other => Holds(other, r.HauledAt)))
                ?? throw new ArgumentException("The ropes '" + string.Join("', '", left.Select(r => r.Name)) + "' haul each other in a circle.", nameof(ropes));
            ordered.Add(next);
            left.Remove(next);
        }

        return [.. ordered];
    }

    private static bool Holds(TackleRope rope, TacklePoint point) => rope.DeadEnd == point || rope.Blocks.Any(b => b.At == point);

    private static IEnumerable<TacklePoint> Places(TackleRope rope) => rope.Blocks.Select(b => b.At).Prepend(rope.HauledAt).Append(rope.DeadEnd);
}
