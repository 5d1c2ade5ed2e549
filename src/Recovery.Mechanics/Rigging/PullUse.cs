namespace Recovery.Mechanics.Rigging;

/// <summary>What draws the line, for the load factor of a computed peak.</summary>
public enum PullUse
{
    /// <summary>A machine: 1.3.</summary>
    Machine,

    /// <summary>A winch or tugger, on its variable load: 1.2.</summary>
    Winch,
}
