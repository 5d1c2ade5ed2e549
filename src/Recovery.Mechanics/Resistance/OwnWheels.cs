using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>The stuck machine's own wheels: axle by axle, and what driving them is worth.</summary>
internal static class OwnWheels
{
    /// <summary>Share of the central demand below which a worth is called little (judgement).</summary>
    private const double Little = 0.02;

    public static IReadOnlyList<AxleTraction> Axles(PullDemand demand)
    {
        var f = demand.Compiled.Flat;
        var belly = demand.Bounds.Central.BellyLoad;
        var index = demand.Compiled.Assumptions.IndexCentral;
        var axles = new List<AxleTraction>(f.Count.Length);
        for (var i = 0; i < f.Count.Length; i++)
        {
            double load = OwnTractionKernel.Load(f, i, belly), numeric = OwnTractionKernel.Numeric(f, i, belly, index), wheel = load / f.Count[i], b = f.Width[i], d = f.Diameter[i];
            IReadOnlyList<ValidityFlag> flags = load > 0
                ? BrixiusModel.Bias.Validity.Flag(b / d, demand.Stuck.Machine.Axles[i].Tyre.DeflectionRatio(f.Load[i] / f.Count[i]), wheel / (b * d) / 1000, numeric, wheel / 1000)
                : [];
            axles.Add(new AxleTraction(demand.AxleName(i), f.Driven[i], f.Buried[i], load, numeric, OwnTractionKernel.Gross(f, i, belly, index), OwnTractionKernel.Resistance(f, i, belly, index), flags));
        }

        return axles.AsReadOnly();
    }

    public static OwnWheelsWorth Worth(PullDemand demand)
    {
        double locked = demand.CentralAs(locked: true), turning = demand.CentralAs(locked: false);
        var driven = Axles(demand).Where(a => a.Driven).ToList();
        var net = driven.Where(a => a.InRange).Sum(a => a.NetTraction.Newtons);
        return new OwnWheelsWorth(locked - turning, net > 0 ? net : 0, SelfPhrases.WorthOfDriving.With(OfTurning(demand, locked, turning), OfTraction(driven, net)));
    }

    private static Phrase OfTurning(PullDemand demand, double locked, double turning)
    {
        if (locked - turning > Little * turning) return (demand.Bounds.Central.Locked ? SelfPhrases.AgainstLocked : SelfPhrases.AgainstLockedTurning).With();
        if (!demand.Compiled.Flat.Braked.Any(b => b)) return SelfPhrases.NoneLocks.With();
        return (locked < turning ? SelfPhrases.SlidingLess : SelfPhrases.SlidingAlike).With();
    }

    private static Phrase OfTraction(IReadOnlyList<AxleTraction> driven, double net)
    {
        if (driven.Count == 0) return SelfPhrases.NoneDriven.With();
        if (net > 0) return SelfPhrases.NetCounted.With(MethodPhrases.Both(driven.Where(a => a.InRange).Select(a => Phrase.Name(a.Name)).ToList()));
        if (driven.Any(a => a.InRange)) return SelfPhrases.NoMoreThanRolling.With();
        return driven.All(a => a.Buried)
            ? SelfPhrases.NoTractionBuried.With()
            : SelfPhrases.NoTraction.With(Phrase.List(driven.Select(a => a.Called()).ToList()));
    }
}
