using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>The handbook rule: mire resistance as one, two or three times the present weight by the depth of the deepest wheel.</summary>
/// <remarks>
/// <para>R = k W; k 1 up to the hub, 2 over the hub, 3 over the fender. W weight with cargo and trapped mud, kN.</para>
/// <para>It stands beside the band of the soil model and is never added to it; it is for the hole as found, so digging does not lower it and removing mass does. It looks at weight and depth alone: too low for a light machine in strong clay, too high for a heavy one in slurry.
/// The published reductions (<see cref="Reduce"/>) are 10 % for a pull against the direction of entry, 40 % for powered <b>tracks</b>, 50 % for both. For powered wheels there is no figure: wheels may dig in, so none is given. The band of a demand and its planning figure take none.</para>
/// <para>The handbook takes the governing one of mire and grade, not their sum; a sum of both, as in <see cref="PullDemand"/>, asks for more than the handbook does.</para>
/// <para>Source: US Army FM 20-22 (1970) and FM 9-43-2 (1995). The factors are from memory and have no known published test base.</para>
/// </remarks>
public static class DepthRule
{
    /// <summary>What is left of the mire resistance (from memory).</summary>
    private const double AgainstEntry = 0.9, PoweredTracks = 0.6, AgainstEntryWithTracks = 0.5;

    /// <summary>Resistance of an overturned machine over its weight (from memory).</summary>
    private const double OverturningShare = 0.5;

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

    /// <summary>Reduces the mire resistance exactly as far as the handbooks do (from memory).</summary>
    /// <param name="estimate">Mire resistance, 0 to 20,000 kN.</param>
    /// <param name="againstEntry">Whether it is drawn out opposite to the direction of entry.</param>
    /// <param name="onTracks">Whether the stuck machine runs on tracks.</param>
    /// <param name="powered">Whether power is applied to its running gear while it is drawn.</param>
    /// <returns>The reduced resistance and why that much and no more.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The estimate is outside its range.</exception>
    public static DepthRuleReduction Reduce(Force estimate, bool againstEntry, bool onTracks, bool powered)
    {
        var newtons = Guard.Newtons(estimate, 0, 20000, nameof(estimate));
        var credited = powered && onTracks;
        var reason = againstEntry ? (credited ? "half of it: drawn out against its entry with powered tracks" : "a tenth less: drawn out against its entry")
            : credited ? "four tenths less: powered tracks break the mud seal under the belly"
            : "as it stands";
        if (powered && !onTracks) reason += "; no figure is published for powered wheels, which may dig in";
        return new DepthRuleReduction(newtons, againstEntry ? (credited ? AgainstEntryWithTracks : AgainstEntry) : credited ? PoweredTracks : 1, reason);
    }

    /// <summary>Gives what mass taken off is worth under the rule, k m g (factor from memory). The soil model gives another figure: there it leaves face, suction, sides and base shear as they are.</summary>
    /// <param name="depth">The class of the deepest wheel.</param>
    /// <param name="mass">Mass taken off, 0 to 500 t.</param>
    /// <returns>The resistance that goes with it.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The mass is outside its range.</exception>
    public static Force Lightening(DepthClass depth, Mass mass) => Force.FromNewtons(Factor(depth) * Guard.Kilograms(mass, 0, 500, nameof(mass)) * PhysicalConstants.StandardGravity);

    /// <summary>Gives the resistance of an overturned machine until it passes its balance point, half its weight (from memory).</summary>
    /// <param name="weight">Present weight, 1 to 5,000 kN.</param>
    /// <returns>The resistance.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The weight is outside its range.</exception>
    public static Force Overturning(Force weight) => Force.FromNewtons(OverturningShare * Guard.Newtons(weight, 1, 5000, nameof(weight)));

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
