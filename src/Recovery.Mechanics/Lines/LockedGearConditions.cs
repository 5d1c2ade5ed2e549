using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>The conditions under which the locked-gear rule holds, declared one by one.</summary>
/// <remarks>
/// <para>F at most P + v_t sqrt(k m) is proved for wheels whose rims never exceed v_t and whose contact force never exceeds P once k x has passed P. What breaks it: a run-up with the clutch open, drives whose rims can overrun (hydrostatic, belt, converter, automatic), ground that falls along the pull, wheels that cannot slip (tracks or chains on hard ground, wheels dug in against a root), and a dropped clutch on a low-stretch line, whose tyres wind up.</para>
/// <para>Source: proof of the locked gear (derived); the limit for a dropped clutch from simulations with elastic tyres, which stayed under the rule up to 654 kN/m and passed it at 1868 kN/m. Immutable, equality by value.</para>
/// </remarks>
public sealed record LockedGearConditions
{
    /// <summary>Stiffness up to which a dropped clutch stayed under the rule in simulation, N/m (derived; <see cref="LinesSources.LockedGear"/>).</summary>
    internal const double DroppedClutchStiffness = 654e3;

    /// <summary>Gets the declaration with every condition met.</summary>
    public static LockedGearConditions AllMet { get; } = new() { EngagedBeforeTaut = true, RimsCannotOverrun = true, LevelOrUphill = true, WheelsCanSlip = true, ClutchEasedOrLineDrawnTaut = true };

    /// <summary>Gets whether one gear is engaged from engine to wheels before the line comes taut, and kept.</summary>
    public bool EngagedBeforeTaut { get; init; }

    /// <summary>Gets whether the drive holds the rims to the speed of the gear at high idle.</summary>
    public bool RimsCannotOverrun { get; init; }

    /// <summary>Gets whether the ground is level or rises along the pull.</summary>
    public bool LevelOrUphill { get; init; }

    /// <summary>Gets whether the wheels can slip on the ground.</summary>
    public bool WheelsCanSlip { get; init; }

    /// <summary>Gets whether the line is drawn taut first, or the clutch let in over a second or more.</summary>
    public bool ClutchEasedOrLineDrawnTaut { get; init; }

    /// <summary>Gives the conditions that are not met.</summary>
    /// <param name="stiffness">Stiffness of the line, 1 to 100,000 kN/m: a dropped clutch matters on low-stretch lines alone.</param>
    /// <returns>One phrase each; empty where the rule may be claimed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is outside its range.</exception>
    public IReadOnlyList<string> NotMet(ForcePerLength stiffness) => NotMet(Guard.Range(stiffness.NewtonsPerMeter / 1000, 1, 1e5, "kN/m", nameof(stiffness)) * 1000).ConvertAll(static p => p.ToString()).AsReadOnly();

    /// <summary>Gives the caution for conditions that are not met.</summary>
    /// <param name="stiffness">Stiffness of the line, 1 to 100,000 kN/m.</param>
    /// <returns>The finding; null where all are met.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is outside its range.</exception>
    public Finding? Objection(ForcePerLength stiffness)
    {
        var notMet = NotMet(Guard.Range(stiffness.NewtonsPerMeter / 1000, 1, 1e5, "kN/m", nameof(stiffness)) * 1000);
        return notMet.Count == 0 ? null : new Finding(LinesFindings.LockedGearNotMet, Phrase.List(notMet));
    }

    /// <summary>Gives the declaration in words.</summary>
    /// <returns>How many of the five conditions are met.</returns>
    public override string ToString() => Text.Number(5 - NotMet(double.PositiveInfinity).Count) + " of 5 conditions met";

    /// <summary>Whether the gear holds the speed at which the line comes taut; otherwise the line may be met as with no gear at all.</summary>
    internal bool HoldsSpeed => EngagedBeforeTaut && RimsCannotOverrun;

    internal List<Phrase> NotMet(double newtonsPerMetre)
    {
        var notMet = new List<Phrase>();
        if (!EngagedBeforeTaut) notMet.Add(LinesPhrases.NotEngaged.With());
        if (!RimsCannotOverrun) notMet.Add(LinesPhrases.Overrun.With());
        if (!LevelOrUphill) notMet.Add(LinesPhrases.Falls.With());
        if (!WheelsCanSlip) notMet.Add(LinesPhrases.CannotSlip.With());
        if (!ClutchEasedOrLineDrawnTaut && newtonsPerMetre > DroppedClutchStiffness) notMet.Add(LinesPhrases.Clutch.With());
        return notMet;
    }
}
