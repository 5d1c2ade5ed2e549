using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Static deflection of one tyre by every published law side by side, and from data where there is any.</summary>
/// <remarks>Immutable.</remarks>
public sealed record TyreDeflectionComparison
{
    private TyreDeflectionComparison(IReadOnlyList<TyreDeflection> all) => All = all;

    /// <summary>Gets all deflections; one from data stands first.</summary>
    public IReadOnlyList<TyreDeflection> All { get; }

    /// <summary>Gets the least deflection.</summary>
    public Length Low => Length.FromMeters(All.Min(d => d.Deflection.Meters));

    /// <summary>Gets the greatest deflection.</summary>
    public Length High => Length.FromMeters(All.Max(d => d.Deflection.Meters));

    /// <summary>Gets the greatest over the least.</summary>
    public double Spread => High.Meters / Low.Meters;

    /// <summary>Gives all deflections in words, invariant culture.</summary>
    /// <returns>One line each.</returns>
    public override string ToString() => string.Join(Environment.NewLine, All);

    internal static TyreDeflectionComparison Of(Tyre tyre, double loadNewtons)
    {
        var load = Force.FromNewtons(loadNewtons);
        var all = new List<TyreDeflection>(3);
        if (tyre.StaticLoadedRadius is not null || tyre.MeasuredDeflectionRatio is not null)
        {
            var metres = tyre.DeflectionMetres(loadNewtons);
            all.Add(new TyreDeflection(tyre.StaticLoadedRadius is null ? "measured ratio" : "static loaded radius", metres, tyre, SaarilahtiModel.Range.Flag(metres / tyre.SectionHeight.Meters), tyre.StaticLoadedRadius is null ? GeneralSources.Caller : MachinesSources.StaticLoadedRadius));
        }

        all.Add(SaarilahtiModel.Instance.Evaluate(tyre, load));
        all.Add(LinesMurphyModel.Instance.Evaluate(tyre, load));
        return new TyreDeflectionComparison(all.AsReadOnly());
    }
}
