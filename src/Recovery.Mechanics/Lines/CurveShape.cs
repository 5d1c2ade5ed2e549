using System;

namespace Recovery.Mechanics.Lines;

/// <summary>A load-elongation curve as flat data, SI: tension in N over stretch in m, from the origin to its end.</summary>
internal readonly struct CurveShape
{
    private CurveShape(CurveKind kind, double endForce, double endStretch, double exponent, double[]? stretch, double[]? force, double[]? energy, CurveShape[]? parts)
    {
        Kind = kind;
        EndForce = endForce;
        EndStretch = endStretch;
        Exponent = exponent;
        Stretches = stretch;
        Forces = force;
        Energies = energy;
        Parts = parts;
    }

    /// <summary>Form.</summary>
    public CurveKind Kind { get; }

    /// <summary>Force at the end of the curve, N: break, or the last tabulated point.</summary>
    public double EndForce { get; }

    /// <summary>Stretch at the end of the curve, m.</summary>
    public double EndStretch { get; }

    /// <summary>Exponent of a power law; 1 for a linear line.</summary>
    public double Exponent { get; }

    /// <summary>Stretches of a table, m, the origin first.</summary>
    public double[]? Stretches { get; }

    /// <summary>Forces of a table, N.</summary>
    public double[]? Forces { get; }

    /// <summary>Energies up to each point of a table, J.</summary>
    public double[]? Energies { get; }

    /// <summary>Parts of a series.</summary>
    public CurveShape[]? Parts { get; }

    /// <summary>Whether tension is stiffness times stretch over the whole curve.</summary>
    public bool IsLinear => Kind == CurveKind.Power && Exponent == 1;

    /// <summary>Stiffness of a linear curve, N/m.</summary>
    public double LinearStiffness => EndForce / EndStretch;

    public static CurveShape Power(double endForce, double endStretch, double exponent) => new(CurveKind.Power, endForce, endStretch, exponent, null, null, null, null);

    /// <summary>Points without the origin, rising in both.</summary>
    public static CurveShape Table(ReadOnlySpan<double> stretch, ReadOnlySpan<double> force)
    {
        var n = stretch.Length;
        double[] x = new double[n + 1], f = new double[n + 1], e = new double[n + 1];
        for (var i = 0; i < n; i++)
        {
            x[i + 1] = stretch[i];
            f[i + 1] = force[i];
            e[i + 1] = e[i] + ((x[i + 1] - x[i]) * (f[i] + f[i + 1]) / 2);
        }

        return new CurveShape(CurveKind.Table, f[n], x[n], 1, x, f, e, null);
    }

    /// <summary>Curves one after the other; linear ones make one linear curve.</summary>
    public static CurveShape Series(CurveShape[] parts)
    {
        if (parts.Length == 1) return parts[0];
        var end = double.PositiveInfinity;
        var linear = true;
        foreach (var part in parts)
        {
            end = Math.Min(end, part.EndForce);
            linear &= part.IsLinear;
        }

        double stretch = 0;
        foreach (var part in parts) stretch += CurveKernel.Stretch(part, end);
        return linear ? Power(end, stretch, 1) : new CurveShape(CurveKind.Series, end, stretch, 1, null, null, null, parts);
    }

    /// <summary>The same with other scales of force and stretch.</summary>
    public CurveShape Scaled(double forceFactor, double stretchFactor)
    {
        if (Kind == CurveKind.Power) return Power(EndForce * forceFactor, EndStretch * stretchFactor, Exponent);
        var n = Stretches!.Length - 1;
        double[] x = new double[n], f = new double[n];
        for (var i = 0; i < n; i++)
        {
            x[i] = Stretches[i + 1] * stretchFactor;
            f[i] = Forces![i + 1] * forceFactor;
        }

        return Table(x, f);
    }
}
