using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Bulk density of wheat from its moisture.</summary>
/// <remarks>
/// <para>rho = 774.4 - 703 M + 18510 M^2 - 148960 M^3 + 311600 M^4 kg/m3, M moisture on wet basis as a decimal.</para>
/// <para>The range of the fit is not stated; it has a minimum near M 0.25 and rises beyond, so it is flagged above 0.22 (recommendation, from memory). Damp wheat is lighter by the cubic metre: 22 % against 10 % is 15 % less.</para>
/// <para>Source: Nelson, in ASAE D241.4, as coded in an academic grain-drying model that names it (reported).</para>
/// </remarks>
public sealed class NelsonWheatModel : IModel
{
    private NelsonWheatModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static NelsonWheatModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Bulk density of wheat (Nelson)";

    /// <inheritdoc/>
    public Source Source => MachinesSources.Nelson;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("M", "moisture of wheat, wet basis", 0, 0.22, string.Empty, MachinesSources.Remembered));

    /// <summary>Gives the bulk density.</summary>
    /// <param name="moisture">Moisture on wet basis, 0 to 0.4.</param>
    /// <returns>The bulk density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public Density Evaluate(Ratio moisture) => Density.FromKilogramsPerCubicMeter(BulkKernel.Wheat(Known(moisture)));

    /// <summary>Gets the limits that a moisture lies outside of.</summary>
    /// <param name="moisture">Moisture on wet basis, 0 to 0.4.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Ratio moisture) => Validity.Flag(Known(moisture));

    /// <summary>Gives wheat of a moisture as a good for a tank.</summary>
    /// <param name="moisture">Moisture on wet basis, 0 to 0.4.</param>
    /// <returns>The good.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public BulkMaterial Material(Ratio moisture) => new("wheat, " + Text.With(Known(moisture) * 100, "%", 3) + " moisture", BulkFamily.Grain, false, new BulkDensityFigure(BulkKernel.Wheat(Known(moisture)), Source));

    /// <summary>Works the bulk density out.</summary>
    /// <param name="moisture">Moisture on wet basis, 0 to 0.4.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The moisture is outside its range.</exception>
    public Working Explain(Ratio moisture) => new WorkingBuilder(Name)
        .Step("rho", "bulk density", "774.4 - 703 M + 18510 M^2 - 148960 M^3 + 311600 M^4", "M = " + Text.Number(Known(moisture)), Text.With(BulkKernel.Wheat(Known(moisture)), "kg/m3"), Source).Build();

    private static double Known(Ratio moisture) => Guard.Fraction(moisture, 0, 0.4, nameof(moisture));
}
