using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is to say of a bridle whatever the load: its angle against the gates, no second path, wear in the eye, an eye that is opened too far.</summary>
/// <remarks>Sources: <see cref="RiggingSources.BridleGates"/> (judgement), <see cref="RiggingSources.SoftEye"/>.</remarks>
internal static class BridleInspection
{
    /// <summary>Gate up to which a bridle passes, degrees.</summary>
    public const double Pass = 60;

    /// <summary>Gate beyond which it has to be accepted explicitly, degrees.</summary>
    public const double Acceptance = 90;

    /// <summary>Gate beyond which it is refused, degrees.</summary>
    public const double Refused = 120;

    /// <summary>Most that a soft eye may be opened, degrees.</summary>
    public const double EyeLimit = SectionKernel.WidestEye;

    public static void Add(Bridle bridle, List<Finding> findings)
    {
        // Gates are whole degrees; a value within rounding of one belongs to the better side.
        var degrees = Math.Round(bridle.IncludedRadians * 180 / Math.PI, 9);
        if (degrees > Refused) findings.Add(new Finding(RiggingFindings.BridleTooWide, bridle.Name, degrees));
        else if (degrees > Acceptance && !bridle.WideAngleAccepted) findings.Add(new Finding(RiggingFindings.BridleNotAccepted, bridle.Name, Acceptance, degrees, "deg"));
        else if (degrees > Acceptance) findings.Add(new Finding(RiggingFindings.BridleAccepted, bridle.Name, Acceptance, degrees, "deg"));
        else if (degrees > Pass) findings.Add(new Finding(RiggingFindings.BridleWide, bridle.Name, degrees));
        foreach (var gate in (double[])[Pass, Acceptance, Refused])
        {
            if (degrees <= gate && degrees * RigStrengthFindings.Near > gate) findings.Add(new Finding(RiggingFindings.BridleNearGate, bridle.Name, gate, degrees, "deg"));
        }

        if (bridle.EyeOpening is { } opening && Math.Round(opening.Degrees, 9) > EyeLimit) findings.Add(new Finding(RiggingFindings.EyeOpensWide, bridle.Name, EyeLimit, opening.Degrees, "deg"));
        else if (bridle.EyeOpening is { } near && near.Degrees * RigStrengthFindings.Near > EyeLimit) findings.Add(new Finding(RiggingFindings.BridleNearGate, "bight of the " + bridle.Name + " in its eye", EyeLimit, near.Degrees, "deg"));
        findings.Add(new Finding(RiggingFindings.NoRedundancy, bridle.Name));
        findings.Add(new Finding(RiggingFindings.BridleWears, bridle.Name));
    }
}
