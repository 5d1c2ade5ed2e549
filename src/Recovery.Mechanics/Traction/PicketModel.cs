using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What published picket holdfasts hold: 3 to 18 kN in loam, below 1 kN in sand.</summary>
/// <remarks>
/// <para>Wood in undisturbed loam: single 3.11 kN, 1-1 6.23, 1-1-1 8.01, 2-1 8.90, 3-2-1 17.79 kN; wet clay with gravel x 0.9, river clay x 0.5. Steel pickets of 1.2 m by soil: one 2.22 to 4.45 kN in cohesive soil and 0.22 to 0.28 kN in sand; three in line 4.45 to 8.90 kN and 0.67 to 0.85 kN.
/// Inclined steel pickets of 1.5 m: 3.43 kN working load each, to 19.6 kN in total, no soil named.</para>
/// <para>They do not recover a sunk machine: one of 15 t takes 45 to 300 kN. The holdfast is as strong as its front picket.</para>
/// <para>In sand the steel pickets were published with 6 to 15 % of their load in cohesive soil; the factor 0.5 that a manual gives wooden pickets in river sand does not agree with that, so wooden pickets have no number in sand here.</para>
/// <para>Source: single, 1-1-1, 3-2-1 US Navy NAVEDTRA 14251 and inclined steel Australian Emergency Manual (primary); steel by soil FHWA-IP-84-11 (secondary, weak); 1-1, 2-1 and soil factors FM 5-125 (from memory).</para>
/// </remarks>
public sealed class PicketModel : IModel
{
    private PicketModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static PicketModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Pickets";

    /// <inheritdoc/>
    public Source Source => AnchorSources.WoodPickets;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("F", "load asked of pickets", 0, 4000 * PicketKernel.Pound / 1000, "kN", AnchorSources.WoodPickets));

    /// <summary>Gives what a holdfast holds; null where nothing was published for that soil.</summary>
    /// <param name="kind">The holdfast.</param>
    /// <param name="soil">The soil.</param>
    /// <returns>The load, or null.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not one of the defined ones.</exception>
    public Force? Load(PicketKind kind, PicketSoil soil)
    {
        Guard.Defined(kind, kind is >= PicketKind.WoodSingle and <= PicketKind.SteelThreeInLine, nameof(kind));
        Guard.Defined(soil, soil is >= PicketSoil.Undeclared and <= PicketSoil.DenseSand, nameof(soil));
        var load = PicketKernel.Load(kind, soil);
        return load < 0 ? null : Force.FromNewtons(load);
    }

    /// <summary>Gives the working load of inclined steel pickets of 1.5 m at least a metre apart.</summary>
    /// <param name="pickets">Number of pickets, 1 to 20.</param>
    /// <returns>The load, at most that of 2 t.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public Force InclinedSteel(int pickets) => Force.FromNewtons(Math.Min(PicketKernel.InclinedSteelMost, Guard.Count(pickets, 1, 20, nameof(pickets)) * PicketKernel.InclinedSteel));

    /// <summary>Gives where the number of a holdfast comes from.</summary>
    /// <param name="kind">The holdfast.</param>
    /// <param name="soil">The soil.</param>
    /// <returns>The source.</returns>
    public Source SourceOf(PicketKind kind, PicketSoil soil) => kind switch
    {
        PicketKind.SteelSingle or PicketKind.SteelThreeInLine => AnchorSources.SteelPicketsBySoil,
        PicketKind.Wood11 or PicketKind.Wood21 => AnchorSources.WoodPicketsFromMemory,
        _ => soil is PicketSoil.WetClayGravel or PicketSoil.RiverClay ? AnchorSources.WoodPicketsFromMemory : AnchorSources.WoodPickets,
    };
}
