using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Partial factors that a breaking strength keeps over a computed peak.</summary>
/// <remarks>
/// <para>sf = max(k_load k_cons k_red k_wear k_mat k_twist, 2.3 k_red k_wear k_twist). Load 1.3, winch 1.2; consequence 1.3; reduction the greater of termination and bending factor, 1 on a strength that is derated already (it stands once, in the strength or here); wear 1.0 thoroughly inspected, 1.10 used often without, 1.2 yard slings and where nobody says (judgement); twist 1 unless a fibre line can twist, then from a test; material steel wire 1.5 (1.35 new and certified), polyester 1.65, HMPE and aramid 2.0, other fibres 2.5.</para>
/// <para>Range: engineered loads only; the peak is computed or measured. Never multiplied with a design factor or a shock factor: those are other checks. Chain has no material factor in it: it is taken as the highest, 2.5 (judgement).</para>
/// <para>Source: offshore lifting practice, 0027/ND rev 11.2 (2016) s. 7.2 to 7.10 (primary), load and twist s. 7.4 and 7.11 (reported); since replaced by DNV-ST-N001 and cited as the revision named.</para>
/// </remarks>
public sealed class PartialFactorModel : IModel
{
    private PartialFactorModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static PartialFactorModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Partial factors";

    /// <inheritdoc/>
    public Source Source => RiggingSources.PartialFactors;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("k_cons", "consequence factor: lower than 1.3 only where the rigging merely pulls or holds back and little follows from its failure", 1.3, 1.3, string.Empty, RiggingSources.PartialFactors));

    /// <summary>Gets the wear factor of thoroughly inspected gear: 1.0.</summary>
    public double WearInspected => PartialFactorKernel.WearInspected;

    /// <summary>Gets the wear factor of gear used often without thorough inspection: 1.10.</summary>
    public double WearOftenUsed => PartialFactorKernel.WearOftenUsed;

    /// <summary>Gets the wear factor of yard slings, taken too where nobody declares wear: 1.2.</summary>
    public double WearYardSling => PartialFactorKernel.WearYardSling;

    /// <summary>Gives the full factor.</summary>
    /// <param name="material">Material of the line.</param>
    /// <param name="use">What draws it.</param>
    /// <param name="wear">Wear factor, 1 to 1.5.</param>
    /// <param name="twist">Twist factor, 1 to 2; 1 unless a fibre line can twist, then from a test of it.</param>
    /// <param name="reduction">Reduction factor, the greater of termination and bending, 1 to 4; 1 on a derated strength.</param>
    /// <param name="consequence">Consequence factor, 1 to 1.3.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PartialFactor Evaluate(PartialMaterial material, PullUse use, double wear, double twist = 1, double reduction = 1, double consequence = PartialFactorKernel.Consequence)
    {
        double mat = PartialFactorKernel.Material(Guard.Defined(material, material is >= PartialMaterial.OtherFibre and <= PartialMaterial.NewCertifiedSteelWire, nameof(material)));
        double load = PartialFactorKernel.LoadOf(Guard.Defined(use, use is PullUse.Machine or PullUse.Winch, nameof(use)));
        Guard.Range(wear, 1, 1.5, string.Empty, nameof(wear));
        Guard.Range(twist, 1, 2, string.Empty, nameof(twist));
        Guard.Range(reduction, 1, 4, string.Empty, nameof(reduction));
        Guard.Range(consequence, 1, PartialFactorKernel.Consequence, string.Empty, nameof(consequence));
        return new PartialFactor(load, consequence, reduction, mat, wear, twist, Validity.Flag(consequence));
    }

    /// <summary>Gives the reduction factor of an end: the greater of termination and bending, never the product.</summary>
    /// <param name="termination">Termination factor on breaking strength, 1 to 4.</param>
    /// <param name="bending">Bending factor on breaking strength, 1 to 4.</param>
    /// <returns>The greater.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public double Reduction(double termination, double bending) => Math.Max(Guard.Range(termination, 1, 4, string.Empty, nameof(termination)), Guard.Range(bending, 1, 4, string.Empty, nameof(bending)));

    /// <summary>Gives the peak that a shackle may see: the least of working load limit x dynamic factor, a third of its breaking load and its documented proof load.</summary>
    /// <param name="workingLoadLimit">Its working load limit, 1 to 20,000 kN.</param>
    /// <param name="dynamicFactor">Peak over steady load, 1 to 20.</param>
    /// <param name="breakingLoad">Its breaking load, 1 to 20,000 kN.</param>
    /// <param name="proofLoad">Its documented proof load, 1 to 20,000 kN; null where it is not known.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force ShacklePeak(Force workingLoadLimit, double dynamicFactor, Force breakingLoad, Force? proofLoad) => Force.FromNewtons(ShackleKernel.Peak(
        Guard.Newtons(workingLoadLimit, 1, 20000, nameof(workingLoadLimit)), Guard.Range(dynamicFactor, 1, 20, string.Empty, nameof(dynamicFactor)), Guard.Newtons(breakingLoad, 1, 20000, nameof(breakingLoad)), proofLoad is { } proof ? Guard.Newtons(proof, 1, 20000, nameof(proofLoad)) : double.NaN));

    /// <summary>Works the factor out step by step.</summary>
    /// <param name="material">Material of the line.</param>
    /// <param name="use">What draws it.</param>
    /// <param name="wear">Wear factor, 1 to 1.5.</param>
    /// <param name="twist">Twist factor, 1 to 2.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(PartialMaterial material, PullUse use, double wear, double twist = 1)
    {
        var f = Evaluate(material, use, wear, twist);
        return new WorkingBuilder(Name)
            .Step("k_load", "load factor", use.ToString(), Text.Number(f.Load), Text.Number(f.Load), RiggingSources.LoadFactor)
            .Step("k_mat", "material factor", material.ToString(), Text.Number(f.Material), Text.Number(f.Material), Source)
            .Step("k_wear k_twist", "wear and twist", "k_wear k_twist", Text.Number(wear) + " x " + Text.Number(twist), Text.Number(wear * twist), Source)
            .Step("sf", "factor on strength", "max(k_load k_cons k_red k_wear k_mat k_twist, 2.3 k_red k_wear k_twist)", Text.Number(f.Load) + " x " + Text.Number(f.Consequence) + " x " + Text.Number(wear * twist) + " x " + Text.Number(f.Material) + "; floor " + Text.Number(f.Floor), Text.Number(f.Full), Source)
            .Build();
    }
}
