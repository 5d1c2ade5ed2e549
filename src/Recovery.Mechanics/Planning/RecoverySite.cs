using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What is known of the place of the pull: the way of the line, and who is where.</summary>
/// <remarks>Immutable, equality by value. Nothing declared is nothing known: it is listed or found, never taken as good.</remarks>
public sealed record RecoverySite
{
    /// <summary>Gets a site of which nothing is declared.</summary>
    public static RecoverySite Undeclared { get; } = new();

    /// <summary>Gets the way of the line under the stuck machine; null where it was not measured.</summary>
    public UnderMachineLine? UnderMachine { get; init; }

    /// <summary>Gets what was measured of the ground between the machines; null where nothing was, and then nothing is taken of it.</summary>
    public GroundBetween? GroundBetween { get; init; }

    /// <summary>Gets the angle by which the line falls from the hitch towards the casualty, -30 to 30 degrees; level unless declared.</summary>
    public Angle LinePitch { get; init => field = Angle.FromRadians(Guard.Radians(value, -30, 30, nameof(LinePitch))); }

    /// <summary>Gets the angle of the line off the direction of the pull, -45 to 45 degrees; straight unless declared. A bridle leans by it.</summary>
    public Angle LineYaw { get; init => field = Angle.FromRadians(Guard.Radians(value, -45, 45, nameof(LineYaw))); }

    /// <summary>Gets whether people on foot are in or near the line of pull; null where nobody has said.</summary>
    public bool? PeopleInLine { get; init; }

    /// <summary>Gets whether somebody sits in the stuck machine during the pull.</summary>
    public bool StuckMachineOccupied { get; init; }

    /// <summary>Gets whether a mass is laid over the line. Noted; it earns no number.</summary>
    public bool MassOnLine { get; init; }

    /// <summary>Gets whether somebody or something will hold the freed machine back on a slope: manned brakes, a holding line.</summary>
    public bool FreedMachineHeld { get; init; }

    /// <summary>Gives the same with another value: whether the freed machine is held back on a slope. For callers whose language has no <c>with</c>.</summary>
    /// <param name="freedMachineHeld">The value, as in <see cref="FreedMachineHeld"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithFreedMachineHeld(bool freedMachineHeld) => this with { FreedMachineHeld = freedMachineHeld };

    /// <summary>Gives the same with another value: the way of the line under the stuck machine. For callers whose language has no <c>with</c>.</summary>
    /// <param name="underMachine">The value, as in <see cref="UnderMachine"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithUnderMachine(UnderMachineLine? underMachine) => this with { UnderMachine = underMachine };

    /// <summary>Gives the same with another value: what was measured of the ground between the machines. For callers whose language has no <c>with</c>.</summary>
    /// <param name="groundBetween">The value, as in <see cref="GroundBetween"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithGroundBetween(GroundBetween? groundBetween) => this with { GroundBetween = groundBetween };

    /// <summary>Gives the same with another value: the angle by which the line falls from the hitch towards the casualty, -30 to 30 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="linePitch">The value, as in <see cref="LinePitch"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithLinePitch(Angle linePitch) => this with { LinePitch = linePitch };

    /// <summary>Gives the same with another value: the angle of the line off the direction of the pull, -45 to 45 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="lineYaw">The value, as in <see cref="LineYaw"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithLineYaw(Angle lineYaw) => this with { LineYaw = lineYaw };

    /// <summary>Gives the same with another value: whether people on foot are in or near the line of pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="peopleInLine">The value, as in <see cref="PeopleInLine"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithPeopleInLine(bool? peopleInLine) => this with { PeopleInLine = peopleInLine };

    /// <summary>Gives the same with another value: whether somebody sits in the stuck machine during the pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="stuckMachineOccupied">The value, as in <see cref="StuckMachineOccupied"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithStuckMachineOccupied(bool stuckMachineOccupied) => this with { StuckMachineOccupied = stuckMachineOccupied };

    /// <summary>Gives the same with another value: whether a mass is laid over the line. Noted. For callers whose language has no <c>with</c>.</summary>
    /// <param name="massOnLine">The value, as in <see cref="MassOnLine"/>.</param>
    /// <returns>The changed copy.</returns>
    public RecoverySite WithMassOnLine(bool massOnLine) => this with { MassOnLine = massOnLine };

    /// <summary>Gives the site in words, invariant culture.</summary>
    /// <returns>What is declared.</returns>
    public override string ToString() => "line falls " + Text.With(LinePitch.Degrees, "deg", 3) + ", people in line " + (PeopleInLine is { } people ? (people ? "yes" : "no") : "not declared");

    internal bool IsStraight => Math.Abs(LinePitch.Radians) < 1e-9 && Math.Abs(LineYaw.Radians) < 1e-9;

    internal double Tension => 1 / (Math.Cos(LinePitch.Radians) * Math.Cos(LineYaw.Radians));
}
