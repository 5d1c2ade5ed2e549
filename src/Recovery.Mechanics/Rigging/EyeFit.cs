using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>How the eye of a strap sits on a pin.</summary>
public sealed record EyeFit
{
    internal EyeFit(double openingRadians, double pressurePascals, IReadOnlyList<Finding> findings, IReadOnlyList<ValidityFlag> flags)
    {
        Opening = Angle.FromRadians(openingRadians);
        BearingPressure = Pressure.FromPascals(pressurePascals);
        Findings = findings;
        Flags = flags;
    }

    /// <summary>Gets the angle to which the eye opens.</summary>
    public Angle Opening { get; }

    /// <summary>Gets the bearing pressure on the pin.</summary>
    public Pressure BearingPressure { get; }

    /// <summary>Gets the objections.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gets the flags: raised where the eye is shorter than 3.5 diameters.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the fit in one line, invariant culture.</summary>
    /// <returns>Opening and pressure.</returns>
    public override string ToString() => "eye opens to " + Text.With(Opening.Degrees, "deg") + ", bears with " + Text.With(BearingPressure.Pascals / 1e6, "MPa");
}
