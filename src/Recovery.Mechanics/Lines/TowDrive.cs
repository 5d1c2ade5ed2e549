using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>How the puller of a simulated take-up drives.</summary>
/// <remarks>Locked gear: T = P (1 - e^(-n i))/(1 - e^(-n)), slip i = 1 - v/v_t from 0 to 1, n 9.5 unless said (slope of published radial-tyre traction); none above v_t. With tyres as a spring the rims run at v_t, or rise to it while the clutch is let in, and the slip curve is mirrored for braking. Immutable.</remarks>
public sealed class TowDrive
{
    private TowDrive(TowDriveKind kind, double pull, double rise, double gearSpeed, double exponent, double tyre, string words)
    {
        Kind = kind;
        PullNewtons = pull;
        RiseSeconds = rise;
        GearSpeed = gearSpeed;
        SlipExponent = exponent;
        TyreStiffness = tyre;
        Words = words;
    }

    internal TowDriveKind Kind { get; }

    internal double PullNewtons { get; }

    internal double RiseSeconds { get; }

    internal double GearSpeed { get; }

    internal double SlipExponent { get; }

    internal double TyreStiffness { get; }

    private string Words { get; }

    /// <summary>Makes a drive that puts its whole pull on at once and keeps it.</summary>
    /// <param name="pull">Pull, 0 to 5,000 kN.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public static TowDrive ConstantPull(Force pull) => new(TowDriveKind.Constant, Guard.Newtons(pull, 0, 5000, nameof(pull)), 0, 0, 0, 0, "constant " + Text.Kilonewtons(pull.Newtons));

    /// <summary>Makes a drive that raises its pull evenly from nothing and then keeps it.</summary>
    /// <param name="pull">Pull that is reached, 0.001 to 5,000 kN.</param>
    /// <param name="rise">Time over which it is raised, 0.01 to 600 s.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TowDrive RaisedPull(Force pull, Duration rise) => new(TowDriveKind.Raised, Guard.Newtons(pull, 0.001, 5000, nameof(pull)), Guard.Seconds(rise, 0.01, 600, nameof(rise)), 0, 0, 0, "raised to " + Text.Kilonewtons(pull.Newtons) + " over " + Text.With(rise.Seconds, "s"));

    /// <summary>Makes a drive in a locked gear whose pull follows the slip of the wheels.</summary>
    /// <param name="pull">Pull at full slip, 0.001 to 5,000 kN.</param>
    /// <param name="theoreticalSpeed">Theoretical speed of the gear, 0.05 to 60 km/h.</param>
    /// <param name="slipExponent">Exponent n of the slip curve, 1 to 400.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TowDrive LockedGear(Force pull, Speed theoreticalSpeed, double slipExponent = 9.5) => new(TowDriveKind.LockedGear, Guard.Newtons(pull, 0.001, 5000, nameof(pull)), 0, Guard.MetresPerSecond(theoreticalSpeed, 0.05, 60, nameof(theoreticalSpeed)), Guard.Range(slipExponent, 1, 400, string.Empty, nameof(slipExponent)), 0, "gear of " + Text.With(theoreticalSpeed.MetersPerSecond * 3.6, "km/h"));

    /// <summary>Makes a drive in a locked gear with the tyres as a spring: shows what a dropped clutch does.</summary>
    /// <param name="pull">Pull at full slip, 0.001 to 5,000 kN.</param>
    /// <param name="theoreticalSpeed">Theoretical speed of the gear, 0.05 to 60 km/h.</param>
    /// <param name="tyreStiffness">Stiffness of all driving tyres along the ground, 10 to 100,000 kN/m.</param>
    /// <param name="clutchTime">Time over which the rims come up to speed, 0 to 60 s; 0 is a dropped clutch.</param>
    /// <param name="slipExponent">Exponent n of the slip curve, 1 to 20.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static TowDrive LockedGearOnTyres(Force pull, Speed theoreticalSpeed, ForcePerLength tyreStiffness, Duration clutchTime, double slipExponent = 9.5) => new(TowDriveKind.LockedGearOnTyres, Guard.Newtons(pull, 0.001, 5000, nameof(pull)), Guard.Seconds(clutchTime, 0, 60, nameof(clutchTime)), Guard.MetresPerSecond(theoreticalSpeed, 0.05, 60, nameof(theoreticalSpeed)), Guard.Range(slipExponent, 1, 20, string.Empty, nameof(slipExponent)), Guard.Range(tyreStiffness.NewtonsPerMeter / 1000, 10, 1e5, "kN/m", nameof(tyreStiffness)) * 1000, "gear of " + Text.With(theoreticalSpeed.MetersPerSecond * 3.6, "km/h") + " on elastic tyres");

    /// <summary>Makes a drive that hauls at its speed whatever the line does: a winch.</summary>
    /// <returns>The drive; the speed is that of the take-up itself.</returns>
    public static TowDrive SteadyHaul() => new(TowDriveKind.Speed, 0, 0, 0, 0, 0, "steady haul");

    /// <summary>Gives the drive in words, invariant culture.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Words;
}
