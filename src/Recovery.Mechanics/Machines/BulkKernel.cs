namespace Recovery.Mechanics.Machines;

/// <summary>Bulk density and what a tank holds, once. SI in, SI out.</summary>
/// <remarks>Sources: <see cref="MachinesSources.TestWeight"/>, <see cref="MachinesSources.DryMatter"/>, <see cref="MachinesSources.Nelson"/>; units by definition.</remarks>
internal static class BulkKernel
{
    /// <summary>Kilograms in one pound (definition).</summary>
    public const double KilogramsPerPound = Provenance.PhysicalConstants.KilogramsPerPound;

    /// <summary>Cubic metres in one US bushel (definition).</summary>
    public const double CubicMetresPerBushel = 0.03523907;

    /// <summary>Bulk density from the test weight in pounds a bushel.</summary>
    public static double FromTestWeight(double poundsPerBushel) => poundsPerBushel * KilogramsPerPound / CubicMetresPerBushel;

    /// <summary>Density as it lies from the density of its dry matter: rho_DM/DM.</summary>
    public static double AsFed(double dryMatterDensity, double dryMatterContent) => dryMatterDensity / dryMatterContent;

    /// <summary>Bulk density of wheat, M moisture on wet basis: 774.4 - 703 M + 18510 M^2 - 148960 M^3 + 311600 M^4 kg/m3 (Nelson).</summary>
    public static double Wheat(double moisture) => 774.4 + (moisture * (-703 + (moisture * (18510 + (moisture * (-148960 + (moisture * 311600)))))));

    /// <summary>Mass in a tank: rho V f.</summary>
    public static double Mass(double density, double cubicMetres, double fill) => density * cubicMetres * fill;

    /// <summary>Height of the centre of what lies in a tank with upright walls: z_0 + f h/2.</summary>
    public static double CentreHeight(double floorHeight, double depth, double fill) => floorHeight + (fill * depth / 2);
}
