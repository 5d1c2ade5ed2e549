namespace Recovery.Mechanics.Ground;

/// <summary>Class of a soil in the Unified Soil Classification System.</summary>
public enum UscsClass
{
    /// <summary>SW, well-graded sand.</summary>
    SW,

    /// <summary>SP, poorly graded sand.</summary>
    SP,

    /// <summary>SM, silty sand.</summary>
    SM,

    /// <summary>SM-SC, silty clayey sand.</summary>
    SMSC,

    /// <summary>SC, clayey sand.</summary>
    SC,

    /// <summary>CL, lean clay.</summary>
    CL,

    /// <summary>CL-ML, silty clay.</summary>
    CLML,

    /// <summary>ML, silt.</summary>
    ML,

    /// <summary>MH, elastic silt.</summary>
    MH,

    /// <summary>CH, fat clay.</summary>
    CH,

    /// <summary>OL, organic silt or lean clay.</summary>
    OL,

    /// <summary>OH, organic fat clay.</summary>
    OH,
}
