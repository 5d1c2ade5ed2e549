using System;

namespace Recovery.Mechanics.Lines;

/// <summary>The three line loads, once: steady, procedure, careless. No allocation, no units, no exceptions.</summary>
/// <remarks>Sources: <see cref="LinesSources.HeldAnchor"/>, <see cref="LinesSources.LockedGear"/>, <see cref="LinesSources.Careless"/>.</remarks>
internal static class LineLoadKernel
{
    /// <summary>Works them out.</summary>
    public static void Evaluate(in LineLoadInput i, out LineLoadOutput o)
    {
        o = default;
        o.StiffUsed = i.SecondPull ? i.Stiff * i.BeddedFactor : i.Stiff;
        o.Steady = i.Pull;
        o.GearRefused = i.GearSpeed >= 0 && !ClaimsGear(i, o.StiffUsed);
        o.Procedure = Peak(i, o.StiffUsed, out o.Rule);
        o.ProcedureSoft = Peak(i, i.Soft, out _);
        o.Careless = Careless(i, o.StiffUsed);
        o.CarelessSoft = Careless(i, i.Soft);
        o.SecondProcedure = Peak(i, i.Stiff * i.BeddedFactor, out _);
        o.SecondCareless = Careless(i, i.Stiff * i.BeddedFactor);
        o.StretchSoft = ElasticKernel.Stretch(o.ProcedureSoft, i.Soft);
        o.StretchStiff = ElasticKernel.Stretch(o.Procedure, o.StiffUsed);
        o.EnergySoft = ElasticKernel.Energy(o.ProcedureSoft, i.Soft);
        o.EnergyStiff = ElasticKernel.Energy(o.Procedure, o.StiffUsed);
    }

    /// <summary>Whether the locked-gear rule may be claimed of a gear on a line of that stiffness: a dropped clutch surges past it on lines stiffer than it was tried on.</summary>
    public static bool GearRuleHolds(in LineLoadInput i, double stiffness) => !i.GearRuleBroken && !(i.ClutchMayDrop && stiffness > LockedGearConditions.DroppedClutchStiffness);

    private static bool ClaimsGear(in LineLoadInput i, double stiffness) => i.GearSpeed >= 0 && GearRuleHolds(i, stiffness);

    private static double Careless(in LineLoadInput i, double stiffness) => TakeUpKernel.HeldPeak(i.Pull, stiffness, Moving(i, i.CarelessSpeed), i.CarelessSpeed, i.CarelessSlack);

    /// <summary>Mass that moves at a speed: what turns in a gear goes no faster than that gear lets it, (v_t/v)^2 of its mass counts beyond.</summary>
    public static double Moving(in LineLoadInput i, double speed)
    {
        if (!(i.Turning > 0 && i.GearSpeed >= 0 && speed > i.GearSpeed)) return i.Mass;
        var share = i.GearSpeed / speed;
        return i.Mass - (i.Turning * (1 - (share * share)));
    }

    private static double Peak(in LineLoadInput i, double stiffness, out LineLoadRule rule)
    {
        if (i.GearSpeed < 0 && i.Slack < 0 && i.Approach < 0 && i.Rise < 0)
        {
            rule = LineLoadRule.Careless;
            return Careless(i, stiffness);
        }

        // A gear that runs may be at its full speed when the line comes taut. Slack that is not declared is the careless one.
        var speed = i.Approach >= 0 ? i.Approach : Math.Max(0, i.GearSpeed);
        var peak = TakeUpKernel.HeldPeak(i.Pull, stiffness, Moving(i, speed), speed, i.Slack >= 0 ? i.Slack : i.CarelessSlack);
        rule = LineLoadRule.HeldAnchor;
        if (ClaimsGear(i, stiffness))
        {
            var locked = TakeUpKernel.LockedGearPeak(i.Pull, stiffness, i.Mass, i.GearSpeed);
            if (locked < peak)
            {
                peak = locked;
                rule = LineLoadRule.LockedGear;
            }
        }

        // Raised on a line declared taut, from rest; the longest period belongs to the soft end. Slack that is not declared is not none.
        if (i.Rise >= 0 && i.Slack is 0.0 && !(i.Approach > 0))
        {
            var raised = TakeUpKernel.ThrottlePeak(i.Pull, Math.Min(i.Soft, stiffness), i.Mass, i.Rise);
            if (raised < peak)
            {
                peak = raised;
                rule = LineLoadRule.RaisedThrottle;
            }
        }

        return peak;
    }
}
