namespace Recovery.Mechanics.Terramechanics;

/// <summary>What a wheel model gives, as plain numbers. Ratios to the load; those that the outcome does not carry are zero and not to be read.</summary>
/// <param name="Outcome">What the model says of the wheel.</param>
/// <param name="Numeric">Wheel numeric.</param>
/// <param name="Resistance">Motion resistance ratio; not to be read where the wheel is immobile.</param>
/// <param name="Gross">Gross traction ratio.</param>
/// <param name="Net">Net traction ratio.</param>
/// <param name="HasTraction">Whether the model gives traction and the wheel develops it.</param>
internal readonly record struct WheelFlat(WheelOutcome Outcome, double Numeric, double Resistance, double Gross, double Net, bool HasTraction)
{
    /// <summary>A wheel that rolls and drives.</summary>
    public static WheelFlat Rolls(double numeric, double resistance, double gross, double net) => new(WheelOutcome.Rolls, numeric, resistance, gross, net, true);

    /// <summary>A wheel that rolls, by a model that gives no traction.</summary>
    public static WheelFlat Towed(double numeric, double resistance) => new(WheelOutcome.Rolls, numeric, resistance, 0, 0, false);

    /// <summary>A wheel that does not drive at this slip.</summary>
    public static WheelFlat NoDrive(double numeric, double resistance) => new(WheelOutcome.NoDrive, numeric, resistance, 0, 0, false);

    /// <summary>A wheel past its limit of support.</summary>
    public static WheelFlat Immobile(double numeric) => new(WheelOutcome.Immobile, numeric, 0, 0, 0, false);
}
