using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>One instant of a simulated take-up.</summary>
/// <remarks>Positions from where each machine stood when the line was just straight without tension.</remarks>
public readonly struct TakeUpSample
{
    internal TakeUpSample(double seconds, double puller, double pullerSpeed, double casualty, double casualtySpeed, double tension)
    {
        Seconds = seconds;
        PullerMetres = puller;
        PullerMetresPerSecond = pullerSpeed;
        CasualtyMetres = casualty;
        CasualtyMetresPerSecond = casualtySpeed;
        TensionNewtons = tension;
    }

    /// <summary>Gets the time since the start, s.</summary>
    public double Seconds { get; }

    /// <summary>Gets the position of the puller, m.</summary>
    public double PullerMetres { get; }

    /// <summary>Gets the speed of the puller, m/s.</summary>
    public double PullerMetresPerSecond { get; }

    /// <summary>Gets the position of the casualty, m.</summary>
    public double CasualtyMetres { get; }

    /// <summary>Gets the speed of the casualty, m/s.</summary>
    public double CasualtyMetresPerSecond { get; }

    /// <summary>Gets the force in the line, N.</summary>
    public double TensionNewtons { get; }

    /// <summary>Gets the force in the line.</summary>
    public Force Tension => Force.FromNewtons(TensionNewtons);

    /// <summary>Gives the instant in one line, invariant culture.</summary>
    /// <returns>Time and force.</returns>
    public override string ToString() => Text.With(Seconds, "s") + ": " + Text.Kilonewtons(TensionNewtons);
}
