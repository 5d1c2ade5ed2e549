namespace Recovery.Mechanics.Terramechanics;

/// <summary>How a tyre stands on soft ground.</summary>
public enum TyreMode
{
    /// <summary>Like a rigid wheel: inflation and carcass are stiffer than the ground.</summary>
    Rigid,

    /// <summary>Flattened: the ground carries inflation and carcass pressure.</summary>
    Elastic,
}
