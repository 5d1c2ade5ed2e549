using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Sources of the room: the line under load.</summary>
internal static class LinesSources
{
    /// <summary>Energy of a linear spring.</summary>
    public static readonly Source Spring = new("linear-spring", "Work of a linear spring; engineering strain on the unstretched length", Standing.Derived);

    /// <summary>Release wave.</summary>
    public static readonly Source ReleaseWave = new("release-wave", "One-dimensional release wave in unstretched coordinates, exact for a linear line, no loss", Standing.Derived);

    /// <summary>Bound on hardware at the end of lines.</summary>
    public static readonly Source HardwareBound = new("hardware-bound", "Bound min(F0/Z, 1.02 sqrt(2E/(M + m_L/3))) on the speed of hardware at the end of a chain of lines, from the exact solution and lumped-line runs", Standing.Derived);

    /// <summary>Fitting on the end of one line.</summary>
    public static readonly Source FittingWave = new("fitting-wave", "Mass on the released end of a tension-only elastic line, far end held: characteristics followed over the round trips of the wave", Standing.Derived);

    /// <summary>Energy bound.</summary>
    public static readonly Source EnergyBound = new("energy-bound", "All stored energy in the hardware, v = sqrt(2E/M)", Standing.Derived);

    /// <summary>Elastic tail on a low-stretch line.</summary>
    public static readonly Source ElasticTail = new("elastic-tail", "UK MAIB report 13/2017 as reported: a low-stretch line alone parted with little recoil; with an elastic tail its end snapped back more than 15 m in under a second. Safety digest 2017: stored energy grows with the length of the tail", Standing.Secondary);

    /// <summary>Held anchor.</summary>
    public static readonly Source HeldAnchor = new("held-anchor", "Energy balance of a take-up on a held anchor, F = P + sqrt(P^2 + 2kPs + k m v^2)", Standing.Derived);

    /// <summary>Locked gear.</summary>
    public static readonly Source LockedGear = new("locked-gear", "Take-up in a locked gear: the rims never exceed the theoretical speed, so F is at most P + v_t sqrt(k m)", Standing.Derived);

    /// <summary>Raised throttle.</summary>
    public static readonly Source Throttle = new("raised-throttle", "Envelope of the response to a force raised evenly, P min(2, 1 + T/(pi t_r)), longest natural period", Standing.Derived);

    /// <summary>Two masses with break-out.</summary>
    public static readonly Source BreakOutTwoMass = new("break-out-two-mass", "Two masses on a linear line, the second released at its static resistance: a linear oscillator after break-out", Standing.Derived);

    /// <summary>Careless load.</summary>
    public static readonly Source Careless = new("careless-load", "Careless load: 0.5 m of slack and 5 km/h on a held anchor (judgement)", Standing.Judgement);

    /// <summary>Stiffness of nylon webbing on first loading.</summary>
    public static readonly Source NylonWebbing = new("nylon-webbing-stiffness", "Nylon webbing: EA/MBS 2 on first loading (8 to 10 % at a fifth of breaking strength, reported) to 5 (strap that breaks at 20 %); the band is a choice", Standing.FromMemory);

    /// <summary>Stiffness of polyester webbing.</summary>
    public static readonly Source PolyesterWebbing = new("polyester-webbing-stiffness", "Polyester webbing: EA/MBS 6 to 8", Standing.FromMemory);

    /// <summary>Stiffness of bedded HMPE rope.</summary>
    public static readonly Source HmpeRope = new("hmpe-rope-stiffness", "HMPE rope, bedded: EA/MBS 50 to 85, published mooring-line fits, basis of OMAE2025-156384", Standing.Secondary);

    /// <summary>Second pull.</summary>
    public static readonly Source SecondPull = new("bedded-in", "A rope cycled to half of break takes about half of its first energy, so about twice the stiffness: Turner and van de Griend, History and Science of Knots, p. 185", Standing.Secondary);

    /// <summary>Distance rule.</summary>
    public static readonly Source Distance = new("distance-rules", "Largest published rule, 2.5 x the line, to the side: NSW Farmers safety programme, reported 2022. Others: 1.5 x (copies of the Australian strap instructions), 2 x the paid-out line and one cable length (US Army recovery manuals)", Standing.Secondary);

    /// <summary>Published fits of mooring lines.</summary>
    public static readonly Source MooringFits = new("mooring-fits", "Mooring-line property fits, basis of Davies, Baca and Hall, OMAE2025-156384, from a secondary carrier", Standing.Secondary);

    /// <summary>Stiffness bands from memory.</summary>
    public static readonly Source StiffnessFromMemory = new("stiffness-from-memory", "Relative stiffness of webbing, aramid, six-strand wire and grade 80 chain", Standing.FromMemory);

    /// <summary>Yarns.</summary>
    public static readonly Source Yarn = new("tti-yarn", "Tension Technology International, Synthetic fibre yarn properties, Table 1", Standing.Primary);

    /// <summary>Double-braided nylon rope.</summary>
    public static readonly Source BraidedNylon = new("ufc-4-159-03", "UFC 4-159-03 Table 6-8, double-braided nylon rope, dry, cyclic loading", Standing.Primary);

    /// <summary>The size of it whose row is mended.</summary>
    public static readonly Source BraidedNylonMended = new("ufc-4-159-03-si-column", "UFC 4-159-03 Table 6-8, 1.8 in: AE of the SI column, 17.32e5 N, instead of the misprint in kips; break inferred by the ratio 3.54 of the other sizes", Standing.Derived);

    /// <summary>Laid polyester rope.</summary>
    public static readonly Source LaidPolyester = new("laid-polyester-rope", "Engineering reference table, three-strand polyester rope of 48 mm: 320 kN at 1.74 kg/m", Standing.Secondary);

    /// <summary>Broken synthetic line.</summary>
    public static readonly Source NavalTowing = new("navy-towing-manual-c-5", "Broken synthetic line, ends up to 500 mph: TB 55-1900-232-10 C-5", Standing.Primary);

    /// <summary>Snap-back against a filmed test.</summary>
    public static readonly Source SnapbackSimulation = new("snapback-simulation-2022", "ORE Catapult, Mooring Rope Snapback Simulation, 2 May 2022: tip at contact", Standing.Primary);

    /// <summary>Hook on a nylon rope.</summary>
    public static readonly Source ExtensionHook = new("extension-nylon-hook", "University extension text on towing with nylon rope: hook thrown at 600 to 700 mph", Standing.Primary);

    /// <summary>Shape and drag of fragments.</summary>
    public static readonly Source FragmentShape = new("ddesb-tp-12", "DDESB TP-12: shape factor of forged steel fragments 2600 kg/m3; drag coefficient 1.2 assumed; air 1.225 kg/m3", Standing.FromMemory);

    /// <summary>Free flight.</summary>
    public static readonly Source FreeFlight = new("free-flight", "Flight of a point mass in vacuum and with quadratic drag", Standing.Derived);

    /// <summary>Debris risk analysis.</summary>
    public static readonly Source DebrisRisk = new("14-cfr-417-c", "14 CFR Part 417 Appendix C, debris risk analysis, (b)(3) and (b)(8)(iv), text of 10 December 2020", Standing.Primary);

    /// <summary>Re-entry debris.</summary>
    public static readonly Source ReEntry = new("nasa-std-8719-14", "NASA-STD-8719.14, as abstracted by a secondary carrier", Standing.Secondary);

    /// <summary>Fatality against energy.</summary>
    public static readonly Source FatalityReport = new("assure-a4-2017", "ASSURE task A4 report 2017 and preamble of the 2021 rule, as abstracted by a secondary carrier", Standing.Secondary);

    /// <summary>Unmanned aircraft over people.</summary>
    public static readonly Source Category3 = new("14-cfr-107-130", "14 CFR 107.130", Standing.Primary);

    /// <summary>Hazardous fragments.</summary>
    public static readonly Source HazardousFragment = new("dod-6055-09", "DoD 6055.09-M and DDESB TP-12 as explained in a secondary text; origin US Army Ordnance 1944", Standing.Secondary);

    /// <summary>Army recovery manuals.</summary>
    public static readonly Source ArmyManual = new("fm-20-22", "US Army FM 20-22 (1984) and FM 4-30.31 (2006), vehicle-recovery text from a reproduction", Standing.Secondary);

    /// <summary>Strap instructions.</summary>
    public static readonly Source StrapInstructions = new("f2017l01560-instructions", "Instructions required by the Australian strap standard F2017L01560, from suppliers' copies", Standing.Secondary);

    /// <summary>Emergency service.</summary>
    public static readonly Source EmergencyService = new("ses-commander-2021", "State emergency service unit commander, regional press, 22 December 2021", Standing.Secondary);

    /// <summary>Farmers' programme.</summary>
    public static readonly Source FarmersProgramme = new("nsw-farmers-2022", "NSW Farmers safety programme, press of November 2022", Standing.Secondary);

    /// <summary>Regulators.</summary>
    public static readonly Source RegulatorZone = new("regulators-2022", "SafeWork NSW list as printed in 2022 (reported) and WorkSafe Victoria alert 2022", Standing.Secondary);

    /// <summary>Mooring alert.</summary>
    public static readonly Source MooringAlert = new("ukpi-sa-015", "UK P&I loss-prevention Safety Alert SA 015, Snap-Back Zones", Standing.Primary);

    /// <summary>Mooring deck.</summary>
    public static readonly Source MooringDeck = new("coswp-26-3-2", "COSWP 2015 and 2019, section 26.3.2, as quoted in a club bulletin and trade press", Standing.Secondary);

    /// <summary>Tether.</summary>
    public static readonly Source TetherArrest = new("tether-arrest", "Energy of a linear tether to its break, and its force in an arrest", Standing.Derived);

    /// <summary>Damper.</summary>
    public static readonly Source PlasticCapture = new("plastic-capture", "Plastic capture of a moving mass by a weight at rest: an ideal bound; no measured reduction is published", Standing.Derived);

    /// <summary>Catenary.</summary>
    public static readonly Source Catenary = new("catenary", "Parabola and catenary of a uniform line", Standing.Derived);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Spring, ReleaseWave, HardwareBound, FittingWave, EnergyBound, ElasticTail, HeldAnchor, LockedGear, Throttle, BreakOutTwoMass, Careless, NylonWebbing, PolyesterWebbing, HmpeRope, SecondPull, Distance, MooringFits, StiffnessFromMemory, Yarn, BraidedNylon, BraidedNylonMended, LaidPolyester, NavalTowing, SnapbackSimulation, ExtensionHook, FragmentShape, FreeFlight, DebrisRisk, ReEntry, FatalityReport, Category3, HazardousFragment, ArmyManual, StrapInstructions, EmergencyService, FarmersProgramme, RegulatorZone, MooringAlert, MooringDeck, TetherArrest, PlasticCapture, Catenary];
}
