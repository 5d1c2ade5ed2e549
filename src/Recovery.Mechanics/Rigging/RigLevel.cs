using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One level of the whole rig: the line load that the first part meets it at, the stretch that shows it, the gear that stays under it with the full pull of the puller.</summary>
/// <remarks>Where nobody declared whether the strap was pulled before, the worse of first and second pull counts, for stretch and gear. The floor is a level to refuse above, never one to aim at.</remarks>
public sealed record RigLevel
{
    internal RigLevel(RigLevelKind kind, string place, double newtons, double leastStretch, double greatestStretch, double gear)
    {
        Kind = kind;
        Place = place;
        LineLoad = Force.FromNewtons(newtons);
        Stretch = new StretchBand(leastStretch, greatestStretch);
        Gear = gear > 0 ? Speed.FromMetersPerSecond(gear) : null;
    }

    /// <summary>Gets which level it is.</summary>
    public RigLevelKind Kind { get; }

    /// <summary>Gets the place that meets it first.</summary>
    public string Place { get; }

    /// <summary>Gets the line load: steady for the rated check, peak for the others.</summary>
    public Force LineLoad { get; }

    /// <summary>Gets the stretch of the line at that load; its lower end is of a bedded-in line unless a first pull is declared.</summary>
    public StretchBand Stretch { get; }

    /// <summary>Gets the theoretical speed of a locked gear with which the peak of the full pull stays under it; null where no gear does, where the rule of the locked gear is not claimed, and for the rated check, which no gear changes.</summary>
    public Speed? Gear { get; }

    /// <summary>Gives the level in one line, invariant culture.</summary>
    /// <returns>Level, load, stretch, gear.</returns>
    public override string ToString() => Kind + ": " + Text.Kilonewtons(LineLoad.Newtons, 3) + " by " + Place + ", stretch " + Stretch + (Gear is { } gear ? ", locked gear to " + Text.With(gear.MetersPerSecond * 3.6, "km/h", 3) : string.Empty);
}
