using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What it is worth that the stuck machine drives its own wheels gently with the pull, at central.</summary>
/// <remarks>Locked wheels less turning ones, plus the net traction of driven wheels that roll within the range of the wheel model. A buried wheel is in no model's range, so it adds nothing. A resource listed apart: nothing of it is taken off the demand.</remarks>
public sealed record OwnWheelsWorth
{
    internal OwnWheelsWorth(double turning, double traction, Phrase reason)
    {
        Turning = Force.FromNewtons(turning);
        Traction = Force.FromNewtons(traction);
        Why = reason;
    }

    /// <summary>Gets what turning wheels save against locked ones; negative where sliding would take less.</summary>
    public Force Turning { get; }

    /// <summary>Gets the net traction of driven wheels that roll within the range of the wheel model; zero where there is none to credit.</summary>
    public Force Traction { get; }

    /// <summary>Gets both together.</summary>
    public Force Total => Force.FromNewtons(Turning.Newtons + Traction.Newtons);

    /// <summary>Gets where the figure comes from, and why a part of it is nothing or little.</summary>
    public string Reason => Why.ToString();

    internal Phrase Why { get; }

    /// <summary>Gives the worth in one line, invariant culture.</summary>
    /// <returns>Total and reason.</returns>
    public override string ToString() => Text.Kilonewtons(Total.Newtons, 3) + ": " + Reason;
}
