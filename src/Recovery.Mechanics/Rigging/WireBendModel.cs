using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Strength left in a wire rope bent round a shackle, pin or hook.</summary>
/// <remarks>
/// <para>eta = 1 - 0.5/sqrt(D/d); D diameter bent round, d diameter of the rope, both in one unit. Bending factor on breaking strength 1/eta.</para>
/// <para>Range: D/d from 1 for the body, from 2 for an eye; static loads only. Below 1 there is no figure. Two ends: the worse counts. Never multiplied with a termination at the same end: the greater reduction counts.</para>
/// <para>Bias: from D/d 10 on a little below the chart of the Wire Rope Technical Board (from memory 0.86 at 10), so on the cautious side; wire friction, lay angle and number of wires also matter.</para>
/// <para>Source: 0027/ND rev 11.2 s. 7.8.1 and 7.8.2 after IMCA M 179 (primary).</para>
/// </remarks>
public sealed class WireBendModel : IModel
{
    private WireBendModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static WireBendModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Wire rope bend";

    /// <inheritdoc/>
    public Source Source => PartSources.WireBend;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("D/d", "diameter bent round over diameter of the rope, an eye", WireRopeKernel.LeastEye, double.PositiveInfinity, string.Empty, PartSources.WireBend));

    /// <summary>Gives the share of strength left.</summary>
    /// <param name="bentRound">Diameter bent round, 1 to 3,000 mm.</param>
    /// <param name="rope">Diameter of the rope, 1 to 200 mm.</param>
    /// <returns>The share; null below D/d 1, where there is no figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public WireBend Evaluate(Length bentRound, Length rope)
    {
        var ratio = Guard.Metres(bentRound, 0.001, 3, nameof(bentRound)) / Guard.Metres(rope, 0.001, 0.2, nameof(rope));
        ratio = Math.Round(ratio, 9);
        return new WireBend(ratio, Validity.Flag(ratio));
    }

    /// <summary>Works the share out step by step.</summary>
    /// <param name="bentRound">Diameter bent round, at least that of the rope.</param>
    /// <param name="rope">Diameter of the rope, 1 to 200 mm.</param>
    /// <returns>The worked steps; the ratio alone where there is no figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length bentRound, Length rope)
    {
        var bend = Evaluate(bentRound, rope);
        var working = new WorkingBuilder(Name).Step("D/d", "bend ratio", "D/d", Text.Number(bentRound.Meters * 1000) + "/" + Text.Number(rope.Meters * 1000), Text.Number(bend.Ratio), GeneralSources.Caller);
        if (bend.Efficiency is { } eta) working.Step("eta", "share of strength left", "1 - 0.5/sqrt(D/d)", "1 - 0.5/sqrt(" + Text.Number(bend.Ratio) + ")", Text.Number(eta), Source);
        return working.Build();
    }
}
