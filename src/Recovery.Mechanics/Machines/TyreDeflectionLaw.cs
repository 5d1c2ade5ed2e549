namespace Recovery.Mechanics.Machines;

/// <summary>Published law for the static deflection of a tyre.</summary>
public enum TyreDeflectionLaw
{
    /// <summary>Saarilahti 2002, forest tyres: <see cref="SaarilahtiModel"/>.</summary>
    Saarilahti,

    /// <summary>Lines and Murphy 1991, tractor tyres: <see cref="LinesMurphyModel"/>.</summary>
    LinesMurphy,
}
