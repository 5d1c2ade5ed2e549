using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Sources of ratings, design factors and proof loads.</summary>
internal static class GearSources
{
    public static readonly Source MarkingReadings = new("marking-readings", "Readings of a bare marking: WLL = MBS/DF with the design factors of the standards, worked by hand", Standing.Derived);
    public static readonly Source Lashing = new("en-12195-2-lashing", "Lashing capacity is half the breaking strength of the assembly: EN 12195-2:2000", Standing.FromMemory);
    public static readonly Source ProofNoCapacity = new("proof-is-no-capacity", "Proof load of slings 2 x rating, a test and no capacity: DOE-STD-1090-96 11.3.5.2 and 15.4.7.3", Standing.Primary);
    public static readonly Source ShackleProof = new("shackle-proof", "Proof load of shackles 2.0 to 2.2 x limit up to 150 short tons, 1.33 to 2 above: ASME B30.26-2010 26-1.4.2", Standing.Secondary);
    public static readonly Source NavalShackle = new("naval-shackle-share", "Naval working load 50 % of proof for grade A shackles, 40 % for grade B: TB 55-1900-232-10 Table 5-4 note, D-14", Standing.Primary);
    public static readonly Source RoundslingUs = new("roundsling-us", "Design factor 5 for polyester roundslings: ASME B30.9 chapter 9-6, WSTDA-RS-1", Standing.FromMemory);
    public static readonly Source RoundslingAu = new("roundsling-au", "Design factor 7 for roundslings: AS 4497.1-1997, now AS 4497:2018", Standing.Secondary);
    public static readonly Source NaturalFibre = new("29-cfr-1918-app-ii", "Design factor 5 for natural-fibre rope slings: 29 CFR 1918 Appendix II Table 2", Standing.Primary);
    public static readonly Source FibreRopeUs = new("fibre-rope-us", "Design factor 5 for synthetic fibre rope slings: ASME B30.9 chapter 9-4", Standing.FromMemory);
    public static readonly Source FibreRopeEu = new("fibre-rope-eu", "Design factor 7 for fibre rope slings: EN 1492-4", Standing.FromMemory);
    public static readonly Source SlingFittings = new("en-1677-fittings", "Design factor 4 for metal fittings on EN 1492 slings: EN 1677 family", Standing.FromMemory);
    public static readonly Source WireRopeFactor = new("mil-dtl-3903-factor", "Design factor 5 for wire rope slings: MIL-DTL-3903 Table II note; 29 CFR 1915.112(b), text of 2010", Standing.Primary);
    public static readonly Source ChainFactor = new("alloy-chain-factor", "Design factor 4 for alloy chain slings: ASME B30.9 9-1, EN 818-4, AS 3775", Standing.FromMemory);
    public static readonly Source TieDown = new("wstda-t-1", "Design factor 3 for web tie-down assemblies: WSTDA-T-1", Standing.Secondary);
    public static readonly Source ShackleFactor = new("shackle-factor-us", "Design factor 5 for shackles up to 150 short tons, 4 above: ASME B30.26-2010 26-1.2", Standing.Secondary);
    public static readonly Source ShackleEu = new("en-13889-factor", "Design factor 5 for grade 6 shackles: EN 13889:2003 (product sheets print a breaking load of 6 x the limit)", Standing.FromMemory);
    public static readonly Source ShackleEuScope = new("en-13889-scope", "Scope 0.5 to 25 t, threaded pins only: EN 13889:2003", Standing.Primary);
    public static readonly Source ShackleAu = new("as-2741-grade-s", "Grade S shackle: least breaking force 6 x the limit, proof 2 x: AS 2741-2002 as applied in a supplier's norm", Standing.Secondary);
    public static readonly Source FibreRopeGeneral = new("ci-1401-factor", "Design factor 5 to 12 for general-purpose fibre rope, the low end with expert knowledge only: CI 1401-06 s. 4", Standing.Secondary);
    public static readonly Source Moorings = new("ufc-4-159-03-factors", "Quasi-static mooring factors: UFC 4-159-03 (2005) Table 3-7", Standing.Primary);

    /// <summary>All of them.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        MarkingReadings, Lashing, ProofNoCapacity, ShackleProof, NavalShackle, RoundslingUs, RoundslingAu, NaturalFibre, FibreRopeUs, FibreRopeEu, SlingFittings, WireRopeFactor, ChainFactor, TieDown,
        ShackleFactor, ShackleEu, ShackleEuScope, ShackleAu, FibreRopeGeneral, Moorings,
    ];
}
