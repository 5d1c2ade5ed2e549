using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Cone index that Bekker's pressure-sinkage parameters imply, so that both families of wheel models can be put on one soil.</summary>
/// <remarks>
/// <para>CI = 1.625 {k_c/(n+1) [(z+1.5)^(n+1) - z^(n+1)] + 0.517 k_phi [(z+1.5)^(n+2)/((n+1)(n+2)) + z^(n+2)/(n+2) - (z+1.5) z^(n+1)/(n+1)]}, psi, with z the depth of the cone base in inches, k_c in lbf/in^(n+1) and k_phi in lbf/in^(n+2).</para>
/// <para>The parameters come from plate tests to 0.2 or 0.3 m; deeper than 0.3 m is flagged (judgement). In coarse dry sand the index rises with depth without end and is no measure of strength.</para>
/// <para>Source: Janosi-type conversion for the army cone (reported).</para>
/// </remarks>
public sealed class BekkerConeIndexModel : IModel
{
    private BekkerConeIndexModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static BekkerConeIndexModel Instance { get; } = new();

    /// <summary>Gets the depth at which indices of terrains are compared, 6 in.</summary>
    public static Length ComparisonDepth => Length.FromMeters(6 * CriticalLayerKernel.MetresPerInch);

    /// <inheritdoc/>
    public string Name => "Cone index from Bekker parameters";

    /// <inheritdoc/>
    public Source Source => GroundSources.BekkerCone;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("z", "depth of the cone base against that of the plate tests", 0, 0.3, "m", GeneralSources.Judgement));

    /// <summary>Gives the cone index at a depth.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="depth">Depth of the base of the cone, 0 to 1 m.</param>
    /// <returns>The cone index.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    public Pressure Evaluate(BekkerTerrain terrain, Length depth)
    {
        Guard.NotNull(terrain, nameof(terrain));
        return Pressure.FromPascals(BekkerConeKernel.ConeIndex(terrain.CohesiveModulus * 1000, terrain.FrictionalModulus * 1000, terrain.Exponent, Metres(depth)));
    }

    /// <summary>Gets the limits that a depth lies outside of.</summary>
    /// <param name="depth">Depth of the base of the cone, 0 to 1 m.</param>
    /// <returns>The flags; empty within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    public IReadOnlyList<ValidityFlag> Flags(Length depth) => Validity.Flag(Metres(depth));

    /// <summary>Works the cone index out.</summary>
    /// <param name="terrain">The terrain.</param>
    /// <param name="depth">Depth of the base of the cone, 0 to 1 m.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its range.</exception>
    public Working Explain(BekkerTerrain terrain, Length depth)
    {
        var ci = Evaluate(terrain, depth);
        return new WorkingBuilder(Name + ", " + terrain.Name)
            .Step("z", "depth of the base of the cone", "z/0.0254", Text.With(depth.Meters, "m"), Text.With(depth.Meters / CriticalLayerKernel.MetresPerInch, "in"), GeneralSources.Caller)
            .Step("CI", "cone index", "1.625 {k_c/(n+1) [(z+1.5)^(n+1) - z^(n+1)] + 0.517 k_phi [(z+1.5)^(n+2)/((n+1)(n+2)) + z^(n+2)/(n+2) - (z+1.5) z^(n+1)/(n+1)]} psi", "k_c " + Text.Number(terrain.CohesiveModulus) + ", k_phi " + Text.Number(terrain.FrictionalModulus) + ", n " + Text.Number(terrain.Exponent), Text.Kilopascals(ci.Pascals), Source)
            .Build();
    }

    private static double Metres(Length depth) => Guard.Metres(depth, 0, 1, nameof(depth));
}
