using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>How a strength was estimated that no cone has read, and the remoulding index that came with it.</summary>
internal sealed record SoilEstimate(Assumption Assumption, double? RemouldingIndex);
