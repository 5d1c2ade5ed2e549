using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What a whole rig admits: the steady pull whose own peak keeps every part within both checks, and the gear under a level. Worked when asked, never while a plan is assessed.</summary>
internal static class PullLimits
{
    /// <summary>Least line pull that a place may carry at a level; not a number where it is not known, infinite where the level is not asked of it.</summary>
    public static double At(in RigPlace place, RigLevelKind level) => level switch
    {
        RigLevelKind.Floor => place.Strength / (place.Floor * place.Share),

        // A bight without a figure has its own level; neither the policy nor the full factors are asked of a strength from memory.
        RigLevelKind.FullFactors => place.Kind switch
        {
            PlaceKind.Bight => place.Strength / (place.Floor * place.Share),
            PlaceKind.Shackle => place.PeakLimit / place.Share,
            _ => place.Strength / (place.Full * place.Share),
        },
        _ => place.Kind == PlaceKind.Bight ? double.PositiveInfinity : place.Rated / place.Share,
    };

    /// <summary>Least of all places, N, and which; not a number as soon as one is not known: what is not known never counts as not limiting.</summary>
    public static double Least(RigPlace[] places, RigLevelKind level, out int place)
    {
        var least = double.PositiveInfinity;
        place = -1;
        for (var i = 0; i < places.Length; i++)
        {
            var value = At(places[i], level);
            if (double.IsNaN(value)) return double.NaN;
            if (!(value < least)) continue;
            least = value;
            place = i;
        }

        return least;
    }

    /// <summary>The greatest steady pull with which the rated check holds and the peak of the procedure at that pull stays within the full factors, N; 0 where the take-up alone is more than they allow; not a number where a strength is not known.</summary>
    public static double Admissible(RigPlace[] places, LineLoadInput input)
    {
        double rated = Least(places, RigLevelKind.Rated, out _), full = Least(places, RigLevelKind.FullFactors, out _);
        if (double.IsNaN(rated) || double.IsNaN(full)) return double.NaN;

        // A peak is never below its own steady pull.
        var most = Math.Min(rated, full);
        if (Peak(input, most) <= full) return most;
        if (Peak(input, 0) >= full) return 0;
        return RootFinder.Find(pull => (Peak(input, pull) / full) - 1, 0, most, 1e-9, "Admissible pull").Value;
    }

    /// <summary>Peak of the procedure at a steady pull, stiff end, which is the greater of the two.</summary>
    public static double Peak(LineLoadInput input, double pull)
    {
        input.Pull = pull;
        LineLoadKernel.Evaluate(input, out var output);
        return output.Procedure;
    }

    /// <summary>Stiffness that a limit has to hold for: bedded in where a second pull is declared or left open.</summary>
    public static double WorstStiffness(LineLoads loads) => loads.Procedure.SecondPull == false ? loads.Input.Stiff : loads.Input.Stiff * loads.Input.BeddedFactor;

    /// <summary>Highest gear with which the peak of the full pull stays under a line load, first and second pull, m/s; not positive where none does, not a number where the rule of the locked gear is not claimed on the worse of them.</summary>
    public static double Gear(LineLoads loads, double limit)
    {
        var stiffness = WorstStiffness(loads);
        return LineLoadKernel.GearRuleHolds(loads.Input, stiffness) ? TakeUpKernel.GearSpeedLimit(limit, loads.Input.Pull, stiffness, loads.Input.Mass) : double.NaN;
    }
}
