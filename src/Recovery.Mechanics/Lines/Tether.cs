using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A second line that is to hold a fitting if it comes free: its capacity against the energy, the force on its anchor, and its slack.</summary>
/// <remarks>
/// <para>k_t = F_t/(eb L); capacity C = F_t eb L/2; arrest force sqrt(2 E k_t). It survives only if C is at least E times the chosen factor and its anchor bears the arrest force. Slack must exceed the working stretch, or the tether becomes a load path; more than about 0.5 m of it lets full speed develop. If the fitting stays on the line, up to the energy of the whole line has to be arrested.</para>
/// <para>Most low-stretch tethers of convenient length are inadequate, and the result says so. No sizing rule with numbers is published. No credit: the recoil stands as without it. Source: linear spring (derived). Immutable, equality by value.</para>
/// </remarks>
public sealed record Tether
{
    /// <summary>Describes a tether that is linear to break.</summary>
    /// <param name="breakForce">Breaking strength, 0.1 to 5,000 kN.</param>
    /// <param name="strainAtBreak">Strain at break, 0.001 to 1.</param>
    /// <param name="length">Unstretched length, 0.1 to 50 m.</param>
    /// <param name="slack">Slack before it acts, 0 to 20 m.</param>
    /// <param name="anchorStrength">What its anchor bears, 0.1 to 5,000 kN.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Tether(Force breakForce, Ratio strainAtBreak, Length length, Length slack, Force anchorStrength)
    {
        BreakNewtons = Guard.Newtons(breakForce, 0.1, 5000, nameof(breakForce));
        Strain = Guard.Fraction(strainAtBreak, 0.001, 1, nameof(strainAtBreak));
        LengthMetres = Guard.Metres(length, 0.1, 50, nameof(length));
        SlackMetres = Guard.Metres(slack, 0, 20, nameof(slack));
        AnchorNewtons = Guard.Newtons(anchorStrength, 0.1, 5000, nameof(anchorStrength));
    }

    /// <summary>Gets the energy it takes to its break.</summary>
    public Energy Capacity => Energy.FromJoules(DamperKernel.TetherCapacity(BreakNewtons, Strain, LengthMetres));

    /// <summary>Gets the slack.</summary>
    public Length Slack => Length.FromMeters(SlackMetres);

    internal double BreakNewtons { get; }

    internal double Strain { get; }

    internal double LengthMetres { get; }

    internal double SlackMetres { get; }

    internal double AnchorNewtons { get; }

    /// <summary>Checks it against what it has to arrest.</summary>
    /// <param name="energy">Energy to arrest: of the fitting, or of the whole line where the fitting stays on it, 0.001 to 10,000 kJ.</param>
    /// <param name="workingStretch">Stretch of the line at its working load, which its slack must exceed, 0 to 20 m.</param>
    /// <param name="factor">Factor on the energy, 1 to 10.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TetherCheck Check(Energy energy, Length workingStretch, double factor = 1) => new(
        this,
        Guard.Joules(energy, 0.001, 10000, nameof(energy)),
        Guard.Metres(workingStretch, 0, 20, nameof(workingStretch)),
        Guard.Range(factor, 1, 10, string.Empty, nameof(factor)));

    /// <summary>Works out the check.</summary>
    /// <param name="energy">Energy to arrest, 0.001 to 10,000 kJ.</param>
    /// <returns>The worked steps; the last is the arrest force.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Energy energy)
    {
        var e = Guard.Joules(energy, 0.001, 10000, nameof(energy));
        string f = Text.Number(BreakNewtons / 1000), eb = Text.Number(Strain), l = Text.Number(LengthMetres);
        return new WorkingBuilder("Tether")
            .Step("C", "energy to its break", "F_t eb L/2", f + " x " + eb + " x " + l + "/2", Text.With(Capacity.Joules / 1000, "kJ"), LinesSources.TetherArrest)
            .Step("F", "force of the arrest", "sqrt(2 E F_t/(eb L))", "sqrt(2 x " + Text.Number(e / 1000) + " x " + f + "/(" + eb + " x " + l + "))", Text.Kilonewtons(DamperKernel.ArrestForce(e, BreakNewtons, Strain, LengthMetres)), LinesSources.TetherArrest)
            .Build();
    }

    /// <summary>Gives the tether in words, invariant culture.</summary>
    /// <returns>Length, strength, slack.</returns>
    public override string ToString() => "tether of " + Text.With(LengthMetres, "m") + ", " + Text.Kilonewtons(BreakNewtons) + ", slack " + Text.With(SlackMetres, "m");
}
