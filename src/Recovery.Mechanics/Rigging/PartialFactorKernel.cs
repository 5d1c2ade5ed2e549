using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Partial factors on a computed peak, once.</summary>
internal static class PartialFactorKernel
{
    /// <summary>Floor of the partial factors.</summary>
    public const double Floor = 2.3;

    /// <summary>Consequence factor.</summary>
    public const double Consequence = 1.3;

    /// <summary>Load factor of a line drawn by a machine.</summary>
    public const double Load = 1.3;

    /// <summary>Share of the breaking load of a shackle under a peak: one third.</summary>
    public const double ShackleShare = 1.0 / 3;

    /// <summary>Material factor.</summary>
    public static double Material(Fibre fibre) => fibre switch
    {
        Fibre.Polyester => 1.65,
        Fibre.Hmpe => 2.0,
        _ => 2.5,
    };

    /// <summary>The larger of load x consequence x wear x material and floor x wear.</summary>
    public static double Full(Fibre fibre, double wear) => Math.Max(Load * Consequence * wear * Material(fibre), Floor * wear);

    /// <summary>Material factor of steel wire and steel parts.</summary>
    public const double SteelMaterial = 1.5;

    /// <summary>The same for steel, material 1.5.</summary>
    public static double FullSteel(double wear) => Math.Max(Load * Consequence * wear * SteelMaterial, Floor * wear);
}
