namespace Recovery.Mechanics.Machines;

/// <summary>How three or more axles share the load; statics alone leaves it open.</summary>
public enum Suspension
{
    /// <summary>Not declared: results are worked for both and the less favourable is marked.</summary>
    Undeclared,

    /// <summary>All axles behind the foremost are linked so that each carries the same (walking beam, linked suspension).</summary>
    Equalised,

    /// <summary>A stiff frame on axles of equal stiffness that deflect along a straight line.</summary>
    StraightFrame,
}
