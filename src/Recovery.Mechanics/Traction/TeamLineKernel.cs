using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Machines in line, each drawing the front of the next: what the last one sustains at its hitch, and the most that can come into every line. SI in, SI out, no allocation.</summary>
/// <remarks>P_k = NT_k(loads with P_k behind and P_(k-1) ahead) + P_(k-1) - W_k sin(theta): each member is solved by <see cref="CapabilityKernel"/> and <see cref="ImposableKernel"/>, the one ahead first. Sources: <see cref="TractionSources.TwoPulls"/>, <see cref="TeamFindings.Together"/>.</remarks>
internal static class TeamLineKernel
{
    /// <summary>Works out both pulls; the memory then holds the most in each line.</summary>
    /// <param name="team">The team.</param>
    /// <param name="w">Working memory with the cone indices of the members.</param>
    /// <param name="scatter">What scatters.</param>
    /// <param name="residual">Receives the greatest that was left of an equation of pull, N.</param>
    /// <returns>What the last member sustains.</returns>
    public static double Pull(TeamFlat team, TeamScratch w, in TeamScatter scatter, out double residual)
    {
        double sustained = 0, imposable = 0;
        residual = 0;
        for (var i = 0; i < team.Count; i++)
        {
            var last = i == team.Count - 1;
            w.Held[i].Lead(team.Alone[i], team.LoadPerLead[i], sustained, team.FrontHeight[i]);
            w.Soft[i].Lead(team.Alone[i], team.LoadPerLead[i], imposable, team.FrontHeight[i]);
            sustained = Sustained(w.Held[i], w.SustainedIndex[i], scatter.Model, last ? scatter.Power : 1, ref residual);
            imposable = Imposable(w.Soft[i], w.ImposableIndex[i], scatter.Model, last ? scatter.HardFriction : 1, ref residual);
            w.Imposable[i] = imposable;
        }

        return sustained;
    }

    /// <summary>Peak of the line over its steady load; 1 where that is nothing or not known, because nothing is passed along then.</summary>
    /// <param name="steady">Steady load; not a number where it is not known.</param>
    /// <param name="procedure">Peak of the procedure.</param>
    public static double Peak(double steady, double procedure) => steady > 0 ? procedure / steady : 1;

    /// <summary>Share of the nose moment that a member has used up, from just moving off to the peak of its line.</summary>
    /// <param name="f">The member, drawn by the most that those ahead can impose.</param>
    /// <param name="own">The most in its line.</param>
    /// <param name="peak">Peak of the line over its steady load.</param>
    public static double Nose(CapabilityFlat f, double own, double peak) => Math.Max(
        NoseKernel.Ratio(f.NoseMoment, f.LineHeight, f.CentreHeight, own, 0),
        NoseKernel.Ratio(f.NoseMoment, f.LineHeight, f.CentreHeight, own, own * peak));

    private static double Sustained(CapabilityFlat f, double index, double model, double power, ref double residual)
    {
        var traction = CapabilityKernel.Traction(f, index, out _, out var left);
        residual = Math.Max(residual, Math.Abs(left));
        return CapabilityKernel.Sustained(Scaled(f, traction, model), CapabilityKernel.Power(f, power), f.NoseLimit, f.SideLimit, f.RatingLimit, out _);
    }

    private static double Imposable(CapabilityFlat f, double index, double model, double hardFriction, ref double residual)
    {
        var push = Scaled(f, ImposableKernel.OnSoil(f, index, out _, out var left), model);
        residual = Math.Max(residual, Math.Abs(left));
        if (f.HardFriction > 0)
        {
            push = Math.Max(push, ImposableKernel.OnHardSurface(f, Math.Min(ImposableKernel.HardSurfaceRatio, f.HardFriction * hardFriction), out left));
            residual = Math.Max(residual, Math.Abs(left));
        }

        return push + (f.Weight * f.DownhillSine);
    }

    /// <summary>Factor on what the wheels add: what draws the member ahead is no work of its wheel model. A line does not push: never below zero.</summary>
    private static double Scaled(CapabilityFlat f, double pull, double model) => pull > 0 ? Math.Max(0, f.LeadForce + ((pull - f.LeadForce) * model)) : 0;
}
