using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>The round log that a load asks for at a depth.</summary>
public sealed record DeadmanLog
{
    internal DeadmanLog(double load, double diameter, DeadmanHolding holding, double trench)
    {
        Load = Force.FromNewtons(load);
        Diameter = UnitsNet.Length.FromMeters(diameter);
        Holding = holding;
        if (holding.Power is not { } power) return;
        BearingArea = Area.FromSquareMeters(load / power.Pascals);
        var length = DeadmanKernel.Length(load, power.Pascals, diameter, trench);
        EffectiveLength = UnitsNet.Length.FromMeters(length - trench);
        Length = UnitsNet.Length.FromMeters(length);
        Slenderness = length / diameter;
    }

    /// <summary>Gets the load.</summary>
    public Force Load { get; }

    /// <summary>Gets the diameter.</summary>
    public Length Diameter { get; }

    /// <summary>Gets the holding power.</summary>
    public DeadmanHolding Holding { get; }

    /// <summary>Gets the bearing area; null where there is no holding power.</summary>
    public Area? BearingArea { get; }

    /// <summary>Gets the length that bears; null where there is no holding power.</summary>
    public Length? EffectiveLength { get; }

    /// <summary>Gets the length with the trench of the line; null where there is no holding power.</summary>
    public Length? Length { get; }

    /// <summary>Gets length over diameter; null where there is no holding power.</summary>
    public double? Slenderness { get; }

    /// <summary>Gets whether the log is stout enough: length at most five times its diameter.</summary>
    public bool Passes => Slenderness is { } slenderness && slenderness <= DeadmanKernel.LogSlenderness;

    /// <summary>Gives the log in words, invariant culture.</summary>
    /// <returns>Length, diameter and whether it is stout enough.</returns>
    public override string ToString() => Length is { } length
        ? Text.With(length.Meters, "m", 3) + " of log " + Text.With(Diameter.Meters, "m", 3) + " thick" + (Passes ? string.Empty : ": too slender, go deeper")
        : "no log: too shallow for the table";
}
