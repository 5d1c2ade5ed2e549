using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Takes each part out of the load path and looks at what is then on a free end.</summary>
internal static class FailureAnalysis
{
    public static IReadOnlyList<FailureCase> Of(RigCheck check)
    {
        var rig = check.Rig;
        var cases = new List<FailureCase>();
        var end = rig.BridleIndex < 0 ? rig.Parts.Count : rig.BridleIndex;
        var springs = new Springs(rig, check.Loads);
        var jam = rig.BridleIndex < 0 ? null : EyeJam.Of(check);
        for (var i = 0; i < rig.Parts.Count; i++)
        {
            if (jam is not null && i >= rig.BridleIndex) BehindEye(rig, i, springs, jam, cases);
            else InLine(rig, i, end, springs, cases);
        }

        AtCasualty(rig, springs, jam, cases);
        AtDrawbar(rig, end, springs, cases);
        return cases.AsReadOnly();
    }

    /// <summary>Steel that flies where another part lets go, each piece once: one that was found by where it lies is not said again. Whatever part of a line or attachment fails, one of its ends is then free with that steel on it; how fast is worked out in the list of failures, when somebody asks.</summary>
    public static void AddSteel(RigCheck check, List<Finding> findings)
    {
        for (var i = 0; i < check.Rig.Parts.Count; i++)
        {
            var part = check.Rig.Parts[i];
            if (IsSteel(part) && !IsSaid(findings, part.Name)) findings.Add(new Finding(RiggingFindings.SteelOnFreeEnd, part.Name));
        }
    }

    private static bool IsSaid(List<Finding> findings, string piece)
    {
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i].Id == RiggingFindings.SteelOnFreeEnd.Id && findings[i].Subject == piece) return true;
        }

        return false;
    }

    public static Finding SteelFinding(IReadOnlyList<FailureCase> failures, string piece) => new(RiggingFindings.SteelOnFreeEnd, piece, available: FailureCase.RoundedUp(Fastest(failures, piece)), unit: "m/s");

    /// <summary>Greatest bound on the speed of a piece where another part lets go, m/s; 0 where it stays.</summary>
    private static double Fastest(IReadOnlyList<FailureCase> failures, string piece)
    {
        double fastest = 0;
        for (var i = 0; i < failures.Count; i++)
        {
            var failure = failures[i];
            if (failure.Part == piece || !(failure.SpeedMetresPerSecond > fastest)) continue;
            for (var h = 0; h < failure.Hardware.Count; h++)
            {
                if (failure.Hardware[h] == piece) fastest = failure.SpeedMetresPerSecond;
            }
        }

        return fastest;
    }

    /// <summary>A part of the single line parts: one piece stays on the drawbar, the other on the casualty.</summary>
    private static void InLine(Rig rig, int i, int end, Springs springs, List<FailureCase> cases)
    {
        // Hardware between a line and the failure is on the recoiling end; a failed joiner throws its own pieces both ways, a chain or wire rope a broken-off piece.
        var own = Joins(rig.Parts[i]) ? i : -1;
        var before = Hardware(rig, FirstLine(rig, 0, i), i, own);
        var after = Hardware(rig, i + 1, LastLine(rig, i, end) + 1, own);
        cases.Add(Chain(Phrase.Name(rig.Parts[i].Name), RiggingPhrases.Puller, before, springs.On(rig, 0, own >= 0 ? i : i - 1), springs, "the piece on the drawbar recoils to the puller and past it", BrokenOff(rig.Parts[i])));
        cases.Add(Chain(Phrase.Name(rig.Parts[i].Name), RiggingPhrases.Casualty, after, springs.On(rig, own >= 0 ? i : i + 1, rig.BridleIndex >= 0 ? end : end - 1), springs, "the piece on the casualty recoils to the stuck machine and past it", BrokenOff(rig.Parts[i])));
    }

    /// <summary>A bridle leg or a part of one side lets go: the strap runs out of the eye with what hangs on its loose end or jams there, and what is left on the casualty recoils to it.</summary>
    private static void BehindEye(Rig rig, int i, Springs springs, EyeJam jam, List<FailureCase> cases)
    {
        var part = rig.Parts[i];
        var own = Joins(part) ? i : -1;
        LoseEnd(Phrase.Name(part.Name), () => Hardware(rig, rig.BridleIndex + 1, i, own), springs.On(rig, rig.BridleIndex, own >= 0 ? i : i - 1), springs, jam, BrokenOff(part), cases);
        var last = i;
        for (var k = i + 1; k < rig.Parts.Count; k++)
        {
            if (rig.Parts[k].IsLine) last = k;
        }

        // What sits on the casualty itself stays there; a failed fitting with no line behind it is tied to nothing.
        if (last == i && own < 0 && !part.IsLine) return;
        var left = Hardware(rig, i + 1, last + 1, own);
        cases.Add(Chain(Phrase.Name(part.Name), RiggingPhrases.Casualty, left, springs.OnLeg(rig, i, own >= 0 ? i : i + 1), springs, last == i && own >= 0 ? "its pieces are tied to nothing and fly both ways" : "the piece on the casualty recoils to the stuck machine and past it", BrokenOff(part)));
    }

    /// <summary>A bridle lost an end: it runs out through the eye, or jams in it.</summary>
    private static void LoseEnd(Phrase part, Func<Steel> hardware, in Tie tie, Springs springs, EyeJam jam, Phrase? tornOff, List<FailureCase> cases)
    {
        cases.Add(RunsOut(part, hardware(), springs, tornOff));
        cases.Add(Chain(part, RiggingPhrases.Puller, hardware(), tie, springs, "the bridle jams in the eye: the loose part hangs on the line, the other leg takes the whole pull at once", tornOff).WithJam(jam));
    }

    // An attachment that lets go leaves a piece of itself on the line: steel of which nobody knows the mass.
    private static void AtCasualty(Rig rig, Springs springs, EyeJam? jam, List<FailureCase> cases)
    {
        var all = rig.Parts.Count;
        if (jam is not null)
        {
            LoseEnd(RiggingPhrases.OneSide.With(rig.Casualty.Name), () => Hardware(rig, rig.BridleIndex + 1, all, -1), springs.On(rig, rig.BridleIndex, all - 1), springs, jam, TornOff(rig.Casualty), cases);
            return;
        }

        cases.Add(Chain(Phrase.Name(rig.Casualty.Name), RiggingPhrases.Puller, Hardware(rig, FirstLine(rig, 0, all), all, -1), springs.On(rig, 0, all - 1), springs, "the whole line recoils to the puller and past it, with the piece of the " + rig.Casualty.Name + " that tore off", TornOff(rig.Casualty)));
    }

    private static void AtDrawbar(Rig rig, int end, Springs springs, List<FailureCase> cases) =>
        cases.Add(Chain(Phrase.Name(rig.Drawbar.Name), RiggingPhrases.Casualty, Hardware(rig, 0, LastLine(rig, -1, end) + 1, -1), springs.On(rig, 0, rig.BridleIndex >= 0 ? end : end - 1), springs, "the whole line recoils to the stuck machine and past it, with the piece of the " + rig.Drawbar.Name + " that tore off", TornOff(rig.Drawbar)));

    private static Phrase TornOff(AttachmentPoint point) => RiggingPhrases.TornOff.With(point.Name);

    /// <summary>Steel that flies, whether anybody weighed it or not.</summary>
    private static bool IsSteel(RigPart part) => part is Shackle or SnatchBlock or Rigging.Chain or WireRope;

    private static bool Joins(RigPart part) => part is Shackle or SnatchBlock;

    /// <summary>A chain or wire rope parts somewhere: anything from one link to all of it is then on the end.</summary>
    private static Phrase? BrokenOff(RigPart part) => part is Rigging.Chain or WireRope ? RiggingPhrases.BrokenOff.With(part.Name) : null;

    private static FailureCase Chain(Phrase part, Phrase towards, Steel hardware, in Tie tie, Springs springs, string why, Phrase? tornOff = null)
    {
        // More mass is slower: the bound with what is known of it holds for a torn-off piece as well. What is tied to no line has the energy bound alone.
        var speed = !(hardware.Lumps > 0) ? Math.Max(RecoilKernel.Line(tie.SoftForce, tie.SoftImpedance), RecoilKernel.Line(tie.StiffForce, tie.StiffImpedance))
            : tie.Kilograms > 0 ? Math.Max(
                RecoilKernel.ChainEnd(tie.SoftForce, tie.SoftImpedance, springs.SoftEnergy, hardware.Lumps, tie.Kilograms),
                RecoilKernel.ChainEnd(tie.StiffForce, tie.StiffImpedance, springs.StiffEnergy, hardware.Lumps, tie.Kilograms))
            : springs.EnergyOnly(hardware.Lumps);
        if (tornOff is not null) hardware.Names.Add(tornOff);
        return new FailureCase(part, towards, hardware.Names.AsReadOnly(), hardware.Kilograms, tornOff is null && hardware.Weighed, springs.Energy, speed, why);
    }

    private static FailureCase RunsOut(Phrase part, Steel hardware, Springs springs, Phrase? tornOff = null)
    {
        // The loose end moves twice as fast as the eye: with a known mass the energy bounds it, without one twice the speed of the line, the bridle's own impedance counted.
        var speed = hardware.Lumps > 0 ? springs.EnergyOnly(hardware.Lumps) : RecoilKernel.LooseBridleEnd(springs.Line);
        if (tornOff is not null) hardware.Names.Add(tornOff);
        return new FailureCase(part, RiggingPhrases.Puller, hardware.Names.AsReadOnly(), hardware.Kilograms, tornOff is null && hardware.Weighed, springs.Energy, speed, "the bridle runs out through the eye, its loose end at twice the speed of the eye");
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
        public List<Phrase> Names { get; } = [];

        /// <summary>Mass of everything, kg.</summary>
        public double Kilograms { get; private set; }

        /// <summary>Mass of the fittings alone, kg.</summary>
        public double Lumps { get; private set; }

        /// <summary>Whether the mass of all of it is known.</summary>
        public bool Weighed { get; private set; } = true;

        public void Take(RigPart part)
        {
            var name = Phrase.Name(part.Name);
            if (!IsSteel(part) || Names.Contains(name)) return;
            Names.Add(name);
            Kilograms += part.SteelKilograms;
            Weighed &= part.SteelKilograms > 0;
            if (!part.IsLine) Lumps += part.SteelKilograms;
        }
    }

    /// <summary>What a free end is tied to: the force in it and the least impedance of its lines at each end of the stiffness band, and the mass of the line that holds its fittings, kg; 0 where none does.</summary>
    private readonly struct Tie(double softForce, double stiffForce, double softImpedance, double stiffImpedance, double kilograms)
    {
        public double SoftForce { get; } = softForce;

        public double StiffForce { get; } = stiffForce;

        public double SoftImpedance { get; } = softImpedance;

        public double StiffImpedance { get; } = stiffImpedance;

        public double Kilograms { get; } = kilograms;
    }

    /// <summary>Energy, peak and impedance of the whole line with its bridle at each end of the stiffness band, each with its own procedure peak.</summary>
    private sealed class Springs
    {
        private readonly ElasticLine _default;
        private readonly double _softPeak;
        private readonly double _stiffPeak;
        private readonly double _softImpedance;
        private readonly double _stiffImpedance;

        public Springs(Rig rig, LineLoads loads)
        {
            // Loads can come with a line of their own; it stands for every part whose breaking strength is not known.
            _default = loads.Line;
            _softPeak = loads.Output.ProcedureSoft;
            _stiffPeak = loads.Output.Procedure;
            double soft = loads.Input.Soft, stiff = loads.Output.StiffUsed;
            if (rig.Bridle is { } bridle && bridle.Strap.Elastic is { } elastic)
            {
                var theta = bridle.IncludedRadians;
                soft = ElasticKernel.InSeries(soft, ElasticKernel.RunningBridleStiffness(elastic.SoftNewtons, elastic.LengthMetres, theta));
                stiff = ElasticKernel.InSeries(stiff, ElasticKernel.RunningBridleStiffness(elastic.StiffNewtons, elastic.LengthMetres, theta));
            }

            SoftEnergy = ElasticKernel.Energy(_softPeak, soft);
            StiffEnergy = ElasticKernel.Energy(_stiffPeak, stiff);
            (_softImpedance, _stiffImpedance) = LeastImpedance(rig, 0, rig.BridleIndex < 0 ? rig.Parts.Count - 1 : rig.BridleIndex);
        }

        /// <summary>Speed of the released line itself with its bridle, m/s.</summary>
        public double Line => Math.Max(RecoilKernel.Line(_softPeak, _softImpedance), RecoilKernel.Line(_stiffPeak, _stiffImpedance));

        public double Energy => Math.Max(SoftEnergy, StiffEnergy);

        public double SoftEnergy { get; }

        public double StiffEnergy { get; }

        public double EnergyOnly(double kilograms) => Math.Max(RecoilKernel.EnergyOnly(SoftEnergy, kilograms), RecoilKernel.EnergyOnly(StiffEnergy, kilograms));

        /// <summary>A piece of the line, its parts from one to another: the least impedance of the whole line with its bridle counts, the mass of what holds its fittings and of no other line.</summary>
        public Tie On(Rig rig, int from, int to) => new(_softPeak, _stiffPeak, _softImpedance, _stiffImpedance, HoldingKilograms(rig, from, to));

        /// <summary>What is left on the casualty when a part on one side lets go: the pull of the harder leg, the impedance of its own lines and of the stub of the part.</summary>
        public Tie OnLeg(Rig rig, int failed, int from)
        {
            var leg = rig.Bridle!.LegShareWithFriction;
            var (soft, stiff) = LeastImpedance(rig, failed, rig.Parts.Count - 1);
            return new(leg * _softPeak, leg * _stiffPeak, soft, stiff, HoldingKilograms(rig, from, rig.Parts.Count - 1));
        }

        private ElasticLine? LineOf(RigPart part) => part is Bridle bridle ? bridle.Strap.Elastic ?? _default : part.IsLine ? part.Elastic ?? _default : null;

        private (double Soft, double Stiff) LeastImpedance(Rig rig, int from, int to)
        {
            double soft = double.PositiveInfinity, stiff = double.PositiveInfinity;
            for (var i = from; i <= to; i++)
            {
                if (LineOf(rig.Parts[i]) is not { } line) continue;
                soft = Math.Min(soft, ElasticKernel.Impedance(line.SoftNewtons, line.KilogramsPerMetre));
                stiff = Math.Min(stiff, ElasticKernel.Impedance(line.StiffNewtons, line.KilogramsPerMetre));
            }

            return (soft, stiff);
        }

        /// <summary>Mass of the lightest line that a fitting of the piece hangs on, kg; 0 where there is none.</summary>
        private double HoldingKilograms(Rig rig, int from, int to)
        {
            var least = double.PositiveInfinity;
            for (var i = from; i <= to; i++)
            {
                if (!Joins(rig.Parts[i])) continue;
                for (var k = i - 1; k >= from; k--)
                {
                    if (LineOf(rig.Parts[k]) is not { } line) continue;
                    least = Math.Min(least, line.MassKilograms);
                    break;
                }

                for (var k = i + 1; k <= to; k++)
                {
                    if (LineOf(rig.Parts[k]) is not { } line) continue;
                    least = Math.Min(least, line.MassKilograms);
                    break;
                }
            }

            return double.IsInfinity(least) ? 0 : least;
        }
    }
}
