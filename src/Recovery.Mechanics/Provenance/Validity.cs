using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>The range of a model as data, so that a caller can ask before and a test can hold it.</summary>
public sealed class Validity
{
    internal Validity(params ValidityLimit[] limits) => Limits = Array.AsReadOnly(limits);

    /// <summary>Gets the limits.</summary>
    public IReadOnlyList<ValidityLimit> Limits { get; }

    /// <summary>Flags the values that lie outside.</summary>
    /// <param name="values">One value per limit, in the order of <see cref="Limits"/>.</param>
    /// <returns>The flags; empty where all values lie within.</returns>
    internal IReadOnlyList<ValidityFlag> Flag(params double[] values)
    {
        List<ValidityFlag>? flags = null;
        for (var i = 0; i < values.Length; i++)
        {
            if (Limits[i].Contains(values[i])) continue;
            (flags ??= []).Add(new ValidityFlag(Limits[i], values[i]));
        }

        return flags is null ? [] : flags.AsReadOnly();
    }
}
