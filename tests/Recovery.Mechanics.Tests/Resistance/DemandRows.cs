using System;
using System.Linq;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Makes a flat stuck machine of a check row.</summary>
internal static class DemandRows
{
    /// <summary>The three-axle machine of the worked example, two wheels an axle.</summary>
    public static DemandFlat ThreeAxles(CheckRow row) => Flat(row, [2, 2, 2], [row.Si("b1"), row.Si("b2"), row.Si("b3")], [row.Si("d1"), row.Si("d2"), row.Si("d3")], [row.Si("N1"), row.Si("N2"), row.Si("N3")], row.Has("u1") ? [row.Si("u1"), row.Si("u2"), row.Si("u3")] : [0, 0, 0], bellyLoad: row.Has("u1"));

    public static DemandFlat Flat(CheckRow row, int[] count, double[] b, double[] d, double[] loads, double[] shares, bool bellyLoad)
    {
        var z = row.Si("z");
        var n = count.Length;
        var contact = d.Select(x => BuriedWheelKernel.ContactLength(x, z)).ToArray();
        return new DemandFlat
        {
            Count = count,
            Width = b,
            Diameter = d,
            Sinkage = Enumerable.Repeat(z, n).ToArray(),
            Contact = contact,
            Segment = d.Select(x => BuriedWheelKernel.SegmentArea(x, z)).ToArray(),
            Step = d.Select(x => BuriedWheelKernel.RigidStepRatio(x, z)).ToArray(),
            NumericPerPascal = Enumerable.Range(0, n).Select(i => Recovery.Mechanics.Terramechanics.BrixiusKernel.Numeric(1, b[i], d[i], row.Si("dh", 0.2), loads[i] / count[i])).ToArray(),
            Load = loads,
            UpliftShare = shares,
            Buried = Enumerable.Repeat(true, n).ToArray(),
            Driven = Enumerable.Repeat(true, n).ToArray(),
            Braked = Enumerable.Repeat(true, n).ToArray(),
            Weight = row.Si("W"),
            Grade = Math.Atan(row.Si("grade", 0)),
            UnitWeight = row.Si("gamma"),
            AdhesionFactor = row.Si("alpha", 0.5),
            AnyBuried = true,
            WheelArea = Enumerable.Range(0, n).Sum(i => count[i] * b[i] * contact[i]),
            BellyLength = bellyLoad ? row.Si("L_belly") : 0,
            BellyWidth = bellyLoad ? row.Si("w_belly") : 0,
            BellyImmersion = bellyLoad ? row.Si("z_belly") : 0,
            Dug = row.Has("sealed") && row.Word("sealed") == "false" && row.Si("f") > 0,
        };
    }
}
