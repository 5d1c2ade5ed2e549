using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Rigging;

/// <summary>Published shares of a line led over a round body, side by side.</summary>
/// <remarks>With the parts side by side all of them lie within or below the friction that a bridle is sized on here, 0.30; between parts further apart the same share stands for more friction (<see cref="PublishedTensionShare.FrictionAt"/>). No result takes one of them.</remarks>
public static class PublishedTensionShares
{
    /// <summary>Gets them, most even first.</summary>
    public static IReadOnlyList<PublishedTensionShare> All { get; } = Array.AsReadOnly<PublishedTensionShare>(
    [
        new("greased-sheave", 0.51, "over a greased sheave"),
        new("still", 0.55, "standing still over a pin, trunnion or hook"),
        new("sliding", 0.675, "a wire that slides over it"),
    ]);
}
