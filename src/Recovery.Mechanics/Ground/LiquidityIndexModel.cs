using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Undrained shear strength of remoulded clay from its liquidity index.</summary>
/// <remarks>
/// <para>s_u = s_LL R^(1 - LI), with s_LL 1.7 kPa at the liquid limit and R 35. LI = (w - PL)/(LL - PL): moisture w between plastic limit (0) and liquid limit (1).</para>
/// <para>The ratio R is 35, not the 100 of older texts. Fall-cone tests are made on remoulded soil, so the result stands beside RCI/N_k, not CI/N_k (judgement). Best supported for LI 0.2 to 1.1 (from memory).</para>
/// <para>Source: Vardanega and Haigh 2014, 641 fall-cone tests on 101 soils (R primary); s_LL from memory.</para>
/// </remarks>
public sealed class LiquidityIndexModel : IModel
{
    private LiquidityIndexModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static LiquidityIndexModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Undrained strength from the liquidity index";

    /// <inheritdoc/>
    public Source Source => GroundSources.LiquidityIndex;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("LI", "liquidity index", 0.2, 1.1, string.Empty, GroundSources.LiquidityIndexRange));

    /// <summary>Gives the strength of the remoulded soil.</summary>
    /// <param name="liquidityIndex">Liquidity index, -0.5 to 2.</param>
    /// <returns>The undrained shear strength, remoulded.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public Pressure Evaluate(Ratio liquidityIndex) => Pressure.FromPascals(HandTestKernel.FromLiquidityIndex(Guarded(liquidityIndex)));

    /// <summary>Gives the limits that an index lies outside of.</summary>
    /// <param name="liquidityIndex">Liquidity index, -0.5 to 2.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Ratio liquidityIndex) => Validity.Flag(Guarded(liquidityIndex));

    /// <summary>Works the strength out step by step.</summary>
    /// <param name="liquidityIndex">Liquidity index, -0.5 to 2.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    public Working Explain(Ratio liquidityIndex) => new WorkingBuilder(Name)
        .Step("s_LL", "strength at the liquid limit", "constant", "1.7 kPa", "1.7 kPa", GroundSources.LiquidLimitStrength)
        .Step("s_u", "undrained shear strength, remoulded", "s_LL R^(1 - LI)", "1.7 x 35^(1 - " + Text.Number(Guarded(liquidityIndex)) + ")", Text.Kilopascals(Evaluate(liquidityIndex).Pascals), Source)
        .Build();

    private static double Guarded(Ratio liquidityIndex) => Guard.Fraction(liquidityIndex, -0.5, 2, nameof(liquidityIndex));
}
