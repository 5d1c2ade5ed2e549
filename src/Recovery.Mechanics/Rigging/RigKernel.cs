using System;
using Recovery.Mechanics.Lines;

namespace Recovery.Mechanics.Rigging;

/// <summary>Utilisation of every place of a rig, once. No allocation, no units, no exceptions; linear in the number of places.</summary>
internal static class RigKernel
{
    /// <summary>Least R/F of a bight whose 0.5 is from memory (judgement).</summary>
    public const double BightFloor = 1.25;

    /// <summary>Least R/F on the careless load before it is a caution (judgement).</summary>
    public const double CarelessFloor = 1.5;

    /// <summary>Evaluates all places.</summary>
    public static void Evaluate(ReadOnlySpan<RigPlace> places, in LineLoadOutput loads, Span<RigOutcome> outcomes)
    {
        for (var i = 0; i < places.Length; i++)
        {
            ref readonly var p = ref places[i];
            ref var o = ref outcomes[i];
            double steady = p.Share * loads.Steady, procedure = p.Share * loads.Procedure;
            o.RatedUtilisation = steady / p.Rated;
            o.Reserve = p.Strength / procedure;
            o.PeakUtilisation = p.Kind == PlaceKind.Shackle ? procedure / p.PeakLimit : p.Full * procedure / p.Strength;
            o.SecondReserve = p.Strength / (p.Share * loads.SecondProcedure);
            o.CarelessReserve = p.Strength / (p.Share * loads.Careless);
        }
    }
}
