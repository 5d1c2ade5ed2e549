using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Makes the entries of a comparison: each kind of model asked in its own way.</summary>
internal static class ComparisonBuilder
{
    /// <summary>Reason of a model that is about resistance alone.</summary>
    public const string NoTraction = "the model gives no traction";

    /// <summary>Reason of a model for which a fact is not there.</summary>
    private const string NotWorked = "not worked, because it asks for ";

    private const string BalanceMeaning = "greatest net traction within the slip of the comparison meets the resistance";

    /// <summary>All entries, in a fixed order.</summary>
    public static IReadOnlyList<WheelModelEntry> All(IReadOnlyList<WheelSet> wheels, ComparisonInputs inputs, double loadNewtons)
    {
        var entries = new List<WheelModelEntry>();
        foreach (var model in new IWheelModel[] { BrixiusModel.Bias, BrixiusModel.Radial, WismerLuthModel.Instance, GeeCloughModel.Instance, WesClayModel.Instance, VtiFineSoilModel.Instance })
            entries.Add(Numeric(model, wheels, inputs.SlipLimit, loadNewtons));
        entries.Add(Maclaurin(wheels, loadNewtons));
        entries.Add(Rating(wheels, inputs, loadNewtons));
        entries.Add(Bekker(wheels, inputs, loadNewtons));
        return entries.AsReadOnly();
    }

    private static WheelModelEntry Numeric(IWheelModel model, IReadOnlyList<WheelSet> wheels, Ratio slipLimit, double loadNewtons)
    {
        double sum = 0;
        var flags = new List<ValidityFlag>();
        var refusal = string.Empty;
        var worst = double.PositiveInfinity;
        foreach (var set in wheels)
        {
            var result = model.Evaluate(set.Wheel, Ratio.Zero);
            Merge(flags, result.Flags);
            if (result.MotionResistance is { } resistance) sum += resistance.Newtons * set.Count;
            else if (result.Numeric < worst) (worst, refusal) = (result.Numeric, "immobile: wheel numeric " + Text.Number(result.Numeric, 3) + ", " + Size(set));
        }

        var net = SelfMobility.NetTraction(model, wheels, slipLimit);
        var critical = SelfMobility.Find(model, wheels, null, slipLimit);
        return new WheelModelEntry(model, loadNewtons)
        {
            MotionResistanceLow = refusal.Length == 0 ? Force.FromNewtons(sum) : null,
            MotionResistanceHigh = refusal.Length == 0 ? Force.FromNewtons(sum) : null,
            ResistanceRefusal = refusal,
            NetTraction = net,
            TractionRefusal = net is not null ? string.Empty : refusal.Length > 0 ? refusal : critical.CriticalConeIndex is null ? critical.Refusal : "no drive within slip " + Text.Number(slipLimit.DecimalFractions, 3),
            CriticalConeIndex = critical.CriticalConeIndex,
            CriticalMeaning = critical.CriticalConeIndex is null ? critical.Refusal : BalanceMeaning,
            Flags = flags.AsReadOnly(),
        };
    }

    private static WheelModelEntry Maclaurin(IReadOnlyList<WheelSet> wheels, double loadNewtons)
    {
        double sum = 0, limit = 0;
        var flags = new List<ValidityFlag>();
        foreach (var set in wheels)
        {
            if (set.SectionHeight is not { } height) return Refused(MaclaurinModel.Instance, loadNewtons, NotWorked + "the section height of the tyre");
            var result = MaclaurinModel.Instance.Evaluate(set.Wheel, Length.FromMeters(set.Wheel.DeflectionRatio.DecimalFractions * height.Meters));
            Merge(flags, result.Flags);
            sum += result.MotionResistance.Newtons * set.Count;
            limit = Math.Max(limit, result.LimitingConeIndex.Pascals);
        }

        return new WheelModelEntry(MaclaurinModel.Instance, loadNewtons)
        {
            MotionResistanceLow = Force.FromNewtons(sum),
            MotionResistanceHigh = Force.FromNewtons(sum),
            TractionRefusal = NoTraction,
            CriticalConeIndex = Pressure.FromPascals(limit),
            CriticalMeaning = "limiting cone index of the worst wheel",
            Flags = flags.AsReadOnly(),
        };
    }

    private static WheelModelEntry Rating(IReadOnlyList<WheelSet> wheels, ComparisonInputs inputs, double loadNewtons)
    {
        var model = RatingConeIndexModel.Instance;
        if (inputs.Mobility is not { } factors) return Refused(model, loadNewtons, NotWorked + "ground clearance and the other factors of the mobility index");
        double low = 0, high = 0, drawbar = 0, needed = 0, missing = 0;
        var flags = new List<ValidityFlag>();
        string refusal = string.Empty, undriven = string.Empty;
        foreach (var set in wheels)
        {
            var mobility = WheeledMobilityModel.Instance.Evaluate(set, factors);
            var result = model.Evaluate(mobility, Force.FromNewtons(set.LoadNewtons), set.Wheel.ConeIndex);
            Merge(flags, mobility.Flags);
            Merge(flags, result.Flags);
            needed = Math.Max(needed, mobility.OnePass.Pascals);
            if (!set.Driven) undriven = "assumes that all wheels are driven";
            if (result.Go)
            {
                low += result.MotionResistanceLow!.Value.Newtons;
                high += result.MotionResistanceHigh!.Value.Newtons;
                drawbar += result.DrawbarPull!.Value.Newtons;
            }
            else if (-result.ExcessPascals > missing)
            {
                missing = -result.ExcessPascals;
                refusal = "no-go: " + Text.Kilopascals(missing, 3) + " short of VCI1 " + Text.Kilopascals(mobility.OnePass.Pascals, 3);
            }
        }

        var go = refusal.Length == 0;
        return new WheelModelEntry(model, loadNewtons)
        {
            MotionResistanceLow = go ? Force.FromNewtons(low) : null,
            MotionResistanceHigh = go ? Force.FromNewtons(high) : null,
            ResistanceRefusal = refusal,
            NetTraction = go && undriven.Length == 0 ? Force.FromNewtons(drawbar) : null,
            TractionRefusal = go ? undriven : refusal,
            CriticalConeIndex = undriven.Length == 0 ? Pressure.FromPascals(needed) : null,
            CriticalMeaning = undriven.Length == 0 ? "vehicle cone index for one pass of the worst axle" : undriven,
            Remark = go ? "two readings conflict; net at about 20 % slip" : string.Empty,
            Flags = flags.AsReadOnly(),
        };
    }

    private static WheelModelEntry Bekker(IReadOnlyList<WheelSet> wheels, ComparisonInputs inputs, double loadNewtons)
    {
        var model = BekkerWheelModel.Instance;
        if (inputs.Terrain is not { } terrain) return Refused(model, loadNewtons, NotWorked + "the Bekker parameters of the soil");
        double sum = 0, implied = 0;
        double? pushed = null;
        var flags = new List<ValidityFlag>();
        var refusal = string.Empty;
        foreach (var set in wheels)
        {
            var result = model.Evaluate(set.Wheel, terrain, set.TyrePressure, inputs.UnitWeight);
            Merge(flags, result.Flags);
            implied = result.ImpliedConeIndex.Pascals;
            if (result.Bulldozing is { } ahead) pushed = (pushed ?? 0) + (ahead.Newtons * set.Count);
            if (result.MotionResistance is { } resistance) sum += resistance.Newtons * set.Count;
            else refusal = "immobile: sinks to the hub, " + Size(set);
        }

        return new WheelModelEntry(model, loadNewtons)
        {
            MotionResistanceLow = refusal.Length == 0 ? Force.FromNewtons(sum) : null,
            MotionResistanceHigh = refusal.Length == 0 ? Force.FromNewtons(sum) : null,
            ResistanceRefusal = refusal,
            TractionRefusal = NoTraction,
            CriticalMeaning = NoTraction,
            Bulldozing = refusal.Length == 0 && pushed is { } newtons ? Force.FromNewtons(newtons) : null,
            Remark = terrain.Name + ", cone index " + Text.Kilopascals(implied, 3) + " by its parameters" + (refusal.Length == 0 && pushed is { } apart ? "; soil pushed ahead, apart, " + Text.Kilonewtons(apart, 3) : string.Empty),
            Flags = flags.AsReadOnly(),
        };
    }

    private static WheelModelEntry Refused(IModel model, double loadNewtons, string reason) =>
        new(model, loadNewtons) { ResistanceRefusal = reason, TractionRefusal = reason, CriticalMeaning = reason };

    private static string Size(WheelSet set) => Text.Number(set.Wheel.SectionWidth.Meters, 3) + " x " + Text.With(set.Wheel.OverallDiameter.Meters, "m", 3) + " tyre";

    /// <summary>Keeps each limit once, with the value that lies farthest outside.</summary>
    private static void Merge(List<ValidityFlag> flags, IReadOnlyList<ValidityFlag> more)
    {
        foreach (var flag in more)
        {
            var at = flags.FindIndex(f => f.Limit.Symbol == flag.Limit.Symbol);
            if (at < 0) flags.Add(flag);
            else if (Beyond(flag) > Beyond(flags[at])) flags[at] = flag;
        }
    }

    private static double Beyond(ValidityFlag flag) => Math.Max(flag.Limit.Minimum - flag.Value, flag.Value - flag.Limit.Maximum);
}
