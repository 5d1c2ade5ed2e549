using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What every part of a rig of any arrangement carries on the worst end of each band, and what it may carry.</summary>
/// <remarks>
/// <para>Each load is solved at both ends of the stretch of the parts, and unstretched where equilibrium alone settles the tensions; without friction, and with friction of 0.30 (a block: its efficiency) one way and the other at every part that runs. The greatest tension over all of these counts, and the two checks of <see cref="RigCheck"/> are made with it.</para>
/// <para><see cref="PartCheck.Share"/> and the admissible pulls are in terms of the sum of the pulls of all pullers. A joiner carries the greatest tension of the parts that end at it, a block the force of both parts of its line together.</para>
/// </remarks>
public sealed class RigGraphCheck
{
    private readonly RigGraphEnvelope _envelope;

    private RigGraphCheck(RigGraph graph, DesignFactorPolicy policy, double? wear, double twist, RigGraphEnvelope envelope)
    {
        Graph = graph;
        Policy = policy;
        DeclaredWear = wear;
        TwistFactor = twist;
        _envelope = envelope;
        Parts = PartsOf(graph, policy, WearFactor * twist, envelope);
        Failures = GraphFailures.Of(graph, envelope, new JammedRig(graph, policy, WearFactor * twist, envelope.Stiff));
    }

    /// <summary>Gets the rig.</summary>
    public RigGraph Graph { get; }

    /// <summary>Gets the design factor policy as named.</summary>
    public DesignFactorPolicy Policy { get; }

    /// <summary>Gets the wear factor as declared; null where nobody said how the gear is looked after.</summary>
    public double? DeclaredWear { get; }

    /// <summary>Gets the wear factor that was counted: the declared one, else 1.2.</summary>
    public double WearFactor => DeclaredWear ?? Rig.UndeclaredWear;

    /// <summary>Gets the twist factor of a fibre line that can twist; 1 where it cannot.</summary>
    public double TwistFactor { get; }

    /// <summary>Gets the facts that are still to measure, each with what it would change.</summary>
    public IReadOnlyList<Assumption> Assumptions
    {
        get
        {
            var all = new List<Assumption>();
            if (DeclaredWear is null) all.Add(RigAssumptions.Wear);
            if (Graph.Links.Any(l => l.Part is Strap { Choked: true, AngleOfChoke: null })) all.Add(RigAssumptions.Choke);
            foreach (var link in Graph.Links)
            {
                if (link.Part is WireRope wire) all.AddRange(wire.Strength.Assumptions);
                else if (link.Part is Chain chain) all.AddRange(chain.Assumptions);
            }

            if (Parts.Any(p => p.Kind == PlaceKind.Bight)) all.Add(RigAssumptions.Bight);
            if (Graph.Links.Any(l => l.Part is not Strap { Measured: not null })) all.Add(RigAssumptions.Stretch);
            return all.GroupBy(a => a.Id, StringComparer.Ordinal).Select(g => g.First()).ToList().AsReadOnly();
        }
    }

    /// <summary>Gets every place: the straps, chains and wire ropes in their order, then the joiners.</summary>
    public IReadOnlyList<PartCheck> Parts { get; }

    /// <summary>Gets what each anchor and each puller takes, the greatest over all that was solved.</summary>
    public IReadOnlyList<AttachmentLoad> Attachments => _envelope.Attachments;

    /// <summary>Gets the place with the least reserve on the procedure load over what is asked of it; null where no strength is known.</summary>
    public PartCheck? Weakest => Parts.Where(p => p.Reserve is not null).OrderBy(p => p.Reserve / p.Floor).FirstOrDefault();

    /// <summary>Gets the places in the order in which they would part as the pull rises; those of unknown strength are left out.</summary>
    public IReadOnlyList<PartCheck> PartingOrder => Parts.Where(p => p.PartingPull is not null).OrderBy(p => p.PartingPull!.Value.Newtons).ToList().AsReadOnly();

    /// <summary>Gets what happens at each part if it lets go; empty where the stretch of a part is not known, because then nobody knows what is stored.</summary>
    public IReadOnlyList<FailureCase> Failures { get; }

    /// <summary>Gets the largest sum of forces at a joint over the pull, over all that was solved.</summary>
    public double Residual => _envelope.Residual;

    /// <summary>Gets the forces without friction at the stiff end, procedure peak: for drawing.</summary>
    public RigGraphForces Forces => _envelope.Stiff;

    /// <summary>Gets the joiners, chains and wire ropes that fly if some other part lets go: steel that another arrangement would keep off a free end. All steel of the rig where <see cref="Failures"/> is empty: what is not known never counts as staying where it is.</summary>
    public IReadOnlyList<string> SteelOnFreeEnds => Failures.Count == 0 ? Graph.Links.Where(l => l.IsSteel).Select(l => l.Part.Name).Concat(Graph.Nodes.Where(n => n.Joiner is Shackle or SnatchBlock).Select(n => n.Joiner!.Name)).ToList().AsReadOnly() : Failures.SelectMany(f => f.Hardware.Where(h => h != f.Part)).Distinct(StringComparer.Ordinal).Where(h => Graph.Nodes.Any(n => n.Joiner?.Name == h) || Graph.Links.Any(l => l.Part.Name == h)).ToList().AsReadOnly();

    /// <summary>Gets the better arrangement: every shackle that would fly is a soft shackle of the same strength, every chain and wire rope a strap of HMPE of the same strength, shielded from edges. Null where neither would fly, or a breaking strength is not known.</summary>
    public RigGraph? BetterArrangement
    {
        get
        {
            var better = Graph;
            var flies = new HashSet<string>(SteelOnFreeEnds, StringComparer.Ordinal);
            foreach (var node in Graph.Nodes)
            {
                if (node.Joiner is not Shackle shackle || !flies.Contains(shackle.Name)) continue;
                if (shackle.BreakingNewtons is not { } strength) return null;
                better = better.Replace(shackle.Name, new SoftShackle("soft " + shackle.Name, Rating.BreakingStrength(Force.FromNewtons(strength))));
            }

            foreach (var link in Graph.Links.Where(l => l.IsSteel && flies.Contains(l.Part.Name)))
            {
                if (RigRemedySearch.Breaking(link.Part) is not { } strength) return null;
                better = better.Replace(link.Part.Name, new Strap("strap for " + link.Part.Name, Fibre.Hmpe, Rating.BreakingStrength(Force.FromNewtons(strength)), Length.FromMeters(Math.Max(0.3, link.Part.LineMetres))));
            }

            return ReferenceEquals(better, Graph) ? null : better;
        }
    }

    /// <summary>Puts a weaker or stronger part in and checks again: where a weak link moves the failure is then the first of <see cref="PartingOrder"/>, and what flies from there stands in <see cref="Failures"/>.</summary>
    /// <param name="part">Name of a strap, chain or wire rope.</param>
    /// <param name="breakingStrength">Its breaking strength, 1 to 20,000 kN.</param>
    /// <returns>The check of that rig.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside its range.</exception>
    public RigGraphCheck WithStrength(string part, Force breakingStrength)
    {
        var link = Graph.Links.FirstOrDefault(l => l.Part.Name == part) ?? throw new ArgumentException("The rig has no line named '" + part + "'.", nameof(part));
        var rating = Rating.BreakingStrength(breakingStrength);
        RigPart replacement = link.Part switch
        {
            Strap s => s.WithRating(rating),
            WireRope w => w with { Rating = rating },
            Chain c => c.WithTag(rating),
            _ => link.Part,
        };
        return Of(Graph.Replace(part, replacement), Policy, DeclaredWear, TwistFactor);
    }

    /// <summary>Gives what follows: strength by the levels of the rig check, attachments, steel on free ends with the better arrangement, steel in the middle of the line, strap on strap, ratings and damage.</summary>
    /// <returns>The findings, stops first.</returns>
    public IReadOnlyList<Finding> Findings() => RigGraphFindings.Of(this);

    /// <summary>Gives the check in one line, invariant culture.</summary>
    /// <returns>The weakest place.</returns>
    public override string ToString() => "weakest: " + (Weakest?.ToString() ?? "not known");

    internal RigPlace[] Places => Parts.Select(p => p.Place).ToArray();

    internal RigOutcome[] Outcomes => Parts.Select(p => p.Outcome).ToArray();

    internal Lines.LineLoadOutput Loads => _envelope.Loads;

    /// <summary>Widest included angle of a strap that runs through an eye and on which no puller draws; null for any other link.</summary>
    internal double? IncludedRadians(int link) => _envelope.Included(link) is > 0 and var included ? included : null;

    internal static RigGraphCheck Of(RigGraph graph, DesignFactorPolicy policy, double? declaredWear, double twist)
    {
        policy.WithComputedPeak(nameof(policy));
        return new RigGraphCheck(graph, policy, declaredWear, twist, RigGraphEnvelope.Of(graph));
    }

    /// <summary>Every place of a solved rig.</summary>
    internal static IReadOnlyList<PartCheck> PartsOf(RigGraph graph, DesignFactorPolicy policy, double wear, RigGraphEnvelope envelope)
    {
        var parts = new List<PartCheck>();
        for (var i = 0; i < graph.Links.Count; i++) Add(graph.Links[i].Part, i, envelope.OfLink(i), envelope.Bight(i), graph.Links[i].Runs);
        for (var i = 0; i < graph.Nodes.Count; i++)
        {
            if (graph.Nodes[i].Joiner is { } joiner) Add(joiner, graph.Links.Count + i, envelope.OfJoiner(i), false, false);
        }

        return parts.AsReadOnly();

        void Add(RigPart part, int index, double share, bool bight, bool runs)
        {
            // A part that is slack in everything that was solved carries nothing.
            if (!(share > 0)) return;
            var places = new List<RigPlace>();
            RigPlaces.OfPart(part, index, share, bight, policy, wear, places);
            var loads = envelope.Loads;
            foreach (var place in places)
            {
                var outcomes = new RigOutcome[1];
                RigKernel.Evaluate([place], loads, outcomes);
                parts.Add(new PartCheck(part, place, outcomes[0], loads.Steady, loads.Procedure, loads.Careless, runs));
            }
        }
    }
}
