using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>What a capability leaves open, and its worked steps.</summary>
internal static class CapabilityAssumptions
{
    public static readonly Assumption RemouldingIndex = new(
        "assume.puller-remoulding-index",
        "remoulding index of the soil under the towing machine",
        "that of the soil of the stuck machine, or 0.7",
        "A lower one lowers the pull it sustains; it does not change what it can impose.",
        TractionSources.TwoPulls);

    public static Working Explain(PullCapability c)
    {
        var f = c.Flat;
        var index = c.Tower.Soil.RatingConeIndex.Pascals;
        var traction = c.TractionLimit.Newtons;
        var slip = c.Slip.DecimalFractions;
        var working = new WorkingBuilder("Sustained pull of " + c.Tower.Machine.Name).Include(c.Tower.Soil.Explain());
        for (var i = 0; i < f.Load.Length; i++)
        {
            double load = f.Load[i] + (f.LoadPerPull[i] * traction), wheel = load / f.Count[i], numeric = index * f.NumericTimesLoad[i] / wheel;
            var name = c.Tower.Machine.Axles[i].Name;
            working.Step("N_i", "axle load while pulling, " + name, "N_i(0) + (dN_i/dP) P", Text.Number(f.Load[i] / 1000) + " + " + Text.Number(f.LoadPerPull[i]) + " x " + Text.Number(traction / 1000), Text.Kilonewtons(load), GeneralSources.Statics)
                .Step("B_n", "wheel numeric, " + name, "(CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d)", Text.Number(index / 1000) + " x " + Text.Number(f.NumericTimesLoad[i]) + "/" + Text.Number(wheel / 1000), Text.Number(numeric), TerramechanicsSources.Brixius);
            if (!(load > 0)) continue;
            var ratio = f.Driven[i] ? BrixiusKernel.NetTractionRatio(numeric, slip, BrixiusConstants.Bias) : -BrixiusKernel.MotionResistanceRatio(numeric, 0, BrixiusConstants.Bias);
            working.Step("NT_i", (f.Driven[i] ? "net traction, " : "resistance of the undriven axle, ") + name, "N_i NTR(B_n, s)", Text.Number(load / 1000) + " x " + Text.Number(ratio), Text.Kilonewtons(load * ratio), TerramechanicsSources.Brixius);
        }

        working.Step("P_traction", "pull that traction allows", "sum(NT_i) - W sin(theta)", "less " + Text.Kilonewtons(f.GradeForce), Text.Kilonewtons(traction), TractionSources.TwoPulls);
        if (c.PowerLimit is { } power) working.Step("P_power", "pull that power allows at the stated speed", "eta P_e/v - W sin(theta)", Text.Number(c.Tower.Efficiency.DecimalFractions) + " x " + Text.Number((double)c.Tower.EnginePower!.Value.Watts / 1000) + "/" + Text.Number(c.Tower.PullSpeed.MetersPerSecond), Text.Kilonewtons(power.Newtons), GeneralSources.Statics);
        working.Step("P_nose", "pull at which the front would lift", "W_f L/max(h_e, h_cg)", Text.Number(f.NoseMoment / 1000) + "/max(" + Text.Number(f.LineHeight) + ", " + Text.Number(f.CentreHeight) + ")", Text.Kilonewtons(c.NoseLimit.Newtons), TractionSources.Nose);
        if (c.RatingLimit is { } rating) working.Step("P_rating", "rating of the hitch", "as marked", "given", Text.Kilonewtons(rating.Newtons), GeneralSources.Caller);
        return working.Step("P", "sustained pull, central", "least of these", c.LimitedBy.ToString(), Text.Kilonewtons(c.CentralNewtons), TractionSources.TwoPulls).Build();
    }
}
