using System;
using System.Diagnostics.CodeAnalysis;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A tyre size read from the marking on the side wall.</summary>
/// <remarks>
/// <para><c>900/60R32</c>: width in millimetres / height in per cent of the width, R radial or - bias, rim in inches; with IF or VF in front too. b = width, h = width x ratio, d = rim + 2 h. <c>11.5/80-15.3</c>: the same with the width in inches. <c>66x43.00-25</c>: diameter x width - rim, all in inches.</para>
/// <para><c>18.4-38</c>, <c>18.4R38</c>, <c>9.5x24</c>: width and rim in inches. The diameter does not stand in such a marking; d = 1.5 b + 1.06 rim is taken (reported, origin not stated) and h = (d - rim)/2. On a published 9.5x24 it is 3 % low. <see cref="IsApproximate"/> says so.</para>
/// <para>What follows the rim (load index, speed, star rating) is kept as <see cref="Service"/> and not read. A point is the only decimal sign, whatever the culture. Sizes are nominal, from memory of the marking rule: the data book is better. Immutable, equality by value.</para>
/// </remarks>
public sealed record TyreSize
{
    internal TyreSize(string marking, double width, double diameter, double rim, TyreConstruction construction, bool approximate, string service)
    {
        Marking = marking;
        SectionWidth = Length.FromMeters(width);
        OverallDiameter = Length.FromMeters(diameter);
        RimDiameter = Length.FromMeters(rim);
        Construction = construction;
        IsApproximate = approximate;
        Service = service;
    }

    /// <summary>Gets the marking without what follows the rim.</summary>
    public string Marking { get; }

    /// <summary>Gets the section width b.</summary>
    public Length SectionWidth { get; }

    /// <summary>Gets the overall diameter d.</summary>
    public Length OverallDiameter { get; }

    /// <summary>Gets the rim diameter.</summary>
    public Length RimDiameter { get; }

    /// <summary>Gets the section height h, (d - rim)/2.</summary>
    public Length SectionHeight => Length.FromMeters((OverallDiameter.Meters - RimDiameter.Meters) / 2);

    /// <summary>Gets how the carcass is laid.</summary>
    public TyreConstruction Construction { get; }

    /// <summary>Gets whether the diameter is only estimated from width and rim.</summary>
    public bool IsApproximate { get; }

    /// <summary>Gets what stood behind the rim: load index, speed; empty where nothing did.</summary>
    public string Service { get; }

    /// <summary>Gets where the dimensions come from.</summary>
    public Source Source => IsApproximate ? MachinesSources.InchDiameter : MachinesSources.TyreMarking;

    /// <summary>Reads a marking.</summary>
    /// <param name="marking">The marking, for example <c>900/60R32</c>, <c>VF 800/65 R 32 185A8</c>, <c>18.4-38</c>, <c>66x43.00-25</c>.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentNullException">The marking is null.</exception>
    /// <exception cref="ArgumentException">The marking cannot be read, or the diameter does not follow from it; the message says why.</exception>
    public static TyreSize Parse(string marking) =>
        TyreSizeReader.Read(Guard.NotNull(marking, nameof(marking)), out var reason) ?? throw new ArgumentException("marking '" + TyreSizeReader.Shown(marking) + "' " + reason, nameof(marking));

    /// <summary>Reads a marking without throwing.</summary>
    /// <param name="marking">The marking.</param>
    /// <param name="size">The size; null where it cannot be read.</param>
    /// <returns>True where it could be read.</returns>
    public static bool TryParse(string? marking, [NotNullWhen(true)] out TyreSize? size)
    {
        size = marking is null ? null : TyreSizeReader.Read(marking, out _);
        return size is not null;
    }

    /// <summary>Gives the size in words, invariant culture.</summary>
    /// <returns>Marking and dimensions.</returns>
    public override string ToString() => Marking + ": " + Text.Number(SectionWidth.Meters, 3) + " x " + Text.With(OverallDiameter.Meters, "m", 3) + (IsApproximate ? ", diameter estimated" : string.Empty);
}
