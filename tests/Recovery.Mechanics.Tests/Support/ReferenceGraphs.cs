using System.Collections.Generic;
using FsCheck;
using FsCheck.Fluent;
using Recovery.Mechanics.Rigging;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>Rigs in space: the worked rig as a graph, and a generator of sensible arrangements.</summary>
internal static class ReferenceGraphs
{
    public static RigGraph Worked(RigPart? left = null, RigPart? right = null, RigPart? joiner = null) => new(
        [
            RigNode.Anchor(Axle("axle left"), At(0, 0.65, 0.5)), RigNode.Anchor(Axle("axle right"), At(0, -0.65, 0.5)),
            RigNode.Joint("end left", left ?? Shackle("shackle left")), RigNode.Joint("end right", right ?? Shackle("shackle right")), RigNode.Joint("eye", joiner),
            RigNode.Puller(Drawbar("drawbar"), At(14, 0, 0.5), RigPull.Of(ReferenceRigs.Loads(ReferenceRigs.Worked()))),
        ],
        [
            RigLink.Between(new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(60), M(9)) { Condition = StrapCondition.Wet }, "drawbar", "eye"),
            RigLink.Running(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)), "end left", ["eye"], "end right"),
            RigLink.Between(AxleStrap("axle strap left"), "axle left", "end left"),
            RigLink.Between(AxleStrap("axle strap right"), "axle right", "end right"),
        ]);

    public static Shackle Shackle(string name) => new(name, Rating.WorkingLoadLimitTonnes(12), Mass.FromKilograms(8), KN(588.399), KN(235.36));

    public static Strap AxleStrap(string name) => new(name, Fibre.Polyester, Rating.BreakingStrengthTonnes(40), M(1.2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(100) };

    public static AttachmentPoint Axle(string name) => new(name, AttachmentKind.FrontAxle, true);

    public static AttachmentPoint Drawbar(string name) => new(name, AttachmentKind.Drawbar, true);

    public static RigPoint At(double x, double y, double z) => new(M(x), M(y), M(z));

    public static Gen<RigGraph> Any =>
        from kind in Gen.Choose(0, 6)
        from joined in Gen.Choose(0, 3)
        from numbers in Gen.Choose(0, 1_000_000).ListOf(24)
        from fibres in Gen.Elements(Fibre.Nylon, Fibre.Polyester, Fibre.Hmpe).ListOf(12)
        select Make(kind, joined, numbers, fibres);

    private static RigGraph Make(int kind, int joined, IList<int> numbers, IList<Fibre> fibres)
    {
        int used = 0, straps = 0;
        double Draw(double from, double to) => from + ((to - from) * numbers[used++ % numbers.Count] / 1e6);
        Strap Strap(string name, double from, double to) => new(name, fibres[straps++ % fibres.Count], Rating.BreakingStrengthTonnes(Draw(20, 150)), M(Draw(from, to)));
        List<RigNode> nodes = [];
        List<RigLink> links = [];
        RigPoint Anchor(double y) => At(Draw(-1, 1), y + Draw(-0.2, 0.2), Draw(0.3, 0.9));

        // From a node to a puller far enough away, over straps joined by soft shackles.
        void Line(string from, string puller, double aside, int joints)
        {
            var at = from;
            for (var i = 0; i < joints; i++)
            {
                var joint = "joint " + i + " of " + puller;
                nodes.Add(RigNode.Joint(joint, new SoftShackle("soft shackle " + joint, Rating.BreakingStrengthTonnes(80))));
                links.Add(RigLink.Between(Strap("strap to " + joint, 3, 15), at, joint));
                at = joint;
            }

            nodes.Add(RigNode.Puller(Drawbar(puller), At(Draw(90, 110), aside + Draw(-25, 25), Draw(0, 3)), RigPull.Held(KN(Draw(20, 300)))));
            links.Add(RigLink.Between(Strap("line of " + puller, 5, 20), at, puller));
        }

        void Anchors(int count)
        {
            for (var i = 0; i < count; i++) nodes.Add(RigNode.Anchor(Axle("anchor " + i), Anchor((i - ((count - 1) / 2.0)) * 1.6)));
        }

        switch (kind)
        {
            case 0:
                Anchors(1);
                Line("anchor 0", "tractor", 0, 1 + joined);
                break;
            case 1:
                Anchors(2);
                nodes.Add(RigNode.Joint("eye"));
                links.Add(RigLink.Running(Strap("bridle", 4, 18), "anchor 0", ["eye"], "anchor 1"));
                Line("eye", "tractor", 0, joined);
                break;
            case 2:
                Anchors(2);
                nodes.Add(RigNode.Joint("eye"));
                for (var i = 0; i < 2; i++)
                {
                    nodes.Add(RigNode.Joint("end " + i, Shackle("shackle " + i)));
                    links.Add(RigLink.Between(Strap("axle strap " + i, 1, 2.5), "anchor " + i, "end " + i));
                }

                links.Add(RigLink.Running(Strap("bridle", 4, 18), "end 0", ["eye"], "end 1"));
                Line("eye", "tractor", 0, joined);
                break;
            case 3:
                Anchors(2 + (joined % 2));
                nodes.Add(RigNode.Joint("ring", Shackle("ring shackle")));
                for (var i = 0; i < 2 + (joined % 2); i++) links.Add(RigLink.Between(Strap("leg " + i, 4, 4.5), "anchor " + i, "ring"));
                Line("ring", "tractor", 0, joined / 2);
                break;
            case 4:
                Anchors(2);
                nodes.Add(RigNode.Joint("eye"));
                nodes.Add(RigNode.Joint("ring", new SoftShackle("ring shackle", Rating.BreakingStrengthTonnes(120))));
                links.Add(RigLink.Running(Strap("bridle", 4, 12), "anchor 0", ["eye"], "anchor 1"));
                links.Add(RigLink.Between(Strap("strap", 5, 12), "eye", "ring"));
                Line("ring", "tractor", -20, joined / 2);
                Line("ring", "second tractor", 20, joined % 2);
                break;
            case 5:
                Anchors(1);
                nodes.Add(RigNode.Joint("block", new SnatchBlock("snatch block", Rating.WorkingLoadLimitTonnes(25, 4), Mass.FromKilograms(20))));
                nodes.Add(RigNode.Anchor(Axle("ground anchor"), At(Draw(30, 60), Draw(-10, 10), 0)));
                links.Add(RigLink.Between(Strap("strap", 2, 10), "anchor 0", "block"));
                nodes.Add(RigNode.Puller(Drawbar("winch"), At(Draw(40, 70), Draw(-20, 20), 1), RigPull.Held(KN(Draw(20, 200)))));
                links.Add(RigLink.Running(Strap("winch line", 60, 90), "ground anchor", ["block"], "winch"));
                break;
            default:
                Anchors(2);
                for (var i = 0; i < 2; i++)
                {
                    nodes.Add(RigNode.Joint("ring " + i, new SoftShackle("ring shackle " + i, Rating.BreakingStrengthTonnes(90))));
                    links.Add(RigLink.Between(Strap("strap " + i, 4, 9), "anchor " + i, "ring " + i));
                    Line("ring " + i, "tractor " + i, i == 0 ? -15 : 15, joined / 2);
                }

                links.Add(RigLink.Between(Strap("cross strap", 1, 6), "ring 0", "ring 1"));
                break;
        }

        return new RigGraph(nodes, links);
    }
}
