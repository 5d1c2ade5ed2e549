using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>How the two parts of a line led over a round body share its load, as published for offshore lifting.</summary>
/// <remarks>Ratio r of the two tensions = share/(1 - share); the friction that holds it is ln(r)/wrap. Another trade's figures for wire, to set beside the band 0.15 to 0.30 of webbing in an eye; for fibre slings the still one is guidance only and the maker's word governs. Source: 0027/ND s. 5.8, reported (secondary); the friction derived.</remarks>
public sealed record PublishedTensionShare
{
    internal PublishedTensionShare(string key, double harder, string words)
    {
        Key = key;
        Harder = harder;
        Words = words;
    }

    /// <summary>Gets the stable key.</summary>
    public string Key { get; }

    /// <summary>Gets the share of the harder part.</summary>
    public Ratio HarderShare => Ratio.FromDecimalFractions(Harder);

    /// <summary>Gets the tension of the harder part over that of the easier one.</summary>
    public double TensionRatio => Harder / (1 - Harder);

    /// <summary>Gets what it holds for.</summary>
    public string Words { get; }

    /// <summary>Gets the source with its standing.</summary>
    public Source Source => RiggingSources.TensionShares;

    private double Harder { get; }

    /// <summary>Gives the friction coefficient that holds this share.</summary>
    /// <param name="includedAngle">Angle between the two parts, 0 deg where they run side by side, to 170 deg.</param>
    /// <returns>ln(ratio)/(pi - angle).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public double FrictionAt(Angle includedAngle) => BridleKernel.FrictionOf(TensionRatio, Guard.Radians(includedAngle, 0, 170, nameof(includedAngle)));

    /// <summary>Gives the share in words, invariant culture.</summary>
    /// <returns>Words, both shares and author.</returns>
    public override string ToString() => Words + ": " + Text.Number((1 - Harder) * 100) + " : " + Text.Number(Harder * 100) + " (" + Source.Citation + ")";
}
