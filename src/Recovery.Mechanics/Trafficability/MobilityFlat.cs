using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Terramechanics;
#if NET
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Recovery.Mechanics.Provenance;
#endif

namespace Recovery.Mechanics.Trafficability;

/// <summary>A machine as plain numbers for the question whether it moves itself: wheel numerics a pascal, axle loads, grade force.</summary>
internal sealed class MobilityFlat
{
    private readonly double[] _numericPerPascal;
    private readonly double[] _loads;
    private readonly bool[] _driven;
    private readonly double _gradeForce;
    private readonly double _weight;

    private MobilityFlat(double[] numericPerPascal, double[] loads, bool[] driven, double gradeForce, double weight)
    {
        _numericPerPascal = numericPerPascal;
        _loads = loads;
        _driven = driven;
        _gradeForce = gradeForce;
        _weight = weight;
    }

    public static MobilityFlat From(Machine machine, Grade grade)
    {
        var n = machine.Axles.Count;
        double[] loads = [.. machine.AxleLoads(grade, PullDirection.Forwards).Newtons], numeric = new double[n];
        var driven = new bool[n];
        for (var i = 0; i < n; i++)
        {
            var axle = machine.Axles[i];
            var load = loads[i] / axle.Tyres;
            driven[i] = axle.Driven;
            numeric[i] = load > 0 ? BrixiusKernel.Numeric(1, axle.Tyre.SectionWidth.Meters, axle.Tyre.OverallDiameter.Meters, BrixiusKernel.Held(axle.Tyre.DeflectionRatio(load)), load) : double.PositiveInfinity;
        }

        return new MobilityFlat(numeric, loads, driven, machine.WeightNewtons * Math.Sin(grade.Radians), machine.WeightNewtons);
    }

    /// <summary>Critical cone index, Pa; not a number where no soil would do.</summary>
    public double Critical(in BrixiusConstants constants) => CriticalIndexKernel.Find(_numericPerPascal, _loads, _driven, _gradeForce, constants);

    /// <summary>Surplus over weight at many cone indices, kPa.</summary>
    public void Surplus(ReadOnlySpan<double> coneIndexKilopascals, in BrixiusConstants constants, Span<double> overWeight)
    {
#if NET
        if (Array.IndexOf(_driven, true) >= 0)
        {
            if (Vector512.IsHardwareAccelerated)
            {
                Run<Lanes512>(coneIndexKilopascals, constants, overWeight);
                return;
            }

            if (Vector256.IsHardwareAccelerated)
            {
                Run<Lanes256>(coneIndexKilopascals, constants, overWeight);
                return;
            }

            if (Vector128.IsHardwareAccelerated)
            {
                Run<Lanes128>(coneIndexKilopascals, constants, overWeight);
                return;
            }
        }
#endif
        Scalar(coneIndexKilopascals, constants, overWeight);
    }

    /// <summary>One element at a time, by the kernel: what every width is held against.</summary>
    internal void Scalar(ReadOnlySpan<double> coneIndexKilopascals, in BrixiusConstants constants, Span<double> overWeight)
    {
        for (var i = 0; i < overWeight.Length; i++) overWeight[i] = CriticalIndexKernel.Surplus(1000 * coneIndexKilopascals[i], _numericPerPascal, _loads, _driven, _gradeForce, constants) / _weight;
    }

#if NET
    internal void Run<T>(ReadOnlySpan<double> coneIndexKilopascals, in BrixiusConstants constants, Span<double> overWeight)
        where T : struct, ILanes<T>
    {
        int whole = coneIndexKilopascals.Length - (coneIndexKilopascals.Length % T.Count), rest = coneIndexKilopascals.Length - whole;
        Part<T>(coneIndexKilopascals.Slice(0, whole), constants, overWeight.Slice(0, whole));
        if (rest == 0) return;
        Span<double> index = stackalloc double[T.Count], tail = stackalloc double[T.Count];
        index.Fill(coneIndexKilopascals[whole]);
        coneIndexKilopascals.Slice(whole).CopyTo(index);
        Part<T>(index, constants, tail);
        tail.Slice(0, rest).CopyTo(overWeight.Slice(whole));
    }

    /// <summary><see cref="TractionSum"/> over lanes.</summary>
    private void Part<T>(ReadOnlySpan<double> coneIndexKilopascals, in BrixiusConstants constants, Span<double> overWeight)
        where T : struct, ILanes<T>
    {
        ref double source = ref MemoryMarshal.GetReference(coneIndexKilopascals), target = ref MemoryMarshal.GetReference(overWeight);
        T zero = T.Of(0), one = T.Of(1);
        for (nuint at = 0; at < (nuint)coneIndexKilopascals.Length; at += (nuint)T.Count)
        {
            var index = T.Read(ref source, at);
            T a = zero, b = zero, c = zero;
            for (var i = 0; i < _loads.Length; i++)
            {
                if (!(_loads[i] > 0)) continue;
                var root = one / T.Sqrt(index * T.Of(1000 * _numericPerPascal[i]));
                var soft = T.Of(constants.Soft * _loads[i]) * root * root;
                if (_driven[i])
                {
                    a += T.Of(BrixiusKernel.GrossLimit * _loads[i]) * (one - LaneMath.Exp(index * T.Of(-BrixiusKernel.NumericDecay * 1000 * _numericPerPascal[i])));
                    b += T.Of(BrixiusKernel.SlipResistance * _loads[i]) * root;
                    c += soft;
                }
                else
                {
                    c += soft + T.Of(constants.Rolling * _loads[i]);
                }
            }

            var slip = T.Min(T.Max(T.Log(T.Of(constants.SlipDecay) * a / b) * T.Of(1 / constants.SlipDecay), zero), T.Of(CriticalIndexKernel.PlanningSlip));
            var surplus = (a * (one - LaneMath.Exp(T.Of(-constants.SlipDecay) * slip))) - (b * slip) - c - T.Of(_gradeForce);
            (surplus * T.Of(1 / _weight)).Write(ref target, at);
        }
    }
#endif
}
