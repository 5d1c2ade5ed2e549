using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Highest speed that keeps a peak under a limit, or the statement that none does. A limit above which to refuse, never a speed to aim at.</summary>
public sealed record SpeedLimit
{
    internal SpeedLimit(LineLoadRule rule, double limit, double pull, double least, double metresPerSecond)
    {
        Rule = rule;
        Limit = Force.FromNewtons(limit);
        Pull = Force.FromNewtons(pull);
        LeastLimit = Force.FromNewtons(least);
        MetresPerSecond = metresPerSecond;
    }

    /// <summary>Gets the rule that was inverted.</summary>
    public LineLoadRule Rule { get; }

    /// <summary>Gets the limit on the force.</summary>
    public Force Limit { get; }

    /// <summary>Gets the pull that goes on.</summary>
    public Force Pull { get; }

    /// <summary>Gets the least limit that admits any speed: the peak from rest, through the slack. On a taut linear line it is twice the pull, in a locked gear the pull itself; where a table ends before that, the end of the table.</summary>
    public Force LeastLimit { get; }

    /// <summary>Gets whether any speed keeps the peak under the limit.</summary>
    public bool Exists => !double.IsNaN(MetresPerSecond);

    /// <summary>Gets the speed; null where none does.</summary>
    public Speed? Highest => Exists ? Speed.FromMetersPerSecond(MetresPerSecond) : null;

    /// <summary>Gets the statement in words, invariant culture.</summary>
    public string Statement => Exists
        ? "above " + Text.With(MetresPerSecond * 3.6, "km/h", 3) + " the peak passes " + Text.Kilonewtons(Limit.Newtons)
        : "no speed at all is admissible: the limit of " + Text.Kilonewtons(Limit.Newtons) + " is below " + Reason();

    private double MetresPerSecond { get; }

    /// <summary>Gives the stopping finding where no speed is admissible.</summary>
    /// <param name="subject">The part whose limit it is.</param>
    /// <returns>The finding; null where a speed exists.</returns>
    public Finding? Objection(string subject) => Exists ? null
        : new Finding(LinesFindings.NoAdmissibleSpeed, Guard.Name(subject, nameof(subject)), LeastLimit.Newtons / 1000, Limit.Newtons / 1000, "kN");

    /// <summary>Gives the statement.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Statement;

    private string Reason()
    {
        if (Rule == LineLoadRule.LockedGear) return "the pull of " + Text.Kilonewtons(Pull.Newtons);
        return Math.Abs(LeastLimit.Newtons - (2 * Pull.Newtons)) <= 1e-9 * Pull.Newtons
            ? "twice the pull of " + Text.Kilonewtons(Pull.Newtons)
            : "the " + Text.Kilonewtons(LeastLimit.Newtons) + " that a pull of " + Text.Kilonewtons(Pull.Newtons) + " reaches from rest";
    }
}
