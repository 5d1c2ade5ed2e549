using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Rolling resistance and net traction of a drive tyre in field conditions after Gee-Clough (NIAE) 1978 and 1980.</summary>
/// <remarks>
/// <para>M = (CI b d/W) sqrt(delta/h)/(1 + b/(2 d)); (C_T)max = 0.796 - 0.92/M; k (C_T)max = 4.838 + 0.061 M; C_T = (C_T)max (1 - e^(-k s)); C_RR = 0.049 + 0.287/M.</para>
/// <para>CI cone index in kPa; b, d unloaded width and diameter in m; W dynamic wheel load in kN; s slip. C_T is a <b>net</b> coefficient: net traction is C_T W, gross traction (C_T + C_RR) W. C_RR stands alone for a wheel that is not driven.</para>
/// <para>For drive tyres on stubble, ploughed and cultivated land, M of about 3 and more. Below M 1.156 the ceiling (C_T)max is negative: it is then returned as it stands, the wheel has to be pushed. Both are far outside the fit and flagged.</para>
/// <para>On soft ground this is the most optimistic of the wheel-numeric models, where clay tests already say immobile: not the cautious side.</para>
/// <para>Source: numeric, ceiling and efficiency secondary; rate product and rolling resistance from memory, though they return the published table of a 9.5x24 tyre.</para>
/// </remarks>
public sealed class GeeCloughModel : IFlatWheelModel
{
    private GeeCloughModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static GeeCloughModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Gee-Clough";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.GeeCloughConstants;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("M", "clay numeric", 3, double.PositiveInfinity, string.Empty, TerramechanicsSources.LeastNumeric),
        WheelLimits.Load);

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip) => this.OnNumericAndLoad(wheel, slip);

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = ClayNumericKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, deflectionRatio, loadNewtons);
        double resistance = ClayNumericKernel.RollingResistance(numeric), net = ClayNumericKernel.CoefficientOfTraction(numeric, slip);
        return WheelFlat.Rolls(numeric, resistance, net + resistance, net);
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string m = Text.Number(result.Numeric), s = Text.Number(slip.DecimalFractions), crr = Text.Number(result.MotionResistanceRatio!.Value), ct = Text.Number(result.NetTractionRatio!.Value);
        var greatest = ClayNumericKernel.GreatestTraction(result.Numeric);
        var rate = ClayNumericKernel.RateProduct(result.Numeric);
        var working = WesClayModel.NumericStep(new WorkingBuilder(Name), wheel, "M", m, TerramechanicsSources.GeeClough)
            .Step("C_RR", "coefficient of rolling resistance", "0.049 + 0.287/M", $"0.049 + 0.287/{m}", crr, Source)
            .Resistance(result)
            .Step("(C_T)max", "greatest coefficient of traction, net", "0.796 - 0.92/M", $"0.796 - 0.92/{m}", Text.Number(greatest), TerramechanicsSources.GeeClough);
        return (greatest > 0
                ? working
                    .Step("k", "rate", "(4.838 + 0.061 M)/(C_T)max", $"{Text.Number(rate)}/{Text.Number(greatest)}", Text.Number(rate / greatest), Source)
                    .Step("C_T", "coefficient of traction, net", "(C_T)max (1 - e^(-k s))", $"{Text.Number(greatest)} (1 - e^(-{Text.Number(rate / greatest)} x {s}))", ct, Source)
                : working.Step("C_T", "coefficient of traction: the ceiling, because it is not positive", "(C_T)max", Text.Number(greatest), ct, Source))
            .Net(result)
            .Build();
    }
}
