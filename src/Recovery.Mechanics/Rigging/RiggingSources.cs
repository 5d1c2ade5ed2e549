using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Sources of the room: the rig.</summary>
internal static class RiggingSources
{
    public static readonly Source DesignFactorUs = new("doe-std-1090-slings", "Design factor 5 for synthetic web slings: DOE-STD-1090-96 s. 11.3.5(f)", Standing.Primary);
    public static readonly Source DesignFactorEu = new("en-1492-design-factor", "Design factor 7 for flat web slings and roundslings: EN 1492-1 and EN 1492-2:2000+A1:2008", Standing.Secondary);
    public static readonly Source DesignFactorAu = new("as-1353-design-factor", "Design factor 8 for flat web slings: AS 1353.1/.2-1997", Standing.Secondary);
    public static readonly Source ShockedTowLine = new("navy-towing-manual", "Factors 10 to 14 for shocked synthetic tow lines where no peak is computed: TB 55-1900-232-10 Table 5-4", Standing.Primary);
    public static readonly Source PartialFactors = new("0027-nd-partial-factors", "Partial factors of offshore lifting practice, 0027/ND rev 11.2 (2016) s. 7.2 to 7.10, floor 2.3; since replaced by DNV-ST-N001", Standing.Primary);
    public static readonly Source LoadFactor = new("0027-nd-load-factor", "Load factor 1.3: 0027/ND s. 7.4.1", Standing.Secondary);
    public static readonly Source ShacklePeak = new("0027-nd-shackles", "Shackle under a computed peak: 0027/ND s. 8.2", Standing.Primary);
    public static readonly Source Choker = new("choker-factor", "Choker 0.80 of the straight rating at an angle of choke above 120 deg: EN 1492-1 and US practice (ASME B30.9, WSTDA)", Standing.Secondary);
    public static readonly Source ChokeAngle = new("choke-angle", "Choker rating by angle of choke, 100/87/74/62/49 %: ASME B30.9 as reproduced; the lower bin at every edge", Standing.Secondary);
    public static readonly Source WetNylon = new("wet-nylon", "Wet nylon 0.85: UFC 4-159-03 Tables 3-7 and 6-8", Standing.Primary);
    public static readonly Source WetOther = new("wet-other", "Wet polyester and HMPE 1.00", Standing.FromMemory);
    public static readonly Source Bridle = new("bridle-statics", "Two-leg bridle and running eye by statics; friction by the capstan rule", Standing.Derived);
    public static readonly Source WebbingFriction = new("webbing-friction", "Friction of webbing on webbing 0.15 to 0.30", Standing.FromMemory);
    public static readonly Source TensionShares = new("0027-nd-shares", "Shares of the two parts of a line over a pin or sheave: 0027/ND rev 11.2 s. 5.8, as reproduced", Standing.Secondary);
    public static readonly Source Bight = new("strap-on-strap", "Strap on strap 0.5 where no figure of the maker is known", Standing.FromMemory);
    public static readonly Source ShackleAxis = new("shackle-off-axis", "Shackle off its axis: bins of WAC 296-155-33905 Figure 17 with the percentages of ASME B30.26", Standing.Secondary);
    public static readonly Source Levels = new("rig-levels", "Levels of stop and caution around the published floor 2.3: engineering judgement of this library", Standing.Judgement);
    public static readonly Source RejectCriteria = new("reject-criteria", "Cuts, broken stitching, melting, burns, knots or an illegible tag take a sling out of service: DOE-STD-1090-96, 29 CFR 1910.184", Standing.Primary);
    public static readonly Source UnknownRating = new("rating-kind", "Two readings of one tag differ five to eight times: know working load limit and breaking strength apart (Agriculture Victoria, 2022)", Standing.Primary);
    public static readonly Source AttachmentDeaths = new("recovery-point-deaths", "Six deaths from attachment to unsuitable parts: explanatory statement to the Australian recovery-strap standard F2017L01560", Standing.Secondary);
    public static readonly Source ScrewPin = new("screw-pins", "Screw pins banned in naval towing rigs: TB 55-1900-232-10 s. 5-5.4.1; usual in vehicle recovery", Standing.Primary);
    public static readonly Source BridleGates = new("bridle-gates", "Included angle up to 60 deg, caution to 90, acceptance to 120, refused above (ASME B30.9, EN 1492, AS 1353 for 120 deg; other levels judgement)", Standing.Judgement);
    public static readonly Source SoftEye = new("en-1492-1-soft-eye", "Included angle in a soft eye at most 20 deg: EN 1492-1 annex", Standing.Secondary);
    public static readonly Source SlidingStrap = new("sliding-synthetic-line", "Surging a loaded synthetic line can melt its surface: TB 55-1900-232-10 C-5, C-10", Standing.Primary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        DesignFactorUs, DesignFactorEu, DesignFactorAu, ShockedTowLine, PartialFactors, LoadFactor, ShacklePeak, Choker, ChokeAngle, WetNylon, WetOther, Bridle, WebbingFriction, TensionShares, Bight,
        ShackleAxis, Levels, RejectCriteria, UnknownRating, AttachmentDeaths, ScrewPin, BridleGates, SoftEye, SlidingStrap, .. GearSources.All,
    ];
}
