using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How long clay takes to let suction go by itself: the time of 90 % dissipation.</summary>
/// <remarks>
/// <para>t90 = 0.848 H^2/c_v; H drainage path (half the width of a tyre) in m, c_v coefficient of consolidation in m2 a year.</para>
/// <para>One-dimensional consolidation, drained on one side. Days to weeks for a tyre in clay: suction does not drain away while somebody pulls. Venting removes it at once.</para>
/// <para>Source: one-dimensional consolidation (derived); c_v against liquid limit NAVFAC DM-7.1 (secondary).</para>
/// </remarks>
public sealed class SuctionDissipationModel : IModel
{
    /// <summary>Coefficient of consolidation of normally consolidated clay of liquid limit 60, m2 a year (NAVFAC DM-7.1 chart).</summary>
    public const double NormallyConsolidatedSquareMetresPerYear = 3.1;

    /// <summary>Coefficient of consolidation of the same clay remoulded, m2 a year (NAVFAC DM-7.1 chart).</summary>
    public const double RemouldedSquareMetresPerYear = 1.0;

    private const double SecondsPerYear = 365.25 * 86400;

    private SuctionDissipationModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static SuctionDissipationModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Dissipation of suction";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Consolidation;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("c_v", "coefficient of consolidation of soft to medium clay", 0.3, 30, "m2/yr", ResistanceSources.ConsolidationChart));

    /// <summary>Gives the time of 90 % dissipation.</summary>
    /// <param name="drainagePath">Drainage path H, 0.01 to 5 m: half the width of the contact.</param>
    /// <param name="consolidationSquareMetresPerYear">Coefficient of consolidation c_v, 0.01 to 1,000 m2 a year.</param>
    /// <returns>The time with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SuctionDissipation Evaluate(Length drainagePath, double consolidationSquareMetresPerYear)
    {
        double h = Guard.Metres(drainagePath, 0.01, 5, nameof(drainagePath)), c = Guard.Range(consolidationSquareMetresPerYear, 0.01, 1000, "m2/yr", nameof(consolidationSquareMetresPerYear));
        return new SuctionDissipation(BreakoutKernel.Dissipation90(h, c / SecondsPerYear), Validity.Flag(c));
    }

    /// <summary>Works the time out.</summary>
    /// <param name="drainagePath">Drainage path H, 0.01 to 5 m.</param>
    /// <param name="consolidationSquareMetresPerYear">Coefficient of consolidation c_v, 0.01 to 1,000 m2 a year.</param>
    /// <returns>The worked step.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Length drainagePath, double consolidationSquareMetresPerYear) => new WorkingBuilder(Name)
        .Step("t90", "time of 90 % dissipation", "0.848 H^2/c_v", "0.848 x " + Text.Number(drainagePath.Meters) + "^2/" + Text.Number(consolidationSquareMetresPerYear), Text.With(Evaluate(drainagePath, consolidationSquareMetresPerYear).Time90.Seconds / 86400, "d"), Source)
        .Build();
}
