using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Motion resistance and traction of a wheel on fine-grained soil after the vehicle-terrain-interface equations.</summary>
/// <remarks>
/// <para>N_v = CI b d/(W (1 - delta/h)^1.5 (1 + b/d)^0.75); s0 = 21/N_v^2.5; GTR = 0.5 log10(s/s0); MRR = 12/N_v^2 + 0.007; NTR = GTR (1 + b/d)^0.25 - MRR.</para>
/// <para>CI cone index in kPa, on fine-grained soil the rating cone index; b, d unloaded width and diameter in m; W dynamic wheel load in kN; s slip. Up to the slip s0 gross traction is not positive: the wheel does not drive, and only its resistance comes back.</para>
/// <para>The resistance has no ceiling. Below N_v 5.47 the wheel does not drive at the planning slip of 0.30: flagged. On firm soil it gives less resistance than the farm-tyre models, on soft soil more.</para>
/// <para>Source: Detwiller 2018, J. Terramechanics, as reported (secondary); the base of the logarithm is not stated there, base 10 is taken because base e would give gross traction above the load.</para>
/// </remarks>
public sealed class VtiFineSoilModel : IFlatWheelModel
{
    private VtiFineSoilModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static VtiFineSoilModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "VTI fine soil";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.VtiFine;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("N_v", "wheel numeric at which the wheel drives at slip 0.30", 5.47, double.PositiveInfinity, string.Empty, GeneralSources.Judgement),
        WheelLimits.Load);

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip) => this.OnNumericAndLoad(wheel, slip);

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = VtiKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, deflectionRatio, loadNewtons);
        var resistance = VtiKernel.MotionResistanceRatio(numeric);
        if (!(slip > VtiKernel.ZeroSlip(numeric))) return WheelFlat.NoDrive(numeric, resistance);
        var gross = VtiKernel.GrossTractionRatio(numeric, slip);
        return WheelFlat.Rolls(numeric, resistance, gross, VtiKernel.NetTractionRatio(gross, resistance, widthMetres / diameterMetres));
    }

    /// <summary>Gives the slip up to which gross traction is not positive.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <returns>The slip s0; above 1 on soil where the wheel never drives.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    public Ratio SlipOfZeroTraction(WheelOnSoil wheel)
    {
        Guard.NotNull(wheel, nameof(wheel));
        return Ratio.FromDecimalFractions(VtiKernel.ZeroSlip(VtiKernel.Numeric(wheel.ConeIndex.Pascals, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, wheel.DeflectionRatio.DecimalFractions, wheel.Load.Newtons)));
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string b = Text.Number(wheel.SectionWidth.Meters), d = Text.Number(wheel.OverallDiameter.Meters), s = Text.Number(slip.DecimalFractions), nv = Text.Number(result.Numeric);
        string mrr = Text.Number(result.MotionResistanceRatio!.Value), zero = Text.Number(VtiKernel.ZeroSlip(result.Numeric));
        var working = new WorkingBuilder(Name)
            .Step("N_v", "wheel numeric", "CI b d/(W (1 - delta/h)^1.5 (1 + b/d)^0.75)", $"{Text.Number(wheel.ConeIndex.Kilopascals)} x {b} x {d}/({Text.Number(wheel.Load.Kilonewtons)} (1 - {Text.Number(wheel.DeflectionRatio.DecimalFractions)})^1.5 (1 + {b}/{d})^0.75)", nv, Source)
            .Step("MRR", "motion resistance ratio", "12/N_v^2 + 0.007", $"12/{nv}^2 + 0.007", mrr, Source)
            .Resistance(result)
            .Step("s0", "slip at which gross traction is zero", "21/N_v^2.5", $"21/{nv}^2.5", zero, Source);
        if (result.Outcome == WheelOutcome.NoDrive) return working.Nothing(result, "NT", "slip is not above s0: the wheel does not drive").Build();
        string gtr = Text.Number(result.GrossTractionRatio!.Value), ntr = Text.Number(result.NetTractionRatio!.Value);
        return working
            .Step("GTR", "gross traction ratio", "0.5 log10(s/s0)", $"0.5 log10({s}/{zero})", gtr, Source)
            .Step("NTR", "net traction ratio", "GTR (1 + b/d)^0.25 - MRR", $"{gtr} (1 + {b}/{d})^0.25 - {mrr}", ntr, Source)
            .Net(result)
            .Build();
    }
}
