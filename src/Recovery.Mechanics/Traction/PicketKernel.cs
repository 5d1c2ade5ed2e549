namespace Recovery.Mechanics.Traction;

/// <summary>Published loads of picket holdfasts. SI out.</summary>
/// <remarks>Sources: <see cref="AnchorSources.WoodPickets"/>, <see cref="AnchorSources.WoodPicketsFromMemory"/>, <see cref="AnchorSources.SteelPickets"/>, <see cref="AnchorSources.SteelPicketsBySoil"/>; the pound by definition.</remarks>
internal static class PicketKernel
{
    /// <summary>One pound-force, N.</summary>
    public const double Pound = Provenance.PhysicalConstants.NewtonsPerPoundForce;

    /// <summary>Working load of one inclined steel picket of 1.5 m, N: 350 kg.</summary>
    public const double InclinedSteel = 350 * Provenance.PhysicalConstants.StandardGravity;

    /// <summary>Most that a group of inclined steel pickets is credited with, N: 2 t.</summary>
    public const double InclinedSteelMost = 2000 * Provenance.PhysicalConstants.StandardGravity;

    /// <summary>Factor of wet clay with gravel on wooden pickets.</summary>
    public const double WetClayGravel = 0.9;

    /// <summary>Factor of river clay or sand on wooden pickets.</summary>
    public const double RiverClayOrSand = 0.5;

    /// <summary>Load of wooden pickets in loam, N; -1 where the kind is no wooden one.</summary>
    public static double WoodInLoam(PicketKind kind) => kind switch
    {
        PicketKind.WoodSingle => 700 * Pound,
        PicketKind.Wood11 => 1400 * Pound,
        PicketKind.Wood111 => 1800 * Pound,
        PicketKind.Wood21 => 2000 * Pound,
        PicketKind.Wood321 => 4000 * Pound,
        _ => -1,
    };

    /// <summary>Load of steel pickets, N; -1 where there is no number.</summary>
    public static double Steel(bool three, PicketSoil soil) => soil switch
    {
        PicketSoil.WetClayGravel or PicketSoil.RiverClay => (three ? 1000 : 500) * Pound,
        PicketSoil.Loam => (three ? 1500 : 750) * Pound,
        PicketSoil.GoodCohesive => (three ? 2000 : 1000) * Pound,
        PicketSoil.LooseSand => (three ? 150 : 50) * Pound,
        PicketSoil.MediumSand => (three ? 180 : 55) * Pound,
        PicketSoil.DenseSand => (three ? 190 : 63) * Pound,
        _ => -1,
    };

    /// <summary>Load of pickets, N; -1 where there is no number.</summary>
    public static double Load(PicketKind kind, PicketSoil soil)
    {
        if (kind is PicketKind.SteelSingle or PicketKind.SteelThreeInLine) return Steel(kind == PicketKind.SteelThreeInLine, soil);
        return soil switch
        {
            PicketSoil.Loam or PicketSoil.GoodCohesive => WoodInLoam(kind),
            PicketSoil.WetClayGravel => WetClayGravel * WoodInLoam(kind),
            PicketSoil.RiverClay => RiverClayOrSand * WoodInLoam(kind),
            _ => -1,
        };
    }
}
