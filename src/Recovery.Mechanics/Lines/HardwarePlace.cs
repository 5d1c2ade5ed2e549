namespace Recovery.Mechanics.Lines;

/// <summary>Where hardware hangs on the recoiling side.</summary>
public enum HardwarePlace
{
    /// <summary>At the end of one line or of a chain of lines one after the other; a bridle jammed in its eye too.</summary>
    ChainEnd,

    /// <summary>On the loose end of a bridle that runs out through its eye: it moves at twice the speed of the eye.</summary>
    RunningBridleEnd,

    /// <summary>Any other arrangement.</summary>
    Other,
}
