using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Requirements on attachments, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="PartSources.RecoveryAttachments"/>, <see cref="PartSources.RoadTowing"/>, <see cref="PartSources.TieDowns"/>, <see cref="PartSources.ShipFittings"/>, <see cref="PartSources.OceanTowing"/>, <see cref="PartSources.SafetyChain"/>.</remarks>
internal static class AttachmentKernel
{
    /// <summary>Road towing device, tension and compression, over laden weight.</summary>
    public const double RoadTowing = 0.5;

    /// <summary>Each front recovery attachment, ultimate, over gross weight.</summary>
    public const double Recovery = 1;

    /// <summary>Tie-down provisions over gross weight: fore and aft.</summary>
    public const double TieForeAft = 4;

    /// <summary>Tie-down provisions over gross weight: down.</summary>
    public const double TieDown = 2;

    /// <summary>Tie-down provisions over gross weight: sideways.</summary>
    public const double TieSide = 1.5;

    /// <summary>Ultimate over limit of a tie-down provision.</summary>
    public const double TieUltimate = 1.5;

    /// <summary>Mooring fitting over breaking strength of its line; normal towing over bollard pull.</summary>
    public const double Fitting = 1.25;

    /// <summary>Working load of a towing fitting over its design load.</summary>
    public const double FittingWorking = 0.8;

    /// <summary>Escort towing over breaking strength of the line.</summary>
    public const double Escort = 1;

    /// <summary>Stress check of a mooring fitting over line break: three parts x 1.3.</summary>
    public const double MooringParts = 3 * 1.3;

    /// <summary>Weight, N.</summary>
    public static double Weight(double kilograms) => kilograms * PhysicalConstants.StandardGravity;

    /// <summary>Anchor: 1.25 x line strength where the line is the meant weak link, else the peak at that point.</summary>
    public static double Anchor(double lineBreaking, double peak, bool weakLink) => weakLink ? Fitting * lineBreaking : peak;
}
