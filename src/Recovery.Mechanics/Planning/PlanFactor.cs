namespace Recovery.Mechanics.Planning;

/// <summary>Numbers of a compiled plan that a factor can be put on without compiling it anew. After these follow two for every part of the rig: strength when new, and wear.</summary>
internal enum PlanFactor
{
    StuckConeIndex,
    StuckRemouldingIndex,
    ConeFactor,
    Adhesion,
    ExitSlope,
    Rolling,
    Seal,
    Method,
    TowerConeIndex,
    TowerRemouldingIndex,
    FirmestConeIndex,
    HardFriction,
    WheelModel,
    Power,
    LineStiffness,
    GearSpeed,
    Slack,
    Approach,
    CarelessSlack,
    CarelessSpeed,
    ThrottleRise,
    BridleShare,
    Count,
}
