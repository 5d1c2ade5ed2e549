using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>How far the models of a comparison lie apart in motion resistance.</summary>
/// <remarks>A spread of models is no confidence band: the models share data and assumptions, and all can be wrong together.</remarks>
public sealed record ModelSpread
{
    internal ModelSpread(double lowNewtons, double highNewtons, int models, int refused)
    {
        Low = Force.FromNewtons(lowNewtons);
        High = Force.FromNewtons(highNewtons);
        Models = models;
        Refused = refused;
    }

    /// <summary>Gets the least resistance.</summary>
    public Force Low { get; }

    /// <summary>Gets the greatest resistance.</summary>
    public Force High { get; }

    /// <summary>Gets the greatest over the least.</summary>
    public double Factor => High.Newtons / Low.Newtons;

    /// <summary>Gets how many models give a resistance.</summary>
    public int Models { get; }

    /// <summary>Gets how many refuse one: immobile, no-go, or an input that is missing.</summary>
    public int Refused { get; }

    /// <summary>Gives the spread in words, invariant culture.</summary>
    /// <returns>Both ends and their factor.</returns>
    public override string ToString() => Text.Number(Low.Kilonewtons, 3) + " to " + Text.Number(High.Kilonewtons, 3) + " kN, a factor of " + Text.Number(Factor, 2) + ", by " + Text.Number(Models) + " models; " + Text.Number(Refused) + " give no number";
}
