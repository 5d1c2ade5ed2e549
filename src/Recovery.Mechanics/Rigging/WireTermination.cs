using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>End of a wire rope and the share of its strength that is left there, by two publications. Where they differ the lower counts.</summary>
/// <remarks>
/// <para>Manual (TM 5-3810-305-10 Table 4, primary; sleeves above 1 in reported): socket 1.00, swaged socket 0.95, sleeve to 1 in 0.95 with a wire core and 0.925 with a fibre core, to 2 in 0.925, above 0.90, hand splice at 1/2 in 0.86 or 0.76 stainless, wedge socket 0.75 to 0.95, clips 0.80.
/// Offshore (0027/ND s. 7.7.1, primary) as factors on breaking strength: socket, swage, Flemish eye 1.00, steel ferrule 1.12, hand splice 1.25, cable-laid 1.33, aluminium ferrule 2.0.</para>
/// <para>Measured efficiencies run below catalogue ones. Unless documented otherwise a quoted breaking strength holds no termination loss. Immutable, equality by value.</para>
/// </remarks>
public sealed record WireTermination
{
    /// <summary>Describes an end.</summary>
    /// <param name="kind">How it is made.</param>
    /// <param name="diameter">Diameter of the rope, 3 to 150 mm.</param>
    /// <param name="core">Its core.</param>
    /// <param name="stainless">Whether the rope is of stainless steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public WireTermination(WireTerminationKind kind, Length diameter, WireCore core, bool stainless = false)
    {
        Kind = Guard.Defined(kind, kind is >= WireTerminationKind.Unknown and <= WireTerminationKind.Clips, nameof(kind));
        DiameterMetres = Guard.Metres(diameter, 0.003, 0.15, nameof(diameter));
        Core = Guard.Defined(core, core is WireCore.Fibre or WireCore.Wire, nameof(core));
        Stainless = stainless;
    }

    /// <summary>Gets how it is made.</summary>
    public WireTerminationKind Kind { get; }

    /// <summary>Gets the diameter of the rope.</summary>
    public Length Diameter => Length.FromMeters(DiameterMetres);

    /// <summary>Gets its core.</summary>
    public WireCore Core { get; }

    /// <summary>Gets whether the rope is of stainless steel.</summary>
    public bool Stainless { get; }

    /// <summary>Gets the efficiency of the manual table, its low end; null where it prints none.</summary>
    public Ratio? Manual => Known(TerminationKernel.Manual(Kind, DiameterMetres, Core, Stainless));

    /// <summary>Gets the high end of the manual table; the same as <see cref="Manual"/> except for a wedge socket.</summary>
    public Ratio? ManualHigh => Kind == WireTerminationKind.WedgeSocket ? Ratio.FromDecimalFractions(TerminationKernel.WedgeHigh) : Manual;

    /// <summary>Gets the factor on breaking strength of offshore practice; null where it prints none.</summary>
    public double? OffshoreFactor => TerminationKernel.Offshore(Kind) is var factor && double.IsNaN(factor) ? null : factor;

    /// <summary>Gets the share that counts: the lower of what is published.</summary>
    public Ratio Counted => Ratio.FromDecimalFractions(Share);

    /// <summary>Gets the source of the share that counts.</summary>
    public Source Source => TerminationKernel.Offshore(Kind) is var factor && !double.IsNaN(factor) && 1 / factor <= Share
        ? PartSources.OffshoreTerminations
        : Kind is WireTerminationKind.SteelFerrule or WireTerminationKind.UnknownFerrule or WireTerminationKind.AluminiumFerrule && DiameterMetres > TerminationKernel.OneInch ? PartSources.LargeSleeves : PartSources.ManualTerminations;

    internal double Share => TerminationKernel.Counted(Kind, DiameterMetres, Core, Stainless);

    internal double DiameterMetres { get; }

    /// <summary>Gives the end in one line, invariant culture.</summary>
    /// <returns>Kind and counted share.</returns>
    public override string ToString() => Kind + ", " + Text.Number(Share);

    private static Ratio? Known(double share) => double.IsNaN(share) ? null : Ratio.FromDecimalFractions(share);
}
