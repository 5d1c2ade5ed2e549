using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Published design factors as data, for hosts to show and for policies to be made from. None is a default of this library.</summary>
public static class PublishedDesignFactors
{
    private static readonly PublishedDesignFactor ShackleTo150 = new(GearItem.Shackle, StandardRegion.UnitedStates, 5, 5, FactorBasis.BreakingStrength, GearSources.ShackleFactor);
    private static readonly PublishedDesignFactor ShackleAbove150 = new(GearItem.Shackle, StandardRegion.UnitedStates, 4, 4, FactorBasis.BreakingStrength, GearSources.ShackleFactor);

    /// <summary>Gets every published factor.</summary>
    public static IReadOnlyList<PublishedDesignFactor> All { get; } = Array.AsReadOnly<PublishedDesignFactor>(
    [
        Row(GearItem.WebSling, StandardRegion.UnitedStates, 5, RiggingSources.DesignFactorUs),
        Row(GearItem.WebSling, StandardRegion.Europe, 7, RiggingSources.DesignFactorEu),
        Row(GearItem.WebSling, StandardRegion.Australia, 8, RiggingSources.DesignFactorAu),
        Row(GearItem.Roundsling, StandardRegion.UnitedStates, 5, GearSources.RoundslingUs),
        Row(GearItem.Roundsling, StandardRegion.Europe, 7, RiggingSources.DesignFactorEu),
        Row(GearItem.Roundsling, StandardRegion.Australia, 7, GearSources.RoundslingAu),
        Row(GearItem.NaturalFibreRopeSling, StandardRegion.UnitedStates, 5, GearSources.NaturalFibre),
        Row(GearItem.FibreRopeSling, StandardRegion.UnitedStates, 5, GearSources.FibreRopeUs),
        Row(GearItem.FibreRopeSling, StandardRegion.Europe, 7, GearSources.FibreRopeEu),
        Row(GearItem.SlingFitting, StandardRegion.Europe, 4, GearSources.SlingFittings),
        Row(GearItem.WireRopeSling, StandardRegion.UnitedStates, 5, GearSources.WireRopeFactor),
        Row(GearItem.ChainSling, StandardRegion.UnitedStates, 4, GearSources.ChainFactor),
        Row(GearItem.ChainSling, StandardRegion.Europe, 4, GearSources.ChainFactor),
        Row(GearItem.WebTieDown, StandardRegion.UnitedStates, 3, GearSources.TieDown),
        Row(GearItem.WebLashing, StandardRegion.Europe, MarkingKernel.LashingFactor, GearSources.Lashing),
        ShackleTo150,
        ShackleAbove150,
        Row(GearItem.Shackle, StandardRegion.Europe, 5, GearSources.ShackleEu),
        Row(GearItem.Shackle, StandardRegion.Australia, 6, GearSources.ShackleAu),
        Range(GearItem.FibreRope, StandardRegion.UnitedStates, 5, 12, FactorBasis.BreakingStrength, GearSources.FibreRopeGeneral),
        Row(GearItem.MooringChainStraight, StandardRegion.Mooring, 3, GearSources.Moorings),
        Row(GearItem.MooringChainBent, StandardRegion.Mooring, 4, GearSources.Moorings),
        Row(GearItem.MooringWire, StandardRegion.Mooring, 3, GearSources.Moorings),
        Row(GearItem.MooringSynthetic, StandardRegion.Mooring, 3, GearSources.Moorings),
        new(GearItem.TowHawserTensionControl, StandardRegion.NavalTow, 10, 10, FactorBasis.BreakingStrength, RiggingSources.ShockedTowLine, true),
        new(GearItem.TowHawserHeld, StandardRegion.NavalTow, 12, 12, FactorBasis.BreakingStrength, RiggingSources.ShockedTowLine, true),
        new(GearItem.TowSpring, StandardRegion.NavalTow, 14, 14, FactorBasis.BreakingStrength, RiggingSources.ShockedTowLine, true),
        Range(GearItem.TowWireHawser, StandardRegion.NavalTow, 3, 7, FactorBasis.BreakingStrength, RiggingSources.ShockedTowLine),
        Range(GearItem.TowWirePendant, StandardRegion.NavalTow, 4, 8, FactorBasis.BreakingStrength, RiggingSources.ShockedTowLine),
        Range(GearItem.TowShackle, StandardRegion.NavalTow, 3, 7, FactorBasis.ProofLoad, RiggingSources.ShockedTowLine),
        Range(GearItem.TowPadeye, StandardRegion.NavalTow, 3, 7, FactorBasis.Yield, RiggingSources.ShockedTowLine),
    ]);

    /// <summary>Finds the factor of a kind of gear. A shackle of US practice has two, by its limit: use <see cref="OfShackle"/>.</summary>
    /// <param name="item">Kind of gear.</param>
    /// <param name="region">Family of standards.</param>
    /// <returns>The factor; null where none is known.</returns>
    public static PublishedDesignFactor? Find(GearItem item, StandardRegion region)
    {
        foreach (var row in All)
        {
            if (row.Item == item && row.Region == region) return row;
        }

        return null;
    }

    /// <summary>Gives the factor of a shackle of US practice: 5 up to 150 short tons, 4 above.</summary>
    /// <param name="workingLoadLimit">Its working load limit, 1 to 20,000 kN.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    public static PublishedDesignFactor OfShackle(Force workingLoadLimit) =>
        Guard.Newtons(workingLoadLimit, 1, 20000, nameof(workingLoadLimit)) <= GearKernel.ShackleLimit ? ShackleTo150 : ShackleAbove150;

    /// <summary>Tells whether a shackle lies in the scope of EN 13889: working load limit 0.5 to 25 t.</summary>
    /// <param name="workingLoadLimit">Its working load limit, 1 to 20,000 kN.</param>
    /// <returns>True within the scope.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside its range.</exception>
    public static bool InEuropeanShackleScope(Force workingLoadLimit) => GearKernel.InEuropeanShackleScope(Guard.Newtons(workingLoadLimit, 1, 20000, nameof(workingLoadLimit)));

    private static PublishedDesignFactor Row(GearItem item, StandardRegion region, double factor, Source source) => new(item, region, factor, factor, FactorBasis.BreakingStrength, source);

    private static PublishedDesignFactor Range(GearItem item, StandardRegion region, double low, double high, FactorBasis basis, Source source) => new(item, region, low, high, basis, source);
}
