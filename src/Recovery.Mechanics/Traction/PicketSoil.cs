namespace Recovery.Mechanics.Traction;

/// <summary>Soil that pickets are driven into. Wooden and steel pickets were published for different soils.</summary>
public enum PicketSoil
{
    /// <summary>Not declared: no number is given.</summary>
    Undeclared,

    /// <summary>Undisturbed loam: wooden pickets as published; steel pickets as in average cohesive soil.</summary>
    Loam,

    /// <summary>Wet clay with gravel: wooden pickets at 0.9 (from memory); steel pickets as in poor cohesive soil.</summary>
    WetClayGravel,

    /// <summary>River clay: wooden pickets at 0.5 (from memory); steel pickets as in poor cohesive soil.</summary>
    RiverClay,

    /// <summary>Good cohesive soil: steel pickets as published; wooden pickets as in loam.</summary>
    GoodCohesive,

    /// <summary>Loose sand: steel pickets as published; wooden pickets have no number that the steel ones support.</summary>
    LooseSand,

    /// <summary>Medium sand, as loose sand.</summary>
    MediumSand,

    /// <summary>Dense sand, as loose sand.</summary>
    DenseSand,
}
