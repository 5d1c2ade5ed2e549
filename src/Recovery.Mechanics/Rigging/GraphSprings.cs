using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>What is stored in a rig when a part lets go, at both ends of the stretch, and how fast a piece can become.</summary>
internal sealed class GraphSprings
{
    private readonly RigGraph _graph;
    private readonly End _soft;
    private readonly End _stiff;
    private readonly JammedRig _jammed;

    public GraphSprings(RigGraph graph, RigGraphEnvelope envelope, JammedRig jammed)
    {
        _graph = graph;
        _jammed = jammed;
        _soft = new End(envelope.Soft, static line => line.SoftNewtons);
        _stiff = new End(envelope.Stiff, static line => line.StiffNewtons);
    }

    public FailureCase Case(string part, LoosePiece piece, IReadOnlyList<string> supports)
    {
        var complete = piece.TornOff is null;
        List<Phrase> hardware = piece.Hardware.ConvertAll(Phrase.Name);
        if (piece.TornOff is { } torn) hardware.Add(torn);
        // Chain and wire rope on it are steel too: their mass is shown, their ends are bounded as ends of a line.
        var kilograms = piece.Kilograms;
        foreach (var link in piece.Lines.Where(l => l.IsSteel).Distinct())
        {
            var parted = link.Part.Name == part;
            complete &= !parted;
            if (!parted) kilograms += link.Part.SteelKilograms;
            hardware.Add(parted ? RiggingPhrases.BrokenOff.With(part) : Phrase.Name(link.Part.Name));
        }

        var failure = new FailureCase(Phrase.Name(part), Phrase.Name(Towards(supports)), hardware.AsReadOnly(), kilograms, complete, Math.Max(_soft.Energy, _stiff.Energy), Math.Max(_soft.Speed(piece), _stiff.Speed(piece)), Why(piece, supports));
        // Of a strap that parted somewhere either end may be the one that holds: the worse counts.
        var jams = piece.Lost.Select(lost => _jammed.Of(lost.Link, lost.End)).Where(jam => jam is not null).OrderBy(jam => jam!.Reserve ?? 0).ToList();
        return jams.Count == 0 ? failure : failure.WithJam(jams[0]!);
    }

    private static string Why(LoosePiece piece, IReadOnlyList<string> supports) => piece.RunsOut
        ? "the strap runs out through its eye, its loose end at twice the speed of the eye; if it jams there, its other end takes the whole pull at once"
        : supports.Count > 1 ? "the piece hangs on no single support and can fly both ways" : "the piece recoils to what it still hangs on and past it";

    private string Towards(IReadOnlyList<string> supports) => supports.Count == 0 ? "nobody knows whom" : string.Join(" and ", supports);

    /// <summary>One end of the band of stretch with its own peak.</summary>
    private sealed class End
    {
        private readonly RigGraphForces _forces;
        private readonly Func<ElasticLine, double> _stiffness;

        public End(RigGraphForces forces, Func<ElasticLine, double> stiffness)
        {
            _forces = forces;
            _stiffness = stiffness;
            foreach (var part in forces.Parts)
            {
                var line = part.Link.Part.Elastic!;
                // Each segment with its own tension over its own share of the length.
                double whole = 0;
                for (var s = 0; s < part.Segments.Count; s++) whole += Segment(part, s);
                for (var s = 0; s < part.Segments.Count; s++)
                    Energy += ElasticKernel.Energy(part.Segments[s].Newtons.Length, ElasticKernel.Stiffness(stiffness(line), line.LengthMetres * Segment(part, s) / whole));
            }
        }

        public double Energy { get; }

        /// <summary>Bound on the speed of a piece, m/s.</summary>
        public double Speed(LoosePiece piece)
        {
            var lines = piece.RunsOut || piece.Lines.Count == 0 ? _forces.Parts.ToList() : _forces.Parts.Where(p => piece.Lines.Contains(p.Link)).ToList();
            var force = lines.Max(p => p.Greatest.Newtons);
            var impedance = lines.Min(p => ElasticKernel.Impedance(_stiffness(p.Link.Part.Elastic!), p.Link.Part.Elastic!.KilogramsPerMetre));
            if (!(piece.Kilograms > 0)) return piece.RunsOut ? RecoilKernel.LooseBridleEnd(RecoilKernel.Line(force, impedance)) : RecoilKernel.Line(force, impedance);
            return piece.RunsOut || piece.Branches || piece.Lines.Count == 0
                ? RecoilKernel.EnergyOnly(Energy, piece.Kilograms)
                : RecoilKernel.ChainEnd(force, impedance, Energy, piece.Kilograms, lines.Min(p => p.Link.Part.Elastic!.MassKilograms));
        }

        private double Segment(PartForce part, int s) => (_forces.At(part.Link.Nodes[s + 1]).Metres - _forces.At(part.Link.Nodes[s]).Metres).Length;
    }
}
