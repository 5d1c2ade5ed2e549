using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A rig as an ordered load path from the drawbar of the puller to the casualty. Behind a bridle every part stands once on each leg.</summary>
/// <remarks>
/// <para>Wear and twist belong to the rig: the factors on a computed peak and their floor 2.3 are multiplied with both. Wear 1.0 thoroughly inspected, 1.10 used often without, 1.2 yard slings; not declared it is taken as 1.2 and listed as an assumption. Twist 1 unless a fibre line can twist, then from a test (0027/ND s. 7.3 and 7.11).</para>
/// <para>Immutable. The order is the order in which the force passes: usually recovery strap, bridle running free through its eye, one shackle and one axle strap a leg.</para>
/// </remarks>
public sealed class Rig
{
    /// <summary>Wear factor taken where none is declared: that of yard slings.</summary>
    internal const double UndeclaredWear = 1.2;

    /// <summary>Describes a rig.</summary>
    /// <param name="drawbar">What the line is made fast to on the puller.</param>
    /// <param name="parts">Parts in order from the drawbar to the casualty; those behind a bridle once, they are used on both legs.</param>
    /// <param name="casualty">What the rig is made fast to on the stuck machine.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">No path: no strap, chain or wire rope in the line, a bridle at its beginning, two bridles, or a name given twice.</exception>
    public Rig(AttachmentPoint drawbar, IEnumerable<RigPart> parts, AttachmentPoint casualty)
    {
        Drawbar = Guard.NotNull(drawbar, nameof(drawbar));
        Casualty = Guard.NotNull(casualty, nameof(casualty));
        Parts = Guard.NotNull(parts, nameof(parts)).ToList().AsReadOnly();
        BridleIndex = -1;
        for (var i = 0; i < Parts.Count; i++)
        {
            if (Parts[i] is null) throw new ArgumentException("parts must not hold a null.", nameof(parts));
            if (Parts[i] is not Rigging.Bridle) continue;
            if (BridleIndex >= 0) throw new ArgumentException("A rig has at most one bridle; " + Parts[BridleIndex].Name + " and " + Parts[i].Name + " were given.", nameof(parts));
            BridleIndex = i;
        }

        var lines = Parts.Take(BridleIndex < 0 ? Parts.Count : BridleIndex).Where(p => p.IsLine).ToList();
        if (lines.Count == 0)
            throw new ArgumentException("A rig needs a path from " + Drawbar.Name + " to " + Casualty.Name + ": there is no strap, chain or wire rope between the drawbar and " + (BridleIndex < 0 ? "the casualty" : "the bridle") + ".", nameof(parts));
        if (Parts.Select(p => p.Name).Distinct(StringComparer.Ordinal).Count() != Parts.Count)
            throw new ArgumentException("parts must have unique names.", nameof(parts));
        LineParts = lines.AsReadOnly();
    }

    private Rig(AttachmentPoint drawbar, IEnumerable<RigPart> parts, AttachmentPoint casualty, double? wear, double twist)
        : this(drawbar, parts, casualty)
    {
        DeclaredWear = wear;
        TwistFactor = twist;
    }

    /// <summary>Gets what the line is made fast to on the puller.</summary>
    public AttachmentPoint Drawbar { get; }

    /// <summary>Gets the wear factor as declared; null where nobody said how the gear is looked after.</summary>
    public double? DeclaredWear { get; }

    /// <summary>Gets the wear factor that is counted: the declared one, else 1.2.</summary>
    public double WearFactor => DeclaredWear ?? UndeclaredWear;

    /// <summary>Gets the twist factor of a fibre line that can twist; 1 where it cannot.</summary>
    public double TwistFactor { get; } = 1;

    /// <summary>Gets the parts in order from the drawbar to the casualty.</summary>
    public IReadOnlyList<RigPart> Parts { get; }

    /// <summary>Gets what the rig is made fast to on the stuck machine.</summary>
    public AttachmentPoint Casualty { get; }

    /// <summary>Gets the bridle; null where there is none.</summary>
    public Bridle? Bridle => BridleIndex < 0 ? null : (Bridle)Parts[BridleIndex];

    /// <summary>Gets the unstretched length from anchor to anchor with the longer leg of the bridle at the lean of the pull: what distances are drawn over.</summary>
    public Length LengthOverall => Length.FromMeters(LengthMetres);

    internal double WearAndTwist => WearFactor * TwistFactor;

    internal int BridleIndex { get; }

    /// <summary>Straps, chains and wire ropes between the drawbar and the bridle.</summary>
    internal IReadOnlyList<RigPart> LineParts { get; }

    /// <summary>Their unstretched length together, m.</summary>
    internal double LineMetres => LineParts.Sum(p => p.LineMetres);

    internal double LengthMetres => LineMetres + (Bridle is { } bridle ? bridle.LongerLegMetres : 0) + Parts.Skip(BridleIndex < 0 ? Parts.Count : BridleIndex + 1).Sum(p => p.LineMetres);

    /// <summary>Gets the line of straps, chains and wire ropes in series between the drawbar and the bridle; null where the stretch of one is not known. Bridle and axle straps are left out: they could only lower a peak.</summary>
    public ElasticLine? Line
    {
        get
        {
            double length = 0, soft = 0, stiff = 0, mass = 0;
            Source? source = null;
            foreach (var part in LineParts)
            {
                if (part.Elastic is not { } elastic) return null;
                if (LineParts.Count == 1) return elastic;
                length += elastic.LengthMetres;
                soft += elastic.LengthMetres / elastic.SoftNewtons;
                stiff += elastic.LengthMetres / elastic.StiffNewtons;
                mass += elastic.MassKilograms;
                // The whole stands as weakly as the weakest of its parts.
                if (source is null || Standings.Weakest([source, elastic.Source]) != source.Standing) source = elastic.Source;
            }

            return new ElasticLine(Length.FromMeters(length), Force.FromNewtons(length / soft), Force.FromNewtons(length / stiff), LinearDensity.FromKilogramsPerMeter(mass / length), source!);
        }
    }

    /// <summary>Gives the rig with one of its parts replaced by another of the same name or not.</summary>
    /// <param name="name">Name of the part to replace.</param>
    /// <param name="replacement">The part that takes its place.</param>
    /// <returns>The rig.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public Rig Replace(string name, RigPart replacement)
    {
        Guard.NotNull(replacement, nameof(replacement));
        if (!Parts.Any(p => p.Name == name)) throw new ArgumentException("The rig has no part named '" + name + "'.", nameof(name));
        return new Rig(Drawbar, Parts.Select(p => p.Name == name ? replacement : p), Casualty, DeclaredWear, TwistFactor);
    }

    /// <summary>Declares the wear factor of the gear.</summary>
    /// <param name="factor">1.0 thoroughly inspected, 1.10 used often without thorough inspection, 1.2 yard slings; 1 to 1.5.</param>
    /// <returns>The rig.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public Rig WithWear(double factor) => new(Drawbar, Parts, Casualty, Guard.Range(factor, 1, 1.5, string.Empty, nameof(factor)), TwistFactor);

    /// <summary>Declares the twist factor of a fibre line that can twist.</summary>
    /// <param name="factor">From a test of that line, 1 to 2.</param>
    /// <returns>The rig.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its range.</exception>
    public Rig WithTwist(double factor) => new(Drawbar, Parts, Casualty, DeclaredWear, Guard.Range(factor, 1, 2, string.Empty, nameof(factor)));

    /// <summary>The same rig made fast to other points: what sampling does to their numbers.</summary>
    internal Rig WithAttachments(AttachmentPoint drawbar, AttachmentPoint casualty) => new(drawbar, Parts, casualty, DeclaredWear, TwistFactor);

    /// <summary>The rig with its line lying off the direction of the pull: a bridle whose lean nobody declared leans by as much.</summary>
    internal Rig AtYaw(Angle yaw) => Bridle is { } bridle && !bridle.LeanOfSite.Radians.Equals(yaw.Radians) ? Replace(bridle.Name, bridle with { LeanOfSite = yaw }) : this;

    /// <summary>Gives the load path in words.</summary>
    /// <returns>Names from drawbar to casualty.</returns>
    public override string ToString() => Drawbar.Name + " - " + string.Join(" - ", Parts.Select(p => p.Name)) + " - " + Casualty.Name;
}
