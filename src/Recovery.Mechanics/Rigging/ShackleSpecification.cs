namespace Recovery.Mechanics.Rigging;

/// <summary>Publication by which a size of shackle has a limit. The mark tells which, never the size.</summary>
public enum ShackleSpecification
{
    /// <summary>RR-C-271D grade A, carbon steel.</summary>
    GradeA,

    /// <summary>Grade B, alloy.</summary>
    GradeB,

    /// <summary>AS 2741 grade S, alloy, metric.</summary>
    AustralianGradeS,

    /// <summary>Field rule of the US Navy, 3 D2 short tons.</summary>
    NavyFieldRule,

    /// <summary>Table of 29 CFR 1926.251, from memory.</summary>
    Osha1926,
}
