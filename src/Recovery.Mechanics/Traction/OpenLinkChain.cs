using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>The wire-rope manual's rule of thumb for an unmarked open-link chain. A marked chain is taken by its marking.</summary>
/// <remarks>
/// <para>Working capacity in short tons 8 D^2, D diameter of the link bar in inches: 110 D^2 in newtons with D in mm, with a factor of about 6 on breaking.</para>
/// <para>It speaks of the chains of its time, new and unworn; it is no rating. Chain is heavy for its rating and what it throws is heavy.</para>
/// <para>Source: US Army FM 5-125 p. 3-2 (primary).</para>
/// </remarks>
public static class OpenLinkChain
{
    /// <summary>Gives the working capacity by the rule.</summary>
    /// <param name="barDiameter">Diameter of the link bar, 0.006 to 0.04 m.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static Force WorkingCapacity(Length barDiameter)
    {
        var inches = Guard.Metres(barDiameter, 0.006, 0.04, nameof(barDiameter)) / PhysicalConstants.MetresPerInch;
        return Force.FromNewtons(8 * inches * inches * 2000 * PhysicalConstants.NewtonsPerPoundForce);
    }
}
