using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Two tyres on one hub: how they share the load of their side on ground that does not give.</summary>
/// <remarks>
/// <para>Both deflect until their hub stands at one height: d_i/2 - delta_i(F_i) = d_o/2 - delta_o(F_o), F_i + F_o = W, each deflection by the law of its tyre, or scaled to its loaded radius. Tyres alike share alike. A smaller or softer one carries less; one too small to reach the ground carries nothing.</para>
/// <para>On soft ground the deeper tyre meets more soil and the shares draw together (judgement): the sums of traction and resistance take all tyres of an axle alike. A measured ratio delta/h without its load says nothing of stiffness and is left aside.</para>
/// <para>Published rule for traction: single-tyre width and diameter with the load on each tyre, so that the wheel numeric about doubles; the rut of the outer is treated as small (from memory). The gain is small on firm ground.</para>
/// <para>Source: statics (derived). Immutable, equality by value.</para>
/// </remarks>
public sealed record DualPair
{
    /// <summary>Describes a pair.</summary>
    /// <param name="inner">The tyre next to the machine.</param>
    /// <param name="outer">The tyre outside it.</param>
    /// <exception cref="ArgumentNullException">A tyre is null.</exception>
    public DualPair(Tyre inner, Tyre outer)
    {
        Inner = Guard.NotNull(inner, nameof(inner));
        Outer = Guard.NotNull(outer, nameof(outer));
    }

    /// <summary>Gets the tyre next to the machine.</summary>
    public Tyre Inner { get; }

    /// <summary>Gets the tyre outside it.</summary>
    public Tyre Outer { get; }

    /// <summary>Shares the load of one side.</summary>
    /// <param name="sideLoad">Load on both together, above 0 to 1,000 kN.</param>
    /// <returns>The share of each.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public DualShare Share(Force sideLoad)
    {
        var w = Guard.Newtons(sideLoad, 0.001, 1000, nameof(sideLoad));
        var inner = TyreKernel.InnerOfPair(w, Inner.OverallDiameter.Meters / 2, Inner.OffsetMetres, Inner.ComplianceMetres, Outer.OverallDiameter.Meters / 2, Outer.OffsetMetres, Outer.ComplianceMetres);
        return new DualShare(inner, w - inner);
    }

    /// <summary>Works the shares out.</summary>
    /// <param name="sideLoad">Load on both together, above 0 to 1,000 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public Working Explain(Force sideLoad)
    {
        var share = Share(sideLoad);
        string ci = Text.Number(Inner.ComplianceMetres * 1e6), co = Text.Number(Outer.ComplianceMetres * 1e6);
        return new WorkingBuilder("Load of a pair of tyres on firm ground")
            .Step("c_i", "give of the inner tyre", "d(delta)/dF", Inner.ToString(), Text.With(Inner.ComplianceMetres * 1e6, "mm/kN"), Inner.DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? MachinesSources.LinesMurphy : MachinesSources.Saarilahti)
            .Step("c_o", "give of the outer tyre", "d(delta)/dF", Outer.ToString(), Text.With(Outer.ComplianceMetres * 1e6, "mm/kN"), Outer.DeflectionLaw == TyreDeflectionLaw.LinesMurphy ? MachinesSources.LinesMurphy : MachinesSources.Saarilahti)
            .Step("F_i", "load of the inner tyre", "(r_i - r_o + a_o - a_i + c_o W)/(c_i + c_o)", "c_i " + ci + ", c_o " + co + ", W " + Text.Kilonewtons(sideLoad.Newtons), Text.Kilonewtons(share.Inner.Newtons), GeneralSources.Statics)
            .Step("F_o", "load of the outer tyre", "W - F_i", Text.Number(sideLoad.Kilonewtons) + " - " + Text.Number(share.Inner.Kilonewtons), Text.Kilonewtons(share.Outer.Newtons), GeneralSources.Statics)
            .Build();
    }

    /// <summary>Gives the pair in words, invariant culture.</summary>
    /// <returns>Both tyres.</returns>
    public override string ToString() => "inner " + Inner + ", outer " + Outer;
}
