using System;

namespace Recovery.Mechanics.Machines;

/// <summary>Where the axles of a machine stand and how stiff each is: what sharing a load among them needs. Both go together so that no caller can forget one.</summary>
internal readonly ref struct AxlePlaces
{
    /// <summary>Puts positions and stiffness together.</summary>
    /// <param name="x">Positions of the axles, the first at 0, falling.</param>
    /// <param name="stiffness">Vertical stiffness of the axles on a straight frame, in any one unit.</param>
    public AxlePlaces(ReadOnlySpan<double> x, ReadOnlySpan<double> stiffness)
    {
        X = x;
        Stiffness = stiffness;
    }

    /// <summary>Gets the positions.</summary>
    public ReadOnlySpan<double> X { get; }

    /// <summary>Gets the stiffness.</summary>
    public ReadOnlySpan<double> Stiffness { get; }

    /// <summary>Gives the positions alone.</summary>
    /// <param name="places">The axles.</param>
    public static implicit operator ReadOnlySpan<double>(AxlePlaces places) => places.X;
}
