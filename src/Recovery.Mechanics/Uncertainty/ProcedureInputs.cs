using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Planning;
using UnitsNet;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>How the pull is done, and the slope out of the hole, as inputs that can scatter: factors on compiled numbers, differences that make the plan anew.</summary>
internal static class ProcedureInputs
{
    private const double KilometrePerHour = 1 / 3.6;

    public static void Add(RecoveryPlan plan, List<PlanInput> list)
    {
        var pull = plan.Procedure;
        if (pull.LockedGear is not null)
            list.Add(new(plan, "line.gear-speed", "speed of the locked gear", "the gear table of the manual", PlanFactor.GearSpeed, Of(static p => new(p.LockedGear?.MetersPerSecond ?? 1, 0.1 * KilometrePerHour, 20 * KilometrePerHour), static (p, v) => p with { LockedGear = p.LockedGear is null ? null : Speed.FromMetersPerSecond(v) }), "m/s"));
        if (pull.Slack is not null)
            list.Add(new(plan, "line.slack", "declared slack", "a tape", PlanFactor.Slack, Of(static p => new(p.Slack?.Meters ?? 0, 0, 10), static (p, s) => p with { Slack = p.Slack is null ? null : Length.FromMeters(s) }), "m"));
        if (pull.ApproachSpeed is not null)
            list.Add(new(plan, "line.approach-speed", "declared approach speed", string.Empty, PlanFactor.Approach, Of(static p => new(p.ApproachSpeed?.MetersPerSecond ?? 0, 0, 40 * KilometrePerHour), static (p, v) => p with { ApproachSpeed = p.ApproachSpeed is null ? null : Speed.FromMetersPerSecond(v) }), "m/s"));
        if (pull.ThrottleRise is not null)
            list.Add(new(plan, "line.throttle-rise", "time over which the throttle is raised", string.Empty, PlanFactor.ThrottleRise, Of(static p => new(p.ThrottleRise?.Seconds ?? 1, 0.5, 600), static (p, t) => p with { ThrottleRise = p.ThrottleRise is null ? null : Duration.FromSeconds(t) }), "s"));
        list.Add(new(plan, "line.careless-slack", "slack of the careless load", string.Empty, PlanFactor.CarelessSlack, Of(static p => new(p.CarelessSlack.Meters, 0, 10), static (p, s) => p with { CarelessSlack = Length.FromMeters(s) }), "m"));
        list.Add(new(plan, "line.careless-speed", "speed of the careless load", string.Empty, PlanFactor.CarelessSpeed, Of(static p => new(p.CarelessSpeed.MetersPerSecond, 0, 40 * KilometrePerHour), static (p, v) => p with { CarelessSpeed = Speed.FromMetersPerSecond(v) }), "m/s"));
        if (pull.RotatingMass.Kilograms > 0)
            list.Add(new(plan, "line.rotating-mass", "mass that engine and wheels stand for where the wheels cannot slip", string.Empty, Of(static p => new(p.RotatingMass.Kilograms, 0, 20e6), static (p, kg) => p with { RotatingMass = Mass.FromKilograms(kg) }), "kg"));
    }

    /// <summary>The slope out of the hole; by difference where it was measured.</summary>
    public static PlanInput ExitSlope(RecoveryPlan plan)
    {
        const string Title = "slope on which the machine leaves the hole", Level = "a level and a tape along the entry rut";
        return plan.Stuck.ExitSlope is null
            ? new PlanInput("stuck.exit-slope", Title, Level, PlanFactor.ExitSlope)
            : new PlanInput(plan, "stuck.exit-slope", Title, Level, PlanFactor.ExitSlope, new InputEdit(static p => new(p.Stuck.ExitSlope?.Radians ?? 0, 0, Math.PI / 4), static (p, a) => p.Stuck.ExitSlope is null ? p : p.With(p.Stuck with { ExitSlope = Angle.FromRadians(a) })), "rad");
    }

    private static InputEdit Of(Func<PullProcedure, InputReach> reach, Func<PullProcedure, double, PullProcedure> set) => new(p => reach(p.Procedure), (p, v) => p.With(set(p.Procedure, v)));
}
