using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>Sources that every room uses.</summary>
internal static class GeneralSources
{
    /// <summary>Statics and geometry worked out in the documentation of the formula itself.</summary>
    public static readonly Source Statics = new("statics", "Elementary statics and geometry, worked in the documentation of the formula", Standing.Derived);

    /// <summary>A number the caller gave.</summary>
    public static readonly Source Caller = new("caller", "Given by the caller", Standing.UserSupplied);

    /// <summary>A rule of the trade.</summary>
    public static readonly Source Trade = new("common-practice", "Common practice in machine recovery, no source", Standing.CommonPractice);

    /// <summary>A choice of this library.</summary>
    public static readonly Source Judgement = new("judgement", "Engineering judgement of this library, no publication", Standing.Judgement);

    /// <summary>Standard acceleration of free fall.</summary>
    public static readonly Source StandardGravity = new("standard-gravity", "Standard acceleration of free fall, 9.80665 m/s2, 3rd CGPM 1901", Standing.FromMemory);

    /// <summary>All sources of this file.</summary>
    public static IEnumerable<Source> All { get; } = [Statics, Caller, Trade, Judgement, StandardGravity];
}
