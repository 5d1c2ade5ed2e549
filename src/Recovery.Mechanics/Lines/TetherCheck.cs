using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Whether a tether can arrest what comes free. Holding is no credit on recoil; failing is said plainly.</summary>
public sealed record TetherCheck
{
    /// <summary>Slack above which full speed develops, m (derived from the travel of a fitting to nine tenths of its speed; <see cref="LinesSources.FittingWave"/>).</summary>
    private const double MostSlack = 0.5;

    internal TetherCheck(Tether tether, double energy, double workingStretch, double factor)
    {
        Tether = tether;
        EnergyJoules = energy;
        WorkingStretch = workingStretch;
        Factor = factor;
    }

    /// <summary>Gets the tether.</summary>
    public Tether Tether { get; }

    /// <summary>Gets the energy to arrest.</summary>
    public Energy Energy => Energy.FromJoules(EnergyJoules);

    /// <summary>Gets the capacity over the energy.</summary>
    public double CapacityRatio => Tether.Capacity.Joules / EnergyJoules;

    /// <summary>Gets the force of the arrest on tether and anchor if nothing broke.</summary>
    public Force ArrestForce => Force.FromNewtons(DamperKernel.ArrestForce(EnergyJoules, Tether.BreakNewtons, Tether.Strain, Tether.LengthMetres));

    /// <summary>Gets whether the tether itself takes the energy with the factor.</summary>
    public bool TetherHolds => CapacityRatio >= Factor;

    /// <summary>Gets whether its anchor bears the arrest force.</summary>
    public bool AnchorHolds => Tether.AnchorNewtons >= ArrestForce.Newtons;

    /// <summary>Gets whether its slack exceeds the working stretch, so that it carries nothing of the pull.</summary>
    public bool SlackClears => Tether.SlackMetres > WorkingStretch;

    /// <summary>Gets whether its slack is short enough to act before full speed develops.</summary>
    public bool ActsEarly => Tether.SlackMetres <= MostSlack;

    /// <summary>Gets whether tether, anchor and slack all do.</summary>
    public bool IsAdequate => TetherHolds && AnchorHolds && SlackClears;

    internal double EnergyJoules { get; }

    private double WorkingStretch { get; }

    private double Factor { get; }

    /// <summary>Gives what follows: an inadequate tether, or the note that an adequate one is no credit.</summary>
    /// <returns>One finding for each reason; never empty.</returns>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new List<Finding>();
        if (!TetherHolds) findings.Add(new Finding(LinesFindings.TetherInadequate, "tether", Factor * EnergyJoules / 1000, Tether.Capacity.Joules / 1000, "kJ"));
        if (!AnchorHolds) findings.Add(new Finding(LinesFindings.TetherInadequate, "anchor of the tether", ArrestForce.Newtons / 1000, Tether.AnchorNewtons / 1000, "kN"));
        if (!SlackClears) findings.Add(new Finding(LinesFindings.TetherInadequate, "slack of the tether", WorkingStretch, Tether.SlackMetres, "m"));
        if (findings.Count == 0) findings.Add(new Finding(LinesFindings.DamperNoCredit, "tether"));
        return findings.AsReadOnly();
    }

    /// <summary>Gives the outcome in one line, invariant culture.</summary>
    /// <returns>Adequate or not, with the numbers.</returns>
    public override string ToString() => (IsAdequate ? "holds the arrest" : "inadequate") + ": capacity " + Text.With(Tether.Capacity.Joules / 1000, "kJ", 3) + " against " + Text.With(EnergyJoules / 1000, "kJ", 3) + ", arrest force " + Text.Kilonewtons(ArrestForce.Newtons, 3);
}
