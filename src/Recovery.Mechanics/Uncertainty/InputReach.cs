using System;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Value of an input in a plan and the ends that the plan can take it to.</summary>
internal readonly struct InputReach
{
    public InputReach(double value, double least, double most)
    {
        // A hair inside the ends: they are compared in other units.
        var hair = 1e-12 * Math.Max(Math.Abs(least), Math.Abs(most));
        Value = value;
        Least = Math.Min(value, least + hair);
        Most = Math.Max(value, most - hair);
    }

    public double Value { get; }

    public double Least { get; }

    public double Most { get; }

    /// <summary>Factor at one end; none below 0.</summary>
    public double LeastFactor => Value > 0 ? Math.Max(0, Least / Value) : Value < 0 ? Math.Max(0, Most / Value) : 0;

    /// <summary>Factor at the other end.</summary>
    public double MostFactor => Value > 0 ? Most / Value : Value < 0 ? Least / Value : double.PositiveInfinity;

    /// <summary>Greatest difference downwards, 0 or below.</summary>
    public double LeastShift => Least - Value;

    /// <summary>Greatest difference upwards, 0 or above.</summary>
    public double MostShift => Most - Value;

    /// <summary>Value at a difference, held at the ends.</summary>
    public double By(double difference) => Math.Min(Most, Math.Max(Least, Value + difference));

    /// <summary>Value at a factor, held at the ends.</summary>
    public double At(double factor) => Math.Min(Most, Math.Max(Least, Value * factor));
}
