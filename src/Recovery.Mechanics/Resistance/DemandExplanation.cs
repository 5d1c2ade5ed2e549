using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>A bound of a demand as worked steps.</summary>
internal static class DemandExplanation
{
    public static Working Of(PullDemand demand, DemandBound bound)
    {
        var (c, t, s) = demand.At(bound);
        var f = c.Flat;
        var name = bound == DemandBound.Low ? "Low" : bound == DemandBound.High ? "High" : "Central";
        var middle = bound == DemandBound.Central || t.StandsIn;
        string floor = Text.Number(s.Floor / 1000), wall = Text.Number(s.Wall / 1000), w = Text.Number(f.Weight / 1000), gamma = Text.Number(f.UnitWeight / 1000), alpha = Text.Number(f.AdhesionFactor), rho = Text.Number(s.Rho);
        var working = new WorkingBuilder(name + " demand of " + demand.Stuck.Machine.Name)
            .Include(demand.Stuck.Soil.Explain())
            .Step("s_b", "floor strength that just carries the machine as it sank", "(W - gamma sum(z b c) - gamma z_b A)/(N_c (sum(b c) + A))", "with N_c 5.14", Text.Kilopascals(c.EquilibriumBoundPascals), ResistanceSources.BearingFactor)
            .Step("s_f", "floor strength, " + (middle ? "central" : bound == DemandBound.Low ? "the one that makes the sum least" : "the one that makes the sum greatest"), middle ? "sqrt(s_b RCI/N_k), at most the high" : "from the low to the high floor", (middle ? "high floor " : Text.Number(c.Assumptions.Strength.FloorLow / 1000) + " to ") + Text.Number(c.Assumptions.Strength.FloorHigh / 1000), floor + " kPa", GroundSources.WallAndFloor)
            .Step("s_w", "wall strength, " + (middle ? "central" : bound == DemandBound.Low ? "low" : "high"), middle ? "RCI/N_k" : bound == DemandBound.Low ? "min(RCI/N_k, 3 s_b)" : "CI/N_k", "with N_k 12.5", wall + " kPa", GroundSources.WallAndFloor);
        if (f.BellyArea > 0)
        {
            working.Step("W_b", "weight on the belly", "min(W A/(A + sum(b c)), N_c s_f A)", "A = " + Text.Number(f.BellyArea), Text.Kilonewtons(t.BellyLoad), ResistanceSources.Composition)
                .Step("R_belly", "belly drag", "min(alpha s_f, 12) A + w (gamma z_b^2/2 + 2 s_f z_b)", $"min({alpha} x {floor}, 12) x {Text.Number(f.BellyArea)} + {Text.Number(f.BellyWidth)} ({gamma} x {Text.Number(f.BellyImmersion)}^2/2 + 2 x {floor} x {Text.Number(f.BellyImmersion)})", Text.Kilonewtons(t.Belly), ResistanceSources.Composition);
        }

        for (var i = 0; i < f.Count.Length; i++) Axle(working, demand, f, s, t, i, rho, floor, wall, gamma, alpha);
        if (f.AnyBuried) working.Step("R_climb", "climb out of the hole", "W sin(beta_e)", w + " sin(" + Text.Number(s.Exit * 180 / Math.PI) + " deg)", Text.Kilonewtons(t.Climb), GeneralSources.Statics);
        working.Step("R_grade", "grade", "W sin(theta)", w + " sin(" + Text.Number(f.Grade * 180 / Math.PI) + " deg)", Text.Kilonewtons(t.Grade), GeneralSources.Statics);
        if (t.Lift > 0) working.Step("R_lift", "lifting the sealed belly as far as the wheels bear it", "S_d sin(beta_e)", Text.Number(t.UpliftDeveloped / 1000) + " sin(" + Text.Number(s.Exit * 180 / Math.PI) + " deg)", Text.Kilonewtons(t.Lift), ResistanceSources.Composition);
        return working.Step("R", name.ToLowerInvariant() + " demand", "sum of all", "roll " + Text.Number(t.Roll / 1000) + " + base " + Text.Number(t.Base / 1000) + " + side " + Text.Number(t.Side / 1000) + " + face " + Text.Number(t.Face / 1000) + " + suction " + Text.Number(t.Suction / 1000) + " + model " + Text.Number(t.Model / 1000) + " + belly " + Text.Number(t.Belly / 1000) + " + lift " + Text.Number(t.Lift / 1000) + " + climb " + Text.Number(t.Climb / 1000) + " + grade " + Text.Number(t.Grade / 1000), Text.Kilonewtons(t.Total), ResistanceSources.Composition).Build();
    }

    private static void Axle(WorkingBuilder working, PullDemand demand, DemandFlat f, in DemandState s, in DemandTerms t, int i, string rho, string floor, string wall, string gamma, string alpha)
    {
        var name = demand.AxleName(i);
        var carry = f.Carry(i, t.BellyLoad);
        var load = f.Load[i] * carry / f.Count[i];
        string wi = Text.Number(load / 1000), b = Text.Number(f.Width[i]), z = Text.Number(f.Sinkage[i]), contact = Text.Number(f.Contact[i]);
        working.Step("W_i", "load of one wheel, " + name, f.BellyTakes is null ? "N_i (1 - W_b/W)/n" : "(N_i - q_i W_b)/n, q_i by statics of the belly's place", Text.Number(f.Load[i] / 1000) + " x " + Text.Number(carry) + "/" + Text.Number(f.Count[i]), Text.Kilonewtons(load), ResistanceSources.Composition);
        var ratio = load > 0 ? BrixiusKernel.MotionResistanceRatio(s.Index * f.NumericPerPascal[i] / carry, 0, BrixiusConstants.Radial) : 0;
        working.Step("R_model", "one wheel by the wheel model, " + name, "W_i (0.9/B_n + 0.0325)", wi + " x " + Text.Number(ratio), Text.Kilonewtons(load * ratio), TerramechanicsSources.BrixiusRadial);
        if (!f.Buried[i])
        {
            if (s.Locked && f.Braked[i]) working.Step("R_base", "one braked wheel near the surface, " + name + ", in place of the model where it is more", "s_f b c", floor + " x " + b + " x " + contact, Text.Kilonewtons(BuriedWheelKernel.Base(f.Width[i], f.Contact[i], s.Floor)), ResistanceSources.Composition);
            return;
        }

        if (s.Locked && f.Braked[i]) working.Step("R_base", "one locked wheel, " + name, "s_f b c", floor + " x " + b + " x " + contact, Text.Kilonewtons(BuriedWheelKernel.Base(f.Width[i], f.Contact[i], s.Floor)), ResistanceSources.Composition);
        else working.Step("R_roll", "one buried wheel turning, " + name, "rho W_i", rho + " x " + wi, Text.Kilonewtons(s.Rho * load), ResistanceSources.Composition);
        if (!f.SidesDug) working.Step("R_side", "one wheel, both walls, " + name, "lambda 2 A_seg min(alpha s_w, 12)", "2 x " + Text.Number(f.Segment[i]) + " x min(" + alpha + " x " + wall + ", 12), half mobilised while turning", Text.Kilonewtons(BuriedWheelKernel.Side(f.Segment[i], s.Wall, f.AdhesionFactor, s.Locked && f.Braked[i] ? 1 : DemandKernel.SideTurning)), ResistanceSources.Composition);
        if (f.Dug) return;
        if ((s.Meets & (1 << i)) != 0) working.Step("R_face", "soil ahead of one wheel, " + name, "min(" + FaceText.Expression(f.Face) + ", rigid step)", FaceText.Substitution(f.Face, f.Width[i], f.Diameter[i], f.Sinkage[i], s.Wall / 1000, f.UnitWeight / 1000), Text.Kilonewtons(Math.Min(FaceKernel.Resistance(f.Face, f.Width[i], f.Diameter[i], f.Sinkage[i], s.Wall, f.UnitWeight), load * f.Step[i])), demand.FaceMethod.Source);
        if (s.Sealed) working.Step("R_suct", "suction behind one wheel, " + name, "2 s_w b z" + (s.VentedShare > 0 ? ", half of it where part is vented" : string.Empty), "2 x " + wall + " x " + b + " x " + z, Text.Kilonewtons(BuriedWheelKernel.Suction(f.Width[i], f.Sinkage[i], s.Wall) * (1 - s.VentedShare)), ResistanceSources.Suction);
    }
}
