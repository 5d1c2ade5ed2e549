using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Reject criteria by kind of gear, with their sources, for hosts to show before anyone hooks on.</summary>
/// <remarks>A list that was gone through is no proof: of seven old nylon lines that looked usable none kept more than half its strength.</remarks>
public static class InspectionChecklist
{
    /// <summary>Gets every criterion.</summary>
    public static IReadOnlyList<RejectCriterion> All { get; } = Collect();

    /// <summary>Gives the criteria of a kind of gear.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The criteria, in the order to look.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not a defined one.</exception>
    public static IReadOnlyList<RejectCriterion> For(GearKind kind)
    {
        Guard.Defined(kind, kind is >= GearKind.Webbing and <= GearKind.AttachmentPoint, nameof(kind));
        return All.Where(c => c.Kind == kind).ToList().AsReadOnly();
    }

    /// <summary>Gives the criteria of everything in a rig, each kind once.</summary>
    /// <param name="rig">The rig.</param>
    /// <returns>The criteria, by kind.</returns>
    /// <exception cref="ArgumentNullException">The rig is null.</exception>
    public static IReadOnlyList<RejectCriterion> For(Rig rig)
    {
        Guard.NotNull(rig, nameof(rig));
        var kinds = rig.Parts.Select(GearChoice.KindOf).Concat([GearKind.Drawbar, GearKind.AttachmentPoint]).Distinct();
        return kinds.SelectMany(For).ToList().AsReadOnly();
    }

    /// <summary>Gives the criteria of everything in a rig of any arrangement, each kind once.</summary>
    /// <param name="graph">The rig.</param>
    /// <returns>The criteria, by kind.</returns>
    /// <exception cref="ArgumentNullException">The rig is null.</exception>
    public static IReadOnlyList<RejectCriterion> For(RigGraph graph)
    {
        Guard.NotNull(graph, nameof(graph));
        var kinds = graph.Links.Select(l => l.Part).Concat(graph.Nodes.Select(n => n.Joiner).OfType<RigPart>()).Select(GearChoice.KindOf).Concat([GearKind.Drawbar, GearKind.AttachmentPoint]).Distinct();
        return kinds.SelectMany(For).ToList().AsReadOnly();
    }

    private static IReadOnlyList<RejectCriterion> Collect()
    {
        var all = new List<RejectCriterion>();
        foreach (var (kind, id) in new[] { (GearKind.Webbing, "webbing"), (GearKind.Roundsling, "roundsling"), (GearKind.FibreRope, "rope") })
        {
            void Fibre(string what, string lookFor, string reason, Source source) => all.Add(new(id + "." + what, kind, lookFor, reason, source));
            Fibre("tag", "No tag, or one that cannot be read.", "Without it nobody knows what it may carry.", RiggingSources.RejectCriteria);
            Fibre("cut", kind == GearKind.Roundsling ? "A hole, tear or cut in the cover, or core yarns that show." : "A hole, tear, snag or cut, at an edge above all.", "A cut edge costs more than its share of the width.", RiggingSources.RejectCriteria);
            if (kind != GearKind.FibreRope) Fibre("stitching", "Broken or worn stitching that carries load.", "The stitching holds the eye.", RiggingSources.RejectCriteria);
            Fibre("burn", "Melting, charring, glazed or stiff patches.", "Heat has taken strength that cannot be seen.", RiggingSources.RejectCriteria);
            Fibre("chemical", "Acid or alkali burns; nylon that met battery acid, polyester that met fertiliser or lime.", "The fibre is attacked from inside.", PartSources.Chemicals);
            Fibre("knot", "A knot.", "A knot takes up to half the strength and more.", RiggingSources.RejectCriteria);
            Fibre("overload", "Known to have seen more than three quarters of its breaking strength.", "It is damaged for good.", PartSources.Overload);
            Fibre("frozen", "Wet and frozen.", "Strength is lower, nobody publishes by how much.", PartSources.FrozenWet);
            Fibre("grit", kind == GearKind.FibreRope ? "A fuzzed or fused core when the strands are opened; grit inside." : "Grit or ice crystals worked into the weave.", "It wears from inside.", PartSources.InternalWear);
            Fibre("stretch", "Longer by more than 4 to 6 % than when it was new.", "More than bedding-in means fatigue or overload: log the length.", PartSources.PermanentStretch);
            Fibre("sun", "Faded, hairy or brittle from sunlight; polyester more than a year in the open.", "Sunlight takes a third and more.", PartSources.Sunlight);
        }

        void Add(GearKind kind, string id, string lookFor, string reason, Source source) => all.Add(new(id, kind, lookFor, reason, source));
        Add(GearKind.SoftShackle, "soft-shackle.cut", "Cut or fused strands, a knot that has pulled into itself.", "Strength falls with a poorly set knot.", PartSources.SoftShackleTests);
        Add(GearKind.SoftShackle, "soft-shackle.edge", "It lies on an edge of less than three bundle thicknesses.", "HMPE cuts on edges.", PartSources.SoftShackleStrength);
        Add(GearKind.SoftShackle, "soft-shackle.heat", "Worked above 60 deg C, or glazed.", "HMPE melts at about 149 deg C and weakens long before.", PartSources.OtherTemperature);
        Add(GearKind.SoftShackle, "soft-shackle.tag", "Neither maker nor line strength known.", "No standard covers soft shackles.", PartSources.SoftShackleStrength);
        Add(GearKind.WireRope, "wire-rope.broken-wires", "Ten broken wires in one lay, or five in one strand of a lay.", "The rope is near its end there.", PartSources.SteelInspection);
        Add(GearKind.WireRope, "wire-rope.kink", "A kink, crushing, birdcage or core that stands out.", "The strands no longer share the load.", PartSources.SteelInspection);
        Add(GearKind.WireRope, "wire-rope.wear", "Outer wires worn by a third of their diameter; corrosion at an end.", "Section is gone.", PartSources.SteelInspection);
        Add(GearKind.WireRope, "wire-rope.heat", "A fibre core that saw more than 93 deg C.", "It is removed for good.", PartSources.WireTemperature);
        Add(GearKind.WireRope, "wire-rope.clips", "Fewer clips than the table asks: 3 at 1/2 in, 4 at 3/4 in, 5 at 1 in.", "The end slips.", PartSources.Clips);
        Add(GearKind.WireRope, "wire-rope.tag", "No mark of strength.", "It counts as a quarter of its nominal strength at most.", PartSources.CargoRules);
        Add(GearKind.Chain, "chain.mark", "No grade mark that can be read.", "It counts as grade 30.", PartSources.CargoRules);
        Add(GearKind.Chain, "chain.stretch", "Links that are longer, bent, twisted or do not hinge freely.", "It was overloaded.", PartSources.SteelInspection);
        Add(GearKind.Chain, "chain.crack", "Cracks, gouges, weld spatter; wear of a tenth of the link diameter.", "It parts without warning.", PartSources.SteelInspection);
        Add(GearKind.Chain, "chain.cold", "Below -40 deg C.", "Steel turns brittle.", PartSources.ColdSteel);
        Add(GearKind.Chain, "chain.knot", "A knot, or shortened by a bolt.", "A link is bent over another.", PartSources.SteelInspection);
        Add(GearKind.Shackle, "shackle.mark", "No working load limit on it that can be read.", "The size does not tell it: limits lie four times apart.", PartSources.ShackleGradeASeries);
        Add(GearKind.Shackle, "shackle.wear", "Bow or pin worn by a tenth.", "Section is gone.", PartSources.ShackleWear);
        Add(GearKind.Shackle, "shackle.bent", "Bent or opened by more than 15 %.", "It was overloaded.", PartSources.ShackleDeformation);
        Add(GearKind.Shackle, "shackle.pin", "A pin that is not fully home, or a bolt in its place.", "It works out. Mud hides it: look.", PartSources.ShacklePins);
        Add(GearKind.Shackle, "shackle.running", "A running line that bears on the pin.", "It rolls the pin out.", PartSources.RunningOnPin);
        Add(GearKind.Shackle, "shackle.weld", "Anything welded on it.", "Welding a forged shackle costs up to 30 %.", PartSources.ShackleWeld);
        Add(GearKind.Shackle, "shackle.temperature", "Below -40 or above 204 deg C.", "Outside what the practice covers.", PartSources.ShackleTemperature);
        Add(GearKind.Block, "block.mark", "No working load limit, or none that says whether it is for hook or line.", "Hook and line differ by two and more.", PartSources.SteelInspection);
        Add(GearKind.Block, "block.sheave", "A sheave that does not turn, a worn groove, a rope that can jump it.", "The line wears through.", PartSources.SteelInspection);
        Add(GearKind.Block, "block.plates", "Bent or cracked side plates, an open hook, a pin without its catch.", "It opens and flies.", PartSources.SteelInspection);
        Add(GearKind.Drawbar, "drawbar.pin", "A pin that is bent, worn, cracked or not the maker's; no catch.", "Bending governs, and a loose gap costs more than a thin pin.", PartSources.PinStatics);
        Add(GearKind.Drawbar, "drawbar.height", "Anything above the drawbar, the top link among it.", "The machine goes over backwards.", PartSources.HitchHeight);
        Add(GearKind.AttachmentPoint, "attachment.named", "A point that the maker's manual does not name for recovery.", "All six deaths behind the Australian standard came from unsuitable points.", RiggingSources.AttachmentDeaths);
        Add(GearKind.AttachmentPoint, "attachment.cracked", "Cracks, bent plates, worn holes, loose bolts.", "It shears off and flies.", GeneralSources.Trade);
        Add(GearKind.AttachmentPoint, "attachment.edge", "Sharp edges where a strap lies, or drive shafts and lines in its way.", "They cut the strap or are torn off.", PartSources.EdgeEurope);
        return all.AsReadOnly();
    }
}
