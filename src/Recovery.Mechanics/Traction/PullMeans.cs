using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What is on the farm to pull with. Immutable.</summary>
public sealed record PullMeans
{
    /// <summary>Lists what is there.</summary>
    /// <param name="towers">Towing machines, each on the ground it would stand on, at most six.</param>
    /// <param name="winches">Winches, at most four.</param>
    /// <param name="blocks">Single-sheave blocks, at most eleven.</param>
    /// <param name="anchors">Anchors for the fixed end of a tackle, at most four.</param>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">A list holds a null or too many, or two of a list bear one name.</exception>
    public PullMeans(IEnumerable<TowingMachine> towers, IEnumerable<FarmWinch> winches, IEnumerable<FarmBlock> blocks, IEnumerable<GroundAnchor> anchors)
    {
        Towers = Checked(towers, 6, t => t.Machine.Name, nameof(towers));
        Winches = Checked(winches, 4, w => w.Winch.Name, nameof(winches));
        Blocks = Checked(blocks, 11, b => b.Name, nameof(blocks));
        Anchors = Checked(anchors, 4, a => a.Name, nameof(anchors));
    }

    /// <summary>Gets the towing machines.</summary>
    public IReadOnlyList<TowingMachine> Towers { get; }

    /// <summary>Gets the winches.</summary>
    public IReadOnlyList<FarmWinch> Winches { get; }

    /// <summary>Gets the blocks.</summary>
    public IReadOnlyList<FarmBlock> Blocks { get; }

    /// <summary>Gets the anchors.</summary>
    public IReadOnlyList<GroundAnchor> Anchors { get; }

    /// <summary>Gets the angle between the lines of two machines side by side, 0 to 90 degrees; 20 degrees unless declared (judgement).</summary>
    public Angle SpreadAngle { get; init => field = Angle.FromRadians(Guard.Radians(value, 0, 90, nameof(SpreadAngle))); } = Angle.FromDegrees(20);

    /// <summary>Gets whether there is a strap and a ring to let two machines pull on one free-running strap.</summary>
    public bool Equaliser { get; init; }

    /// <summary>Gets the towing machines on tracks, at most four; each is looked at alone.</summary>
    public IReadOnlyList<TrackedTower> Tracked { get; init => field = Checked(value, 4, t => t.Name, nameof(Tracked)); } = [];

    /// <summary>Gives the same with another value: the angle between two lines. For callers whose language has no <c>with</c>.</summary>
    /// <param name="spreadAngle">The value, as in <see cref="SpreadAngle"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullMeans WithSpreadAngle(Angle spreadAngle) => this with { SpreadAngle = spreadAngle };

    /// <summary>Gives the same with another value: whether there is an equaliser. For callers whose language has no <c>with</c>.</summary>
    /// <param name="equaliser">The value, as in <see cref="Equaliser"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullMeans WithEqualiser(bool equaliser) => this with { Equaliser = equaliser };

    /// <summary>Gives the same with another value: the towing machines on tracks. For callers whose language has no <c>with</c>.</summary>
    /// <param name="tracked">The value, as in <see cref="Tracked"/>.</param>
    /// <returns>The changed copy.</returns>
    public PullMeans WithTracked(IEnumerable<TrackedTower> tracked) => this with { Tracked = Checked(tracked, 4, t => t.Name, nameof(tracked)) };

    /// <summary>Gives the means in words.</summary>
    /// <returns>How many of each.</returns>
    public override string ToString() => Text.Number(Towers.Count + Tracked.Count) + " machines, " + Text.Number(Winches.Count) + " winches, " + Text.Number(Blocks.Count) + " blocks, " + Text.Number(Anchors.Count) + " anchors";

    private static IReadOnlyList<T> Checked<T>(IEnumerable<T> items, int most, Func<T, string> nameOf, string parameter)
        where T : class
    {
        var list = Guard.NotNull(items, parameter).ToArray();
        if (list.Any(i => i is null)) throw new ArgumentException(parameter + " holds a null.", parameter);
        if (list.Length > most) throw new ArgumentException(parameter + " may hold at most " + Text.Number(most) + "; there were " + Text.Number(list.Length) + ".", parameter);
        if (list.Select(nameOf).Distinct(StringComparer.Ordinal).Count() != list.Length) throw new ArgumentException("Two of the " + parameter + " bear one name.", parameter);
        return Array.AsReadOnly(list);
    }
}
