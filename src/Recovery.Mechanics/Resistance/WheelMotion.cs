namespace Recovery.Mechanics.Resistance;

/// <summary>What the wheels of the stuck machine do while it is drawn.</summary>
public enum WheelMotion
{
    /// <summary>Not declared: central turns, the high is the larger of locked and turning.</summary>
    Undeclared,

    /// <summary>All wheels are free to turn: brakes released, transmission neutral or driven gently.</summary>
    Turning,

    /// <summary>Braked wheels are locked and slide.</summary>
    Locked,
}
