using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Peak force when a linear line is taken up against an anchor that is held.</summary>
/// <remarks>
/// <para>F = P + sqrt(P^2 + 2 k P s + k m v^2): with no speed and no slack exactly twice the pull, for any stiffness. In a locked gear F = P + v_t sqrt(k m), whatever the slack; the smaller counts where both apply.</para>
/// <para>P pull in N that goes on acting, k stiffness in N/m, m mass in kg, v speed in m/s at the start of the slack s in m, v_t theoretical speed of the gear at high idle.</para>
/// <para>Massless linear line, rigid anchor, no loss. A casualty that breaks out lowers the peak by a few per cent at most; no credit is given. Take the stiff end of the line.</para>
/// <para>Source: energy balance and proof of the locked gear (derived).</para>
/// </remarks>
public sealed class TakeUpModel : IModel
{
    private TakeUpModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static TakeUpModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Take-up against a held anchor";

    /// <inheritdoc/>
    public Source Source => LinesSources.HeldAnchor;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("v", "speed at the start of the slack", 0, 5, "m/s", GeneralSources.Judgement),
        new ValidityLimit("s", "slack", 0, 5, "m", GeneralSources.Judgement));

    /// <summary>Gives the peak on a held anchor.</summary>
    /// <param name="pull">Pull that goes on acting, 0 to 5,000 kN.</param>
    /// <param name="line">The line; its stiff end counts.</param>
    /// <param name="mass">Mass of the puller, 0.05 to 200 t.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 40 km/h.</param>
    /// <param name="slack">Slack, 0 to 10 m.</param>
    /// <returns>The peak.</returns>
    /// <exception cref="ArgumentNullException">The line is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force PeakHeld(Force pull, ElasticLine line, Mass mass, Speed speed, Length slack) => Force.FromNewtons(TakeUpKernel.HeldPeak(
        Guard.Newtons(pull, 0, 5000, nameof(pull)), ElasticKernel.Stiffness(Guard.NotNull(line, nameof(line)).StiffNewtons, line.LengthMetres), Guard.Kilograms(mass, 0.05, 200, nameof(mass)), Guard.MetresPerSecond(speed, 0, 40, nameof(speed)), Guard.Metres(slack, 0, 10, nameof(slack))));

    /// <summary>Gives the highest speed at the moment the line comes taut that keeps the held-anchor peak under a limit. A refusal limit, never a speed to aim for.</summary>
    /// <param name="limit">Limit of the line force, 1 to 20,000 kN.</param>
    /// <param name="pull">Pull that goes on acting, 0 to 5,000 kN.</param>
    /// <param name="line">The line; its stiff end counts.</param>
    /// <param name="mass">Mass of the puller, 0.05 to 200 t.</param>
    /// <returns>The speed; null where none does, which is so whenever the limit is under twice the pull.</returns>
    /// <exception cref="ArgumentNullException">The line is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Speed? SpeedLimit(Force limit, Force pull, ElasticLine line, Mass mass)
    {
        double f = Guard.Newtons(limit, 1, 20000, nameof(limit)), p = Guard.Newtons(pull, 0, 5000, nameof(pull));
        var k = ElasticKernel.Stiffness(Guard.NotNull(line, nameof(line)).StiffNewtons, line.LengthMetres);
        var kilograms = Guard.Kilograms(mass, 0.05, 200, nameof(mass));
        return f < 2 * p ? null : Speed.FromMetersPerSecond(TakeUpKernel.HeldSpeedLimit(f, p, k, kilograms));
    }

    /// <summary>Works the peak out step by step.</summary>
    /// <param name="pull">Pull that goes on acting, 0 to 5,000 kN.</param>
    /// <param name="line">The line; its stiff end counts.</param>
    /// <param name="mass">Mass of the puller, 0.05 to 200 t.</param>
    /// <param name="speed">Speed at the start of the slack, 0 to 40 km/h.</param>
    /// <param name="slack">Slack, 0 to 10 m.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentNullException">The line is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Force pull, ElasticLine line, Mass mass, Speed speed, Length slack)
    {
        var peak = PeakHeld(pull, line, mass, speed, slack);
        string p = Text.Number(pull.Kilonewtons), k = Text.Number(ElasticKernel.Stiffness(line.StiffNewtons, line.LengthMetres) / 1000), m = Text.Number(mass.Kilograms / 1000), v = Text.Number(speed.MetersPerSecond), s = Text.Number(slack.Meters);
        return new WorkingBuilder(Name)
            .Step("k", "stiffness, stiff end", "EA/L", Text.Number(line.StiffNewtons / 1000) + "/" + Text.Number(line.LengthMetres), k + " kN/m", line.Source)
            .Step("F", "peak", "P + sqrt(P^2 + 2 k P s + k m v^2)", $"{p} + sqrt({p}^2 + 2 x {k} x {p} x {s} + {k} x {m} x {v}^2)", Text.Kilonewtons(peak.Newtons), Source)
            .Build();
    }

    /// <summary>Gives the peaks of many take-ups of one puller on a held anchor: the same kernel over spans.</summary>
    /// <param name="pullKilonewtons">Pull that goes on acting, 0 to 5,000 kN, one per take-up.</param>
    /// <param name="stiffnessKilonewtonsPerMetre">Stiffness of the line, 1 to 100,000 kN/m, one per take-up.</param>
    /// <param name="speedMetresPerSecond">Speed at the start of the slack, 0 to 11.2 m/s, one per take-up.</param>
    /// <param name="slackMetres">Slack, 0 to 10 m, one per take-up.</param>
    /// <param name="massTonnes">Mass of the puller, 0.05 to 200 t.</param>
    /// <param name="peakKilonewtons">Receives the peak, kN, one per take-up.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void PeakHeld(ReadOnlySpan<double> pullKilonewtons, ReadOnlySpan<double> stiffnessKilonewtonsPerMetre, ReadOnlySpan<double> speedMetresPerSecond, ReadOnlySpan<double> slackMetres, double massTonnes, Span<double> peakKilonewtons)
    {
        Check(pullKilonewtons, stiffnessKilonewtonsPerMetre, speedMetresPerSecond, massTonnes, peakKilonewtons.Length);
        Guard.SameLength(pullKilonewtons.Length, slackMetres.Length, nameof(slackMetres));
        Guard.All(slackMetres, 0, 10, "m", nameof(slackMetres));
        // Kilonewtons, metres, seconds and tonnes are one coherent system, as newtons and kilograms are.
        for (var i = 0; i < peakKilonewtons.Length; i++)
            peakKilonewtons[i] = TakeUpKernel.HeldPeak(pullKilonewtons[i], stiffnessKilonewtonsPerMetre[i], massTonnes, speedMetresPerSecond[i], slackMetres[i]);
    }

    /// <summary>Gives the peaks of many take-ups of one puller in a locked gear, whatever the slack: the same kernel over spans. The conditions of the rule are the caller's to check (<see cref="LockedGearConditions"/>).</summary>
    /// <param name="pullKilonewtons">Most that its wheels can put on the ground, 0 to 5,000 kN, one per take-up.</param>
    /// <param name="stiffnessKilonewtonsPerMetre">Stiffness of the line, 1 to 100,000 kN/m, one per take-up.</param>
    /// <param name="theoreticalSpeedMetresPerSecond">Theoretical speed of the gear at high idle, 0 to 11.2 m/s, one per take-up.</param>
    /// <param name="massTonnes">Mass of the puller, 0.05 to 200 t.</param>
    /// <param name="peakKilonewtons">Receives the peak, kN, one per take-up.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void PeakLockedGear(ReadOnlySpan<double> pullKilonewtons, ReadOnlySpan<double> stiffnessKilonewtonsPerMetre, ReadOnlySpan<double> theoreticalSpeedMetresPerSecond, double massTonnes, Span<double> peakKilonewtons)
    {
        Check(pullKilonewtons, stiffnessKilonewtonsPerMetre, theoreticalSpeedMetresPerSecond, massTonnes, peakKilonewtons.Length);
        for (var i = 0; i < peakKilonewtons.Length; i++)
            peakKilonewtons[i] = TakeUpKernel.LockedGearPeak(pullKilonewtons[i], stiffnessKilonewtonsPerMetre[i], massTonnes, theoreticalSpeedMetresPerSecond[i]);
    }

    private static void Check(ReadOnlySpan<double> pullKilonewtons, ReadOnlySpan<double> stiffnessKilonewtonsPerMetre, ReadOnlySpan<double> speedMetresPerSecond, double massTonnes, int length)
    {
        Guard.SameLength(pullKilonewtons.Length, stiffnessKilonewtonsPerMetre.Length, nameof(stiffnessKilonewtonsPerMetre));
        Guard.SameLength(pullKilonewtons.Length, speedMetresPerSecond.Length, nameof(speedMetresPerSecond));
        Guard.SameLength(pullKilonewtons.Length, length, "peakKilonewtons");
        Guard.All(pullKilonewtons, 0, 5000, "kN", nameof(pullKilonewtons));
        Guard.All(stiffnessKilonewtonsPerMetre, 1, 1e5, "kN/m", nameof(stiffnessKilonewtonsPerMetre));
        Guard.All(speedMetresPerSecond, 0, 11.2, "m/s", nameof(speedMetresPerSecond));
        Guard.Range(massTonnes, 0.05, 200, "t", nameof(massTonnes));
    }
}
