using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Published speeds of parted lines, side by side: for scale, and to judge a result by. No result is limited by one of them.</summary>
/// <remarks>They are for lines near their breaking strength. Wave theory without loss gives the same order: 225 m/s for the tip of a nylon rope of 25 mm at 70 % of its strength.</remarks>
public static class PublishedRecoilSpeeds
{
    private const double KilometresPerHourPerMetrePerSecond = 3.6;

    /// <summary>Gets them, slowest first.</summary>
    public static IReadOnlyList<PublishedRecoilSpeed> All { get; } = Array.AsReadOnly<PublishedRecoilSpeed>(
    [
        One("mooring-wire", Kilometres(500), "rope ends of wire, up to", LinesSources.MooringAlert),
        One("mooring-synthetic", Kilometres(800), "rope ends of synthetic fibre, up to", LinesSources.MooringAlert),
        One("naval-synthetic", Miles(500), "ends of a broken synthetic line, up to", LinesSources.NavalTowing),
        One("filmed-nylon", 230, "tip of a nylon mooring rope, simulated against a filmed test", LinesSources.SnapbackSimulation),
        new("nylon-hook", Miles(600), Miles(700), "hook thrown by a nylon rope", LinesSources.ExtensionHook),
    ]);

    private static PublishedRecoilSpeed One(string key, double metresPerSecond, string words, Source source) => new(key, metresPerSecond, metresPerSecond, words, source);

    private static double Miles(double perHour) => perHour * PhysicalConstants.MetresPerSecondPerMilePerHour;

    private static double Kilometres(double perHour) => perHour / KilometresPerHourPerMetrePerSecond;
}
