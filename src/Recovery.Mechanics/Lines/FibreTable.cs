using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Published and remembered properties of lines, each number with its standing.</summary>
/// <remarks>Defaults and no measurements: the curve of the line at hand replaces them. Older figures for HMPE (25 to 40) and polyester rope (8 to 12) are too soft for bedded rope; using 28.6 for bedded HMPE rope understates a peak 1.4 times.</remarks>
public static class FibreTable
{
    /// <summary>AE over breaking force of double-braided nylon rope, the ratio of every row of UFC 4-159-03 Table 6-8 (derived).</summary>
    public const double BraidedNylonRatio = 3.54;

    /// <summary>Mass of wire rope, g/(m kN), by the mooring fits (<see cref="LinesSources.MooringFits"/>).</summary>
    internal const double WireRopeMass = 5.18;

    /// <summary>Mass of studless chain of grade R4, g/(m kN), by the same.</summary>
    internal const double ChainR4Mass = 16.5;

    /// <summary>Mass of a laid polyester rope, g/(m kN): 1.74 kg/m at 320 kN (<see cref="LinesSources.LaidPolyester"/>).</summary>
    private const double LaidPolyester = 1740.0 / 320;

    /// <summary>Gets relative stiffness by kind and loading.</summary>
    public static IReadOnlyList<StiffnessEntry> Stiffness { get; } = Array.AsReadOnly<StiffnessEntry>(
    [
        new(LineKind.NylonStrap, LineLoading.FirstLoading, 2, 3, null, LinesSources.StiffnessFromMemory),
        new(LineKind.NylonRope, LineLoading.QuasiStatic, 1, 10, 5, LinesSources.MooringFits),
        new(LineKind.PolyesterWebbing, LineLoading.FirstLoading, 6, 8, null, LinesSources.StiffnessFromMemory),
        new(LineKind.PolyesterRope, LineLoading.QuasiStatic, 13, 15, 14, LinesSources.MooringFits),
        new(LineKind.PolyesterRope, LineLoading.Dynamic, 20, 30, null, LinesSources.MooringFits),
        new(LineKind.HmpeWebbing, LineLoading.FirstLoading, 28.6, 28.6, 28.6, LinesSources.StiffnessFromMemory),
        new(LineKind.HmpeRope, LineLoading.QuasiStatic, 50, 60, 56, LinesSources.MooringFits),
        new(LineKind.HmpeRope, LineLoading.Dynamic, 60, 85, null, LinesSources.MooringFits),
        new(LineKind.AramidRope, LineLoading.QuasiStatic, 18, 25, null, LinesSources.StiffnessFromMemory),
        new(LineKind.LcpRope, LineLoading.QuasiStatic, 47.6, 47.6, 47.6, LinesSources.MooringFits),
        new(LineKind.WireRopeSixStrand, LineLoading.QuasiStatic, 65, 75, null, LinesSources.StiffnessFromMemory),
        new(LineKind.WireRopeSheathed, LineLoading.QuasiStatic, 95, 95, 95, LinesSources.MooringFits),
        new(LineKind.ChainGrade80, LineLoading.QuasiStatic, 70, 90, null, LinesSources.StiffnessFromMemory),
        new(LineKind.ChainR4, LineLoading.QuasiStatic, 71, 71, 71, LinesSources.MooringFits),
    ]);

    /// <summary>Gets the laws of dynamic stiffness for small cycles.</summary>
    public static IReadOnlyList<DynamicStiffnessLaw> Dynamic { get; } = Array.AsReadOnly<DynamicStiffnessLaw>(
    [
        new(LineKind.NylonRope, 2.08, 0.39, 5),
        new(LineKind.PolyesterRope, 11.6, 0.40, 14),
        new(LineKind.HmpeRope, 59, 0.54, 56),
        new(LineKind.LcpRope, 46.9, 0.54, 47.6),
    ]);

    /// <summary>Gets the yarns.</summary>
    public static IReadOnlyList<YarnProperties> Yarns { get; } = Array.AsReadOnly<YarnProperties>(
    [
        new("nylon", 4, 0.84),
        new("polyester", 10, 0.84),
        new("polypropylene", 8, 0.73),
        new("aramid", 49, 2.03),
        new("HMPE", 124, 2.65),
        new("HMPE, high grade", 175, 3.10),
        new("LCP", 46, 2.01),
        new("steel wire", 26, 0.18),
    ]);

    /// <summary>Gets the sizes of double-braided nylon rope. The row of 1.8 in is mended: its AE in kips, 417.0, is a misprint against its own SI column, 17.32e5 N, so the SI column counts and its break is inferred.</summary>
    public static IReadOnlyList<BraidedNylonRope> BraidedNylon { get; } = Array.AsReadOnly<BraidedNylonRope>(
    [
        new(1.0, 33.6, 118.9),
        new(1.2, 52, 184.1),
        new(1.4, 74, 261.9),
        new(1.6, 91, 322.1),
        new(1.8, 1.732e6),
        new(1.9, 131, 463.7),
        new(2.5, 230, 814.2),
        new(3.2, 322, 1139.8),
        new(4.8, 680, 2407.1),
    ]);

    /// <summary>Gets the fits of wire rope and chain over the square of the diameter.</summary>
    public static IReadOnlyList<MooringLineFit> Fits { get; } = Array.AsReadOnly<MooringLineFit>(
    [
        new(LineKind.WireRopeSheathed, 97.1e9, 1022e6),
        new(LineKind.ChainR4, 85.6e9, 1.21e9),
    ]);

    /// <summary>Gets the mass of lines for their breaking strength.</summary>
    public static IReadOnlyList<LineMassEntry> Masses { get; } = Array.AsReadOnly<LineMassEntry>(
    [
        new("nylon rope", 2.67, 2.83, LinesSources.MooringFits),
        new("polyester rope, parallel strands", 2.20, 2.20, LinesSources.MooringFits),
        new("polyester rope, three strands laid", LaidPolyester, LaidPolyester, LinesSources.LaidPolyester),
        new("HMPE rope", 0.83, 0.86, LinesSources.MooringFits),
        new("LCP rope", 1.25, 1.25, LinesSources.MooringFits),
        new("wire rope", WireRopeMass, WireRopeMass, LinesSources.MooringFits),
        new("studless chain, grade R4", ChainR4Mass, ChainR4Mass, LinesSources.MooringFits),
    ]);

    /// <summary>Gives the row of a kind and loading.</summary>
    /// <param name="kind">Kind of line.</param>
    /// <param name="loading">Loading.</param>
    /// <returns>The row; null where the table has none.</returns>
    public static StiffnessEntry? Find(LineKind kind, LineLoading loading) => Stiffness.FirstOrDefault(e => e.Kind == kind && e.Loading == loading);

    /// <summary>Gives the dynamic law of a kind of rope.</summary>
    /// <param name="kind">Kind of line.</param>
    /// <returns>The law; null where none is published.</returns>
    public static DynamicStiffnessLaw? Law(LineKind kind) => Dynamic.FirstOrDefault(e => e.Kind == kind);
}
