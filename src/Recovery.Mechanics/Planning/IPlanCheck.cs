using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>One check of a plan. Small, composable; a host adds its own beside the standard ones.</summary>
public interface IPlanCheck
{
    /// <summary>Gets the name of the check.</summary>
    string Name { get; }

    /// <summary>Looks at a plan and adds what it finds.</summary>
    /// <param name="context">The plan with what has been worked out for it.</param>
    /// <param name="findings">Receives the findings.</param>
    void Inspect(PlanContext context, IList<Finding> findings);
}
