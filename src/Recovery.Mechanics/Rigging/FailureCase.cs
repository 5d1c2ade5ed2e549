using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What follows if one part lets go at the procedure peak: which hardware is then on a free end, with how much energy, how fast at the most, and whose way it takes.</summary>
/// <remarks>All the energy of the line is counted for that side, nothing lost, no credit for weights or blankets. Speeds are bounds along the line; a whipping tip can be faster. People in cabs on the line of pull are in the way of every one of them.</remarks>
public sealed record FailureCase
{
    internal FailureCase(Phrase part, Phrase towards, IReadOnlyList<Phrase> hardware, double kilograms, bool massIsComplete, double joules, double metresPerSecond, string why)
    {
        MassIsComplete = massIsComplete;
        PartCalled = part;
        TowardsCalled = towards;
        HardwareCalled = hardware;
        Hardware = hardware.Select(h => h.ToString()).ToList().AsReadOnly();
        HardwareMass = Mass.FromKilograms(kilograms);
        StoredEnergy = Energy.FromJoules(joules);
        SpeedMetresPerSecond = metresPerSecond;
        Why = why;
    }

    /// <summary>Gets the part that lets go.</summary>
    public string Part => PartCalled.ToString();

    /// <summary>Gets whom the free end flies towards and past.</summary>
    public string Towards => TowardsCalled.ToString();

    /// <summary>Gets the hardware on the free end; empty where only the line itself recoils.</summary>
    public IReadOnlyList<string> Hardware { get; }

    /// <summary>Gets whether the mass of everything on the free end is known; not so where an attachment tears off, whose piece nobody has weighed.</summary>
    public bool MassIsComplete { get; }

    /// <summary>Gets the mass of that hardware as far as it is known; a torn-off piece comes on top of it.</summary>
    public Mass HardwareMass { get; }

    /// <summary>Gets the energy in the line, all of it counted for this side.</summary>
    public Energy StoredEnergy { get; }

    /// <summary>Gets the upper bound on the speed.</summary>
    public Speed SpeedBound => Speed.FromMetersPerSecond(SpeedMetresPerSecond);

    /// <summary>Gets how it comes about.</summary>
    public string Why { get; }

    /// <summary>Gets what the other leg carries where the bridle jams in the eye instead of running out of it; null in every other case. In a rig graph it stands with the case of running out, worked with the whole rig without the lost part, and is null as well where what is left comes to no rest.</summary>
    public EyeJam? Jam { get; private init; }

    /// <summary>Gets the mass as it may be printed: what is known, and that there is more.</summary>
    public string MassText => MassIsComplete ? Text.With(HardwareMass.Kilograms, "kg", 3) : HardwareMass.Kilograms > 0 ? Text.With(HardwareMass.Kilograms, "kg", 3) + " and the torn-off piece" : "mass not known";

    internal double SpeedMetresPerSecond { get; }

    /// <summary>Gets the speed as it may be printed: to one figure, rounded up.</summary>
    public string SpeedText => "up to " + Text.Number(RoundedUp(SpeedMetresPerSecond)) + " m/s";

    /// <summary>Gives the case in one line, invariant culture.</summary>
    /// <returns>Part, hardware, speed and direction.</returns>
    public override string ToString() => Part + " lets go: " + (Hardware.Count == 0 ? "the line itself" : string.Join(", ", Hardware)) + ", " + SpeedText + " towards " + Towards + (Jam is null ? string.Empty : "; " + Jam);

    internal Phrase PartCalled { get; }

    internal Phrase TowardsCalled { get; }

    internal IReadOnlyList<Phrase> HardwareCalled { get; }

    internal FailureCase WithJam(EyeJam jam) => this with { Jam = jam };

    internal static double RoundedUp(double value)
    {
        if (!(value > 0)) return 0;
        var decade = System.Math.Pow(10, System.Math.Floor(System.Math.Log10(value)));
        return System.Math.Ceiling((value / decade) - 1e-12) * decade;
    }
}
