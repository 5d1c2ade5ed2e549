using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A single-sheave block that is there.</summary>
public sealed record FarmBlock
{
    /// <summary>Describes a block.</summary>
    /// <param name="name">Name.</param>
    /// <param name="failingLoad">Load at which block, hook and pin fail, 1 to 20,000 kN; null where it is not known. A working load limit is not one: multiply it by the factor its maker states.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public FarmBlock(string name, Force? failingLoad)
    {
        Name = Guard.Name(name, nameof(name));
        FailingLoad = failingLoad is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 20000, nameof(failingLoad))) : null;
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the load at which it fails; null where it is not known.</summary>
    public Force? FailingLoad { get; }

    /// <summary>Gives the block in words, invariant culture.</summary>
    /// <returns>Name and failing load.</returns>
    public override string ToString() => Name + (FailingLoad is { } force ? ", fails at " + Text.Kilonewtons(force.Newtons, 3) : ", failing load not known");
}
