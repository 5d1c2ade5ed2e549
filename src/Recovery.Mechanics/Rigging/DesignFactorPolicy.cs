using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>The design factor that a plan asks of breaking strengths under the steady load. Named by the plan; there is no default. It never meets a working load limit, which already holds one: what gear may carry under it comes from <see cref="DeratedStrength.Allowable"/> alone.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record DesignFactorPolicy
{
    private DesignFactorPolicy(string name, double factor, Source source, bool standsForPeak = false)
    {
        Name = name;
        Factor = factor;
        Source = source;
        StandsForPeak = standsForPeak;
    }

    /// <summary>Gets factor 5: usual for a slow pull on synthetics, US sling practice.</summary>
    public static DesignFactorPolicy SlowPull { get; } = new("slow pull on synthetics, factor 5", 5, RiggingSources.DesignFactorUs);

    /// <summary>Gets factor 7: goods made to EN 1492.</summary>
    public static DesignFactorPolicy European { get; } = new("EN 1492, factor 7", 7, RiggingSources.DesignFactorEu);

    /// <summary>Gets factor 8: Australian flat slings.</summary>
    public static DesignFactorPolicy Australian { get; } = new("AS 1353, factor 8", 8, RiggingSources.DesignFactorAu);

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the factor.</summary>
    public double Factor { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gets whether the factor stands for a shock that nobody computed. Such a policy is refused where a peak is computed.</summary>
    public bool StandsForPeak { get; }

    /// <summary>Makes a policy from a published design factor on breaking strength; the high end of a range.</summary>
    /// <param name="published">The published factor.</param>
    /// <returns>The policy.</returns>
    /// <exception cref="ArgumentNullException">The factor is null.</exception>
    /// <exception cref="ArgumentException">The factor is one on proof load or yield.</exception>
    public static DesignFactorPolicy Of(PublishedDesignFactor published)
    {
        Guard.NotNull(published, nameof(published));
        if (published.Basis != FactorBasis.BreakingStrength) throw new ArgumentException("published is a factor on " + published.Basis + "; a policy divides breaking strengths.", nameof(published));
        return new(published.Item + ", " + published.Region + ", factor " + Text.Number(published.High), published.High, published.Source, published.StandsForPeak);
    }

    /// <summary>Refuses a plan that names none, with the choices.</summary>
    internal static DesignFactorPolicy Chosen(DesignFactorPolicy? policy, string name) =>
        policy ?? throw new ArgumentNullException(name, name + " must name a design factor policy; there is no default. Choose DesignFactorPolicy.SlowPull (5), European (7), Australian (8), one Of a published factor, or one Named by you.");

    internal DesignFactorPolicy WithComputedPeak(string name) =>
        StandsForPeak ? throw new ArgumentException("policy '" + Name + "' stands for a shock that nobody computed; here the peak is computed, so it would be counted twice. Name a factor for the steady load.", name) : this;

    /// <summary>Makes a policy of the caller's own.</summary>
    /// <param name="name">Its name, shown in results.</param>
    /// <param name="factor">The factor, 3 to 15.</param>
    /// <returns>The policy.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public static DesignFactorPolicy Named(string name, double factor) => new(Guard.Name(name, nameof(name)), Guard.Range(factor, 3, 15, string.Empty, nameof(factor)), GeneralSources.Caller);

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
