using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

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

    public static void Add(Bridle bridle, List<Finding> findings) => Add(bridle.Name, bridle.IncludedRadians, bridle.WideAngleAccepted, bridle.EyeOpening, findings);

    /// <summary>The same of any strap that runs free through an eye, whatever the arrangement.</summary>
    public static void Add(RigLink link, double includedRadians, List<Finding> findings) => Add(link.Part.Name, includedRadians, link.WideAngleAccepted, link.EyeOpening, findings);

    private static void Add(string name, double includedRadians, bool wideAngleAccepted, Angle? eyeOpening, List<Finding> findings)
    {
        AddGates(name, includedRadians, wideAngleAccepted, findings);
        if (eyeOpening is { } opening && Math.Round(opening.Degrees, 9) > EyeLimit) findings.Add(new Finding(RiggingFindings.EyeOpensWide, name, EyeLimit, opening.Degrees, "deg"));
        else if (eyeOpening is { } near && near.Degrees * RigStrengthFindings.Near > EyeLimit) findings.Add(new Finding(RiggingFindings.BridleNearGate, RiggingPhrases.BightNearGate.With(name), EyeLimit, near.Degrees, "deg"));
        AddRunning(name, findings);
    }

    private static void AddGates(string name, double includedRadians, bool wideAngleAccepted, List<Finding> findings)
    {
        // Gates are whole degrees; a value within rounding of one belongs to the better side.
        var degrees = Math.Round(includedRadians * 180 / Math.PI, 9);
        if (degrees > Refused) findings.Add(new Finding(RiggingFindings.BridleTooWide, name, degrees));
        else if (degrees > Acceptance && !wideAngleAccepted) findings.Add(new Finding(RiggingFindings.BridleNotAccepted, name, Acceptance, degrees, "deg"));
        else if (degrees > Acceptance) findings.Add(new Finding(RiggingFindings.BridleAccepted, name, Acceptance, degrees, "deg"));
        else if (degrees > Pass) findings.Add(new Finding(RiggingFindings.BridleWide, name, degrees));
        foreach (var gate in (double[])[Pass, Acceptance, Refused])
        {
            if (degrees <= gate && degrees * RigStrengthFindings.Near > gate) findings.Add(new Finding(RiggingFindings.BridleNearGate, name, gate, degrees, "deg"));
        }
    }

    private static void AddRunning(string name, List<Finding> findings)
    {
        findings.Add(new Finding(RiggingFindings.NoRedundancy, name));
        findings.Add(new Finding(RiggingFindings.BridleWears, name));
    }
}
