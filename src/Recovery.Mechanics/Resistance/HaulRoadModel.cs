using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>Rolling resistance on a haul road by the handbook rule of civil engineers.</summary>
/// <remarks>
/// <para>R/W = 0.02 + 0.015 p/25.4 mm (0.59 % for a centimetre of penetration). p penetration of the tyre in m.</para>
/// <para>For loaded earthmoving tyres on roads that yield a little. At half a metre it gives 0.32 of the weight, far outside its range and flagged: a wheel that deep is buried and has terms of its own. The metric side of one textbook is misprinted; only the form in per cent is used.</para>
/// <para>Bias: it knows no soil strength; read it as an order of magnitude on firm ground.</para>
/// <para>Source: civil-engineering handbooks (secondary); end of the range judgement.</para>
/// </remarks>
public sealed class HaulRoadModel : IModel
{
    private HaulRoadModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static HaulRoadModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Haul-road rule";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.HaulRoad;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("p", "penetration of the tyre", 0, 0.15, "m", GeneralSources.Judgement));

    /// <summary>Gives the rolling resistance.</summary>
    /// <param name="weight">Weight on the wheels, 0 to 5,000 kN.</param>
    /// <param name="penetration">Penetration of the tyre p, 0 to 1 m.</param>
    /// <returns>Ratio and force with flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public HaulRoadResult Evaluate(Force weight, Length penetration)
    {
        double w = Guard.Newtons(weight, 0, 5000, nameof(weight)), p = Guard.Metres(penetration, 0, 1, nameof(penetration));
        var ratio = HaulRoadKernel.Ratio(p);
        return new HaulRoadResult(ratio, w * ratio, Validity.Flag(p));
    }

    /// <summary>Works the resistance out.</summary>
    /// <param name="weight">Weight on the wheels, 0 to 5,000 kN.</param>
    /// <param name="penetration">Penetration of the tyre p, 0 to 1 m.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Force weight, Length penetration)
    {
        var r = Evaluate(weight, penetration);
        return new WorkingBuilder(Name)
            .Step("R/W", "rolling resistance over weight", "0.02 + 0.015 p/25.4 mm", "p " + Text.With(penetration.Meters, "m"), Text.Number(r.Ratio.DecimalFractions), Source)
            .Step("R", "rolling resistance", "W R/W", Text.Number(weight.Kilonewtons) + " x " + Text.Number(r.Ratio.DecimalFractions), Text.Kilonewtons(r.Resistance.Newtons), Source)
            .Build();
    }
}
