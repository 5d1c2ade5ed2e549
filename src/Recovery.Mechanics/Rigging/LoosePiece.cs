using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>A piece of a broken rig on a free end: what it is made of and what it hangs on.</summary>
internal sealed class LoosePiece
{
    /// <summary>Straps of the piece, the outermost first.</summary>
    public List<RigLink> Lines { get; } = [];

    /// <summary>Steel on it, each with its mass.</summary>
    public List<string> Hardware { get; } = [];

    /// <summary>Mass of the steel as far as it is known, kg.</summary>
    public double Kilograms { get; set; }

    /// <summary>Piece of an attachment that tore off with it; null where none did.</summary>
    public Phrase? TornOff { get; set; }

    /// <summary>Whether it is on the loose end of a strap that runs out of its eye.</summary>
    public bool RunsOut { get; set; }

    /// <summary>The straps that run out with it and the end that each lost; both ends of one that parted.</summary>
    public List<(RigLink Link, string End)> Lost { get; } = [];

    /// <summary>Whether several lines hang together on it, so that no rule for a single chain holds.</summary>
    public bool Branches { get; set; }

    public void Take(RigPart? joiner)
    {
        var kilograms = joiner?.SteelKilograms ?? 0;
        if (!(kilograms > 0) || Hardware.Contains(joiner!.Name)) return;
        Hardware.Add(joiner.Name);
        Kilograms += kilograms;
    }

    public void Take(LoosePiece other)
    {
        Branches |= other.Branches || (Lines.Count > 0 && other.Lines.Count > 0);
        Lines.AddRange(other.Lines);
        foreach (var name in other.Hardware)
        {
            if (!Hardware.Contains(name)) Hardware.Add(name);
        }

        Kilograms += other.Kilograms;
        TornOff ??= other.TornOff;
        RunsOut |= other.RunsOut;
        Lost.AddRange(other.Lost);
    }
}
