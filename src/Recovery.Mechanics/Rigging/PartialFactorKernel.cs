using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Partial factors on a computed peak, once.</summary>
/// <remarks>Sources: <see cref="RiggingSources.PartialFactors"/>, <see cref="RiggingSources.LoadFactor"/>, <see cref="RiggingSources.ShacklePeak"/>.</remarks>
internal static class PartialFactorKernel
{
    /// <summary>Floor of the partial factors.</summary>
    public const double Floor = 2.3;

    /// <summary>Consequence factor.</summary>
    public const double Consequence = 1.3;

    /// <summary>Load factor of a line drawn by a machine.</summary>
    public const double Load = 1.3;

    /// <summary>Load factor of the variable load of a winch.</summary>
    public const double LoadWinch = 1.2;

    /// <summary>Share of the breaking load of a shackle under a peak: one third.</summary>
    public const double ShackleShare = 1.0 / 3;

    /// <summary>Wear of thoroughly inspected gear.</summary>
    public const double WearInspected = 1;

    /// <summary>Wear of gear used often without thorough inspection.</summary>
    public const double WearOftenUsed = 1.10;

    /// <summary>Wear of yard slings.</summary>
    public const double WearYardSling = 1.2;

    /// <summary>Load factor.</summary>
    public static double LoadOf(PullUse use) => use == PullUse.Winch ? LoadWinch : Load;

    /// <summary>Material factor.</summary>
    public static double Material(PartialMaterial material) => material switch
    {
        PartialMaterial.Polyester => 1.65,
        PartialMaterial.Hmpe or PartialMaterial.Aramid => 2.0,
        PartialMaterial.SteelWire => 1.5,
        PartialMaterial.NewCertifiedSteelWire => 1.35,
        _ => 2.5,
    };

    /// <summary>Material of a fibre.</summary>
    public static PartialMaterial MaterialOf(Fibre fibre) => fibre switch
    {
        Fibre.Polyester => PartialMaterial.Polyester,
        Fibre.Hmpe => PartialMaterial.Hmpe,
        Fibre.Aramid => PartialMaterial.Aramid,
        _ => PartialMaterial.OtherFibre,
    };

    /// <summary>Material factor of a fibre.</summary>
    public static double Material(Fibre fibre) => Material(MaterialOf(fibre));

    /// <summary>Floor x reduction x wear and twist.</summary>
    public static double FloorOf(double reduction, double wearAndTwist) => Floor * reduction * wearAndTwist;

    /// <summary>The larger of load x consequence x reduction x wear and twist x material and the floor.</summary>
    public static double Full(double load, double consequence, double reduction, double material, double wearAndTwist) =>
        Math.Max(load * consequence * reduction * wearAndTwist * material, FloorOf(reduction, wearAndTwist));

    /// <summary>The same for steel drawn by a machine: steel wire, 1.5.</summary>
    public static double FullSteel(double wear) => Full(Load, Consequence, 1, Material(PartialMaterial.SteelWire), wear);

    /// <summary>The same for a line drawn by a machine, on a derated strength.</summary>
    public static double Full(Fibre fibre, double wear) => Full(Load, Consequence, 1, Material(fibre), wear);
}
