namespace Recovery.Mechanics.Terramechanics;

/// <summary>What a model says of a wheel.</summary>
public enum WheelOutcome
{
    /// <summary>The wheel develops traction at this slip and rolls.</summary>
    Rolls,

    /// <summary>The wheel can be towed but its gross traction at this slip is not positive.</summary>
    NoDrive,

    /// <summary>The formula has no meaning here because the wheel is past its limit of support: there is no number.</summary>
    Immobile,
}
