using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What one measure does to a whole plan: demand, capability, gear, own wheels and verdict, before and after.</summary>
public sealed record MeasureEffect
{
    internal MeasureEffect(Measure measure, Assessment before, Assessment after)
    {
        Measure = measure;
        Before = before;
        After = after;
    }

    /// <summary>Gets the measure.</summary>
    public Measure Measure { get; }

    /// <summary>Gets the assessment before.</summary>
    public Assessment Before { get; }

    /// <summary>Gets the assessment after.</summary>
    public Assessment After { get; }

    /// <summary>Gets what it takes off the central demand; negative where it adds.</summary>
    public Force DemandSaved => Force.FromNewtons(Before.Demand.CentralNewtons - After.Demand.CentralNewtons);

    /// <summary>Gets what it adds to the pull that is sustained, central.</summary>
    public Force CapabilityGained => Force.FromNewtons(After.Available.Central - Before.Available.Central);

    /// <summary>Gets what it adds to the load that the puller can impose on the gear.</summary>
    public Force GearLoadAdded => Force.FromNewtons(After.Available.Imposable - Before.Available.Imposable);

    /// <summary>Gets the sustained pull over the central demand, before.</summary>
    public double MarginBefore => MeasureSearch.Margin(Before);

    /// <summary>Gets the sustained pull over the central demand, after.</summary>
    public double MarginAfter => MeasureSearch.Margin(After);

    /// <summary>Gets the reserve of the weakest part over what is asked of it, before; null where the gear is not known.</summary>
    public double? GearBefore => MeasureSearch.Gear(Before);

    /// <summary>Gets the reserve of the weakest part over what is asked of it, after; null where the gear is not known.</summary>
    public double? GearAfter => MeasureSearch.Gear(After);

    /// <summary>Gets the own gross traction over the central demand, before: a resource listed apart.</summary>
    public double OwnShareBefore => Before.Demand.OwnGrossTraction.Newtons / Before.Demand.CentralNewtons;

    /// <summary>Gets the own gross traction over the central demand, after.</summary>
    public double OwnShareAfter => After.Demand.OwnGrossTraction.Newtons / After.Demand.CentralNewtons;

    /// <summary>Works the effect of a measure out.</summary>
    /// <param name="plan">The plan before.</param>
    /// <param name="measure">The measure.</param>
    /// <returns>The effect.</returns>
    /// <exception cref="System.ArgumentNullException">An argument is null.</exception>
    public static MeasureEffect Of(RecoveryPlan plan, Measure measure)
    {
        Guard.NotNull(plan, nameof(plan));
        Guard.NotNull(measure, nameof(measure));
        return new MeasureEffect(measure, plan.Assess(), measure.ApplyTo(plan).Assess());
    }

    /// <summary>Gives the effect in one line, invariant culture.</summary>
    /// <returns>Title, demand and verdicts.</returns>
    public override string ToString() => Measure.Title + ": demand less " + Text.Kilonewtons(DemandSaved.Newtons, 3) + ", " + Before.Verdict + " to " + After.Verdict;
}
