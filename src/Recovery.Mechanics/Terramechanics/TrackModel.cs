using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Gross traction, motion resistance and slip of a track by shear displacement and pressure-sinkage (Bekker, Janosi and Hanamoto, Wong).</summary>
/// <remarks>
/// <para>z0 = (p/k)^(1/n), p = W/(b l), k = k_c/b + k_phi; R_c = b k z0^(n+1)/(n+1); F = (A c + W tan phi)[1 - (K/(s l))(1 - e^(-s l/K))], A = b l; net traction F - R_c.</para>
/// <para>W load of one track in kN; b, l its width and length on the ground in m (b in k the smaller of the two); k_c, k_phi, n, c, phi of the terrain; K shear deformation modulus in m; s slip.</para>
/// <para>The pressure is taken as even along the track: load transfer and few road wheels raise the sinkage. Ground alike in depth; no belly, no slip sinkage, no bulldozing. Thrust rises with slip to its ceiling A c + W tan phi without a peak: for what a machine sustains take the slip it is planned with.
/// Sinkage beyond 0.3 m, which the plate tests did not reach, and K outside 0.01 to 0.05 m are flagged; beyond 2 m, or where the terrain gives no support, there is no number.</para>
/// <para>Source: Bekker 1969, Janosi and Hanamoto 1961, Wong 2008 ch. 2 (forms reported; the worked case from memory). Rubber-track constants are not published here.</para>
/// </remarks>
public sealed class TrackModel : IModel
{
    private TrackModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static TrackModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Track by shear displacement";

    /// <inheritdoc/>
    public Source Source => TerramechanicsSources.ShearDisplacement;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(WheelLimits.ShearModulus, new ValidityLimit("z", "sinkage against that of the plate tests", 0, 0.3, "m", TerramechanicsSources.PlateTests));

    /// <summary>Gives sinkage, resistance and traction of one track.</summary>
    /// <param name="track">The track, its load and its soil.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="track"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside its range.</exception>
    public TrackResult Evaluate(TrackOnSoil track, Ratio slip)
    {
        Guard.NotNull(track, nameof(track));
        double s = Guard.Fraction(slip, 0, 1, nameof(slip)), w = track.Load.Newtons;
        var flat = TrackFlat.From(track);
        double z = flat.Sinkage(w), pressure = w / (flat.Length * flat.Width);
        return z <= TrackFlat.Deepest
            ? new TrackResult(this, w, s, pressure, z, flat.Resistance(z), flat.Thrust(w, s), flat.Ceiling(w), Validity.Flag(flat.ShearModulus, z))
            : new TrackResult(this, w, s, pressure, null, null, null, null, Validity.Flag(flat.ShearModulus));
    }

    /// <summary>Gives the slip at which one track makes a wanted net traction.</summary>
    /// <param name="track">The track, its load and its soil.</param>
    /// <param name="netTraction">Net traction wanted of this track, 0 to 1,000 kN.</param>
    /// <returns>The slip; null where the track cannot make it at any slip.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="track"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The traction is outside its range.</exception>
    /// <exception cref="SolverException">The slip could not be found although it is bracketed.</exception>
    public Ratio? SlipFor(TrackOnSoil track, Force netTraction)
    {
        Guard.NotNull(track, nameof(track));
        double wanted = Guard.Newtons(netTraction, 0, 1000, nameof(netTraction)), w = track.Load.Newtons;
        var flat = TrackFlat.From(track);
        var z = flat.Sinkage(w);
        if (!(z <= TrackFlat.Deepest)) return null;
        var gross = wanted + flat.Resistance(z);
        if (flat.Thrust(w, 1) < gross) return null;
        return Ratio.FromDecimalFractions(RootFinder.Find(s => (flat.Thrust(w, s) - gross) / w, 0, 1, 1e-10, "slip of a track").Value);
    }

    /// <summary>Works the net traction out step by step.</summary>
    /// <param name="track">The track, its load and its soil.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>The worked steps; the last is the net traction.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="track"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside its range.</exception>
    public Working Explain(TrackOnSoil track, Ratio slip)
    {
        var r = Evaluate(track, slip);
        var terrain = track.Terrain;
        string b = Text.Number(track.Width.Meters), l = Text.Number(track.ContactLength.Meters), w = Text.Number(track.Load.Kilonewtons), n = Text.Number(terrain.Exponent), k = Text.Number(TrackFlat.From(track).Modulus / 1000), p = Text.Number(r.GroundPressure.Kilopascals);
        var working = new WorkingBuilder(Name + ", " + terrain.Name)
            .Step("k", "modulus of the terrain under this width, kN/m^(n+2)", "k_c/b + k_phi", $"{Text.Number(terrain.CohesiveModulus)}/{Text.Number(Math.Min(track.Width.Meters, track.ContactLength.Meters))} + {Text.Number(terrain.FrictionalModulus)}", k, terrain.Source)
            .Step("p", "mean ground pressure", "W/(b l)", $"{w}/({b} x {l})", p + " kPa", GeneralSources.Statics);
        if (r.Sinkage is not { } z) return working.Step("z0", "the ground gives no support: there is no number", "none", "none", "immobile", Source).Build();
        string depth = Text.Number(z.Meters), s = Text.Number(slip.DecimalFractions), limit = Text.Number(r.GreatestGrossTraction!.Value.Kilonewtons), shear = Text.Number(track.ShearModulus.Meters);
        string gross = Text.Number(r.GrossTraction!.Value.Kilonewtons), resistance = Text.Number(r.MotionResistance!.Value.Kilonewtons);
        return working
            .Step("z0", "sinkage", "(p/k)^(1/n)", $"({p}/{k})^(1/{n})", depth + " m", TerramechanicsSources.BekkerTrack)
            .Step("R_c", "resistance from compacting the rut", "b k z0^(n+1)/(n+1)", $"{b} x {k} x {depth}^({n} + 1)/({n} + 1)", resistance + " kN", TerramechanicsSources.BekkerTrack)
            .Step("F_max", "ceiling of the gross traction", "b l c + W tan(phi)", $"{b} x {l} x {Text.Number(terrain.Cohesion.Kilopascals)} + {w} tan({Text.With(terrain.FrictionAngle.Degrees, "deg")})", limit + " kN", Source)
            .Step("F", "gross traction", "F_max [1 - (K/(s l))(1 - e^(-s l/K))]", $"{limit} [1 - ({shear}/({s} x {l}))(1 - e^(-{s} x {l}/{shear}))]", gross + " kN", Source)
            .Step("NT", "net traction", "F - R_c", $"{gross} - {resistance}", Text.Kilonewtons(r.NetTraction!.Value.Newtons), Source)
            .Build();
    }

    /// <summary>Gives the net traction of one track at many loads and slips: the same kernels over spans.</summary>
    /// <param name="track">The track and its soil; its own load does not enter.</param>
    /// <param name="loadKilonewtons">Load of the track, above 0 to 1,000 kN, one per case.</param>
    /// <param name="slip">Slip, 0 to 1, one per case.</param>
    /// <param name="netTractionKilonewtons">Receives the net traction, kN; 0, without meaning, where <paramref name="carried"/> is false.</param>
    /// <param name="carried">Receives whether the ground carries the track.</param>
    /// <exception cref="ArgumentNullException">The track is null.</exception>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range or not a number; nothing is written then.</exception>
    public void NetTraction(TrackOnSoil track, ReadOnlySpan<double> loadKilonewtons, ReadOnlySpan<double> slip, Span<double> netTractionKilonewtons, Span<bool> carried)
    {
        Guard.NotNull(track, nameof(track));
        Guard.SameLength(loadKilonewtons.Length, slip.Length, nameof(slip));
        Guard.SameLength(loadKilonewtons.Length, netTractionKilonewtons.Length, nameof(netTractionKilonewtons));
        Guard.SameLength(loadKilonewtons.Length, carried.Length, nameof(carried));
        Guard.All(loadKilonewtons, 1e-3, 1000, "kN", nameof(loadKilonewtons));
        Guard.All(slip, 0, 1, string.Empty, nameof(slip));
        var flat = TrackFlat.From(track);
        for (var i = 0; i < carried.Length; i++)
        {
            double w = loadKilonewtons[i] * 1000, z = flat.Sinkage(w);
            carried[i] = z <= TrackFlat.Deepest;
            netTractionKilonewtons[i] = carried[i] ? (flat.Thrust(w, slip[i]) - flat.Resistance(z)) / 1000 : 0;
        }
    }
}
