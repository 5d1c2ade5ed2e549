using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The handbook rule: mire resistance as one, two or three times the present weight by the depth of the deepest wheel.</summary>
/// <remarks>
/// <para>R = k W; k 1 up to the hub, 2 over the hub, 3 over the fender. W weight with cargo and trapped mud, kN.</para>
/// <para>It stands beside the band of the soil model and is never added to it; it is for the hole as found, so digging does not lower it and removing mass does. It looks at weight and depth alone: too low for a light machine in strong clay, too high for a heavy one in slurry.
/// No reduction is given: the published one for powered running gear belongs to tracks.</para>
/// <para>Source: US Army FM 20-22 (1970) and FM 9-43-2 (1995). The factors are from memory and have no known published test base.</para>
/// </remarks>
public static class DepthRule
{
    /// <summary>Gives the factor on weight of a depth class (from memory).</summary>
    /// <param name="depth">The class.</param>
    /// <returns>0, 1, 2 or 3.</returns>
    public static int Factor(DepthClass depth) => depth switch
    {
        DepthClass.Hub => 1,
        DepthClass.Fender => 2,
        DepthClass.Cab => 3,
        _ => 0,
    };

    /// <summary>Gives the mire resistance by the rule.</summary>
    /// <param name="depth">The class of the deepest wheel.</param>
    /// <param name="weight">Present weight with cargo and mud, 1 to 5,000 kN.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The weight is outside its range.</exception>
    public static Force Resistance(DepthClass depth, Force weight) => Force.FromNewtons(Factor(depth) * Guard.Newtons(weight, 1, 5000, nameof(weight)));

    /// <summary>Finds the class of a stuck machine from its deepest wheel, against that wheel's own hub and the fender where its height is known.</summary>
    /// <param name="stuck">The stuck machine.</param>
    /// <returns>The class; over the hub with an unknown fender height counts as <see cref="DepthClass.Fender"/>.</returns>
    public static DepthClass Classify(StuckMachine stuck)
    {
        Guard.NotNull(stuck, nameof(stuck));
        var deepest = DepthClass.NotMired;
        for (var i = 0; i < stuck.Sinkage.Count; i++)
        {
            if (!stuck.IsBuried(i)) continue;
            var z = stuck.Sinkage[i].Meters;
            var found = stuck.FenderHeight is { } fender && z > fender.Meters ? DepthClass.Cab
                : z > stuck.Machine.Axles[i].Tyre.OverallDiameter.Meters / 2 ? DepthClass.Fender
                : DepthClass.Hub;
            if (found > deepest) deepest = found;
        }

        return deepest;
    }

    /// <summary>Works the rule out step by step.</summary>
    /// <param name="depth">The class of the deepest wheel.</param>
    /// <param name="weight">Present weight, 1 to 5,000 kN.</param>
    /// <returns>The worked steps.</returns>
    public static Working Explain(DepthClass depth, Force weight) => new WorkingBuilder("Handbook depth rule")
        .Step("R_m", "mire resistance by depth of the deepest wheel", "k W", Text.Number(Factor(depth)) + " x " + Text.Number(weight.Newtons / 1000), Text.Kilonewtons(Resistance(depth, weight).Newtons), ResistanceSources.DepthRule)
        .Build();
}
