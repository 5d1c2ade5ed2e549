namespace Recovery.Mechanics.Machines;

/// <summary>Direction of the pull in the frame of a machine (x forward from its foremost axle).</summary>
public enum PullDirection
{
    /// <summary>The machine is drawn, or pulls, towards its front.</summary>
    Forwards,

    /// <summary>The machine is drawn, or pulls, towards its rear.</summary>
    Rearwards,
}
