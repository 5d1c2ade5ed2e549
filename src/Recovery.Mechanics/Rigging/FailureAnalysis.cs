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
        // Hardware between a strap and the failure is on the recoiling end; a failed shackle throws its own pieces both ways.
        var own = rig.Parts[i] is Shackle ? i : -1;
        var before = Hardware(rig, FirstStrap(rig, 0, i), i, own);
        var after = Hardware(rig, i + 1, LastStrap(rig, i, end) + 1, own);
        cases.Add(Chain(rig, rig.Parts[i].Name, "the puller", before, springs, "the piece on the drawbar recoils to the puller and past it"));
        cases.Add(Chain(rig, rig.Parts[i].Name, "the stuck machine", after, springs, "the piece on the casualty recoils to the stuck machine and past it"));
    }

    /// <summary>A bridle leg or a part of one side lets go: the strap runs out of the eye with what hangs on its loose end.</summary>
    private static void BehindEye(Rig rig, int i, Springs springs, List<FailureCase> cases)
    {
        var own = rig.Parts[i] is Shackle ? i : -1;
        var loose = Hardware(rig, rig.BridleIndex + 1, i, own);
        cases.Add(RunsOut(rig, rig.Parts[i].Name, loose, springs));
    }

    private static void AtCasualty(Rig rig, Springs springs, List<FailureCase> cases)
    {
        if (rig.BridleIndex >= 0) cases.Add(RunsOut(rig, rig.Casualty.Name + ", one side", Hardware(rig, rig.BridleIndex + 1, rig.Parts.Count, -1), springs));
        else cases.Add(Chain(rig, rig.Casualty.Name, "the puller", Hardware(rig, FirstStrap(rig, 0, rig.Parts.Count), rig.Parts.Count, -1), springs, "the whole line recoils to the puller and past it"));
    }

    private static void AtDrawbar(Rig rig, int end, Springs springs, List<FailureCase> cases) =>
        cases.Add(Chain(rig, rig.Drawbar.Name, "the stuck machine", Hardware(rig, 0, LastStrap(rig, -1, end), -1), springs, "the whole line recoils to the stuck machine and past it"));

    private static FailureCase Chain(Rig rig, string part, string towards, (List<string> Names, double Kilograms) hardware, Springs springs, string why)
    {
        double speed, energy;
        if (hardware.Kilograms > 0)
        {
            speed = Math.Max(
                RecoilKernel.ChainEnd(springs.SoftPeak, springs.SoftImpedance, springs.SoftEnergy, hardware.Kilograms, springs.LeastLineMass),
                RecoilKernel.ChainEnd(springs.StiffPeak, springs.StiffImpedance, springs.StiffEnergy, hardware.Kilograms, springs.LeastLineMass));
        }
        else
        {
            speed = Math.Max(RecoilKernel.Line(springs.SoftPeak, springs.SoftImpedance), RecoilKernel.Line(springs.StiffPeak, springs.StiffImpedance));
        }

        energy = Math.Max(springs.SoftEnergy, springs.StiffEnergy);
        return new FailureCase(part, towards, hardware.Names.AsReadOnly(), hardware.Kilograms, energy, speed, why);
    }

    private static FailureCase RunsOut(Rig rig, string part, (List<string> Names, double Kilograms) hardware, Springs springs)
    {
        if (!(hardware.Kilograms > 0)) return Chain(rig, part, "the puller", hardware, springs, "the bridle runs out through the eye and the recovery strap recoils to the puller");
        var speed = Math.Max(RecoilKernel.EnergyOnly(springs.SoftEnergy, hardware.Kilograms), RecoilKernel.EnergyOnly(springs.StiffEnergy, hardware.Kilograms));
        return new FailureCase(part, "the puller", hardware.Names.AsReadOnly(), hardware.Kilograms, Math.Max(springs.SoftEnergy, springs.StiffEnergy), speed, "the bridle runs out through the eye, its loose end at twice the speed of the eye; if it jams there, the other leg takes the whole pull at once");
    }

    private static (List<string> Names, double Kilograms) Hardware(Rig rig, int from, int to, int own)
    {
        var names = new List<string>();
        double kilograms = 0;
        for (var i = Math.Max(0, from); i < to; i++) Add(rig.Parts[i]);
        if (own >= 0) Add(rig.Parts[own]);
        return (names, kilograms);

        void Add(RigPart part)
        {
            if (part is not Shackle shackle || names.Contains(shackle.Name)) return;
            names.Add(shackle.Name);
            kilograms += shackle.Mass.Kilograms;
        }
    }

    private static int FirstStrap(Rig rig, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (rig.Parts[i] is Strap) return i;
        }

        return to;
    }

    private static int LastStrap(Rig rig, int from, int end)
    {
        // A bridle is elastic line too: everything in front of it is on the recoiling end.
        if (rig.BridleIndex >= 0) return end;
        for (var i = end - 1; i > from; i--)
        {
            if (rig.Parts[i] is Strap) return i;
        }

        return from;
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
            foreach (var strap in rig.LineStraps) Take(strap.Elastic!);
            if (rig.Bridle is { } bridle && bridle.Strap.Elastic is { } elastic)
            {
                var theta = bridle.IncludedRadians;
                soft = ElasticKernel.InSeries(soft, ElasticKernel.RunningBridleStiffness(elastic.SoftNewtons, elastic.LengthMetres, theta));
                stiff = ElasticKernel.InSeries(stiff, ElasticKernel.RunningBridleStiffness(elastic.StiffNewtons, elastic.LengthMetres, theta));
            }

            SoftEnergy = ElasticKernel.Energy(SoftPeak, soft);
            StiffEnergy = ElasticKernel.Energy(StiffPeak, stiff);
        }

        public double SoftPeak { get; }

        public double StiffPeak { get; }

        public double SoftEnergy { get; }

        public double StiffEnergy { get; }

        public double SoftImpedance { get; private set; }

        public double StiffImpedance { get; private set; }

        public double LeastLineMass { get; private set; }

        private void Take(ElasticLine line)
        {
            SoftImpedance = Math.Min(SoftImpedance, ElasticKernel.Impedance(line.SoftNewtons, line.KilogramsPerMetre));
            StiffImpedance = Math.Min(StiffImpedance, ElasticKernel.Impedance(line.StiffNewtons, line.KilogramsPerMetre));
            LeastLineMass = Math.Min(LeastLineMass, line.MassKilograms);
        }
    }
}
