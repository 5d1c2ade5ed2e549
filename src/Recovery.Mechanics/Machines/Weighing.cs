using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>Mass and place of a machine from its axle loads on a weighbridge.</summary>
/// <remarks>W = sum(N_i), x_c = sum(N_i x_i)/W, level. Two axles: the centre of mass stands W_f L/W ahead of the rear axle. The height does not follow from level weighing. Source: statics (derived), g = 9.80665 m/s2.</remarks>
public static class Weighing
{
    /// <summary>Makes the load that stands for all that was weighed.</summary>
    /// <param name="name">Name of the load.</param>
    /// <param name="axles">The axles, two to eight.</param>
    /// <param name="axleLoads">Load of each axle on level ground, 0 to 1,000 kN; together 1 kN or more.</param>
    /// <param name="height">Height of the centre of mass, 0 to 6 m: from the maker, or an estimate.</param>
    /// <returns>The load, a fixed part of the machine.</returns>
    /// <exception cref="ArgumentException">The numbers of axles and loads differ, or the name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static NamedLoad FromAxleLoads(string name, IReadOnlyList<Axle> axles, IReadOnlyList<Force> axleLoads, Length height)
    {
        Guard.NotNull(axles, nameof(axles));
        Guard.NotNull(axleLoads, nameof(axleLoads));
        Guard.Count(axles.Count, 2, AxleStaticsKernel.MostAxles, nameof(axles));
        if (axles.Count != axleLoads.Count) throw new ArgumentException("axleLoads must have one load for each of the " + Text.Number(axles.Count) + " axles; it has " + Text.Number(axleLoads.Count) + ".", nameof(axleLoads));
        double sum = 0, moment = 0;
        for (var i = 0; i < axles.Count; i++)
        {
            var load = Guard.Element(axleLoads[i].Newtons / 1000, 0, 1000, "kN", nameof(axleLoads), i, axles[i].Name) * 1000;
            sum += load;
            moment += load * axles[i].Position.Meters;
        }

        Guard.Range(sum / 1000, 1, 2000, "kN", nameof(axleLoads));
        return new NamedLoad(name, Mass.FromKilograms(sum / PhysicalConstants.StandardGravity), Length.FromMeters(moment / sum), height);
    }
}
