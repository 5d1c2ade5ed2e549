using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Ends of wire ropes, once. What a publication does not print is not a number.</summary>
/// <remarks>Sources: <see cref="PartSources.OffshoreTerminations"/>, <see cref="PartSources.ManualTerminations"/>, <see cref="PartSources.LargeSleeves"/>, <see cref="PartSources.Clips"/>.</remarks>
internal static class TerminationKernel
{
    /// <summary>One inch, with the rounding of 26 mm rope.</summary>
    public const double OneInch = PhysicalConstants.MetresPerInch * 1.03;

    /// <summary>High end of a wedge socket.</summary>
    public const double WedgeHigh = 0.95;

    /// <summary>Efficiency of the manual table, low end.</summary>
    public static double Manual(WireTerminationKind kind, double diameter, WireCore core, bool stainless) => kind switch
    {
        WireTerminationKind.ResinSocket => 1,
        WireTerminationKind.SwagedSocket => core == WireCore.Wire ? 0.95 : double.NaN,
        WireTerminationKind.SteelFerrule or WireTerminationKind.AluminiumFerrule or WireTerminationKind.UnknownFerrule =>
            diameter <= OneInch ? (core == WireCore.Wire ? 0.95 : 0.925) : diameter <= 2 * OneInch ? 0.925 : 0.90,
        WireTerminationKind.HandSplice => Math.Abs((diameter / (0.5 * PhysicalConstants.MetresPerInch)) - 1) < 0.03 ? HandTucked(stainless) : double.NaN,
        WireTerminationKind.WedgeSocket => 0.75,
        WireTerminationKind.Clips => 0.80,
        _ => double.NaN,
    };

    /// <summary>Factor on breaking strength of offshore practice.</summary>
    public static double Offshore(WireTerminationKind kind) => kind switch
    {
        WireTerminationKind.ResinSocket or WireTerminationKind.SwagedSocket or WireTerminationKind.FlemishEye => 1,
        WireTerminationKind.SteelFerrule => 1.12,
        WireTerminationKind.HandSplice => 1.25,
        WireTerminationKind.HandSpliceCableLaid => 1.33,
        WireTerminationKind.AluminiumFerrule or WireTerminationKind.UnknownFerrule or WireTerminationKind.Unknown => 2,
        _ => double.NaN,
    };

    /// <summary>The lower of what is published; for a stainless hand splice of any size its figure at 1/2 in.</summary>
    public static double Counted(WireTerminationKind kind, double diameter, WireCore core, bool stainless)
    {
        double manual = Manual(kind, diameter, core, stainless), offshore = 1 / Offshore(kind);
        var least = double.IsNaN(manual) ? offshore : double.IsNaN(offshore) ? manual : Math.Min(manual, offshore);
        return stainless && kind == WireTerminationKind.HandSplice ? Math.Min(least, HandTucked(true)) : least;
    }

    private static double HandTucked(bool stainless) => stainless ? 0.76 : 0.86;
}
