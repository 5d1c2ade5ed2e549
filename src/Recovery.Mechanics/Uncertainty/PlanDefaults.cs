using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Default spreads of a plan, each a factor with its source.</summary>
internal static class PlanDefaults
{
    /// <summary>Logarithmic deviations of method, and of sealing and contact (judgement).</summary>
    private const double Method = 0.35, Contact = 0.35;

    /// <summary>Coefficients of variation of a remoulding index, assumed or measured (judgement).</summary>
    private const double RemouldingAssumed = 0.25, RemouldingMeasured = 0.10;

    public static IEnumerable<SampledInput> For(RecoveryPlan plan)
    {
        var inputs = PlanInputList.For(plan);
        PlanInput Of(string key) => inputs.First(i => i.Key == key);

        // Median 1: the plan's own value is the best estimate.
        var reading = ScatterArithmetic.Combine(DefaultScatter.ConeIndex.Taken, DefaultScatter.MechanicalCone.Taken, 0);
        yield return new(Of("stuck.cone-index"), Factor(reading), UncertaintySources.ConeReading);
        yield return new(Of("stuck.remoulding-index"), Factor(Remoulding(plan.Stuck.Soil)), GeneralSources.Judgement);
        yield return new(Of("stuck.cone-factor"), Spread.Triangular(SoilKernel.ConeFactorLow / SoilKernel.ConeFactor, 1, SoilKernel.ConeFactorHigh / SoilKernel.ConeFactor), GroundSources.ConeFactor);
        yield return new(Of("demand.method"), Spread.LognormalAround(1, ScatterArithmetic.CombineLogarithmic(Method, 0, Contact)), UncertaintySources.DemandScatter);
        yield return new(Of("tower.cone-index"), Factor(reading), UncertaintySources.ConeReading);
        yield return new(Of("tower.remoulding-index"), Factor(Remoulding(plan.Tower.Soil)), GeneralSources.Judgement);
        yield return new(Of("tower.wheel-model"), Factor(DefaultScatter.WheelModel.Taken), UncertaintySources.WheelModelError);
        if (plan.Rig.Line is { } line && line.SoftNewtons < line.StiffNewtons)
            yield return new(Of("line.stiffness"), Spread.Uniform(line.SoftNewtons / line.StiffNewtons, 1), line.Source);
        if (!plan.Procedure.IsDeclared && plan.Procedure.CarelessSpeed.MetersPerSecond > 0)
        {
            yield return new(Of("line.careless-speed"), Factor(DefaultScatter.TakeUpSpeed.Taken), UncertaintySources.OperatorSpeed);
        }
        else if (plan.Procedure.ApproachSpeed is { MetersPerSecond: > 0 })
        {
            yield return new(Of("line.approach-speed"), Factor(DefaultScatter.TakeUpSpeed.Taken), UncertaintySources.OperatorSpeed);
        }

        foreach (var part in plan.Rig.Parts) yield return new(Of("rig.strength:" + part.Name), ScatterArithmetic.NewStrength(1, DefaultScatter.NewStrength.Taken), UncertaintySources.NewStrengthScatter);
        foreach (var member in plan.Ahead)
        {
            yield return new(Of("ahead.cone-index:" + member.Tower.Machine.Name), Factor(reading), UncertaintySources.ConeReading);
            yield return new(Of("ahead.remoulding-index:" + member.Tower.Machine.Name), Factor(Remoulding(member.Tower.Soil)), GeneralSources.Judgement);
        }
    }

    private static double Remoulding(Soil soil) => soil.RemouldingIndexIsAssumed ? RemouldingAssumed : RemouldingMeasured;

    private static Spread Factor(double coefficientOfVariation) => Spread.LognormalAround(1, System.Math.Sqrt(System.Math.Log(1 + (coefficientOfVariation * coefficientOfVariation))));
}
