using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Resistance;

/// <summary>The workings of <see cref="SelfRecovery"/>.</summary>
internal static class SelfRecoverySteps
{
    /// <summary>Critical index of the present state along the pull, of the less mobile frame, Pa; not a number where no soil would do.</summary>
    public static double Critical(StuckMachine stuck)
    {
        var linked = CriticalOf(CompiledStuckMachine.From(stuck, stuck.Machine.Resolve(Suspension.Undeclared)).Flat);
        if (!stuck.Machine.SuspensionMatters || double.IsNaN(linked)) return linked;
        var straight = CriticalOf(CompiledStuckMachine.From(stuck, Suspension.StraightFrame).Flat);
        return double.IsNaN(straight) ? straight : Math.Max(linked, straight);
    }

    /// <summary>Net traction of the driven axles against what holds the machine beside their rolling, each over its band, and what follows.</summary>
    public static (SelfRecoveryOutlook Outlook, ForceBand? Net, ForceBand? Holding) Balance(PullDemand demand, IReadOnlyList<AxleTraction> axles)
    {
        var driven = axles.Where(a => a.Driven && a.Load.Newtons > 0).ToList();
        if (driven.Count == 0) return (SelfRecoveryOutlook.NotDriven, null, null);
        if (driven.Any(a => a.Buried)) return (SelfRecoveryOutlook.NoModel, null, null);
        var a = demand.Compiled.Assumptions;
        var net = ForceBand.FromNewtons(Net(demand, a.IndexHigh), Net(demand, a.IndexCentral), Net(demand, a.IndexLow));
        double low = Beside(demand, DemandBound.Low), central = Beside(demand, DemandBound.Central), high = Beside(demand, DemandBound.High);
        var hold = ForceBand.FromNewtons(Math.Min(low, Math.Min(central, high)), central, Math.Max(high, Math.Max(central, low)));
        var outlook = net.HighNewtons < hold.LowNewtons ? SelfRecoveryOutlook.Held
            : driven.All(x => x.InRange) && net.LowNewtons >= hold.HighNewtons ? SelfRecoveryOutlook.MovesItself
            : SelfRecoveryOutlook.Undecided;
        return (outlook, net, hold);
    }

    public static Phrase Words(SelfRecovery self)
    {
        var driven = self.Axles.Where(a => a.Driven).ToList();
        return self.Outlook switch
        {
            SelfRecoveryOutlook.NotDriven => SelfPhrases.NotDriven.With(),
            SelfRecoveryOutlook.NoModel => SelfPhrases.NoModel.With(string.Join(", ", driven.Where(a => a.Buried).Select(a => a.Name))),
            SelfRecoveryOutlook.Held => SelfPhrases.Held.With(Left(driven)),
            SelfRecoveryOutlook.MovesItself => SelfPhrases.Moves.With(),
            _ => (driven.All(a => a.InRange) ? SelfPhrases.Overlap : SelfPhrases.OverlapLeft).With(Left(driven)),
        };
    }

    public static Working Explain(SelfRecovery self)
    {
        var working = new WorkingBuilder("Self-recovery of " + self.Demand.Stuck.Machine.Name);
        foreach (var axle in self.Axles)
        {
            if (!(axle.Load.Newtons > 0)) continue;
            string w = Text.Number(axle.Load.Kilonewtons), n = Text.Number(axle.Numeric), note = axle.Aside();
            working.Step("B_n", "wheel numeric, " + axle.Name, "(CI b d/W)(1 + 5 delta/h)/(1 + 3 b/d)", (self.Demand.Stuck.Belly is null ? "load " : "load beside the belly ") + w + " kN" + note, n, TerramechanicsSources.Brixius);
            if (axle.Driven) working.Step("GT", "gross traction, " + axle.Name, "W (0.88 (1 - e^(-0.1 B_n))(1 - e^(-7.5 s)) + 0.04)", w + ", B_n " + n + ", s 0.3", Text.Kilonewtons(axle.GrossTraction.Newtons), TerramechanicsSources.Brixius);
            working.Step("MR", "motion resistance, " + axle.Name, "W (1/B_n + 0.04 + 0.5 s/sqrt(B_n))", w + ", B_n " + n + (axle.Driven ? ", s 0.3" : ", s 0"), Text.Kilonewtons(axle.MotionResistance.Newtons), TerramechanicsSources.Brixius);
        }

        working.Step("GT", "gross traction of all driven axles, listed apart", "sum", "against a demand of " + Text.Kilonewtons(self.Demand.CentralNewtons), Text.Kilonewtons(self.GrossTraction.Newtons), TerramechanicsSources.Brixius);
        if (self.NetTraction is { } net && self.Holding is { } hold)
            working.Step("NT", "net traction of the driven axles, central", "sum(GT - MR)", "against " + Text.Kilonewtons(hold.CentralNewtons) + " beside their rolling", Text.Kilonewtons(net.CentralNewtons), TerramechanicsSources.Brixius);
        return working.Step("CI_crit", "cone index at which it would move itself, wheels rolling", "greatest net traction at s up to 0.30 = W sin(theta)", "radial constants, full wheel loads", self.CriticalConeIndex is { } index ? Text.Kilopascals(index.Pascals) : "no soil would do", TerramechanicsSources.BrixiusRadial).Build();
    }

    private static double CriticalOf(DemandFlat f) => CriticalIndexKernel.Find(f.NumericPerPascal, f.Load, f.Driven, f.Weight * f.GradeSine, BrixiusConstants.Radial);

    private static object Left(List<AxleTraction> driven)
    {
        var left = driven.Where(a => !a.InRange).Select(a => a.Called()).ToList();
        return left.Count == 0 ? string.Empty : SelfPhrases.NotCredited.With(Phrase.List(left));
    }

    /// <summary>Net traction of the driven axles at one cone index, N.</summary>
    private static double Net(PullDemand demand, double index) => OwnTractionKernel.Net(demand.Compiled.Flat, demand.Bounds.Central.BellyLoad, index);

    /// <summary>A bound of the demand less what the wheel model asks there of the driven axles, which their net traction holds already, N.</summary>
    private static double Beside(PullDemand demand, DemandBound bound)
    {
        var (frame, terms, state) = demand.At(bound);
        return terms.Total - OwnTractionKernel.Towed(frame.Flat, terms.BellyLoad, state.Index);
    }
}
