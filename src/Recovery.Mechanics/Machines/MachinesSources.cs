using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Sources of the room: tyres, axles, loads.</summary>
internal static class MachinesSources
{
    /// <summary>Deflection of a tyre by load and inflation.</summary>
    public static readonly Source Saarilahti = new("saarilahti-2002", "Saarilahti 2002, ECOWOOD Deliverable D2, University of Helsinki, eq. 2.22 (forest tyres)", Standing.Secondary);

    /// <summary>Deflection from data.</summary>
    public static readonly Source StaticLoadedRadius = new("static-loaded-radius", "Deflection = half the overall diameter less the static loaded radius of the tyre data book", Standing.UserSupplied);

    /// <summary>Bulk densities of seeds.</summary>
    public static readonly Source AsaeD241 = new("asae-d241", "ASAE D241.4 OCT1992 (R2008), density, specific gravity and mass-moisture relationships of grain for storage; figures from memory", Standing.FromMemory);

    /// <summary>Bulk densities of seeds by a maker of grain equipment.</summary>
    public static readonly Source GrainTable = new("grain-table", "Grain table of a manufacturer of grain equipment, bulk densities of seeds", Standing.Secondary);

    /// <summary>Test weights of the US grain trade.</summary>
    public static readonly Source TestWeight = new("test-weight", "Test weights of US grain tables, pounds a bushel; US bushel 35.23907 L", Standing.Secondary);

    /// <summary>Figures without a publication.</summary>
    public static readonly Source Remembered = new("machines-remembered", "Figures on loads and tyres from memory, no publication to point at", Standing.FromMemory);

    /// <summary>Forage in wagons.</summary>
    public static readonly Source ForageWagon = new("wisconsin-forage-wagon", "University of Wisconsin forage wagon study: dry matter in a cubic metre of chopped forage", Standing.Primary);

    /// <summary>Silage maize on trailers.</summary>
    public static readonly Source SilageTrailer = new("silage-trailer-study", "Published trailer study of silage maize, 423 loads: dry matter in a cubic metre (full citation to be added)", Standing.Primary);

    /// <summary>From dry matter to mass as it lies.</summary>
    public static readonly Source DryMatter = new("dry-matter", "Definition of dry-matter content: mass as it lies = dry mass over dry-matter content", Standing.Derived);

    /// <summary>Bulk density of wheat from moisture.</summary>
    public static readonly Source Nelson = new("nelson-wheat", "Nelson, in ASAE D241.4, bulk density of wheat from moisture, as coded in an academic grain-drying model naming it", Standing.Secondary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Saarilahti, StaticLoadedRadius, AsaeD241, GrainTable, TestWeight, Remembered, ForageWagon, SilageTrailer, DryMatter, Nelson];
}
