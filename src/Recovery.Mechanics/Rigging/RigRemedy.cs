using System;
using Recovery.Mechanics.Lines;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>The strength a part would need, worked for the whole rig: a stronger strap in the line is stiffer and raises the peak on everything.</summary>
internal static class RigRemedy
{
    private const double LargestScale = 20;

    public static Force? BreakingStrength(RigCheck check, string part, Func<RigPlace, double> level)
    {
        var index = -1;
        for (var i = 0; i < check.Rig.Parts.Count; i++)
        {
            if (check.Rig.Parts[i].Name == part) index = i;
        }

        if (index < 0) throw new ArgumentException("The rig has no part named '" + part + "'.", nameof(part));
        var rating = check.Rig.Parts[index] switch
        {
            Strap s => s.Rating.BreakingNewtons,
            Bridle b => b.Strap.Rating.BreakingNewtons,
            SoftShackle s => s.Rating.BreakingNewtons,
            Shackle s => s.BreakingNewtons,
            _ => null,
        };
        if (rating is not { } mbs) return null;
        var inLine = check.Rig.Parts[index] is Strap && (check.Rig.BridleIndex < 0 || index < check.Rig.BridleIndex) && ((Strap)check.Rig.Parts[index]).Measured is null;
        if (Surplus(check, index, inLine, LargestScale, level) < 0) return null;
        double low = 1e-3, high = LargestScale;
        for (var i = 0; i < 60 && high - low > 1e-9; i++)
        {
            var middle = 0.5 * (low + high);
            if (Surplus(check, index, inLine, middle, level) < 0) low = middle;
            else high = middle;
        }

        return Force.FromNewtons(mbs * high);
    }

    /// <summary>Least of R/F over level, less 1, over the places of a part whose strength is scaled. R grows with the scale and the peak at most with its square root, so it rises.</summary>
    private static double Surplus(RigCheck check, int part, bool inLine, double scale, Func<RigPlace, double> level)
    {
        var input = check.Loads.Input;
        if (inLine)
        {
            // The scaled strap in series with the other straps of the line.
            var strap = ((Strap)check.Rig.Parts[part]).Elastic!;
            input.Stiff = Scaled(input.Stiff, strap.StiffNewtons / strap.LengthMetres, scale);
            input.Soft = Scaled(input.Soft, strap.SoftNewtons / strap.LengthMetres, scale);
        }

        LineLoadKernel.Evaluate(input, out var loads);
        var least = double.PositiveInfinity;
        foreach (var place in check.Places)
        {
            if (place.Part == part) least = Math.Min(least, (place.Strength * scale / (place.Share * loads.Procedure) / level(place)) - 1);
        }

        return least;
    }

    private static double Scaled(double whole, double own, double scale) => 1 / ((1 / whole) - (1 / own) + (1 / (own * scale)));
}
