using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>Ordering and wording of <see cref="Standing"/>.</summary>
public static class Standings
{
    /// <summary>Gives the weaker of two standings.</summary>
    /// <param name="first">One standing.</param>
    /// <param name="second">The other standing.</param>
    /// <returns>The weaker of the two.</returns>
    public static Standing Weakest(Standing first, Standing second) => Rank(first) >= Rank(second) ? first : second;

    /// <summary>Gives the weakest standing of a set of sources.</summary>
    /// <param name="sources">The sources that went into a result.</param>
    /// <returns>The weakest standing; <see cref="Standing.Primary"/> for an empty set.</returns>
    public static Standing Weakest(IReadOnlyList<Source> sources)
    {
        var weakest = Standing.Primary;
        for (var i = 0; i < sources.Count; i++) weakest = Weakest(weakest, sources[i].Standing);
        return weakest;
    }

    /// <summary>Gives the words in which a standing is shown to a person.</summary>
    /// <param name="standing">The standing.</param>
    /// <returns>A short English phrase.</returns>
    public static string Describe(Standing standing) => standing switch
    {
        Standing.Primary => "primary source",
        Standing.Secondary => "reported",
        Standing.Derived => "derived",
        Standing.UserSupplied => "supplied by the user",
        Standing.CommonPractice => "common practice, no source",
        Standing.Judgement => "judgement",
        _ => "from memory",
    };

    private static int Rank(Standing standing) => standing switch
    {
        Standing.Primary => 0,
        Standing.Secondary => 1,
        Standing.Derived => 2,
        Standing.UserSupplied => 3,
        Standing.CommonPractice => 4,
        Standing.Judgement => 5,
        _ => 6,
    };
}
