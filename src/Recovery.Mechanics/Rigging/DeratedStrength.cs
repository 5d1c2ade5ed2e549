using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>Strength of one piece of gear in the published order: whole-length factors multiply, places take the minimum, straight parts of the hitch last.</summary>
/// <remarks>
/// <para>R = MBS x K x min(places, choke) x straight parts. K and the places come from types that can be combined in this order alone. A working load limit takes the same shares and never a design factor; a breaking strength takes the design factor of a policy in <see cref="Allowable"/>, once.</para>
/// <para>What takes the gear out of service leaves no strength: it is a finding, and no factor rescues it.</para>
/// <para>Source: order of application (judgement), each factor by its own source. Immutable.</para>
/// </remarks>
public sealed class DeratedStrength
{
    private DeratedStrength(string name, Rating rating, WholeLengthDerating wholeLength, Hitch hitch, IReadOnlyList<SectionPlace> places)
    {
        Name = name;
        Rating = rating;
        WholeLength = wholeLength;
        Hitch = hitch;
        Places = places;
        var findings = new List<Finding>(wholeLength.Findings);
        double least = hitch.Refusal is null ? hitch.Place : double.NaN;
        GoverningPlace = hitch.Place < 1 ? hitch.Name : "straight";
        if (hitch.Refusal is { } refused) findings.Add(refused);
        foreach (var place in places)
        {
            if (place.Finding is { } finding) findings.Add(finding);
            if (!double.IsNaN(least) && !(place.Share >= least))
            {
                least = place.Share;
                GoverningPlace = place.Name;
            }
        }

        SectionShare = least;
        Findings = findings.AsReadOnly();
    }

    /// <summary>Gets the name of the gear.</summary>
    public string Name { get; }

    /// <summary>Gets its marked rating.</summary>
    public Rating Rating { get; }

    /// <summary>Gets what acts on its whole length.</summary>
    public WholeLengthDerating WholeLength { get; }

    /// <summary>Gets how it is laid.</summary>
    public Hitch Hitch { get; }

    /// <summary>Gets its places.</summary>
    public IReadOnlyList<SectionPlace> Places { get; }

    /// <summary>Gets the name of the place that governs.</summary>
    public string GoverningPlace { get; }

    /// <summary>Gets the share left at the place that governs; null where a place or the hitch is refused.</summary>
    public double? Section => double.IsNaN(SectionShare) ? null : SectionShare;

    /// <summary>Gets the share of the rating that is left, straight parts of the hitch included; null where something takes the gear out of service.</summary>
    public double? Share => WholeLength.Factor is { } k && Section is { } section && Findings.All(f => f.Severity != Severity.Stop) ? SectionKernel.Strength(1, k, section, Hitch.Multiplicity) : null;

    /// <summary>Gets the derated breaking strength; null where it is not known or the gear is out of service.</summary>
    public Force? Breaking => Rating.BreakingNewtons is { } mbs && Share is { } share ? Force.FromNewtons(mbs * share) : null;

    /// <summary>Gets the derated working load limit; null where none is marked or the gear is out of service. It meets a steady load, never a peak.</summary>
    public Force? WorkingLoad => Rating.WorkingNewtons is { } wll && Share is { } share ? Force.FromNewtons(wll * share) : null;

    /// <summary>Gets the objections. A stop takes the gear out of service.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gets what was assumed.</summary>
    public IReadOnlyList<Assumption> Assumptions => Places.Select(p => p.Assumption).Append(Hitch.Assumption).OfType<Assumption>().Distinct().ToList().AsReadOnly();

    /// <summary>Gets the sources of everything that acted.</summary>
    public IReadOnlyList<Source> Sources => WholeLength.Sources.Concat(Places.Select(p => p.Source)).Concat(Hitch.Sources).Append(PartSources.Order).Distinct().ToList().AsReadOnly();

    /// <summary>Gets the weakest standing of the sources.</summary>
    public Standing Standing => Standings.Weakest(Sources);

    private double SectionShare { get; }

    /// <summary>Derates a piece of gear.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="rating">Its marked rating.</param>
    /// <param name="wholeLength">What acts on its whole length.</param>
    /// <param name="hitch">How it is laid; a choke is given here and nowhere else.</param>
    /// <param name="places">Its other places, in any order.</param>
    /// <returns>The strength.</returns>
    /// <exception cref="System.ArgumentException">The name is empty.</exception>
    /// <exception cref="System.ArgumentNullException">An argument is null.</exception>
    public static DeratedStrength Of(string name, Rating rating, WholeLengthDerating wholeLength, Hitch hitch, params SectionPlace[] places)
    {
        Guard.Name(name, nameof(name));
        Guard.NotNull(places, nameof(places));
        foreach (var place in places) Guard.NotNull(place, nameof(places));
        return new(name, Guard.NotNull(rating, nameof(rating)), Guard.NotNull(wholeLength, nameof(wholeLength)), Guard.NotNull(hitch, nameof(hitch)), System.Array.AsReadOnly((SectionPlace[])places.Clone()));
    }

    /// <summary>Gives what the gear may carry under a steady load: the lesser of its derated working load limit and its derated breaking strength over the policy's factor, each where known.</summary>
    /// <param name="policy">The design factor policy, named.</param>
    /// <returns>The allowable load; null where neither is known or the gear is out of service.</returns>
    /// <exception cref="System.ArgumentNullException">The policy is null.</exception>
    public Force? Allowable(DesignFactorPolicy policy)
    {
        Guard.NotNull(policy, nameof(policy));
        var allowed = StrengthKernel.Allowable(WorkingLoad?.Newtons ?? double.NaN, Breaking?.Newtons ?? double.NaN, policy.Factor);
        return double.IsNaN(allowed) ? null : Force.FromNewtons(allowed);
    }

    /// <summary>Works the strength out step by step.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Strength of " + Name)
            .Step("K", "whole length", "k_wet x min(k_sun, k_age) x k_chem", Text.Number(WholeLength.Wet) + " x " + Shown(WholeLength.Weathering) + " x " + Shown(WholeLength.Chemical), Shown(WholeLength.Factor), WholeLength.Sources.Count > 0 ? WholeLength.Sources[0] : PartSources.Order);
        foreach (var place in Places) working.Step("k", place.Name, "share left at this place", Shown(place.Factor), Shown(place.Factor), place.Source);
        working.Step("k_hitch", Hitch.Name, "choke as a place, straight parts", Text.Number(Hitch.Place) + ", " + Text.Number(Hitch.Multiplicity), Shown(Hitch.Factor), Hitch.Source);
        return working.Step("R", "derated breaking strength", "MBS x K x least place x straight parts", (Rating.BreakingNewtons is { } mbs ? Text.Kilonewtons(mbs) : "unknown") + " x " + Shown(WholeLength.Factor) + " x " + Shown(Section) + " x " + Text.Number(Hitch.Multiplicity), Breaking is { } r ? Text.Kilonewtons(r.Newtons) : "none", PartSources.Order).Build();
    }

    /// <summary>Gives the strength in one line, invariant culture.</summary>
    /// <returns>Name, strength and governing place.</returns>
    public override string ToString() => Name + ": " + (Breaking is { } r ? Text.Kilonewtons(r.Newtons) : WorkingLoad is { } w ? "working load " + Text.Kilonewtons(w.Newtons) : "no strength") + ", governed by " + GoverningPlace;

    private static string Shown(double? value) => value is { } number ? Text.Number(number) : "refused";
}
