using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>A coefficient of variation with its published range, its source and its standing.</summary>
public sealed class DefaultScatter
{
    private DefaultScatter(string quantity, double low, double taken, double high, Source source)
    {
        Quantity = quantity;
        Low = low;
        Taken = taken;
        High = high;
        Source = source;
    }

    /// <summary>Gets the cone index within one clay field, uncut soil.</summary>
    public static DefaultScatter ConeIndex { get; } = new("cone index within a field", 0.165, 0.3, 0.458, UncertaintySources.ConeIndexScatter);

    /// <summary>Gets the undrained strength of clay on one site.</summary>
    public static DefaultScatter UndrainedStrength { get; } = new("undrained strength of clay on one site", 0.06, 0.28, 0.56, UncertaintySources.StrengthScatter);

    /// <summary>Gets the measurement error of a mechanical cone.</summary>
    public static DefaultScatter MechanicalCone { get; } = new("reading of a mechanical cone", 0.15, 0.20, 0.25, UncertaintySources.ConeError);

    /// <summary>Gets the measurement error of an electric cone.</summary>
    public static DefaultScatter ElectricCone { get; } = new("reading of an electric cone", 0.05, 0.10, 0.15, UncertaintySources.ConeError);

    /// <summary>Gets the transformation from a cone reading to undrained strength.</summary>
    public static DefaultScatter ConeTransformation { get; } = new("cone reading to undrained strength", 0.29, 0.32, 0.35, UncertaintySources.ConeTransformation);

    /// <summary>Gets the model error of the wheel equations.</summary>
    public static DefaultScatter WheelModel { get; } = new("traction and motion resistance by the wheel model", 0.15, 0.20, 0.30, UncertaintySources.WheelModelError);

    /// <summary>Gets the strength of new fibre gear. Used gear is a bias, never a wider scatter.</summary>
    public static DefaultScatter NewStrength { get; } = new("strength of new fibre gear", 0.02, 0.05, 0.05, UncertaintySources.NewStrengthScatter);

    /// <summary>Gets the take-up speed an operator reaches.</summary>
    public static DefaultScatter TakeUpSpeed { get; } = new("take-up speed", 0.2, 0.25, 0.3, UncertaintySources.OperatorSpeed);

    /// <summary>Gets all of them.</summary>
    public static IReadOnlyList<DefaultScatter> All { get; } = new List<DefaultScatter> { ConeIndex, UndrainedStrength, MechanicalCone, ElectricCone, ConeTransformation, WheelModel, NewStrength, TakeUpSpeed }.AsReadOnly();

    /// <summary>Gets what scatters.</summary>
    public string Quantity { get; }

    /// <summary>Gets the lower end of the published range.</summary>
    public double Low { get; }

    /// <summary>Gets the value taken where nothing else is known: inside the range, by judgement where the publication gives no mean.</summary>
    public double Taken { get; }

    /// <summary>Gets the upper end of the published range.</summary>
    public double High { get; }

    /// <summary>Gets where the range comes from, with its standing.</summary>
    public Source Source { get; }

    /// <summary>Gives the scatter in one line, invariant culture.</summary>
    /// <returns>Quantity, value, range, standing.</returns>
    public override string ToString() => Quantity + ": " + Text.Number(Taken, 3) + " (" + Text.Number(Low, 3) + " to " + Text.Number(High, 3) + ", " + Standings.Describe(Source.Standing) + ")";
}
