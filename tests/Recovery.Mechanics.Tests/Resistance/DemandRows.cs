using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Makes a flat stuck machine of a check row.</summary>
internal static class DemandRows
{
    /// <summary>The three-axle machine of the worked example, two wheels an axle.</summary>
    public static DemandFlat ThreeAxles(CheckRow row, bool belly = true) => Flat(row, [2, 2, 2], [row.Si("b1"), row.Si("b2"), row.Si("b3")], [row.Si("d1"), row.Si("d2"), row.Si("d3")], [row.Si("N1"), row.Si("N2"), row.Si("N3")], row.Has("u1") ? [row.Si("u1"), row.Si("u2"), row.Si("u3")] : [0, 0, 0], bellyLoad: belly && row.Has("u1"));

    /// <summary>One wheel by itself, level, not climbing.</summary>
    public static DemandFlat OneWheel(CheckRow row, bool buried)
    {
        double b = row.Si("b"), d = row.Si("d"), z = row.Si("z"), w = row.Si("W_wheel");
        return new DemandFlat
        {
            Count = [1],
            Width = [b],
            Diameter = [d],
            Sinkage = [z],
            Contact = [BuriedWheelKernel.ContactLength(d, z)],
            Segment = [BuriedWheelKernel.SegmentArea(d, z)],
            Step = [BuriedWheelKernel.RigidStepRatio(d, z)],
            NumericPerPascal = [Recovery.Mechanics.Terramechanics.BrixiusKernel.Numeric(1, b, d, row.Si("dh"), w)],
            Load = [w],
            UpliftShare = [1],
            Buried = [buried],
            Driven = [true],
            Braked = [true],
            Weight = w,
            UnitWeight = row.Si("gamma", 17e3),
            AdhesionFactor = row.Si("alpha", 0.5),
            AnyBuried = buried,
            WheelArea = b * BuriedWheelKernel.ContactLength(d, z),
        };
    }

    /// <summary>The state of a row that gives its strengths and shares.</summary>
    public static DemandState State(CheckRow row)
    {
        var facing = row.Has("facing") ? row.Word("facing") : "none";
        return new DemandState
        {
            Wall = row.Si("s_w"),
            Floor = row.Si("s_f", 0),
            Index = row.Si("CI_model"),
            Rho = row.Si("rho", 0),
            Locked = row.Has("locked") && row.Word("locked") == "true",
            Uplift = row.Si("f", 0),
            Sealed = row.Si("f", 0) > 0,
            Exit = Math.Atan(row.Si("slope")),
            Meets = facing == "all" ? 7 : facing == "axle3" ? 4 : 0,
        };
    }

    /// <summary>What the bounds of a row are made with: nothing declared but what the row declares, drawn rearwards.</summary>
    public static DemandAssumptions Assumptions(CheckRow row)
    {
        double ci = row.Si("CI"), rci = ci * row.Si("RI"), critical = row.Si("CI_critical");
        double Exit(string name) => Math.Atan(Math.Min(row.Si(name), row.Si("dug_slope", double.PositiveInfinity)));
        return new DemandAssumptions
        {
            Strength = SoilKernel.Stuck(ci, rci, row.Si("bound"), row.Si("N_k")),
            IndexLow = Math.Min(ci, critical),
            IndexCentral = Math.Min(rci, critical),
            IndexHigh = Math.Min(rci, critical),
            ExitLow = Exit("slope_low"),
            ExitCentral = Exit("slope_central"),
            ExitHigh = Exit("slope_high"),
            MeetsCentral = 4,
            MeetsHigh = 7,
            Turning = row.Word("turning") == "declared" ? true : null,
        };
    }

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
            Dug = (row.Has("state") && row.Word("state") == "dug") || (row.Has("sealed") && row.Word("sealed") == "false" && row.Si("f") > 0),
        };
    }
}
