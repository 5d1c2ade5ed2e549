using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How fast something on the released side goes at the most, and with what energy.</summary>
/// <remarks>No losses, no credit for blankets or weights. A mean axial speed or a bound on it: the tip of a line that whips or snags can be faster. Never compare it with an injury threshold to let anybody stay.</remarks>
public sealed record RecoilResult
{
    internal RecoilResult(double speed, double mass, double stored, string rule, Source source)
    {
        MetresPerSecond = speed;
        MovingMass = Mass.FromKilograms(mass);
        StoredEnergy = Energy.FromJoules(stored);
        Rule = rule;
        Source = source;
    }

    /// <summary>Gets the speed.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(MetresPerSecond);

    /// <summary>Gets the mass that moves at it: the hardware, or the line itself.</summary>
    public Mass MovingMass { get; }

    /// <summary>Gets the kinetic energy of that mass.</summary>
    public Energy KineticEnergy => Energy.FromJoules(MovingMass.Kilograms * MetresPerSecond * MetresPerSecond / 2);

    /// <summary>Gets the energy stored on that side at release.</summary>
    public Energy StoredEnergy { get; }

    /// <summary>Gets the kinetic over the stored energy.</summary>
    public Ratio ShareOfStored => Ratio.FromDecimalFractions(StoredEnergy.Joules > 0 ? KineticEnergy.Joules / StoredEnergy.Joules : 0);

    /// <summary>Gets the rule that set the speed.</summary>
    public string Rule { get; }

    /// <summary>Gets the source of the rule.</summary>
    public Source Source { get; }

    /// <summary>Gets the speed as it may be printed: to one figure, rounded up; a second figure is not known.</summary>
    public string Printed => "up to " + Text.Number(RoundedUp(MetresPerSecond)) + " m/s";

    internal double MetresPerSecond { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Speed as printed and energy.</returns>
    public override string ToString() => Printed + ", " + Text.With(StoredEnergy.Joules / 1000, "kJ", 3) + " stored";

    internal static double RoundedUp(double value)
    {
        if (!(value > 0)) return 0;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return Math.Ceiling((value / decade) - 1e-12) * decade;
    }
}
