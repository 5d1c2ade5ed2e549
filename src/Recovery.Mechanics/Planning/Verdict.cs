namespace Recovery.Mechanics.Planning;

/// <summary>What the checks of a plan come to. It is the worst severity among the findings; none of the three says that a pull is without danger.</summary>
public enum Verdict
{
    /// <summary>No rule that was checked is broken. It does not say that nothing can go wrong.</summary>
    NoObjectionFound,

    /// <summary>A competent person has to look at the named points before anybody hooks on.</summary>
    NeedsCompetentReview,

    /// <summary>The plan stops here until the named points are changed.</summary>
    Stop,
}
