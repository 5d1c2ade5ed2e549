using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The soil ahead of one wheel by one method.</summary>
public sealed record FaceResult
{
    internal FaceResult(FaceMethod method, double newtons, IReadOnlyList<ValidityFlag> flags)
    {
        Method = method;
        Force = Force.FromNewtons(newtons);
        Flags = flags;
    }

    /// <summary>Gets the method.</summary>
    public FaceMethod Method { get; }

    /// <summary>Gets the resistance.</summary>
    public Force Force { get; }

    /// <summary>Gets the limits of the method that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Method and force.</returns>
    public override string ToString() => Method.Name + ": " + Text.Kilonewtons(Force.Newtons, 3);
}
