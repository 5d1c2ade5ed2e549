namespace Recovery.Mechanics.Provenance;

/// <summary>How well a value is supported. A result takes the weakest standing of what went into it.</summary>
/// <remarks>From strongest to weakest: <see cref="Primary"/>, <see cref="Secondary"/>, <see cref="Derived"/>, <see cref="UserSupplied"/>,
/// <see cref="CommonPractice"/>, <see cref="Judgement"/>, <see cref="FromMemory"/>. The order of the members is not that order; use <see cref="Standings.Weakest(Standing, Standing)"/>.</remarks>
public enum Standing
{
    /// <summary>Confirmed in the primary publication.</summary>
    Primary,

    /// <summary>Confirmed in a secondary publication that cites the primary one: show it as "reported".</summary>
    Secondary,

    /// <summary>From memory of the literature, not confirmed. Never present it as a cited fact.</summary>
    FromMemory,

    /// <summary>An engineering judgement of this library; no publication stands behind it.</summary>
    Judgement,

    /// <summary>A rule of the trade: common practice, no source.</summary>
    CommonPractice,

    /// <summary>Computed from a stated equation, statics or geometry.</summary>
    Derived,

    /// <summary>Given by the caller: a measurement, a marking, a manual.</summary>
    UserSupplied,
}
