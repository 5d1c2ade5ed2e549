using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>What was taken where a cone has not read the soil, or not deep enough, and the remoulding index that came with it.</summary>
internal sealed record SoilEstimate(Assumption Assumption, double? RemouldingIndex, bool WithoutCone = true);
