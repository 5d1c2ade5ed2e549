namespace Recovery.Mechanics.Machines;

/// <summary>Whether a mass can be taken off a machine in the field.</summary>
public enum LoadKind
{
    /// <summary>Part of the machine.</summary>
    Fixed,

    /// <summary>Cargo that can be unloaded.</summary>
    Payload,

    /// <summary>A front or another attachment that can be taken off.</summary>
    Detachable,
}
