using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of a tyre after Saarilahti.</summary>
/// <remarks>
/// <para>delta = 0.0008 + 0.001 (0.365 + 170/p) W; delta m, p inflation kPa, W wheel load kN. The size of the tyre does not enter.</para>
/// <para>Made on forest tyres; the range of loads is not stated. Flagged where delta/h leaves 10 to 30 %, the range of the traction models (ASABE D497, primary). Against Lines and Murphy it is 30 % higher on a wide front tyre and 25 % lower on a narrow rear one.</para>
/// <para>Source: Saarilahti 2002, ECOWOOD Deliverable D2, eq. 2.22 (reported).</para>
/// </remarks>
public sealed class SaarilahtiModel : ITyreDeflectionModel
{
    private SaarilahtiModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static SaarilahtiModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Tyre deflection (Saarilahti)";

    /// <inheritdoc/>
    public Source Source => MachinesSources.Saarilahti;

    /// <inheritdoc/>
    public Validity Validity => Range;

    internal static Validity Range { get; } = new(new ValidityLimit("delta/h", "deflection over section height, range of the traction models", 0.1, 0.3, string.Empty, MachinesSources.DeflectionRange));

    /// <inheritdoc/>
    public TyreDeflection Evaluate(Tyre tyre, Force load)
    {
        Guard.NotNull(tyre, nameof(tyre));
        var metres = TyreKernel.Saarilahti(Guard.Newtons(load, 0, 500, nameof(load)), tyre.Inflation.Pascals);
        return new TyreDeflection("Saarilahti", metres, tyre, Validity.Flag(metres / tyre.SectionHeight.Meters), Source);
    }

    /// <inheritdoc/>
    public Working Explain(Tyre tyre, Force load) => new WorkingBuilder(Name)
        .Step("delta", "static deflection", "0.0008 + 0.001 (0.365 + 170/p) W", "0.0008 + 0.001 (0.365 + 170/" + Text.Number(Guard.NotNull(tyre, nameof(tyre)).Inflation.Kilopascals) + ") x " + Text.Number(load.Kilonewtons), Text.With(Evaluate(tyre, load).Deflection.Meters, "m"), Source)
        .Build();

    /// <summary>Gives the deflections of many wheels at once: the same kernel over spans.</summary>
    /// <param name="loadKilonewtons">Wheel loads, 0 to 500 kN.</param>
    /// <param name="inflationKilopascals">Inflations, 30 to 1,000 kPa.</param>
    /// <param name="deflectionMetres">Receives the deflections, m.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void Evaluate(ReadOnlySpan<double> loadKilonewtons, ReadOnlySpan<double> inflationKilopascals, Span<double> deflectionMetres)
    {
        Guard.SameLength(loadKilonewtons.Length, inflationKilopascals.Length, nameof(inflationKilopascals));
        Guard.SameLength(loadKilonewtons.Length, deflectionMetres.Length, nameof(deflectionMetres));
        Guard.All(loadKilonewtons, 0, 500, "kN", nameof(loadKilonewtons));
        Guard.All(inflationKilopascals, 30, 1000, "kPa", nameof(inflationKilopascals));
        for (var i = 0; i < loadKilonewtons.Length; i++) deflectionMetres[i] = TyreKernel.Saarilahti(loadKilonewtons[i] * 1000, inflationKilopascals[i] * 1000);
    }
}
