using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What a measure costs the people on the spot. Always given by the caller: nobody has published it.</summary>
/// <remarks>Immutable, equality by value.</remarks>
public sealed record Effort
{
    /// <summary>Describes an effort.</summary>
    /// <param name="duration">Time it takes, 0 to 48 h.</param>
    /// <param name="people">People it needs, 1 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Effort(Duration duration, int people)
    {
        Duration = Duration.FromSeconds(Guard.Seconds(duration, 0, 172800, nameof(duration)));
        People = Guard.Count(people, 1, 50, nameof(people));
    }

    /// <summary>Gets the time it takes.</summary>
    public Duration Duration { get; }

    /// <summary>Gets the people it needs.</summary>
    public int People { get; }

    /// <summary>Gets time times people, in minutes.</summary>
    public double PersonMinutes => Duration.Seconds / 60 * People;

    /// <summary>Gives the effort in words, invariant culture.</summary>
    /// <returns>Minutes and people.</returns>
    public override string ToString() => Text.With(Duration.Seconds / 60, "min", 3) + ", " + Text.Number(People) + (People == 1 ? " person" : " people");
}
