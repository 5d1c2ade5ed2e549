using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>A measured line, straight between its points and never read past the last one.</summary>
public sealed class TabulatedElongation : LoadElongation
{
    private readonly double[] _stretch;
    private readonly double[] _force;

    internal TabulatedElongation(Length length, IReadOnlyList<double> strains, IReadOnlyList<double> kilonewtons, Source source)
        : this(Guard.Metres(length, 0.1, 300, nameof(length)), Checked(strains, kilonewtons, out var forces), forces, Guard.NotNull(source, nameof(source)))
    {
    }

    private TabulatedElongation(double length, double[] strains, double[] forces, Source source)
        : this(length, Array.ConvertAll(strains, e => e * length), forces, source, LineState.AsTested, null)
    {
    }

    private TabulatedElongation(double length, double[] stretch, double[] force, Source source, LineState state, UnloadingTest? unloading)
        : base(length, CurveShape.Table(stretch, force), source, state, unloading)
    {
        _stretch = stretch;
        _force = force;
    }

    /// <summary>Gets the number of points without the origin.</summary>
    public int PointCount => _stretch.Length;

    private protected override string Form => "table of " + Text.Number(PointCount, 9) + " points";

    private protected override string StretchLaw => "straight between the points of the table";

    private protected override string EnergyLaw => "sum of trapezoids under the table";

    private protected override LoadElongation Copy(LineState state, UnloadingTest? unloading) => new TabulatedElongation(LengthMetres, _stretch, _force, Source, state, unloading);

    /// <summary>Two legs beside each other, the second engaging after a stretch: exact where both are straight between points.</summary>
    internal static TabulatedElongation Beside(LoadElongation first, LoadElongation second, double later, Source source)
    {
        double[] one = Points(first, 0), two = Points(second, later);
        var end = Math.Min(one[one.Length - 1], two[two.Length - 1]);
        var all = new SortedSet<double>();
        foreach (var x in one) all.Add(Math.Min(x, end));
        foreach (var x in two) all.Add(Math.Min(x, end));
        all.Remove(0);
        var stretch = new double[all.Count];
        all.CopyTo(stretch);
        var force = new double[stretch.Length];
        for (var i = 0; i < stretch.Length; i++) force[i] = CurveKernel.Force(first.Shape, stretch[i]) + CurveKernel.Force(second.Shape, stretch[i] - later);
        return new TabulatedElongation(first.LengthMetres, stretch, force, source, LineState.AsTested, null);
    }

    private static double[] Points(LoadElongation leg, double later)
    {
        double[] own = leg.Shape.Kind == CurveKind.Table ? leg.Shape.Stretches! : [0, leg.Shape.EndStretch];
        return Array.ConvertAll(own, x => x + later);
    }

    private static double[] Checked(IReadOnlyList<double> strains, IReadOnlyList<double> kilonewtons, out double[] newtons)
    {
        Guard.NotNull(strains, nameof(strains));
        Guard.NotNull(kilonewtons, nameof(kilonewtons));
        if (strains.Count == 0) throw new ArgumentException("strains must have at least one point beside the origin.", nameof(strains));
        Guard.SameLength(strains.Count, kilonewtons.Count, nameof(kilonewtons));
        double lastStrain = 0, lastForce = 0;
        var checkedStrains = new double[strains.Count];
        newtons = new double[strains.Count];
        for (var i = 0; i < strains.Count; i++)
        {
            var at = "[" + Text.Number(i, 9) + "]";
            checkedStrains[i] = Guard.Range(strains[i], 1e-9, 2, string.Empty, nameof(strains) + at);
            newtons[i] = Guard.Range(kilonewtons[i], 1e-6, 20000, "kN", nameof(kilonewtons) + at) * 1000;
            if (!(checkedStrains[i] > lastStrain)) throw new ArgumentException("strains must rise from point to point, so that the curve can be read both ways; " + Text.Number(strains[i], 6) + " at " + at + " does not follow " + Text.Number(lastStrain, 6) + ".", nameof(strains));
            if (!(newtons[i] > lastForce)) throw new ArgumentException("kilonewtons must rise from point to point, so that the curve can be read both ways; " + Text.Number(kilonewtons[i], 6) + " kN at " + at + " does not follow " + Text.Kilonewtons(lastForce, 6) + ".", nameof(kilonewtons));
            lastStrain = checkedStrains[i];
            lastForce = newtons[i];
        }

        return checkedStrains;
    }
}
