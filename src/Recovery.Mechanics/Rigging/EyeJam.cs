using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A bridle that lost an end jams in the eye instead of running out of it: the surviving leg takes the whole pull at once.</summary>
/// <remarks>R/F of each part of that leg with the whole procedure peak on it. It has no acceptance level and raises no finding: it is shown beside the strap that runs out. Source: statics, rule of the trade.</remarks>
public sealed record EyeJam
{
    internal EyeJam(double newtons, Phrase weakest, double? reserve)
    {
        LegLoad = Force.FromNewtons(newtons);
        WeakestCalled = weakest;
        Reserve = reserve;
    }

    /// <summary>Gets the load of the surviving leg: the whole procedure peak.</summary>
    public Force LegLoad { get; }

    /// <summary>Gets the place of that leg that keeps least, or the first whose strength is not known.</summary>
    public string Weakest => WeakestCalled.ToString();

    /// <summary>Gets strength over load there; null where the strength is not known.</summary>
    public double? Reserve { get; }

    internal Phrase WeakestCalled { get; }

    /// <summary>Gives the case in one line, invariant culture.</summary>
    /// <returns>Load of the leg and what its weakest place keeps.</returns>
    public override string ToString() => "the other leg takes " + Text.Kilonewtons(LegLoad.Newtons, 3) + ", its " + Weakest + " keeps " + (Reserve is { } reserve ? Text.Number(reserve, 3) : "nobody knows what");

    internal static EyeJam Of(RigCheck check)
    {
        var peak = check.Loads.Output.Procedure;
        var weakest = -1;
        for (var i = 0; i < check.Places.Length; i++)
        {
            if (check.Places[i].Part < check.Rig.BridleIndex) continue;
            var strength = check.Places[i].Strength;
            if (weakest < 0 || double.IsNaN(strength) || strength < check.Places[weakest].Strength) weakest = i;
            if (double.IsNaN(strength)) break;
        }

        var least = check.Places[weakest].Strength;
        return new(peak, check.Part(weakest).Called, double.IsNaN(least) ? null : least / peak);
    }
}
