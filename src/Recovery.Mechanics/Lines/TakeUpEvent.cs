using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Something that happens at an instant of a simulated take-up, located to 1e-10 s or better.</summary>
public readonly struct TakeUpEvent
{
    internal TakeUpEvent(TakeUpEventKind kind, double seconds, double tension)
    {
        Kind = kind;
        Seconds = seconds;
        TensionNewtons = tension;
    }

    /// <summary>Gets what happens.</summary>
    public TakeUpEventKind Kind { get; }

    /// <summary>Gets the time since the start, s.</summary>
    public double Seconds { get; }

    /// <summary>Gets the force in the line then, N.</summary>
    public double TensionNewtons { get; }

    /// <summary>Gets the force in the line then.</summary>
    public Force Tension => Force.FromNewtons(TensionNewtons);

    /// <summary>Gives the event in one line, invariant culture.</summary>
    /// <returns>Time, kind and force.</returns>
    public override string ToString() => Text.With(Seconds, "s") + " " + Kind + " at " + Text.Kilonewtons(TensionNewtons);
}
