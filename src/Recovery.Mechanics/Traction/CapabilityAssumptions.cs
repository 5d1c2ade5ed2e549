using System;
using System.Collections.Generic;
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

    public static readonly Assumption WeakestReading = new(
        "assume.puller-weakest-reading",
        "weakest cone reading of the ground under the towing machine",
        "the typical reading, so low and central are one",
        "The low of what it sustains falls with it; the band has no lower width until it is read.",
        TractionSources.TwoPulls);

    public static readonly Assumption EnginePower = new(
        "assume.puller-engine-power", "engine power of the towing machine", "no limit from power", "At a crawl grip is nearly always the smaller limit; at field speed power can be.", GeneralSources.Judgement);

    public static readonly Assumption HitchRating = new(
        "assume.puller-hitch-rating", "rating of the hitch of the towing machine", "no limit from the hitch", "A rating below the pull lowers what it sustains; it does not lower what it can impose.", GeneralSources.Judgement);

    public static readonly Assumption FirmestGround = new(
        "assume.puller-firmest-ground", "firmest ground the towing machine may stand on during the job", "the ground it stands on now", "Firmer ground, a road or a yard raises what it can put into the gear by 12 to 40 per cent.", TractionSources.TwoPulls);

    public static readonly Assumption WeakestTerrain = new(
        "assume.puller-weakest-terrain", "terrain of the weakest place under the tracked machine", "that of its track, so low and central are one", "The low of what it sustains falls with it; the band has no lower width until it is known.", TractionSources.TwoPulls);

    public static readonly Assumption FirmestTerrain = new(
        "assume.puller-firmest-terrain", "terrain of the firmest place that the tracked machine may stand on during the job", "that of its track", "Firmer ground or a hard surface raises what it can put into the gear.", TractionSources.TwoPulls);

    /// <summary>Lists what the pull of a tracked machine leaves open.</summary>
    public static IReadOnlyList<Assumption> List(TrackedTower tower)
    {
        var list = new List<Assumption>(4);
        if (tower.WeakestTerrain is null) list.Add(WeakestTerrain);
        if (tower.EnginePower is null) list.Add(EnginePower);
        if (tower.HitchRating is null) list.Add(HitchRating);
        if (tower.FirmestTerrain is null && tower.HardSurfaceFriction is null) list.Add(FirmestTerrain);
        return list.AsReadOnly();
    }

    /// <summary>Lists what a capability leaves open.</summary>
    public static IReadOnlyList<Assumption> List(TowingMachine tower)
    {
        var list = new List<Assumption>(5);
        if (tower.Soil.RemouldingIndexIsAssumed) list.Add(RemouldingIndex);
        if (!(tower.Soil.WeakestConeIndex.Pascals < tower.Soil.ConeIndex.Pascals)) list.Add(WeakestReading);
        if (tower.EnginePower is null) list.Add(EnginePower);
        if (tower.HitchRating is null) list.Add(HitchRating);
        if (tower.FirmestConeIndex is null && !tower.HardSurfaceInReach) list.Add(FirmestGround);
        return list.AsReadOnly();
    }

    public static Working Explain(PullCapability c)
    {
        var f = c.Flat;
        var index = c.Tower.Soil.RatingConeIndex.Pascals;
        var traction = c.TractionLimit.Newtons;
        var slip = c.Slip.DecimalFractions;
        var working = new WorkingBuilder("Sustained pull of " + c.Tower.Machine.Name).Include(c.Tower.Soil.Explain());
        var share = CapabilityKernel.Share(f, f.Load, traction);
        for (var i = 0; i < f.Load.Length; i++)
        {
            double load = (f.Load[i] + (f.LoadPerPull[i] * traction)) * share, wheel = load / f.Count[i], numeric = index * f.NumericTimesLoad[i] / wheel;
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
        if (c.OverturnLimit is { } side) working.Step("P_side", "pull at which the line across it would turn it over", "0.5 B W cos(pitch) cos(yaw)/(cos(pitch) sin(yaw) h_d - 0.5 B min(0, sin(pitch)))", Text.Number(c.Tower.Machine.NarrowestTrack) + " m, " + Text.Number(f.Weight / 1000) + " kN, " + Text.Number(c.Tower.HitchHeight.Meters) + " m, yaw " + Text.With(Math.Abs(f.LineYaw) * 180 / Math.PI, "deg", 3), Text.Kilonewtons(side.Newtons), TowingFindings.Sideways);
        if (c.RatingLimit is { } rating) working.Step("P_rating", "rating of the hitch", "as marked", "given", Text.Kilonewtons(rating.Newtons), GeneralSources.Caller);
        return working.Step("P", "sustained pull, central", "least of these", c.LimitedBy.ToString(), Text.Kilonewtons(c.CentralNewtons), TractionSources.TwoPulls).Build();
    }
}
