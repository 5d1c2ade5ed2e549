using Recovery.Mechanics.Planning;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How far an evaluated sample is from a limit: below zero the limit's event happens, minus infinity where nothing holds against it; not a number or plus infinity where the plan has no such limit.</summary>
/// <param name="block">What evaluated it: its numbers and the outcomes of its places.</param>
/// <param name="outcome">The outcome.</param>
internal delegate double PlanMargin(BlockSampler block, in PlanOutcome outcome);
