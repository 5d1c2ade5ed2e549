using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Sources of the wheel and track models.</summary>
internal static class TerramechanicsSources
{
    /// <summary>Bias-ply constants.</summary>
    public static readonly Source Brixius = new(
        "brixius-1987",
        "Brixius 1987, Traction prediction equations for bias ply tires, ASAE Paper 87-1622; the same equations in ASABE D497 clause 3",
        Standing.Secondary);

    /// <summary>Radial constants.</summary>
    public static readonly Source BrixiusRadial = new(
        "brixius-radial",
        "Radial-tyre constants in the Brixius form, attributed to Al-Hamed, Grisso, Zoz and Von Bargen 1994, Comput. Electron. Agric. 10:45-62, and Zoz and Grisso 2003, ASAE 913C0403; values as coded in an off-road tyre force model of 1991",
        Standing.Secondary);

    /// <summary>Limits of the D497 clause that are printed there.</summary>
    public static readonly Source D497Range = new("asabe-d497-range", "ASABE D497, clause 3, limits of b/d and of static deflection", Standing.Primary);

    /// <summary>Limits of the D497 clause that are remembered.</summary>
    public static readonly Source D497RangeFromMemory = new("asabe-d497-range-memory", "ASABE D497, clause 3, range of W/(b d) and least wheel numeric", Standing.FromMemory);

    /// <summary>Loads of the tests.</summary>
    public static readonly Source TestedLoads = new("tested-wheel-loads", "Wheel loads behind the published wheel-numeric fits: farm tyres up to about 50 to 60 kN", Standing.FromMemory);

    /// <summary>Wismer and Luth.</summary>
    public static readonly Source WismerLuth = new("wismer-luth-1973", "Wismer and Luth 1973, J. Terramechanics 10(2):49-61, and 1974, Trans. ASAE 17(1):8-10,14", Standing.Secondary);

    /// <summary>Range of Wismer and Luth.</summary>
    public static readonly Source WismerLuthRange = new(
        "wismer-luth-range", "Wismer and Luth 1974, stated for b/d about 0.30 and delta/h about 0.20; a third to either side of both is taken here", Standing.FromMemory);

    /// <summary>Gee-Clough: numeric, greatest traction, efficiency.</summary>
    public static readonly Source GeeClough = new(
        "gee-clough-1980", "Gee-Clough, McAllister, Pearson and Evernden 1978, J. Terramechanics 15(2):81-94; Gee-Clough 1980, J. Agric. Eng. Res. 25:261-278: numeric and greatest coefficient of traction", Standing.Secondary);

    /// <summary>Gee-Clough: the remaining constants.</summary>
    public static readonly Source GeeCloughConstants = new(
        "gee-clough-constants", "Gee-Clough 1980, constants of the rate product 4.838 + 0.061 M and of rolling resistance 0.049 + 0.287/M; they return the published 9.5x24 table", Standing.FromMemory);

    /// <summary>Least numeric of the clay numerics and of the wheel-numeric models.</summary>
    public static readonly Source LeastNumeric = new("least-wheel-numeric", "Wheel-numeric models have no support below B_n (or C_n) of about 5 and a clay numeric of about 3", Standing.FromMemory);

    /// <summary>WES clay, towed.</summary>
    public static readonly Source WesClay = new("wes-clay-towed", "Turnage 1972, WES TR 3-666 Report 8: towed coefficient of a wheel on clay, 0.04 + 0.20/(N_c - 2.50)", Standing.FromMemory);

    /// <summary>VTI on fine-grained soil.</summary>
    public static readonly Source VtiFine = new(
        "vti-fine", "Vehicle-terrain-interface equations for wheels on fine-grained soil: Detwiller 2018, J. Terramechanics, as reported in the documentation of an academic vehicle model; base 10 of the logarithm by plausibility", Standing.Secondary);

    /// <summary>Maclaurin.</summary>
    public static readonly Source Maclaurin = new(
        "maclaurin-1990", "Maclaurin 1990 and 1997, limiting cone index and rut depth, in Saarilahti 2002, ECOWOOD Deliverable D2, University of Helsinki, eq. 2.20", Standing.Secondary);

    /// <summary>Maclaurin: resistance.</summary>
    public static readonly Source MaclaurinResistance = new("maclaurin-resistance", "Maclaurin, motion resistance ratio 0.017 + 0.453/N, third digit uncertain", Standing.FromMemory);

    /// <summary>Sinkage at which a wheel no longer rolls.</summary>
    public static readonly Source RollingSinkage = new("rolling-sinkage", "A wheel sunk more than a tenth of its diameter is outside every rolling-wheel model: engineering judgement of this library", Standing.Judgement);

    /// <summary>Hard surface.</summary>
    public static readonly Source HardSurface = new(
        "hard-surface-wheel", "Hard-surface branch beside the Brixius equations, bias and radial, as coded in an off-road tyre force model of 1991 that names no origin", Standing.Secondary);

    /// <summary>Plausible numeric on concrete.</summary>
    public static readonly Source HardSurfaceNumeric = new(
        "hard-surface-numeric", "Ballasted four-wheel-drive tractors pull 0.8 to 0.95 of their load at slip 0.15 on concrete, a hard-surface numeric of 10 to 18", Standing.FromMemory);

    /// <summary>Multi-pass.</summary>
    public static readonly Source MultiPass = new("brixius-multi-pass", "Brixius 1987, cone index after one pass over cone index before, 1 + 1.8 e^(-0.11 B_n), compactible soil", Standing.FromMemory);

    /// <summary>VTI on sand.</summary>
    public static readonly Source VtiSand = new(
        "vti-sand", "Vehicle-terrain-interface equation for gross traction of wheels on sand: Mason et al. 2016 and 2018, J. Terramechanics, as reported in the documentation of an academic vehicle model", Standing.Secondary);

    /// <summary>VTI on sand: gradient from cone index.</summary>
    public static readonly Source VtiSandGradient = new("vti-sand-gradient", "Cone index gradient of sand as CI/3.47 with the length read as inches; the unit is not stated in what reports it", Standing.FromMemory);

    /// <summary>Mobility index.</summary>
    public static readonly Source MobilityIndex = new(
        "mobility-index", "Mobility index of wheels and tracks: Kennedy and Rush 1968; FM 5-430-00-1 Vol. 1 ch. 7, 1994; Priddy 1999, ERDC TR GL-99-8 p. 42", Standing.Secondary);

    /// <summary>VCI1 of wheels.</summary>
    public static readonly Source OnePassWheels = new(
        "vci1-wheels", "Priddy and Willoughby 2006, J. Terramechanics: vehicle cone index of wheels for one pass, deflection correction, all axles powered", Standing.Primary);

    /// <summary>VCI50 of wheels to MI 115.</summary>
    public static readonly Source FiftyPassesWheels = new(
        "vci50-wheels", "Vehicle cone index of wheels for fifty passes to mobility index 115: Priddy 1999 p. 43 and Ciobotaru 2009, Leonardo El. J. Pract. Technol. 15:19-30", Standing.Secondary);

    /// <summary>VCI50 of wheels above MI 115.</summary>
    public static readonly Source FiftyPassesHeavy = new(
        "vci50-wheels-heavy", "Vehicle cone index of wheels for fifty passes above mobility index 115, 9.0 MI^0.446, attributed to Priddy 1999 p. 43 and Ciobotaru 2009 in two unreviewed texts", Standing.Secondary);

    /// <summary>VCI1 of tracks.</summary>
    public static readonly Source OnePassTracks = new("vci1-tracks", "Vehicle cone index of tracks for one pass, FM 5-430-00-1 Vol. 1 ch. 7, reported by two texts", Standing.Secondary);

    /// <summary>VCI50 of tracks.</summary>
    public static readonly Source FiftyPassesTracks = new("vci50-tracks", "Vehicle cone index of tracks for fifty passes, 19.27 + 0.43 MI - 125.79/(MI + 7.08)", Standing.FromMemory);

    /// <summary>NRMM, towed.</summary>
    public static readonly Source ExcessTowed = new(
        "nrmm-towed", "NRMM, towed resistance on fine-grained soil, Rula and Nuttall 1971, WES TR M-71-4, and Haley, Jurkat and Brady 1979, TARADCOM TR 12503: two readings that conflict, band only", Standing.FromMemory);

    /// <summary>NRMM, drawbar.</summary>
    public static readonly Source ExcessDrawbar = new("nrmm-drawbar", "NRMM, drawbar coefficient on fine-grained soil on the level at about 20 % slip, Rula and Nuttall 1971 and Haley, Jurkat and Brady 1979", Standing.FromMemory);

    /// <summary>Bekker, wheel.</summary>
    public static readonly Source BekkerWheel = new(
        "bekker-wheel", "Bekker 1956 and 1969; Wong 2008, Theory of Ground Vehicles, ch. 2: rigid and elastic wheel on pressure-sinkage parameters (forms reported, constants from memory)", Standing.FromMemory);

    /// <summary>Bekker, plate and track.</summary>
    public static readonly Source BekkerTrack = new("bekker-track", "Bekker 1969; Wong 2008, Theory of Ground Vehicles, ch. 2: sinkage and compaction resistance of a plate or track", Standing.Secondary);

    /// <summary>Range of the wheel relations.</summary>
    public static readonly Source BekkerRange = new("bekker-range", "Range of the rigid-wheel relations: n to 1.3, sinkage to a sixth of the diameter, diameter above 0.5 m", Standing.FromMemory);

    /// <summary>Range of the plate tests.</summary>
    public static readonly Source PlateTests = new("bekker-plate-tests", "Pressure-sinkage parameters come from plate tests to about 0.2 to 0.3 m", Standing.FromMemory);

    /// <summary>Bulldozing.</summary>
    public static readonly Source Bulldozing = new(
        "bekker-hegedus-bulldozing", "Bekker 1969 and Hegedus: soil pushed ahead of a wheel (form reported; factors, angle of approach and bearing factors from memory)", Standing.FromMemory);

    /// <summary>Slip sinkage.</summary>
    public static readonly Source SlipSinkage = new("lyasko-slip-sinkage", "Lyasko, sinkage at a slip over sinkage without, (1 + s)/(1 - 0.5 s)", Standing.Secondary);

    /// <summary>Shear by displacement.</summary>
    public static readonly Source ShearDisplacement = new(
        "janosi-hanamoto-1961", "Janosi and Hanamoto 1961, 1st Int. Conf. Terrain-Vehicle Systems, Turin; thrust of a track in Wong 2008, Theory of Ground Vehicles, ch. 2", Standing.Secondary);

    /// <summary>Range of the shear deformation modulus.</summary>
    public static readonly Source ShearModulus = new("shear-modulus-range", "Shear deformation modulus 0.01 to 0.025 m on firm, 0.03 to 0.05 m on soft soil", Standing.FromMemory);

    /// <summary>VCI1 by mean maximum pressure.</summary>
    public static readonly Source OnePassPressure = new("vci1-mean-maximum-pressure", "Priddy 1999, ERDC TR GL-99-8 p. 52: vehicle cone index for one pass from the mean maximum pressure, psi assumed", Standing.Secondary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        Brixius, BrixiusRadial, D497Range, D497RangeFromMemory, TestedLoads, WismerLuth, WismerLuthRange, GeeClough, GeeCloughConstants, LeastNumeric, WesClay, VtiFine,
        Maclaurin, MaclaurinResistance, RollingSinkage, HardSurface, HardSurfaceNumeric, MultiPass,
        VtiSand, VtiSandGradient, MobilityIndex, OnePassWheels, FiftyPassesWheels, FiftyPassesHeavy, OnePassTracks, FiftyPassesTracks, ExcessTowed, ExcessDrawbar,
        BekkerWheel, BekkerTrack, BekkerRange, PlateTests, Bulldozing, SlipSinkage, ShearDisplacement, ShearModulus, OnePassPressure,
    ];
}
