using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A stronger part, put into the rig, with the whole rig checked again: a stronger strap of the same cloth is stiffer and loads the rest harder.</summary>
public sealed record RigRemedy
{
    internal RigRemedy(string part, double newtons, RigCheck after)
    {
        Part = part;
        BreakingStrength = Force.FromNewtons(newtons);
        After = after;
    }

    /// <summary>Gets the part that is replaced.</summary>
    public string Part { get; }

    /// <summary>Gets the least breaking strength with which the part meets the level asked.</summary>
    public Force BreakingStrength { get; }

    /// <summary>Gets the check of the whole rig with that part in it.</summary>
    public RigCheck After { get; }

    /// <summary>Gets the places that are below their floor with it in the rig; empty where it lifts every stop of strength.</summary>
    public IReadOnlyList<string> StillBelow
    {
        get
        {
            var names = new List<string>();
            foreach (var part in After.Parts)
            {
                if (part.Reserve < part.Floor) names.Add(part.Name);
            }

            return names.AsReadOnly();
        }
    }

    /// <summary>Gives the remedy in one line, invariant culture.</summary>
    /// <returns>Part, strength, and what is still below.</returns>
    public override string ToString() => Part + " of at least " + Text.Kilonewtons(BreakingStrength.Newtons, 3) + " breaking strength" + (StillBelow.Count == 0 ? string.Empty : "; still below: " + string.Join(", ", StillBelow));
}
