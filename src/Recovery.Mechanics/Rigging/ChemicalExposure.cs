using System;

namespace Recovery.Mechanics.Rigging;

/// <summary>Chemicals that reached a strap or rope.</summary>
[Flags]
public enum ChemicalExposure
{
    /// <summary>None known.</summary>
    None = 0,

    /// <summary>Acid, battery acid among them: attacks nylon.</summary>
    Acid = 1,

    /// <summary>Concentrated sulphuric acid: attacks nylon and polyester.</summary>
    ConcentratedSulphuricAcid = 2,

    /// <summary>Alkali: fertiliser, lime, cement, ammonia, caustic: attacks polyester.</summary>
    Alkali = 4,

    /// <summary>Bleach or nitric acid: HMPE kept 0.88 in a blended yarn; nothing is published for the others here.</summary>
    BleachOrNitricAcid = 8,
}
