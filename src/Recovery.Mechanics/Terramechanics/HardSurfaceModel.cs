using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Rolling resistance and traction of a wheel on a hard surface: the branch beside the Brixius equations.</summary>
/// <remarks>
/// <para>C_n = K b d/W; GTR = 1.02 (1 - e^(-C_n s)) + r; MRR = r; NTR = 1.02 (1 - e^(-C_n s)), at most a friction coefficient where one is known. r 0.02 bias-ply, 0.01625 radial.</para>
/// <para>K surface constant in kPa, <b>data of the user</b>, given in place of the cone index of <see cref="WheelOnSoil"/>; no value is published. b, d unloaded width and diameter in m; W wheel load in kN; s slip.</para>
/// <para>Remembered pulls on concrete correspond to C_n 10 to 18; outside that the value comes back flagged. Use it for what a machine can impose where a road or a yard is in reach; the soil equations must not be used there.</para>
/// <para>Source: an off-road tyre force model of 1991 that names no origin (secondary).</para>
/// </remarks>
public sealed class HardSurfaceModel : IFlatWheelModel
{
    private readonly double _rolling;
    private readonly double _friction;

    private HardSurfaceModel(string name, double rolling, double friction)
    {
        Name = name;
        _rolling = rolling;
        _friction = friction;
    }

    /// <summary>Gets the model with the rolling resistance of bias-ply tyres.</summary>
    public static HardSurfaceModel Bias { get; } = new("Hard surface (bias-ply)", HardSurfaceConstants.Bias.Rolling, HardSurfaceKernel.Limit);

    /// <summary>Gets the model with the rolling resistance of radial tyres.</summary>
    public static HardSurfaceModel Radial { get; } = new("Hard surface (radial)", HardSurfaceConstants.Radial.Rolling, HardSurfaceKernel.Limit);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.HardSurface;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("C_n", "hard-surface numeric", 10, 18, string.Empty, TerramechanicsSources.HardSurfaceNumeric));

    /// <summary>Gives the same model with net traction held at a known friction coefficient.</summary>
    /// <param name="friction">Greatest net traction over load on that surface, 0.05 to 1.02.</param>
    /// <returns>The capped model.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside its range.</exception>
    public HardSurfaceModel CappedAt(Ratio friction) => new(Name + ", capped", _rolling, Guard.Fraction(friction, 0.05, HardSurfaceKernel.Limit, nameof(friction)));

    /// <inheritdoc/>
    public WheelResult Evaluate(WheelOnSoil wheel, Ratio slip)
    {
        Guard.NotNull(wheel, nameof(wheel));
        var s = Guard.Fraction(slip, 0, 1, nameof(slip));
        var flat = this.At(wheel, s);
        return new WheelResult(this, flat, wheel.Load.Newtons, s, Validity.Flag(flat.Numeric));
    }

    WheelFlat IFlatWheelModel.At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip)
    {
        var numeric = HardSurfaceKernel.Numeric(coneIndexPascals, widthMetres, diameterMetres, loadNewtons);
        var net = HardSurfaceKernel.NetTractionRatio(numeric, slip, _friction);
        return WheelFlat.Rolls(numeric, _rolling, net + _rolling, net);
    }

    /// <inheritdoc/>
    public Working Explain(WheelOnSoil wheel, Ratio slip)
    {
        var result = Evaluate(wheel, slip);
        string cn = Text.Number(result.Numeric), r = Text.Number(_rolling), ntr = Text.Number(result.NetTractionRatio!.Value);
        return new WorkingBuilder(Name)
            .Step("C_n", "hard-surface numeric", "K b d/W", $"{Text.Number(wheel.ConeIndex.Kilopascals)} x {Text.Number(wheel.SectionWidth.Meters)} x {Text.Number(wheel.OverallDiameter.Meters)}/{Text.Number(wheel.Load.Kilonewtons)}", cn, Source)
            .Step("MRR", "motion resistance ratio", "r", r, r, Source)
            .Resistance(result)
            .Step("NTR", "net traction ratio", "min(mu, 1.02 (1 - e^(-C_n s)))", $"min({Text.Number(_friction)}, 1.02 (1 - e^(-{cn} x {Text.Number(slip.DecimalFractions)})))", ntr, Source)
            .Net(result)
            .Build();
    }
}
