using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Vertical breakout from the load that a contact carried and the time allowed for the pull, after Muga 1968.</summary>
/// <remarks>
/// <para>F = 0.20 A q exp(-0.00540 (t - 260)); A q is the load the contact carried (area times average supporting pressure) in kN, t the time allowed in minutes.</para>
/// <para>A quick pull meets about 0.8 of the load that the contact carried; given hours, a fifth. From bay mud and objects up to 98 kN submerged; a belly in farm clay is outside its origin.</para>
/// <para>Source: Muga 1968, NCEL TR R-591 (variables primary, coefficient from memory).</para>
/// </remarks>
public sealed class MugaBreakoutModel : IModel
{
    private MugaBreakoutModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static MugaBreakoutModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Muga 1968, breakout with time";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Muga;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("t", "time allowed for the pull", 0, 600, "min", ResistanceSources.Muga), new ValidityLimit("A q", "load that the contact carried", 0, 98, "kN", ResistanceSources.Muga));

    /// <summary>Gives the breakout.</summary>
    /// <param name="carried">Load that the contact carried, 0 to 5,000 kN.</param>
    /// <param name="time">Time allowed for the pull, 0 to 30 days.</param>
    /// <returns>The breakout with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BreakoutEstimate Evaluate(Force carried, Duration time)
    {
        double load = Guard.Newtons(carried, 0, 5000, nameof(carried)), minutes = Guard.Seconds(time, 0, 30 * 86400.0, nameof(time)) / 60;
        var force = BreakoutKernel.Muga(minutes) * load;
        return new BreakoutEstimate(this, ForceBand.FromNewtons(force, force, force), Validity.Flag(minutes, load / 1000));
    }

    /// <summary>Works the breakout out.</summary>
    /// <param name="carried">Load that the contact carried, 0 to 5,000 kN.</param>
    /// <param name="time">Time allowed for the pull, 0 to 30 days.</param>
    /// <returns>The worked step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Force carried, Duration time) => new WorkingBuilder(Name)
        .Step("F", "breakout in the time allowed", "0.20 A q exp(-0.00540 (t - 260))", "0.20 x " + Text.Number(carried.Kilonewtons) + " exp(-0.00540 (" + Text.Number(time.Seconds / 60) + " - 260))", Text.Kilonewtons(Evaluate(carried, time).Force.CentralNewtons), Source)
        .Build();
}
