using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Energy stored in a line at a tension, by part and in the whole.</summary>
/// <remarks>Parts sum to the total. All of it is there for recoil when any part lets go; low stretch of one part is no protection where another part is an elastic tail. Source: work of a spring (derived); the tail, reported of accident tests.</remarks>
public sealed record StoredEnergy
{
    /// <summary>Strain of a part under which it counts as low-stretch beside another, as a share of the other's strain (judgement).</summary>
    private const double LowStretchShare = 1.0 / 3;

    private StoredEnergy(LineAssembly line, double tension, IReadOnlyList<StoredEnergyShare> parts, double total)
    {
        Line = line;
        Tension = Force.FromNewtons(tension);
        Parts = parts;
        Total = Energy.FromJoules(total);
    }

    /// <summary>Gets the line.</summary>
    public LineAssembly Line { get; }

    /// <summary>Gets the tension.</summary>
    public Force Tension { get; }

    /// <summary>Gets what each part holds.</summary>
    public IReadOnlyList<StoredEnergyShare> Parts { get; }

    /// <summary>Gets the sum of the parts.</summary>
    public Energy Total { get; }

    /// <summary>Gets the stretch of the whole line.</summary>
    public Length Stretch => Length.FromMeters(Parts.Sum(p => p.Stretch.Meters));

    /// <summary>Gives the remarks on it: a low-stretch part that an elastic tail arms.</summary>
    /// <returns>One remark for each such part; empty where there is none.</returns>
    public IReadOnlyList<Finding> Remarks()
    {
        var remarks = new List<Finding>();
        if (Total.Joules > 0)
        {
            var greatest = Parts.Max(Strain);
            foreach (var part in Parts)
            {
                if (Strain(part) < LowStretchShare * greatest && part.Share.DecimalFractions < 0.5)
                    remarks.Add(new Finding(LinesFindings.ElasticTail, part.Segment.Name, Total.Joules / 1000, (Total.Joules - part.Energy.Joules) / 1000, "kJ"));
            }
        }

        return remarks.AsReadOnly();
    }

    /// <summary>Works out the energy part by part.</summary>
    /// <returns>The worked steps; the last is the total.</returns>
    public Working Explain()
    {
        var working = new WorkingBuilder("Stored energy at " + Text.Kilonewtons(Tension.Newtons));
        foreach (var part in Parts)
            working.Step("E_i", part.Segment.Name, "area under its curve", Text.Kilonewtons(Tension.Newtons) + ", " + Text.With(part.Stretch.Meters, "m"), Text.With(part.Energy.Joules / 1000, "kJ"), part.Segment.Curve.Source);
        return working.Step("E", "stored energy of the line", "sum of E_i", string.Join(" + ", Parts.Select(p => Text.Number(p.Energy.Joules / 1000))), Text.With(Total.Joules / 1000, "kJ"), LinesSources.Spring).Build();
    }

    /// <summary>Gives the energy in one line, invariant culture.</summary>
    /// <returns>Total and parts.</returns>
    public override string ToString() => Text.With(Total.Joules / 1000, "kJ") + " (" + string.Join("; ", Parts) + ")";

    internal static StoredEnergy Of(LineAssembly line, double tension)
    {
        double total = 0;
        var joules = new double[line.Segments.Count];
        var stretch = new double[line.Segments.Count];
        for (var i = 0; i < joules.Length; i++)
        {
            ref readonly var shape = ref line.Segments[i].Curve.Shape;
            stretch[i] = CurveKernel.Stretch(shape, tension);
            total += joules[i] = CurveKernel.Energy(shape, stretch[i]);
        }

        return new StoredEnergy(line, tension, line.Segments.Select((s, i) => new StoredEnergyShare(s, stretch[i], joules[i], total)).ToList().AsReadOnly(), total);
    }

    private static double Strain(StoredEnergyShare part) => part.Stretch.Meters / part.Segment.Curve.LengthMetres;
}
