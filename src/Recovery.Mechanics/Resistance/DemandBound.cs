namespace Recovery.Mechanics.Resistance;

/// <summary>One of the three bounds of a pull demand.</summary>
public enum DemandBound
{
    /// <summary>Low: vented and turning, on the soil that makes the sum least.</summary>
    Low,

    /// <summary>Central: as declared, else sealed and turning.</summary>
    Central,

    /// <summary>High: the larger of locked and turning, on the soil that makes the sum greatest.</summary>
    High,
}
