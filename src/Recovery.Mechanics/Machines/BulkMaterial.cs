using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A good in a tank or on a wagon, by its bulk density.</summary>
/// <remarks>
/// <para>Listed goods are in <see cref="BulkMaterials"/>; a measured density makes one with the constructor. Forage is listed by its <b>dry matter</b> in a cubic metre: as it lies it weighs rho_DM/DM, so its dry-matter content has to be given.</para>
/// <para>A heavier tank is the cautious side for a stuck machine: take <see cref="BulkDensityBand.High"/> where the load was not weighed. Immutable.</para>
/// </remarks>
public sealed class BulkMaterial
{
    /// <summary>Describes a good of measured bulk density.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="low">Least bulk density as it lies, 10 to 3,000 kg/m3.</param>
    /// <param name="high">Greatest bulk density as it lies, from the least to 3,000 kg/m3.</param>
    /// <param name="family">Family of the good.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A density is outside its range.</exception>
    public BulkMaterial(string name, Density low, Density high, BulkFamily family = BulkFamily.Other)
        : this(name, Guard.Defined(family, family is >= BulkFamily.Grain and <= BulkFamily.Other, nameof(family)), false, Measured(low, high))
    {
    }

    internal BulkMaterial(string name, BulkFamily family, bool byDryMatter, params BulkDensityFigure[] figures)
    {
        Name = Guard.Name(name, nameof(name));
        Family = family;
        IsByDryMatter = byDryMatter;
        Figures = Array.AsReadOnly(figures);
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the family.</summary>
    public BulkFamily Family { get; }

    /// <summary>Gets whether the figures are of the dry matter in a cubic metre, not of the good as it lies.</summary>
    public bool IsByDryMatter { get; }

    /// <summary>Gets every figure known, each with its source and standing.</summary>
    public IReadOnlyList<BulkDensityFigure> Figures { get; }

    /// <summary>Gives the bulk density as it lies.</summary>
    /// <param name="dryMatter">Dry matter over total mass, 0.1 to 1; needed where the good is listed by its dry matter, refused elsewhere.</param>
    /// <returns>Low, central and high density.</returns>
    /// <exception cref="ArgumentException">The dry-matter content is missing, or means nothing for this good.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The dry-matter content is outside its range.</exception>
    public BulkDensityBand Density(Ratio? dryMatter = null)
    {
        if (IsByDryMatter && dryMatter is null) throw new ArgumentException(Name + " is listed by its dry matter: give dryMatter, the dry matter over the total mass.", nameof(dryMatter));
        if (!IsByDryMatter && dryMatter is not null) throw new ArgumentException(Name + " is listed as it lies: dryMatter means nothing for it.", nameof(dryMatter));
        var content = dryMatter is { } dm ? Guard.Fraction(dm, 0.1, 1, nameof(dryMatter)) : 1;
        double low = double.PositiveInfinity, high = 0, bestLow = double.PositiveInfinity, bestHigh = 0;
        var best = Figures[0].Source.Standing;
        foreach (var figure in Figures)
        {
            if (Standings.Weakest(best, figure.Source.Standing) == best) best = figure.Source.Standing;
        }

        foreach (var figure in Figures)
        {
            var rho = BulkKernel.AsFed(figure.Density.KilogramsPerCubicMeter, content);
            low = Math.Min(low, rho);
            high = Math.Max(high, rho);
            if (figure.Source.Standing != best) continue;
            bestLow = Math.Min(bestLow, rho);
            bestHigh = Math.Max(bestHigh, rho);
        }

        var sources = Figures.Select(f => f.Source).Distinct().ToList();
        if (IsByDryMatter) sources.Add(MachinesSources.DryMatter);
        return new BulkDensityBand(low, (bestLow + bestHigh) / 2, high, sources.AsReadOnly());
    }

    /// <summary>Gives bulk density from a test weight, the measure of the US grain trade.</summary>
    /// <param name="poundsPerBushel">Test weight, 5 to 150 lb/bu.</param>
    /// <returns>Bulk density: test weight times 0.45359237 kg over 35.23907 L.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The test weight is outside its range.</exception>
    public static Density FromTestWeight(double poundsPerBushel) => UnitsNet.Density.FromKilogramsPerCubicMeter(BulkKernel.FromTestWeight(Guard.Range(poundsPerBushel, 5, 150, "lb/bu", nameof(poundsPerBushel))));

    /// <summary>Gives the good in words, invariant culture.</summary>
    /// <returns>Name and figures.</returns>
    public override string ToString() => Name + ": " + string.Join(", ", Figures) + (IsByDryMatter ? ", dry matter" : string.Empty);

    private static BulkDensityFigure[] Measured(Density low, Density high)
    {
        var least = Guard.Range(low.KilogramsPerCubicMeter, 10, 3000, "kg/m3", nameof(low));
        var greatest = Guard.Range(high.KilogramsPerCubicMeter, least, 3000, "kg/m3", nameof(high));
        return [new BulkDensityFigure(least, GeneralSources.Caller), new BulkDensityFigure(greatest, GeneralSources.Caller)];
    }
}
