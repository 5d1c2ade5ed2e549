using System;
using System.Runtime.CompilerServices;

namespace Recovery.Mechanics.Lines;

/// <summary>State of a small system of differential equations, flat. What each letter holds is said where it is used.</summary>
internal struct OdeState
{
    public double A;

    public double B;

    public double C;

    public double D;

    public double E;

    public double F;

    public double G;

    /// <summary>this + h (sum so far).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly OdeState Plus(double h, in OdeState s) => new()
    {
        A = A + (h * s.A),
        B = B + (h * s.B),
        C = C + (h * s.C),
        D = D + (h * s.D),
        E = E + (h * s.E),
        F = F + (h * s.F),
        G = G + (h * s.G),
    };

    /// <summary>Adds w s.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(double w, in OdeState s)
    {
        A += w * s.A;
        B += w * s.B;
        C += w * s.C;
        D += w * s.D;
        E += w * s.E;
        F += w * s.F;
        G += w * s.G;
    }
}
