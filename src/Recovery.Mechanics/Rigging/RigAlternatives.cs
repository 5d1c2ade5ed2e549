using Recovery.Mechanics.Lines;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What beside a stronger part may lift a stop of strength, offered only where it bears on that part and that take-up, each worked for the whole rig.</summary>
internal static class RigAlternatives
{
    /// <summary>Beyond this a choke counts its widest bin.</summary>
    public const double WideChokeDegrees = 120;

    /// <summary>A crawling gear that many machines have, and the slowest worth naming (judgement).</summary>
    private const double Crawl = 1.5 / 3.6, Slowest = 0.5 / 3.6;

    /// <summary>The place of a choked strap whose angle nobody looked at, with the angle seen to be wide; null for any other part.</summary>
    public static PartCheck? ChokeSeen(RigCheck check, string part)
    {
        foreach (var place in check.Parts)
        {
            if (place.Part.Name != part || place.Part is not Strap { Choked: true, AngleOfChoke: null } strap) continue;
            var after = RigCheck.Of(check.Rig.Replace(part, strap with { AngleOfChoke = Angle.FromDegrees(WideChokeDegrees + 1) }), check.Policy, check.Loads);
            foreach (var seen in after.Parts)
            {
                if (seen.Part.Name == part && seen.Kind == place.Kind && seen.Reserve > place.Reserve) return seen;
            }
        }

        return null;
    }

    /// <summary>The rig in a slower locked gear: 1.5 km/h where none is declared, else the one that keeps the full factors. Null where that does not lift every stop on a first and on a second pull, and where conditions of the rule are declared: then its user knows what the drive allows.</summary>
    public static RigCheck? SlowerGear(RigCheck check)
    {
        var was = check.Loads.Procedure;
        if (was.GearConditions is not null || was.WheelsCannotSlip || was.ApproachPassesGear) return null;

        // The gear is offered with the line drawn taut first, so it is that procedure whose limits count: on a stiff line the rule holds for no other.
        var crawl = InGear(check, Crawl);
        var gear = was.LockedGear is null ? Crawl : crawl.GearSpeedAtFullFactors()?.MetersPerSecond ?? 0;
        if (gear < Slowest || !(crawl.GearSpeedAtFloor()?.MetersPerSecond >= gear)) return null;
        var slower = InGear(check, gear);
        return slower.Loads.Output.Procedure < check.Loads.Output.Procedure ? slower : null;
    }

    private static RigCheck InGear(RigCheck check, double metresPerSecond)
    {
        var was = check.Loads.Procedure;
        var procedure = PullProcedure.DrawnTautInGear(Speed.FromMetersPerSecond(metresPerSecond)) with { SecondPull = was.SecondPull, CarelessSlack = was.CarelessSlack, CarelessSpeed = was.CarelessSpeed };
        return RigCheck.Of(check.Rig, check.Policy, check.Loads.WithProcedure(procedure));
    }
}
