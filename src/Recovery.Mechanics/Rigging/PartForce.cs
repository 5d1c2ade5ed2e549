using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What one part of a rig carries: the force vector of each of its segments, from its first node to its last.</summary>
public sealed record PartForce
{
    internal PartForce(RigLink link, IReadOnlyList<RigForce> segments)
    {
        Link = link;
        Segments = segments;
    }

    /// <summary>Gets the part with its nodes.</summary>
    public RigLink Link { get; }

    /// <summary>Gets the force of each segment on its first node, pointing along the part towards the next: one, or more where the part runs.</summary>
    public IReadOnlyList<RigForce> Segments { get; }

    /// <summary>Gets the greatest tension of the part.</summary>
    public Force Greatest
    {
        get
        {
            double most = 0;
            foreach (var force in Segments) most = Math.Max(most, force.Newtons.Length);
            return Force.FromNewtons(most);
        }
    }

    /// <summary>Gives the part with its force, invariant culture.</summary>
    /// <returns>Name and tension.</returns>
    public override string ToString() => Link.Part.Name + ": " + Text.Kilonewtons(Greatest.Newtons);
}
