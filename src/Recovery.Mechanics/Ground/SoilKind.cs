namespace Recovery.Mechanics.Ground;

/// <summary>What a wheel does to the soil it stands on.</summary>
public enum SoilKind
{
    /// <summary>Clay and silt: the wheel remoulds what it stands on, so wheel models take the rating cone index.</summary>
    FineGrained,

    /// <summary>Sand with fines that can be remoulded: treated like fine-grained soil.</summary>
    SandWithFines,

    /// <summary>Clean sand: no remoulding, the rating cone index is the cone index.</summary>
    CleanSand,
}
