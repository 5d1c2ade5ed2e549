using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What standards require of tow eyes, recovery points and fittings, and what follows for a machine.</summary>
/// <remarks>A road tow eye is made for half the weight, a military recovery point for about one weight at break, and a stuck pull can need one to three: a road tow eye is no recovery point, and no requirement here makes one. Sources stand with each row.</remarks>
public static class AttachmentRequirements
{
    /// <summary>Gets every requirement held.</summary>
    public static IReadOnlyList<AttachmentRequirement> All { get; } = Array.AsReadOnly<AttachmentRequirement>(
    [
        new("MIL-T-62299B s. 3", AttachmentPurpose.Recovery, "At least two front attachments for tow chains, each with an ultimate strength of at least the gross weight, for recovery from a ditch.", AttachmentKernel.Recovery, "gross weight", PartSources.RecoveryAttachments),
        new("Regulation (EU) 1005/2010", AttachmentPurpose.RoadTowing, "Each towing device bears in tension and in compression half the weight of the greatest laden mass.", AttachmentKernel.RoadTowing, "laden weight", PartSources.RoadTowing),
        new("MIL-STD-209K Table I", AttachmentPurpose.Transport, "Tie-down provisions: limit 4.0 of the gross weight fore and aft shared by two, 2.0 down, 1.5 sideways without permanent set; ultimate at least 1.5 of the limit. The standard has no class for towing or recovery.", AttachmentKernel.TieForeAft, "gross weight", PartSources.TieDowns),
        new("IMO MSC/Circ.1175, mooring", AttachmentPurpose.Mooring, "Design load 1.25 of the breaking strength of the mooring line.", AttachmentKernel.Fitting, "breaking strength of the line", PartSources.ShipFittings),
        new("IMO MSC/Circ.1175 3.3, normal towing", AttachmentPurpose.ShipTowing, "Design load 1.25 of the greatest intended towing load; working load at most 0.8 of it.", AttachmentKernel.Fitting, "bollard pull", PartSources.ShipFittings),
        new("IMO MSC/Circ.1175 3.3, escort towing", AttachmentPurpose.ShipTowing, "Design load the breaking strength of the tow line.", AttachmentKernel.Escort, "breaking strength of the line", PartSources.ShipFittings),
        new("UFC 4-159-03 Table 3-7", AttachmentPurpose.Mooring, "Stress under three parts of 1.3 of line break within the allowable.", AttachmentKernel.MooringParts, "line break", GearSources.Moorings),
        new("IMO MSC/Circ.884 12.5 and 12.6", AttachmentPurpose.ShipTowing, "The drum end of a towing line is made weak, so that it parts first when the line runs out.", null, string.Empty, PartSources.OceanTowing),
        new("ASABE S338.5", AttachmentPurpose.Retention, "A safety chain as strong as the gross weight of all towed machines; slack for turning alone; not to tow with.", 1, "gross weight of all towed machines", PartSources.SafetyChain),
        new("STANAG 4101", AttachmentPurpose.Dimensions, "Dimensions of towing attachments; no strength.", null, string.Empty, PartSources.Stanag),
    ]);

    /// <summary>Least force of a road towing device (EU 1005/2010, primary): half the weight.</summary>
    /// <param name="laden">Greatest laden mass, 0.5 to 200 t.</param>
    /// <returns>The force, in tension and in compression.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force RoadTowingDevice(Mass laden) => Weight(AttachmentKernel.RoadTowing, laden, nameof(laden));

    /// <summary>Least ultimate strength of each front recovery attachment (MIL-T-62299B, primary): one weight.</summary>
    /// <param name="gross">Gross mass, 0.5 to 200 t.</param>
    /// <returns>The ultimate strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force RecoveryAttachment(Mass gross) => Weight(AttachmentKernel.Recovery, gross, nameof(gross));

    /// <summary>Limit loads of tie-down provisions for transport (MIL-STD-209K, primary); never to be cited for a recovery point.</summary>
    /// <param name="gross">Gross mass, 0.5 to 200 t.</param>
    /// <returns>Fore and aft on two provisions, down, sideways and the ultimate fore and aft.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static TieDownLoads TieDown(Mass gross) => new(Guard.Kilograms(gross, 0.5, 200, nameof(gross)));

    /// <summary>Design load of a mooring fitting (IMO MSC/Circ.1175, primary): 1.25 x line strength.</summary>
    /// <param name="lineBreaking">Breaking strength of the line, 1 to 20,000 kN.</param>
    /// <returns>The design load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static Force MooringFitting(Force lineBreaking) => Force.FromNewtons(AttachmentKernel.Fitting * Guard.Newtons(lineBreaking, 1, 20000, nameof(lineBreaking)));

    /// <summary>Load for the stress check of a mooring fitting (UFC 4-159-03, primary): 3 x 1.3 x line break.</summary>
    /// <param name="lineBreak">Line break, 1 to 20,000 kN.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static Force MooringStressLoad(Force lineBreak) => Force.FromNewtons(AttachmentKernel.MooringParts * Guard.Newtons(lineBreak, 1, 20000, nameof(lineBreak)));

    /// <summary>Design load of a fitting for normal ship towing (IMO MSC/Circ.1175 3.3, primary): 1.25 x bollard pull.</summary>
    /// <param name="bollardPull">Greatest intended towing load, 1 to 20,000 kN.</param>
    /// <returns>The design load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public static Force TowingFitting(Force bollardPull) => Force.FromNewtons(AttachmentKernel.Fitting * Guard.Newtons(bollardPull, 1, 20000, nameof(bollardPull)));

    /// <summary>Greatest working load of a fitting for normal ship towing: 0.8 of its design load.</summary>
    /// <param name="designLoad">Its design load, 1 to 25,000 kN.</param>
    /// <returns>The working load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public static Force TowingFittingWorkingLoad(Force designLoad) => Force.FromNewtons(AttachmentKernel.FittingWorking * Guard.Newtons(designLoad, 1, 25000, nameof(designLoad)));

    /// <summary>Design load of a fitting for escort towing: the breaking strength of the line.</summary>
    /// <param name="lineBreaking">Breaking strength of the line, 1 to 20,000 kN.</param>
    /// <returns>The design load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public static Force EscortFitting(Force lineBreaking) => Force.FromNewtons(AttachmentKernel.Escort * Guard.Newtons(lineBreaking, 1, 20000, nameof(lineBreaking)));

    /// <summary>Load an anchor is designed for: 1.25 x line strength where the line is the meant weak link (mooring practice), else the peak at that point.</summary>
    /// <param name="lineBreaking">Breaking strength of the line, 1 to 20,000 kN.</param>
    /// <param name="procedurePeak">Procedure peak at the anchor, 0 to 20,000 kN.</param>
    /// <param name="lineIsWeakLink">Whether the line is meant to part first.</param>
    /// <returns>The design load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Force Anchor(Force lineBreaking, Force procedurePeak, bool lineIsWeakLink) =>
        Force.FromNewtons(AttachmentKernel.Anchor(Guard.Newtons(lineBreaking, 1, 20000, nameof(lineBreaking)), Guard.Newtons(procedurePeak, 0, 20000, nameof(procedurePeak)), lineIsWeakLink));

    /// <summary>Least strength of a safety chain (ASABE S338 rule as given in manuals, reported): the weight of all towed machines.</summary>
    /// <param name="grossMasses">Gross mass of each towed machine, 0.1 to 200 t.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A mass is outside its range.</exception>
    public static Force SafetyChain(params Mass[] grossMasses)
    {
        var sum = 0.0;
        foreach (var mass in Guard.NotNull(grossMasses, nameof(grossMasses))) sum += Guard.Kilograms(mass, 0.1, 200, nameof(grossMasses));
        return Force.FromNewtons(AttachmentKernel.Weight(sum));
    }

    private static Force Weight(double factor, Mass mass, string name) => Force.FromNewtons(factor * AttachmentKernel.Weight(Guard.Kilograms(mass, 0.5, 200, name)));
}
