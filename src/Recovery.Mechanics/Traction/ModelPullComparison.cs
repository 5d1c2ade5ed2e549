using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Terramechanics;

namespace Recovery.Mechanics.Traction;

/// <summary>One towing machine by several wheel models side by side, and how far they lie apart.</summary>
public sealed class ModelPullComparison
{
    private ModelPullComparison(IReadOnlyList<ModelPull> pulls) => Pulls = pulls;

    /// <summary>Gets the pulls in the order of the models.</summary>
    public IReadOnlyList<ModelPull> Pulls { get; }

    /// <summary>Gets the greatest over the least central traction limit of those that have a number; null where fewer than two have one or the least is zero.</summary>
    public double? Spread
    {
        get
        {
            var limits = Pulls.Where(p => p.TractionLimit is not null).Select(p => p.TractionLimit!.Value.Newtons).ToArray();
            return limits.Length > 1 && limits.Min() > 0 ? limits.Max() / limits.Min() : null;
        }
    }

    /// <summary>Compares Brixius with bias and radial constants, Wismer-Luth and Gee-Clough.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static ModelPullComparison Of(TowingMachine tower) => Of(tower, [BrixiusModel.Bias, BrixiusModel.Radial, WismerLuthModel.Instance, GeeCloughModel.Instance]);

    /// <summary>Compares chosen models.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <param name="models">The models, one to twelve.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentNullException">An argument or a model is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not one to twelve models.</exception>
    public static ModelPullComparison Of(TowingMachine tower, IEnumerable<IWheelModel> models)
    {
        var list = Guard.NotNull(models, nameof(models)).ToArray();
        Guard.Count(list.Length, 1, 12, nameof(models));
        return new ModelPullComparison(list.Select(m => ModelPull.Estimate(tower, m)).ToList().AsReadOnly());
    }

    /// <summary>Gives the pulls in one line, invariant culture.</summary>
    /// <returns>Model by model.</returns>
    public override string ToString() => string.Join("; ", Pulls.Select(p => p.ToString()));
}
