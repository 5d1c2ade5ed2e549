using System;
using System.Collections.Generic;
using System.Linq;

namespace Recovery.Mechanics.Rigging;

/// <summary>A rig with one part taken out of it. Joints that hold nothing any more fall off one after the other; what falls off hangs, piece by piece, on what is left.</summary>
internal sealed class BrokenRig
{
    private readonly RigGraph _graph;
    private readonly List<RigLink> _links;
    private readonly HashSet<string> _gone = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<LoosePiece>> _hanging = new(StringComparer.Ordinal);
    private readonly List<(LoosePiece Piece, IReadOnlyList<string> Towards)> _loose = [];

    public BrokenRig(RigGraph graph)
    {
        _graph = graph;
        _links = [.. graph.Links];
    }

    /// <summary>A strap parts somewhere between its ends: each half stays where it was made fast.</summary>
    public void Part(RigLink link)
    {
        _links.Remove(link);
        foreach (var end in Ends(link))
        {
            var half = new LoosePiece();
            half.Lines.Add(link);
            Hang(end, half);
        }

        if (link.Runs) RunOut(link, link.Nodes[1], new LoosePiece(), Ends(link));
        FallApart();
    }

    /// <summary>A joiner or an attachment lets go: every strap that ended there has a free end; a joiner's own pieces, and the piece of an attachment that tore off, stay on each of them.</summary>
    public void Release(RigNode node)
    {
        _gone.Add(node.Name);
        foreach (var link in _links.Where(l => l.Touches(node.Name)).ToList())
        {
            // A line that ran through a broken block lies slack from end to end.
            if (!link.EndsAt(node.Name)) continue;
            var baggage = new LoosePiece { TornOff = node.Point is null ? null : RiggingPhrases.TornOff.With(node.Name) };
            baggage.Take(node.Joiner);
            LoseEnd(link, node.Name, baggage);
        }

        FallApart();
    }

    public IEnumerable<FailureCase> Cases(string part, GraphSprings springs)
    {
        foreach (var pair in _hanging.Where(p => !_gone.Contains(p.Key)))
        {
            foreach (var piece in pair.Value) yield return springs.Case(part, piece, Supports(pair.Key));
        }

        foreach (var (piece, towards) in _loose) yield return springs.Case(part, piece, towards);
    }

    private static IEnumerable<string> Ends(RigLink link) => [link.Nodes[0], link.Nodes[link.Nodes.Count - 1]];

    private void Hang(string node, LoosePiece piece)
    {
        if (!_hanging.TryGetValue(node, out var pieces)) _hanging.Add(node, pieces = []);
        pieces.Add(piece);
    }

    private void FallApart()
    {
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var node in _graph.Nodes.Where(n => n.Kind == RigNodeKind.Joint && !_gone.Contains(n.Name)))
            {
                var held = _links.Where(l => l.Touches(node.Name)).ToList();
                if (held.Count > 1) continue;
                _gone.Add(node.Name);
                changed = true;
                var piece = new LoosePiece();
                if (_hanging.TryGetValue(node.Name, out var pieces))
                {
                    foreach (var p in pieces) piece.Take(p);
                    _hanging.Remove(node.Name);
                }

                piece.Take(node.Joiner);
                if (held.Count == 0) _loose.Add((piece, _graph.Nodes.Where(n => n.Kind != RigNodeKind.Joint).Select(n => n.Name).ToList()));
                else if (held[0].EndsAt(node.Name)) LoseEnd(held[0], node.Name, piece);
                else _loose.Add((piece, Supports(held[0].Nodes[0])));
                break;
            }
        }
    }

    /// <summary>A strap loses an end, with what hangs on it. One that runs is drawn out through its eye; it then hangs on its other end.</summary>
    private void LoseEnd(RigLink link, string lost, LoosePiece baggage)
    {
        if (!_links.Remove(link)) return;
        var other = link.Nodes[0] == lost ? link.Nodes[link.Nodes.Count - 1] : link.Nodes[0];
        if (link.Runs)
        {
            RunOut(link, link.Nodes[0] == lost ? link.Nodes[1] : link.Nodes[link.Nodes.Count - 2], baggage, [lost]);
            if (_gone.Contains(other)) return;
            var rest = new LoosePiece();
            rest.Lines.Add(link);
            Hang(other, rest);
            return;
        }

        var piece = new LoosePiece();
        piece.Take(baggage);
        piece.Lines.Add(link);
        if (_gone.Contains(other)) _loose.Add((piece, _graph.Nodes.Where(n => n.Kind != RigNodeKind.Joint && !_gone.Contains(n.Name)).Select(n => n.Name).ToList()));
        else Hang(other, piece);
    }

    /// <summary>The loose end flies the way its eye is drawn: to whatever the eye hangs on without this strap.</summary>
    private void RunOut(RigLink link, string eye, LoosePiece baggage, IEnumerable<string> lost)
    {
        baggage.Lost.AddRange(lost.Select(end => (link, end)));
        baggage.RunsOut = true;
        baggage.Lines.Add(link);
        _loose.Add((baggage, Supports(eye)));
    }

    /// <summary>Names of the anchors and pullers that are still reached from a node.</summary>
    private IReadOnlyList<string> Supports(string from)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal) { from };
        var open = new Stack<string>();
        open.Push(from);
        var found = new List<string>();
        while (open.Count > 0)
        {
            var at = open.Pop();
            if (_graph.Nodes[_graph.IndexOf(at)].Kind != RigNodeKind.Joint && !found.Contains(at)) found.Add(at);
            foreach (var next in _links.Where(l => l.Touches(at)).SelectMany(l => l.Nodes))
            {
                if (!_gone.Contains(next) && seen.Add(next)) open.Push(next);
            }
        }

        return found.AsReadOnly();
    }
}
