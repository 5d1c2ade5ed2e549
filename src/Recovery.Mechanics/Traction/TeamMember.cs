using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>One machine of several that pull together.</summary>
public sealed record TeamMember
{
    /// <summary>Describes a member.</summary>
    /// <param name="tower">The machine on its ground.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public TeamMember(TowingMachine tower) => Tower = Guard.NotNull(tower, nameof(tower));

    /// <summary>Gets the machine on its ground.</summary>
    public TowingMachine Tower { get; private init; }

    /// <summary>Gets the angle of its line off the wanted direction of pull, positive to the left, -80 to 80 degrees; it heads along its own line. In line it is 0.</summary>
    public Angle LineAngle { get; init => field = Angle.FromRadians(Guard.Radians(value, -80, 80, nameof(LineAngle))); }

    /// <summary>Gets the speed that its wheels would travel without slip, 0.2 to 20 km/h; null takes all members in gears of one speed.</summary>
    public Speed? WheelSpeed { get; init => field = value is { } v ? Speed.FromMetersPerSecond(Guard.MetresPerSecond(v, 0.2, 20, nameof(WheelSpeed))) : null; }

    /// <summary>Gets the height of the point at its front by which the machine ahead draws it, 0.1 to 3 m; 0.6 m unless declared. In line only.</summary>
    public Length FrontHeight { get; init => field = Length.FromMeters(Guard.Metres(value, 0.1, 3, nameof(FrontHeight))); } = Length.FromMeters(0.6);

    /// <summary>Gets the rating of that point along the pull, 5 to 2,000 kN; null where it is not known. In line only.</summary>
    public Force? FrontRating { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 5, 2000, nameof(FrontRating))) : null; }

    /// <summary>Gives the same with another value: the angle of its line. For callers whose language has no <c>with</c>.</summary>
    /// <param name="lineAngle">The value, as in <see cref="LineAngle"/>.</param>
    /// <returns>The changed copy.</returns>
    public TeamMember WithLineAngle(Angle lineAngle) => this with { LineAngle = lineAngle };

    /// <summary>Gives the same with another value: the speed of its wheels. For callers whose language has no <c>with</c>.</summary>
    /// <param name="wheelSpeed">The value, as in <see cref="WheelSpeed"/>.</param>
    /// <returns>The changed copy.</returns>
    public TeamMember WithWheelSpeed(Speed? wheelSpeed) => this with { WheelSpeed = wheelSpeed };

    /// <summary>Gives the same with another value: the height of its front point. For callers whose language has no <c>with</c>.</summary>
    /// <param name="frontHeight">The value, as in <see cref="FrontHeight"/>.</param>
    /// <returns>The changed copy.</returns>
    public TeamMember WithFrontHeight(Length frontHeight) => this with { FrontHeight = frontHeight };

    /// <summary>Gives the same with another value: the rating of its front point. For callers whose language has no <c>with</c>.</summary>
    /// <param name="frontRating">The value, as in <see cref="FrontRating"/>.</param>
    /// <returns>The changed copy.</returns>
    public TeamMember WithFrontRating(Force? frontRating) => this with { FrontRating = frontRating };

    /// <summary>The same place in the team with another state of its machine: what sampling does to a reading.</summary>
    internal TeamMember On(TowingMachine tower) => this with { Tower = tower };

    /// <summary>Gives the member in words, invariant culture.</summary>
    /// <returns>Name and angle.</returns>
    public override string ToString() => Tower.Machine.Name + ", line " + Text.Number(LineAngle.Degrees, 3) + " deg off";
}
