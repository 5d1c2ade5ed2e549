using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Machines;

/// <summary>Bulk densities of harvested goods: every figure with its source and standing.</summary>
/// <remarks>
/// <para>Grain, pulses and oilseed: ASAE D241.4 (from memory) beside a manufacturer's grain table and US test weights (reported). Where tables differ, all figures are kept.
/// Beet and potato in a heap: from memory, no source. Forage: dry matter in a cubic metre of wagon or trailer, from published studies (primary).</para>
/// <para>Bulk silage in bunkers is compacted, 106 to 434 kg of dry matter in a cubic metre (Muck and Holmes 2000), and is no figure for a trailer: it is not listed.</para>
/// </remarks>
public static class BulkMaterials
{
    /// <summary>Gets wheat.</summary>
    public static BulkMaterial Wheat { get; } = new("wheat", BulkFamily.Grain, false, D241(772), Table(774));

    /// <summary>Gets shelled maize, 15.5 % moisture.</summary>
    public static BulkMaterial Maize { get; } = new("maize, shelled", BulkFamily.Grain, false, D241(721), Test(56));

    /// <summary>Gets rye.</summary>
    public static BulkMaterial Rye { get; } = new("rye", BulkFamily.Grain, false, D241(721), Table(722));

    /// <summary>Gets sorghum. Tables differ.</summary>
    public static BulkMaterial Sorghum { get; } = new("sorghum", BulkFamily.Grain, false, Test(50), Test(56));

    /// <summary>Gets barley.</summary>
    public static BulkMaterial Barley { get; } = new("barley", BulkFamily.Grain, false, D241(618), Table(619));

    /// <summary>Gets oats.</summary>
    public static BulkMaterial Oats { get; } = new("oats", BulkFamily.Grain, false, D241(412), Table(413));

    /// <summary>Gets soybean.</summary>
    public static BulkMaterial Soybean { get; } = new("soybean", BulkFamily.Pulse, false, D241(772), Table(774), Test(55), Test(60));

    /// <summary>Gets peas.</summary>
    public static BulkMaterial Pea { get; } = new("pea", BulkFamily.Pulse, false, D241(772), Table(774));

    /// <summary>Gets rape or canola, 8.5 % moisture. Tables differ.</summary>
    public static BulkMaterial Rapeseed { get; } = new("rapeseed", BulkFamily.Oilseed, false, Test(47), D241(640));

    /// <summary>Gets flax.</summary>
    public static BulkMaterial Flax { get; } = new("flax", BulkFamily.Oilseed, false, D241(721), Table(722));

    /// <summary>Gets sunflower; oil types reach the high figure.</summary>
    public static BulkMaterial Sunflower { get; } = new("sunflower", BulkFamily.Oilseed, false, Test(25), new BulkDensityFigure(390, MachinesSources.Remembered));

    /// <summary>Gets sugar beet, heaped. From memory, no source.</summary>
    public static BulkMaterial SugarBeet { get; } = new("sugar beet, heaped", BulkFamily.Beet, false, new BulkDensityFigure(650, MachinesSources.Remembered), new BulkDensityFigure(700, MachinesSources.Remembered));

    /// <summary>Gets potatoes, heaped. From memory, no source.</summary>
    public static BulkMaterial Potato { get; } = new("potato, heaped", BulkFamily.Potato, false, new BulkDensityFigure(640, MachinesSources.Remembered), new BulkDensityFigure(700, MachinesSources.Remembered));

    /// <summary>Gets chopped forage in a wagon: dry matter, mean of the study.</summary>
    public static BulkMaterial ChoppedForage { get; } = new("forage, chopped, in a wagon", BulkFamily.Forage, true, new BulkDensityFigure(80, MachinesSources.ForageWagon));

    /// <summary>Gets chopped alfalfa of the first cut in a wagon: dry matter; the study had 45.6 % of it.</summary>
    public static BulkMaterial AlfalfaFirstCut { get; } = new("alfalfa, first cut, chopped, in a wagon", BulkFamily.Forage, true, new BulkDensityFigure(91, MachinesSources.ForageWagon));

    /// <summary>Gets chopped silage maize on a trailer: dry matter, 112 plus or minus 22.5 kg/m3 (95 % of 423 loads).</summary>
    public static BulkMaterial SilageMaize { get; } = new("silage maize, on a trailer", BulkFamily.Forage, true, new BulkDensityFigure(112, MachinesSources.SilageTrailer), new BulkDensityFigure(89.5, MachinesSources.SilageTrailer), new BulkDensityFigure(134.5, MachinesSources.SilageTrailer));

    /// <summary>Gets all listed goods.</summary>
    public static IReadOnlyList<BulkMaterial> All { get; } = Array.AsReadOnly(new[] { Wheat, Maize, Rye, Sorghum, Barley, Oats, Soybean, Pea, Rapeseed, Flax, Sunflower, SugarBeet, Potato, ChoppedForage, AlfalfaFirstCut, SilageMaize });

    private static BulkDensityFigure D241(double kilogramsPerCubicMetre) => new(kilogramsPerCubicMetre, MachinesSources.AsaeD241);

    private static BulkDensityFigure Table(double kilogramsPerCubicMetre) => new(kilogramsPerCubicMetre, MachinesSources.GrainTable);

    private static BulkDensityFigure Test(double poundsPerBushel) => new(BulkKernel.FromTestWeight(poundsPerBushel), MachinesSources.TestWeight);
}
