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

    /// <summary>Stiffness of tractor tyres.</summary>
    public static readonly Source LinesMurphy = new("lines-murphy-1991", "Lines and Murphy 1991, J. Terramechanics 28(1):49-64, stiffness of tractor tyres; constants from memory", Standing.FromMemory);

    /// <summary>Range of static deflection of the traction models.</summary>
    public static readonly Source DeflectionRange = new("asabe-d497-deflection", "ASABE D497, clause 3: static radial deflection of 10 to 30 % of the section height", Standing.Primary);

    /// <summary>Rule of metric size markings.</summary>
    public static readonly Source TyreMarking = new("tyre-marking", "Size marking of tyres: width, ratio of height to width, rim in inches; nominal, the data book is better", Standing.FromMemory);

    /// <summary>Diameter of tyres marked in inches.</summary>
    public static readonly Source InchDiameter = new("tyre-inch-diameter", "Overall diameter of a tyre marked in inches about 1.5 b + 1.06 rim, original source not stated", Standing.Secondary);

    /// <summary>Contact area and stress.</summary>
    public static readonly Source Keller = new("keller-2005", "Keller 2005, Biosyst. Eng. 92:85-96, as given in two independent texts", Standing.Secondary);

    /// <summary>Contact area on soil and on hard ground.</summary>
    public static readonly Source OSullivan = new("osullivan-1999", "O'Sullivan and others 1999, Soil Till. Res. 49:325-335; constants from memory", Standing.FromMemory);

    /// <summary>Nominal ground pressure.</summary>
    public static readonly Source NominalPressure = new("nominal-ground-pressure", "Nominal ground pressure W/(r b), a common yardstick", Standing.Secondary);

    /// <summary>Mean contact pressure against inflation.</summary>
    public static readonly Source ArvidssonKeller = new("arvidsson-keller-2007", "Arvidsson and Keller 2007, Soil Till. Res. 96:284-291: mean contact pressure about the inflation at recommended inflation only", Standing.Primary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Saarilahti, StaticLoadedRadius, AsaeD241, GrainTable, TestWeight, Remembered, ForageWagon, SilageTrailer, DryMatter, Nelson, LinesMurphy, DeflectionRange, TyreMarking, InchDiameter, Keller, OSullivan, NominalPressure, ArvidssonKeller];
}
