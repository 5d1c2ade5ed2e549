using System;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>A tackle between the towing machine and the line of a plan: the fall line leaves the moving block to the puller, the dead end is held by an anchor.</summary>
/// <remarks>
/// <para>n parts: the line gets n/(1 + 0.1 (n - 1)) times the sustained pull (handbook friction of a tenth of the load for each of n - 1 sheaves, published); the most that can be put into it is n times what the puller can impose, without credit for friction. The line comes on n times more slowly than the puller; its mass counts n squared times there.</para>
/// <para>The anchor holds what the line gets less what the puller holds: (n - 1) times what the puller can impose. Source: US Army TB 9-2350-292-10 (primary) for the friction, statics for the rest. Immutable, equality by value.</para>
/// </remarks>
public sealed record LineTackle
{
    /// <summary>Describes a tackle.</summary>
    /// <param name="parts">Parts of line that hold the moving block, 2 to 6.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public LineTackle(int parts) => Parts = Guard.Count(parts, 2, Most, nameof(parts));

    /// <summary>Most parts of line of a tackle.</summary>
    internal const int Most = 6;

    /// <summary>Gets the parts of line that hold the moving block.</summary>
    public int Parts { get; }

    /// <summary>Gets what the anchor of the dead end is known to hold along the pull; null where nobody has said. Accepted range 1 to 10,000 kN.</summary>
    public Force? AnchorHolds { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 10000, nameof(AnchorHolds))) : null; }

    /// <summary>Gets what the blocks and the rope of the tackle may carry at the moving block; null where nobody has said. Accepted range 1 to 10,000 kN.</summary>
    public Force? BlockRating { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, 10000, nameof(BlockRating))) : null; }

    /// <summary>Gives the same with another value: what the anchor holds. For callers whose language has no <c>with</c>.</summary>
    /// <param name="anchorHolds">The value, as in <see cref="AnchorHolds"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineTackle WithAnchorHolds(Force? anchorHolds) => this with { AnchorHolds = anchorHolds };

    /// <summary>Gives the same with another value: what the blocks may carry. For callers whose language has no <c>with</c>.</summary>
    /// <param name="blockRating">The value, as in <see cref="BlockRating"/>.</param>
    /// <returns>The changed copy.</returns>
    public LineTackle WithBlockRating(Force? blockRating) => this with { BlockRating = blockRating };

    /// <summary>Gets the sustained pull on the line over that of the puller.</summary>
    public double SustainedAdvantage => Parts / TackleKernel.FallLine(1, Parts - 1, TackleKernel.HandbookFriction, 1);

    /// <summary>What a finding calls it.</summary>
    internal Phrase Called => PlanningPhrases.Tackle.With(Text.Number(Parts));

    /// <summary>Gives the tackle in words, invariant culture.</summary>
    /// <returns>Parts and advantage.</returns>
    public override string ToString() => Called + ", " + Text.Number(SustainedAdvantage, 3) + " times the sustained pull";
}
