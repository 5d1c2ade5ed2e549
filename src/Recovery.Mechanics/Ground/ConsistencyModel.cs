using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Undrained shear strength of uncut clay from the thumb and the fist.</summary>
/// <remarks>
/// <para>s_u = q_u/2 with the bounds of the unconfined strength q_u at 0.25, 0.5, 1, 2 and 4 tsf: 12, 24, 48, 96 and 192 kPa. Central is the geometric middle of the class (judgement).</para>
/// <para>The softest class has no lower bound; 1 kPa is taken, the least strength this library takes of a floor (judgement). The hardest has no upper bound; its lower bound stands for all three.</para>
/// <para>Source: TM 5-818-1 / AFM 88-3 ch. 7, Table 2-2 (primary); s_u = q_u/2 derived.</para>
/// </remarks>
public sealed class ConsistencyModel : IModel
{
    private ConsistencyModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static ConsistencyModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Undrained strength from consistency";

    /// <inheritdoc/>
    public Source Source => GroundSources.Consistency;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("s_u", "strength against the bounds of the table", HandTestKernel.Upper(Consistency.VerySoft) / 1000, HandTestKernel.Upper(Consistency.VeryStiff) / 1000, "kPa", GroundSources.Consistency));

    /// <summary>Gives the strength of a class.</summary>
    /// <param name="consistency">What thumb or fist found.</param>
    /// <returns>Low, central and high strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not defined.</exception>
    public StrengthBand Evaluate(Consistency consistency)
    {
        Guard.Defined(consistency, consistency is >= Consistency.VerySoft and <= Consistency.Hard, nameof(consistency));
        var low = Math.Max(HandTestKernel.Lower(consistency), SoilKernel.LeastFloorPascals);
        var high = consistency == Consistency.Hard ? low : HandTestKernel.Upper(consistency);
        return new StrengthBand(low, Math.Sqrt(low * high), high);
    }

    /// <summary>Gives the class of a strength; a bound belongs to the harder class.</summary>
    /// <param name="undrainedShearStrength">Undrained shear strength, 0 to 2,000 kPa.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public Consistency Classify(Pressure undrainedShearStrength) => HandTestKernel.Classify(Guard.Pascals(undrainedShearStrength, 0, 2000, nameof(undrainedShearStrength)));

    /// <summary>Says how a class is told by hand.</summary>
    /// <param name="consistency">The class.</param>
    /// <returns>The test in English.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not defined.</exception>
    public string HandTest(Consistency consistency) => Guard.Defined(consistency, consistency is >= Consistency.VerySoft and <= Consistency.Hard, nameof(consistency)) switch
    {
        Consistency.VerySoft => "a fist goes in several inches easily",
        Consistency.Soft => "a thumb goes in several inches easily",
        Consistency.Medium => "a thumb goes in with moderate effort",
        Consistency.Stiff => "a thumb makes a dent, with great effort",
        Consistency.VeryStiff => "a thumbnail makes a dent readily",
        _ => "a thumbnail makes a dent with difficulty",
    };

    /// <summary>Works the strength of a class out step by step.</summary>
    /// <param name="consistency">What thumb or fist found.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The class is not defined.</exception>
    public Working Explain(Consistency consistency)
    {
        var band = Evaluate(consistency);
        string low = Text.Kilopascals(band.LowPascals), high = Text.Kilopascals(band.HighPascals);
        return new WorkingBuilder(Name)
            .Step("s_low", "lower bound of the class", consistency == Consistency.VerySoft ? "none; the least strength taken" : "q_u/2", HandTest(consistency), low, consistency == Consistency.VerySoft ? GeneralSources.Judgement : Source)
            .Step("s_high", "upper bound of the class", consistency == Consistency.Hard ? "none; the lower bound" : "q_u/2", HandTest(consistency), high, consistency == Consistency.Hard ? GeneralSources.Judgement : Source)
            .Step("s_u", "undrained shear strength, geometric middle", "sqrt(s_low s_high)", "sqrt(" + low + " x " + high + ")", Text.Kilopascals(band.CentralPascals), GeneralSources.Judgement)
            .Build();
    }
}
