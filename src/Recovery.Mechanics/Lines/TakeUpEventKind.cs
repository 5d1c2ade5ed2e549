namespace Recovery.Mechanics.Lines;

/// <summary>What happens at an instant of a simulated take-up.</summary>
public enum TakeUpEventKind
{
    /// <summary>The line comes taut.</summary>
    Taut,

    /// <summary>The line goes slack.</summary>
    Slack,

    /// <summary>The force in the line passes a maximum.</summary>
    Peak,

    /// <summary>The casualty breaks out of its static resistance.</summary>
    BreakOut,

    /// <summary>The casualty comes to rest again.</summary>
    Stops,

    /// <summary>A part of the line parts; the line carries nothing from here on.</summary>
    Parts,

    /// <summary>A table of the load-elongation curve ends here; nothing beyond it is computed.</summary>
    CurveEnds,

    /// <summary>The drive has reached its full pull.</summary>
    FullPull,
}
