using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Relative stiffness of a kind of line, EA over breaking strength, as a band from its soft to its stiff end.</summary>
/// <remarks>A default and no measurement: a measured curve of the line at hand replaces it. Recoil uses the band with nothing lost.</remarks>
public sealed record LineMaterial
{
    private LineMaterial(string name, double soft, double stiff, double beddedFactor, double gramsPerMetrePerKilonewton, Source source)
    {
        Name = name;
        Soft = soft;
        Stiff = stiff;
        BeddedFactor = beddedFactor;
        GramsPerMetrePerKilonewton = gramsPerMetrePerKilonewton;
        Source = source;
    }

    /// <summary>Gets nylon webbing.</summary>
    public static LineMaterial NylonWebbing { get; } = new("nylon webbing", 2, 5, 2, 2.67, LinesSources.NylonWebbing);

    /// <summary>Gets polyester webbing. Its band is that of a first pull; small cycles about a mean load are published at 1.4 to 2.3 times the quasi-static stiffness, and a second pull is taken as twice.</summary>
    public static LineMaterial PolyesterWebbing { get; } = new("polyester webbing", 6, 8, 2, 2.20, LinesSources.PolyesterWebbing);

    /// <summary>Gets HMPE rope, taken as bedded in already: its stiff end is the published one of cycled rope, so a second pull is no stiffer and its factor is 1.</summary>
    public static LineMaterial HmpeRope { get; } = new("HMPE rope", 50, 85, 1, 0.83, LinesSources.HmpeRope);

    /// <summary>Gets six-strand wire rope: from memory; its mass from published fits of mooring lines.</summary>
    public static LineMaterial WireRope { get; } = new("six-strand wire rope", 65, 75, 1, FibreTable.WireRopeMass, LinesSources.StiffnessFromMemory);

    /// <summary>Gets chain by the breaking strength that its size has in grade 80: it is the section of steel that stretches, so a chain of any other grade and the same size stretches alike. From memory, its mass (2.2 kg/m at 10 mm) too.</summary>
    public static LineMaterial ChainOfGrade80Size { get; } = new("chain", 70, 90, 1, 17.5, LinesSources.StiffnessFromMemory);

    /// <summary>Gets sheathed wire rope of offshore moorings by its published fit: a single figure, stiffer than the band of <see cref="WireRope"/>, which is from memory.</summary>
    public static LineMaterial SheathedWireRope { get; } = OfFit("sheathed wire rope", LineKind.WireRopeSheathed, FibreTable.WireRopeMass);

    /// <summary>Gets studless mooring chain of grade R4 by its published fit, by its own breaking strength: a single figure at the soft end of <see cref="ChainOfGrade80Size"/>, which is from memory.</summary>
    public static LineMaterial StudlessChainR4 { get; } = OfFit("studless chain, grade R4", LineKind.ChainR4, FibreTable.ChainR4Mass);

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets EA over breaking strength at the soft end.</summary>
    public double Soft { get; }

    /// <summary>Gets EA over breaking strength at the stiff end.</summary>
    public double Stiff { get; }

    /// <summary>Gets how many times stiffer a line is on a second pull; it raises the stiff end alone. 1 where the band is already that of a bedded-in line.</summary>
    public double BeddedFactor { get; }

    /// <summary>Gets the mass per metre and kilonewton of breaking strength, g/(m kN).</summary>
    public double GramsPerMetrePerKilonewton { get; }

    /// <summary>Gets where the band comes from.</summary>
    public Source Source { get; }

    /// <summary>Gets the material in words, invariant culture.</summary>
    /// <returns>Name and band, and whether it is that of a bedded-in line.</returns>
    public override string ToString() => Name + ", EA/MBS " + Text.Number(Soft) + " to " + Text.Number(Stiff) + (BeddedFactor > 1 ? string.Empty : ", taken as bedded in");

    private static LineMaterial OfFit(string name, LineKind kind, double gramsPerMetrePerKilonewton)
    {
        var ratio = FibreTable.Fits.Single(f => f.Kind == kind).RelativeStiffness;
        return new(name, ratio, ratio, 1, gramsPerMetrePerKilonewton, LinesSources.MooringFits);
    }
}
