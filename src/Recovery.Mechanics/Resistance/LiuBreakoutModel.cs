using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the speed of a pull does to a vertical breakout, after Liu 1969.</summary>
/// <remarks>
/// <para>F/F_r = 1.5 (T/T_in)^-0.07; T time of the pull, T_in time in the ground, F_r static resistance from shear and tension.</para>
/// <para>Valid for T/T_in from 0.001 to 10. Slowness buys little: a pull six times slower is worth about a tenth. So suction does not fade while somebody pulls; venting takes it away at once.</para>
/// <para>Source: Liu 1969, NCEL TR R-635 (primary).</para>
/// </remarks>
public sealed class LiuBreakoutModel : IModel
{
    private LiuBreakoutModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static LiuBreakoutModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Liu 1969, breakout with time";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Liu;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("T/T_in", "time of the pull over time in the ground", 1e-3, 10, string.Empty, ResistanceSources.Liu));

    /// <summary>Gives breakout over static resistance.</summary>
    /// <param name="pull">Time of the pull, 1 s to 30 days.</param>
    /// <param name="inGround">Time since it sank, 1 minute to 1 year.</param>
    /// <returns>The ratio with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RateEffect Evaluate(Duration pull, Duration inGround)
    {
        double t = Guard.Seconds(pull, 1, 30 * 86400.0, nameof(pull)), embedded = Guard.Seconds(inGround, 60, 366 * 86400.0, nameof(inGround));
        return new RateEffect(BreakoutKernel.Liu(t / embedded), Validity.Flag(t / embedded));
    }

    /// <summary>Works the ratio out.</summary>
    /// <param name="pull">Time of the pull, 1 s to 30 days.</param>
    /// <param name="inGround">Time since it sank, 1 minute to 1 year.</param>
    /// <returns>The worked step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Duration pull, Duration inGround) => new WorkingBuilder(Name)
        .Step("F/F_r", "breakout over static resistance", "1.5 (T/T_in)^-0.07", "1.5 (" + Text.Number(pull.Seconds / 60) + "/" + Text.Number(inGround.Seconds / 60) + ")^-0.07", Text.Number(Evaluate(pull, inGround).Ratio), Source)
        .Build();
}
