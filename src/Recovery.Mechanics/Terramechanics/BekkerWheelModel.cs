using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Sinkage and motion resistance of a wheel, rigid or elastic, from pressure-sinkage parameters after Bekker and Wong, with the soil pushed ahead beside it.</summary>
/// <remarks>
/// <para>k = k_c/b + k_phi. Rigid: z = [3 W/(b (3-n) k sqrt(D))]^(2/(2n+1)). The tyre stays rigid while inflation and carcass p_t exceed p_gcr = k^(1/(2n+1)) [3W/((3-n) b sqrt(D))]^(2n/(2n+1)); else elastic: z = (p_t/k)^(1/n). R_c = b k z^(n+1)/(n+1).</para>
/// <para>Bulldozing, apart: R_b = b sin(a+phi)/(2 sin(a) cos(phi)) (2 z c K_c + gamma z^2 K_gamma) + gamma l0^3 (pi/2 - phi)/3 + c l0^2 (1 + tan(45 + phi/2)), a = arccos(1 - 2z/D), l0 = z tan^2(45 - phi/2), K_c = (N_c - tan phi) cos^2 phi, K_gamma = (2 N_gamma/tan phi + 1) cos^2 phi.</para>
/// <para>W wheel load in kN; b, D width and diameter in m; k_c, k_phi, n, c, phi of the terrain; gamma unit weight in kN/m3. The cone index of the wheel does not enter.</para>
/// <para>For n to 1.3, z/D to 1/6 and diameters above 0.5 m (from memory); the plate tests went to about 0.3 m. Beyond, the parabola over-predicts: flagged. At half the diameter the wheel is on its hub and there is no number.
/// Ground alike in depth: no pan, no free water, no suction. Bulldozing may be left out below z/D 0.06 and comes back only above; on strong soil its bearing factors make it larger than the load, which is not believable and is flagged. Use residual cohesion for it.</para>
/// <para>On very soft clay p_gcr lies near 110 kPa: there lower inflation helps nothing until inflation and carcass fall below it.</para>
/// <para>Source: Bekker 1956 and 1969, Wong 2008 ch. 2 (form reported, constants from memory).</para>
/// </remarks>
public sealed class BekkerWheelModel : IModel
{
    // Sinkage over diameter at which the hub is level with the ground (geometry).
    private const double Hub = 0.5;

    private BekkerWheelModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static BekkerWheelModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Bekker-Wong wheel";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.BekkerWheel;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(
        new ValidityLimit("n", "exponent of the terrain", 0, 1.3, string.Empty, TerramechanicsSources.BekkerRange),
        new ValidityLimit("D", "diameter of the wheel", 0.5, double.PositiveInfinity, "m", TerramechanicsSources.BekkerRange),
        new ValidityLimit("z/D", "sinkage over diameter", 0, 1.0 / 6, string.Empty, TerramechanicsSources.BekkerRange),
        new ValidityLimit("z", "sinkage against that of the plate tests", 0, 0.3, "m", TerramechanicsSources.PlateTests),
        new ValidityLimit("R_b/W", "bulldozing over load", 0, 1, string.Empty, GeneralSources.Judgement));

    /// <summary>Gives sinkage and resistance of one wheel.</summary>
    /// <param name="wheel">The wheel and its load; deflection ratio and cone index do not enter.</param>
    /// <param name="terrain">The terrain.</param>
    /// <param name="tyrePressure">Inflation plus the pressure that the carcass carries, 1 to 2,000 kPa; null for a rigid wheel.</param>
    /// <param name="unitWeight">Unit weight of the soil for bulldozing, 5 to 24 kN/m3; null to leave bulldozing out.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException">Wheel or terrain is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BekkerWheelResult Evaluate(WheelOnSoil wheel, BekkerTerrain terrain, Pressure? tyrePressure = null, SpecificWeight? unitWeight = null)
    {
        Guard.NotNull(wheel, nameof(wheel));
        Guard.NotNull(terrain, nameof(terrain));
        double? pressure = tyrePressure is { } p ? Guard.Pascals(p, 1, 2000, nameof(tyrePressure)) : null;
        double? gamma = unitWeight is { } g ? Guard.NewtonsPerCubicMetre(g, 5, 24, nameof(unitWeight)) : null;
        double b = wheel.SectionWidth.Meters, d = wheel.OverallDiameter.Meters, w = wheel.Load.Newtons, n = terrain.Exponent;
        var implied = BekkerConeIndexModel.Instance.Evaluate(terrain, BekkerConeIndexModel.ComparisonDepth);
        var k = Modulus(terrain, b);
        if (!(k > 0 && n < 3)) return new BekkerWheelResult(this, terrain, w, TyreMode.Rigid, null, null, d, null, null, implied, Validity.Flag(n, d));
        var critical = BekkerKernel.CriticalPressure(w, b, d, k, n);
        var mode = pressure is { } stiff && stiff <= critical ? TyreMode.Elastic : TyreMode.Rigid;
        var z = mode == TyreMode.Elastic ? BekkerKernel.PlateSinkage(pressure!.Value, k, n) : BekkerKernel.RigidSinkage(w, b, d, k, n);
        if (!(z < Hub * d)) return new BekkerWheelResult(this, terrain, w, mode, critical, null, d, null, null, implied, Validity.Flag(n, d));
        double? bulldozing = gamma is { } weight && z / d > BulldozingKernel.LeastSinkageRatio ? Bulldozing(terrain, z, d, b, weight) : null;
        return new BekkerWheelResult(this, terrain, w, mode, critical, z, d, BekkerKernel.CompactionResistance(b, k, z, n), bulldozing, implied, Validity.Flag(n, d, z / d, z, (bulldozing ?? 0) / w));
    }

    /// <summary>Gives the sinkage of a wheel that slips from its sinkage without slip, (1 + s)/(1 - 0.5 s) times (Lyasko, reported).</summary>
    /// <param name="sinkage">Sinkage without slip, 0 to 2 m.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The sinkage at that slip. No resistance is published for it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Length SinkageAtSlip(Length sinkage, Ratio slip) =>
        Length.FromMeters(Guard.Metres(sinkage, 0, 2, nameof(sinkage)) * BekkerKernel.SlipSinkage(Guard.Fraction(slip, 0, 1, nameof(slip))));

    /// <summary>Gives the sinkage of a rigid wheel in the rut of another, on soil with an exponent of about one: (3W/(2 (k_c + b k_phi) sqrt(D)) + z^1.5)^(2/3) (reported).</summary>
    /// <param name="wheel">The wheel that follows.</param>
    /// <param name="terrain">The terrain; exponent 0.95 to 1.05, because the form is published for 1 only.</param>
    /// <param name="rut">Sinkage of the wheel before, 0 to 2 m. Softening of remoulded soil is not in the model.</param>
    /// <returns>The sinkage below the uncut ground.</returns>
    /// <exception cref="ArgumentNullException">Wheel or terrain is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rut or the exponent is outside its range.</exception>
    /// <exception cref="ArgumentException">The terrain gives no support under this width.</exception>
    public Length SinkageInRut(WheelOnSoil wheel, BekkerTerrain terrain, Length rut)
    {
        Guard.NotNull(wheel, nameof(wheel));
        Guard.NotNull(terrain, nameof(terrain));
        Guard.Range(terrain.Exponent, 0.95, 1.05, string.Empty, "terrain exponent");
        var before = Guard.Metres(rut, 0, 2, nameof(rut));
        var k = Modulus(terrain, wheel.SectionWidth.Meters);
        if (!(k > 0)) throw new ArgumentException("terrain gives no support under a width of " + Text.With(wheel.SectionWidth.Meters, "m") + ".", nameof(terrain));
        return Length.FromMeters(BekkerKernel.RepeatedSinkage(wheel.Load.Newtons, wheel.SectionWidth.Meters, wheel.OverallDiameter.Meters, k, before));
    }

    /// <summary>Works the resistance out step by step.</summary>
    /// <param name="wheel">The wheel and its load.</param>
    /// <param name="terrain">The terrain.</param>
    /// <param name="tyrePressure">Inflation plus carcass pressure, 1 to 2,000 kPa; null for a rigid wheel.</param>
    /// <param name="unitWeight">Unit weight for bulldozing, 5 to 24 kN/m3; null to leave it out.</param>
    /// <returns>The worked steps; the last is the compaction resistance.</returns>
    /// <exception cref="ArgumentNullException">Wheel or terrain is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(WheelOnSoil wheel, BekkerTerrain terrain, Pressure? tyrePressure = null, SpecificWeight? unitWeight = null)
    {
        var r = Evaluate(wheel, terrain, tyrePressure, unitWeight);
        string b = Text.Number(wheel.SectionWidth.Meters), d = Text.Number(wheel.OverallDiameter.Meters), w = Text.Number(wheel.Load.Kilonewtons), n = Text.Number(terrain.Exponent);
        var k = Text.Number(Modulus(terrain, wheel.SectionWidth.Meters) / 1000);
        var working = new WorkingBuilder(Name + ", " + terrain.Name)
            .Step("k", "modulus of the terrain under this width, kN/m^(n+2)", "k_c/b + k_phi", $"{Text.Number(terrain.CohesiveModulus)}/{b} + {Text.Number(terrain.FrictionalModulus)}", k, terrain.Source);
        if (r.CriticalPressure is { } critical)
            working.Step("p_gcr", "pressure of inflation and carcass up to which the tyre flattens", "k^(1/(2n+1)) [3W/((3-n) b sqrt(D))]^(2n/(2n+1))", $"W {w}, b {b}, D {d}, n {n}, k {k}", Text.Kilopascals(critical.Pascals), Source);
        if (r.Sinkage is not { } z) return working.Step("z", "the wheel sinks to its hub: there is no number", "none", "none", "immobile", Source).Build();
        var depth = Text.Number(z.Meters);
        if (r.Mode == TyreMode.Elastic) working.Step("z", "sinkage, flattened tyre", "(p_t/k)^(1/n)", $"({Text.Number(tyrePressure!.Value.Kilopascals)}/{k})^(1/{n})", depth + " m", Source);
        else working.Step("z", "sinkage, rigid wheel", "[3 W/(b (3-n) k sqrt(D))]^(2/(2n+1))", $"[3 x {w}/({b} (3 - {n}) {k} sqrt({d}))]^(2/(2 x {n} + 1))", depth + " m", Source);
        if (r.Bulldozing is { } pushed) working.Step("R_b", "soil pushed ahead, beside and not inside the resistance", "Bekker and Hegedus", $"z {depth}, c {Text.Kilopascals(terrain.Cohesion.Pascals)}, phi {Text.With(terrain.FrictionAngle.Degrees, "deg")}", Text.Kilonewtons(pushed.Newtons), TerramechanicsSources.Bulldozing);
        return working.Step("R_c", "resistance from compacting the rut", "b k z^(n+1)/(n+1)", $"{b} x {k} x {depth}^({n} + 1)/({n} + 1)", Text.Kilonewtons(r.MotionResistance!.Value.Newtons), Source).Build();
    }

    /// <summary>Gives the compaction resistance of many loads of one wheel: the same kernels over spans.</summary>
    /// <param name="loadKilonewtons">Wheel load, above 0 to 500 kN, one per wheel.</param>
    /// <param name="sectionWidthMetres">Section width of all wheels, 0.05 to 2 m.</param>
    /// <param name="overallDiameterMetres">Overall diameter of all wheels, 0.2 to 4 m.</param>
    /// <param name="terrain">The terrain.</param>
    /// <param name="tyrePressureKilopascals">Inflation plus carcass pressure of all wheels, 1 to 2,000 kPa; null for rigid wheels.</param>
    /// <param name="motionResistanceKilonewtons">Receives the compaction resistance, kN; 0, without meaning, where <paramref name="rolls"/> is false.</param>
    /// <param name="rolls">Receives whether the wheel stays above its hub.</param>
    /// <exception cref="ArgumentNullException">The terrain is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void MotionResistance(ReadOnlySpan<double> loadKilonewtons, double sectionWidthMetres, double overallDiameterMetres, BekkerTerrain terrain, double? tyrePressureKilopascals, Span<double> motionResistanceKilonewtons, Span<bool> rolls)
    {
        Guard.SameLength(loadKilonewtons.Length, motionResistanceKilonewtons.Length, nameof(motionResistanceKilonewtons));
        Guard.SameLength(loadKilonewtons.Length, rolls.Length, nameof(rolls));
        Guard.All(loadKilonewtons, 1e-3, 500, "kN", nameof(loadKilonewtons));
        WheelBatch.GuardWheel(sectionWidthMetres, overallDiameterMetres, WheelOnSoil.LeastDeflectionRatio);
        Guard.NotNull(terrain, nameof(terrain));
        var pressure = tyrePressureKilopascals is { } p ? Guard.Range(p, 1, 2000, "kPa", nameof(tyrePressureKilopascals)) * 1000 : double.PositiveInfinity;
        double k = Modulus(terrain, sectionWidthMetres), n = terrain.Exponent;
        for (var i = 0; i < rolls.Length; i++)
        {
            double w = loadKilonewtons[i] * 1000, z = double.PositiveInfinity;
            if (k > 0 && n < 3)
                z = pressure <= BekkerKernel.CriticalPressure(w, sectionWidthMetres, overallDiameterMetres, k, n) ? BekkerKernel.PlateSinkage(pressure, k, n) : BekkerKernel.RigidSinkage(w, sectionWidthMetres, overallDiameterMetres, k, n);
            rolls[i] = z < Hub * overallDiameterMetres;
            motionResistanceKilonewtons[i] = rolls[i] ? BekkerKernel.CompactionResistance(sectionWidthMetres, k, z, n) / 1000 : 0;
        }
    }

    private static double Modulus(BekkerTerrain terrain, double widthMetres) => BekkerKernel.Modulus(terrain.CohesiveModulus * 1000, terrain.FrictionalModulus * 1000, widthMetres);

    private static double Bulldozing(BekkerTerrain terrain, double z, double d, double b, double gamma)
    {
        var friction = terrain.FrictionAngle.Radians;
        return BulldozingKernel.Resistance(
            z, d, b, terrain.Cohesion.Pascals, friction, gamma, BulldozingKernel.CohesionFactor(friction, BulldozingKernel.BearingCohesion(friction)), BulldozingKernel.WeightFactor(friction, BulldozingKernel.BearingWeightOverTangent(friction)));
    }
}
