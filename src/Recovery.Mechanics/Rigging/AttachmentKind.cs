namespace Recovery.Mechanics.Rigging;

/// <summary>What a rig is made fast to.</summary>
public enum AttachmentKind
{
    /// <summary>Not identified: always a stop.</summary>
    Unidentified,

    /// <summary>Front axle, close inboard of the wheels.</summary>
    FrontAxle,

    /// <summary>Rear axle: takes no recovery load unless the maker rates a point there.</summary>
    RearAxle,

    /// <summary>A recovery point named in the machine's manual.</summary>
    RecoveryPoint,

    /// <summary>The drawbar of a towing machine.</summary>
    Drawbar,

    /// <summary>A road tow eye, made for half the weight.</summary>
    TowEye,

    /// <summary>A tow ball.</summary>
    TowBall,

    /// <summary>A tie-down eye for transport.</summary>
    TieDownEye,

    /// <summary>Above the drawbar: top link, three-point linkage, axle housing of the towing machine.</summary>
    AboveDrawbar,
}
