namespace Recovery.Mechanics.Resistance;

/// <summary>The haul-road rule, once. SI in.</summary>
/// <remarks>Sources: <see cref="ResistanceSources.HaulRoad"/>; the inch by definition.</remarks>
internal static class HaulRoadKernel
{
    /// <summary>Share of the weight on a firm surface.</summary>
    public const double Firm = 0.02;

    /// <summary>Share of the weight for an inch of penetration.</summary>
    public const double PerInch = 0.015;

    /// <summary>Metres in an inch.</summary>
    public const double Inch = Provenance.PhysicalConstants.MetresPerInch;

    /// <summary>Rolling resistance over weight, 0.02 + 0.015 p/25.4 mm.</summary>
    public static double Ratio(double penetrationMetres) => Firm + (PerInch * (penetrationMetres / Inch));
}
