using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Kinds of finding that this room raises: wheel and track models.</summary>
internal static class TerramechanicsFindings
{
    /// <summary>Tyres that are softer than the tests behind the wheel model.</summary>
    public static readonly FindingDefinition DeflectionHeld = new(
        "wheel.deflection-held",
        Severity.Note,
        "Tyres of the {subject} deflect {available} of their section height, more than the tests behind the wheel model: {required} is counted, and letting them down further earns nothing in these numbers.",
        "Keep to the load table of the tyre; what a softer tyre gives beyond that is not known.",
        TerramechanicsSources.D497Range);

    /// <summary>All kinds of the room.</summary>
    public static IEnumerable<FindingDefinition> All { get; } = [DeflectionHeld];

    /// <summary>Adds the finding for a machine whose softest tyre deflects this much under its load.</summary>
    public static void AddDeflection(List<Finding> findings, string machine, double greatestRatio)
    {
        if (greatestRatio > BrixiusKernel.MostDeflection) findings.Add(new Finding(DeflectionHeld, machine, BrixiusKernel.MostDeflection, greatestRatio));
    }
}
