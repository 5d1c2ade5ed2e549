using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Take-up on a casualty that breaks out: two masses, a linear line, closed form.</summary>
/// <remarks>
/// <para>The casualty m2 sticks until the force is Rs and then slides against Rk. v1 = sqrt(v^2 + (2 P Rs/k - Rs^2/k)/m1); Fs = (P m2 + Rk m1)/(m1 + m2); F_max = Fs + sqrt((Rs - Fs)^2 + k mu v1^2), mu = m1 m2/(m1 + m2). Valid while m2 keeps moving forwards.</para>
/// <para>Break-out limits the peak by a few per cent only: it is no credit and does not protect the line. The held anchor stays the rule. m1 puller, P its pull, v speed when taut. Source: linear oscillator (derived). Immutable.</para>
/// </remarks>
public sealed record BreakOut
{
    private BreakOut(bool breaks, double peak, double held, double v1, double toBreak, double toPeak)
    {
        BreaksOut = breaks;
        Newtons = peak;
        HeldPeak = Force.FromNewtons(held);
        SpeedMetresPerSecond = v1;
        SecondsToBreakOut = toBreak;
        SecondsToPeak = toPeak;
    }

    /// <summary>Gets whether the held peak reaches the static resistance at all; otherwise the casualty stays and the held peak stands.</summary>
    public bool BreaksOut { get; }

    /// <summary>Gets the greatest force.</summary>
    public Force Peak => Force.FromNewtons(Newtons);

    /// <summary>Gets the peak on a held anchor, which the rig is checked against.</summary>
    public Force HeldPeak { get; }

    /// <summary>Gets the speed of the puller at break-out; null where it does not break out.</summary>
    public Speed? SpeedAtBreakOut => BreaksOut ? Speed.FromMetersPerSecond(SpeedMetresPerSecond) : null;

    /// <summary>Gets the time from first taut to break-out; null where it does not break out.</summary>
    public Duration? TimeToBreakOut => BreaksOut ? Duration.FromSeconds(SecondsToBreakOut) : null;

    /// <summary>Gets the time from first taut to the greatest force.</summary>
    public Duration TimeToPeak => Duration.FromSeconds(SecondsToPeak);

    internal double Newtons { get; }

    private double SpeedMetresPerSecond { get; }

    private double SecondsToBreakOut { get; }

    private double SecondsToPeak { get; }

    /// <summary>Works out the take-up.</summary>
    /// <param name="line">The line; linear, taut at the start.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="speed">Speed when the line is taut, 0 to 60 km/h; not zero together with the pull.</param>
    /// <param name="casualtyMass">Mass of the casualty, 1 kg to 1,000 t.</param>
    /// <param name="staticResistance">Static resistance Rs, 0 to 20,000 kN.</param>
    /// <param name="kineticResistance">Kinetic resistance Rk, 0 to Rs.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentException">The line is not linear, hangs slack, or neither pull nor speed is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static BreakOut Evaluate(LineAssembly line, Mass pullerMass, Force pull, Speed speed, Mass casualtyMass, Force staticResistance, Force kineticResistance)
    {
        Guard.NotNull(line, nameof(line));
        if (!line.Shape.IsLinear) throw new ArgumentException("line must be linear; simulate it instead.", nameof(line));
        if (line.Slack.Meters > 0) throw new ArgumentException("line must be taut; give the speed when it comes taut instead of " + Text.With(line.Slack.Meters, "m") + " of slack.", nameof(line));
        double k = line.Shape.LinearStiffness, m1 = Guard.Kilograms(pullerMass, 0.001, 1000, nameof(pullerMass)), m2 = Guard.Kilograms(casualtyMass, 0.001, 1000, nameof(casualtyMass));
        double p = Guard.Newtons(pull, 0, 5000, nameof(pull)), v = Guard.MetresPerSecond(speed, 0, 60, nameof(speed));
        double rs = Guard.Newtons(staticResistance, 0, 20000, nameof(staticResistance)), rk = Guard.Newtons(kineticResistance, 0, rs / 1000, nameof(kineticResistance));
        if (p == 0 && v == 0) throw new ArgumentException("speed must be above zero where there is no pull.", nameof(speed));
        var held = TakeUpKernel.HeldPeak(p, k, m1, v, 0);
        if (held <= rs) return new BreakOut(false, held, held, double.NaN, double.NaN, TakeUpKernel.TimeToPeak(p, k, m1, v));
        double v1 = BreakOutKernel.SpeedAtBreakOut(p, k, m1, v, rs), fs = BreakOutKernel.StaticOffset(p, m1, m2, rk), mu = TakeUpKernel.ReducedMass(m1, m2);
        var toBreak = BreakOutKernel.TimeToBreakOut(p, k, m1, v, rs);
        return new BreakOut(true, BreakOutKernel.Peak(fs, rs, k, mu, v1), held, v1, toBreak, toBreak + BreakOutKernel.TimeFromBreakOutToPeak(fs, rs, k, mu, v1));
    }

    /// <summary>Works out the same step by step.</summary>
    /// <param name="line">The line; linear, taut at the start.</param>
    /// <param name="pullerMass">Mass of the puller, 1 kg to 1,000 t.</param>
    /// <param name="pull">Pull that goes on, 0 to 5,000 kN.</param>
    /// <param name="speed">Speed when the line is taut, 0 to 60 km/h; not zero together with the pull.</param>
    /// <param name="casualtyMass">Mass of the casualty, 1 kg to 1,000 t.</param>
    /// <param name="staticResistance">Static resistance Rs, 0 to 20,000 kN.</param>
    /// <param name="kineticResistance">Kinetic resistance Rk, 0 to Rs.</param>
    /// <returns>The worked steps; the last is the greatest force.</returns>
    /// <exception cref="ArgumentException">As for <see cref="Evaluate"/>.</exception>
    public static Working Explain(LineAssembly line, Mass pullerMass, Force pull, Speed speed, Mass casualtyMass, Force staticResistance, Force kineticResistance)
    {
        var result = Evaluate(line, pullerMass, pull, speed, casualtyMass, staticResistance, kineticResistance);
        string p = Text.Number(pull.Newtons / 1000), k = Text.Number(line.Shape.LinearStiffness / 1000), rs = Text.Number(staticResistance.Newtons / 1000), v = Text.Number(speed.MetersPerSecond), m1 = Text.Number(pullerMass.Kilograms / 1000);
        var working = new WorkingBuilder("Take-up with break-out").Step("F_held", "peak on a held anchor", "P + sqrt(P^2 + k m1 v^2)", p + " + sqrt(" + p + "^2 + " + k + " x " + m1 + " x " + v + "^2)", Text.Kilonewtons(result.HeldPeak.Newtons), LinesSources.HeldAnchor);
        if (!result.BreaksOut) return working.Step("F", "the held peak does not reach Rs; the casualty stays", "F_held", rs, Text.Kilonewtons(result.Newtons), LinesSources.HeldAnchor).Build();
        var fs = BreakOutKernel.StaticOffset(pull.Newtons, pullerMass.Kilograms, casualtyMass.Kilograms, kineticResistance.Newtons);
        return working
            .Step("v1", "speed of the puller at break-out", "sqrt(v^2 + (2 P Rs/k - Rs^2/k)/m1)", "Rs " + rs, Text.With(result.SpeedMetresPerSecond, "m/s"), LinesSources.BreakOutTwoMass)
            .Step("Fs", "load that would draw both along", "(P m2 + Rk m1)/(m1 + m2)", "Rk " + Text.Number(kineticResistance.Newtons / 1000), Text.Kilonewtons(fs), LinesSources.BreakOutTwoMass)
            .Step("F", "greatest force", "Fs + sqrt((Rs - Fs)^2 + k mu v1^2)", Text.Number(fs / 1000) + " + sqrt((" + rs + " - " + Text.Number(fs / 1000) + ")^2 + " + k + " mu v1^2)", Text.Kilonewtons(result.Newtons), LinesSources.BreakOutTwoMass)
            .Build();
    }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Peak beside held peak.</returns>
    public override string ToString() => Text.Kilonewtons(Newtons) + (BreaksOut ? " with break-out, " : " without break-out, ") + Text.Kilonewtons(HeldPeak.Newtons) + " held";
}
