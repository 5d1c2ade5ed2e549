using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Strength left in a bent wire rope.</summary>
public sealed record WireBend
{
    internal WireBend(double ratio, IReadOnlyList<ValidityFlag> flags)
    {
        Ratio = ratio;
        Flags = flags;
    }

    /// <summary>Gets D/d.</summary>
    public double Ratio { get; }

    /// <summary>Gets the share of strength left; null below D/d 1, where there is no figure.</summary>
    public double? Efficiency => Ratio >= WireRopeKernel.LeastBody ? WireRopeKernel.Bend(Ratio) : null;

    /// <summary>Gets the bending factor on breaking strength, 1 over the share.</summary>
    public double? Factor => 1 / Efficiency;

    /// <summary>Gets the flags: raised below D/d 2.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gives the bend in one line, invariant culture.</summary>
    /// <returns>Ratio and share.</returns>
    public override string ToString() => "D/d " + Text.Number(Ratio) + ", " + (Efficiency is { } eta ? "leaves " + Text.Number(eta) : "no figure");
}
