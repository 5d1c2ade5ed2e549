using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;

namespace Recovery.Mechanics.Rigging;

/// <summary>Takes each part out of the load path and looks at what is then on a free end.</summary>
internal static class FailureAnalysis
{
    public static IReadOnlyList<FailureCase> Of(Rig rig, LineLoads loads)
    {
        var cases = new List<FailureCase>();
        var end = rig.BridleIndex < 0 ? rig.Parts.Count : rig.BridleIndex;
        var springs = new Springs(rig, loads);
        for (var i = 0; i < rig.Parts.Count; i++)
        {
            if (rig.BridleIndex >= 0 && i >= rig.BridleIndex) BehindEye(rig, i, springs, cases);
            else InLine(rig, i, end, springs, cases);
        }

        AtCasualty(rig, springs, cases);
        AtDrawbar(rig, end, springs, cases);
        return cases.AsReadOnly();
    }

    /// <summary>A part of the single line parts: one piece stays on the drawbar, the other on the casualty.</summary>
    private static void InLine(Rig rig, int i, int end, Springs springs, List<FailureCase> cases)
    {
        // Hardware between a line and the failure is on the recoiling end; a failed joiner throws its own pieces both ways, a chain or wire rope a broken-off piece.
        var own = Joins(rig.Parts[i]) ? i : -1;
        var before = Hardware(rig, FirstLine(rig, 0, i), i, own);
        var after = Hardware(rig, i + 1, LastLine(rig, i, end) + 1, own);
        cases.Add(Chain(rig.Parts[i].Name, "the puller", before, springs, "the piece on the drawbar recoils to the puller and past it", BrokenOff(rig.Parts[i])));
        cases.Add(Chain(rig.Parts[i].Name, "the stuck machine", after, springs, "the piece on the casualty recoils to the stuck machine and past it", BrokenOff(rig.Parts[i])));
    }

    /// <summary>A bridle leg or a part of one side lets go: the strap runs out of the eye with what hangs on its loose end.</summary>
    private static void BehindEye(Rig rig, int i, Springs springs, List<FailureCase> cases)
    {
        var own = Joins(rig.Parts[i]) ? i : -1;
        var loose = Hardware(rig, rig.BridleIndex + 1, i, own);
        cases.Add(RunsOut(rig.Parts[i].Name, loose, springs, BrokenOff(rig.Parts[i])));
    }

    // An attachment that lets go leaves a piece of itself on the line: steel of which nobody knows the mass.
    private static void AtCasualty(Rig rig, Springs springs, List<FailureCase> cases)
    {
        if (rig.BridleIndex >= 0)
        {
            cases.Add(RunsOut(rig.Casualty.Name + ", one side", Hardware(rig, rig.BridleIndex + 1, rig.Parts.Count, -1), springs, TornOff(rig.Casualty)));
            return;
        }

        cases.Add(Chain(rig.Casualty.Name, "the puller", Hardware(rig, FirstLine(rig, 0, rig.Parts.Count), rig.Parts.Count, -1), springs, "the whole line recoils to the puller and past it, with the piece of the " + rig.Casualty.Name + " that tore off", TornOff(rig.Casualty)));
    }

    private static void AtDrawbar(Rig rig, int end, Springs springs, List<FailureCase> cases) =>
        cases.Add(Chain(rig.Drawbar.Name, "the stuck machine", Hardware(rig, 0, LastLine(rig, -1, end) + 1, -1), springs, "the whole line recoils to the stuck machine and past it, with the piece of the " + rig.Drawbar.Name + " that tore off", TornOff(rig.Drawbar)));

    private static string TornOff(AttachmentPoint point) => "torn-off piece of the " + point.Name;

    private static bool Joins(RigPart part) => part is Shackle or SnatchBlock;

    /// <summary>A chain or wire rope parts somewhere: anything from one link to all of it is then on the end.</summary>
    private static string? BrokenOff(RigPart part) => part is Rigging.Chain or WireRope ? LoosePiece.BrokenOff(part.Name) : null;

    private static FailureCase Chain(string part, string towards, Steel hardware, Springs springs, string why, string? tornOff = null)
    {
        // More mass is slower: the bound with what is known of it holds for a torn-off piece as well.
        var speed = hardware.Lumps > 0
            ? Math.Max(
                RecoilKernel.ChainEnd(springs.SoftPeak, springs.SoftImpedance, springs.SoftEnergy, hardware.Lumps, springs.LeastLineMass),
                RecoilKernel.ChainEnd(springs.StiffPeak, springs.StiffImpedance, springs.StiffEnergy, hardware.Lumps, springs.LeastLineMass))
            : springs.Line;
        if (tornOff is not null) hardware.Names.Add(tornOff);
        return new FailureCase(part, towards, hardware.Names.AsReadOnly(), hardware.Kilograms, tornOff is null && hardware.Weighed, springs.Energy, speed, why);
    }

    private static FailureCase RunsOut(string part, Steel hardware, Springs springs, string? tornOff = null)
    {
        // The loose end moves twice as fast as the eye: with a known mass the energy bounds it, without one twice the speed of the line, the bridle's own impedance counted.
        var speed = hardware.Lumps > 0
            ? Math.Max(RecoilKernel.EnergyOnly(springs.SoftEnergy, hardware.Lumps), RecoilKernel.EnergyOnly(springs.StiffEnergy, hardware.Lumps))
            : RecoilKernel.LooseBridleEnd(springs.LineWithBridle);
        if (tornOff is not null) hardware.Names.Add(tornOff);
        return new FailureCase(part, "the puller", hardware.Names.AsReadOnly(), hardware.Kilograms, tornOff is null && hardware.Weighed, springs.Energy, speed, "the bridle runs out through the eye, its loose end at twice the speed of the eye; if it jams there, the other leg takes the whole pull at once");
    }

    private static Steel Hardware(Rig rig, int from, int to, int own)
    {
        var steel = new Steel();
        for (var i = Math.Max(0, from); i < to; i++) steel.Take(rig.Parts[i]);
        if (own >= 0) steel.Take(rig.Parts[own]);
        return steel;
    }

    private static int FirstLine(Rig rig, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (rig.Parts[i].IsLine) return i;
        }

        return to;
    }

    private static int LastLine(Rig rig, int from, int end)
    {
        // A bridle is elastic line too: everything in front of it is on the recoiling end.
        if (rig.BridleIndex >= 0) return end;
        for (var i = end - 1; i > from; i--)
        {
            if (rig.Parts[i].IsLine) return i;
        }

        return from;
    }

    /// <summary>Steel on a free end. A chain or wire rope is heavy and is a line all the same: its mass is shown, and its own end is bounded as the end of a line, by no more mass than its fittings have.</summary>
    private sealed class Steel
    {
        public List<string> Names { get; } = [];

        /// <summary>Mass of everything, kg.</summary>
        public double Kilograms { get; private set; }

        /// <summary>Mass of the fittings alone, kg.</summary>
        public double Lumps { get; private set; }

        /// <summary>Whether the mass of all of it is known.</summary>
        public bool Weighed { get; private set; } = true;

        public void Take(RigPart part)
        {
            if (part is not (Shackle or SnatchBlock or Rigging.Chain or WireRope) || Names.Contains(part.Name)) return;
            Names.Add(part.Name);
            Kilograms += part.SteelKilograms;
            Weighed &= part.SteelKilograms > 0;
            if (!part.IsLine) Lumps += part.SteelKilograms;
        }
    }

    /// <summary>Energy, peak and impedance of the whole line with its bridle at each end of the stiffness band, each with its own procedure peak.</summary>
    private sealed class Springs
    {
        public Springs(Rig rig, LineLoads loads)
        {
            SoftPeak = loads.Output.ProcedureSoft;
            StiffPeak = loads.Output.Procedure;
            double soft = loads.Input.Soft, stiff = loads.Output.StiffUsed;
            SoftImpedance = StiffImpedance = double.PositiveInfinity;
            LeastLineMass = double.PositiveInfinity;
            // Loads can come with a line of their own; it stands for every part whose breaking strength is not known.
            foreach (var part in rig.LineParts) Take(part.Elastic ?? loads.Line);
            Line = Fastest();
            if (rig.Bridle is { } bridle && bridle.Strap.Elastic is { } elastic)
            {
                var theta = bridle.IncludedRadians;
                soft = ElasticKernel.InSeries(soft, ElasticKernel.RunningBridleStiffness(elastic.SoftNewtons, elastic.LengthMetres, theta));
                stiff = ElasticKernel.InSeries(stiff, ElasticKernel.RunningBridleStiffness(elastic.StiffNewtons, elastic.LengthMetres, theta));
            }

            SoftEnergy = ElasticKernel.Energy(SoftPeak, soft);
            StiffEnergy = ElasticKernel.Energy(StiffPeak, stiff);
            if (rig.Bridle?.Strap.Elastic is { } legs)
            {
                double softLine = SoftImpedance, stiffLine = StiffImpedance, mass = LeastLineMass;
                Take(legs);
                LineWithBridle = Fastest();
                (SoftImpedance, StiffImpedance, LeastLineMass) = (softLine, stiffLine, mass);
            }
            else
            {
                LineWithBridle = Line;
            }
        }

        /// <summary>Speed of the released line itself, m/s.</summary>
        public double Line { get; }

        /// <summary>The same with the impedance of the bridle counted.</summary>
        public double LineWithBridle { get; }

        public double Energy => Math.Max(SoftEnergy, StiffEnergy);

        public double SoftPeak { get; }

        public double StiffPeak { get; }

        public double SoftEnergy { get; }

        public double StiffEnergy { get; }

        public double SoftImpedance { get; private set; }

        public double StiffImpedance { get; private set; }

        public double LeastLineMass { get; private set; }

        private double Fastest() => Math.Max(RecoilKernel.Line(SoftPeak, SoftImpedance), RecoilKernel.Line(StiffPeak, StiffImpedance));

        private void Take(ElasticLine line)
        {
            SoftImpedance = Math.Min(SoftImpedance, ElasticKernel.Impedance(line.SoftNewtons, line.KilogramsPerMetre));
            StiffImpedance = Math.Min(StiffImpedance, ElasticKernel.Impedance(line.StiffNewtons, line.KilogramsPerMetre));
            LeastLineMass = Math.Min(LeastLineMass, line.MassKilograms);
        }
    }
}
