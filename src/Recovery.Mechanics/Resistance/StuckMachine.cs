using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>A machine in its hole: how deep each axle stands, what the belly does, what is known of the wheels, and what has been dug since.</summary>
/// <remarks>
/// <para>What is not declared is assumed and listed: the seal, the motion of the wheels, the slope of the entry rut, which wheels meet uncut soil. The strengths of the hole belong to the machine <b>as it sank</b>: unloading afterwards keeps <see cref="AsFound"/>.</para>
/// <para>Immutable; every edit gives a new one.</para>
/// </remarks>
public sealed record StuckMachine
{
    /// <summary>Describes a stuck machine.</summary>
    /// <param name="machine">The machine with its present loads.</param>
    /// <param name="soil">The uncut soil beside it.</param>
    /// <param name="sinkage">Depth of the tyre bottoms below the surrounding surface, one per axle, 0 m to the tyre diameter.</param>
    /// <param name="direction">Direction in which it is to be drawn.</param>
    /// <exception cref="ArgumentNullException">Machine, soil or sinkage is null.</exception>
    /// <exception cref="ArgumentException">Not one sinkage per axle, or an axle runs on tracks: no law for a sunk track stands behind the sum.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A sinkage is negative or deeper than the tyre is high.</exception>
    public StuckMachine(Machine machine, Soil soil, IEnumerable<Length> sinkage, PullDirection direction)
    {
        Machine = Guard.NotNull(machine, nameof(machine)).OnTyres(nameof(machine), "What holds a sunk track has no published law among the sources of this sum: there stand the depth rule with its reduction for powered tracks (DepthRule.Reduce), and the model of a track that rolls (TrackModel), each by itself.");
        AsFound = machine;
        Soil = Guard.NotNull(soil, nameof(soil));
        Direction = Guard.Defined(direction, direction is PullDirection.Forwards or PullDirection.Rearwards, nameof(direction));
        Sinkage = Guard.NotNull(sinkage, nameof(sinkage)).Select(z => Length.FromMeters(z.Meters)).ToList().AsReadOnly();
        if (Sinkage.Count != machine.Axles.Count)
            throw new ArgumentException("sinkage must have one value per axle; " + machine.Name + " has " + Text.Number(machine.Axles.Count) + " axles and " + Text.Number(Sinkage.Count) + " values were given.", nameof(sinkage));
        for (var i = 0; i < Sinkage.Count; i++) Guard.Element(Sinkage[i].Meters, 0, machine.Axles[i].Tyre.OverallDiameter.Meters, "m", nameof(sinkage), i, machine.Axles[i].Name);
    }

    /// <summary>Gets the machine with its present loads.</summary>
    public Machine Machine { get; private init; }

    /// <summary>Gets the machine as it sank, before anything was taken off.</summary>
    public Machine AsFound { get; private init; }

    /// <summary>Gets the uncut soil beside it.</summary>
    public Soil Soil { get; init => field = Guard.NotNull(value, nameof(Soil)); }

    /// <summary>Gets the sinkage of each axle.</summary>
    public IReadOnlyList<Length> Sinkage { get; private init; }

    /// <summary>Gets the direction in which it is to be drawn.</summary>
    public PullDirection Direction { get; private init; }

    /// <summary>Gets the slope along the pull, positive where the ground rises in the direction of the pull.</summary>
    public Grade Grade { get; init; }

    /// <summary>Gets the belly on the ground; null where it is clear or has been dug free.</summary>
    public Belly? Belly { get; init; }

    /// <summary>Gets the slope along the way by which it drove in, positive where the ground rose in the direction of entry; null where it was not declared (entry against the pull is then taken).</summary>
    public Grade? EntryGrade { get; init; }

    /// <summary>Gets whether belly and rear faces are sealed.</summary>
    public Seal Seal { get; init => field = Guard.Defined(value, value is >= Seal.Undeclared and <= Seal.PartVented, nameof(Seal)); }

    /// <summary>Gets what the wheels do.</summary>
    public WheelMotion Wheels { get; init => field = Guard.Defined(value, value is >= WheelMotion.Undeclared and <= WheelMotion.Locked, nameof(Wheels)); }

    /// <summary>Gets the slope of the rut by which it has to come out, 0 to 45 degrees; null where it was not measured (1:10, 1:6, 1:4 are then taken).</summary>
    public Angle? ExitSlope { get; init => field = value is { } v ? Angle.FromRadians(Guard.Radians(v, 0, 45, nameof(ExitSlope))) : null; }

    /// <summary>Gets which axles meet uncut soil; null where it was not looked at.</summary>
    public IReadOnlyList<bool>? MeetsUncutSoil
    {
        get;
        init
        {
            if (value is not null && value.Count != Machine.Axles.Count)
                throw new ArgumentException("MeetsUncutSoil must have one value per axle.", nameof(MeetsUncutSoil));
            field = value is null ? null : new List<bool>(value).AsReadOnly();
        }
    }

    /// <summary>Gets the method for the soil ahead of buried wheels; Rankine, undrained, where none is chosen. Published methods differ by a factor of about two on one soil.</summary>
    public FaceMethod FaceMethod { get; init => field = Choosable(value); } = FaceMethod.Rankine;

    /// <summary>Gets the height of the fender (lowest part of the body over the wheel) above the bottom of the deepest tyre; null where it was not measured. Accepted range 0.5 to 5 m.</summary>
    public Length? FenderHeight { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 0.5, 5, nameof(FenderHeight))) : null; }

    /// <summary>Gets the slope to which the ground ahead of the wheels (in the direction of the pull) has been dug; null where nothing is dug.</summary>
    public Angle? DugSlope { get; private init; }

    /// <summary>Gets whether the side walls of the wheels are dug free.</summary>
    public bool SidesDug { get; private init; }

    /// <summary>Gets whether the belly, down when found, has been dug free.</summary>
    public bool BellyFreed { get; private init; }

    /// <summary>Gets whether the machine drives its own wheels gently with the pull.</summary>
    public bool DrivesItsWheels { get; private init; }

    /// <summary>Gets whether any wheel is sunk more than a tenth of its diameter.</summary>
    public bool AnyWheelBuried => Enumerable.Range(0, Sinkage.Count).Any(IsBuried);

    /// <summary>The same hole and history with other masses, now and as it sank: what sampling does to a load.</summary>
    internal StuckMachine WithMachines(Machine now, Machine asFound) => this with { Machine = now, AsFound = asFound };

    /// <summary>The same machine in a hole of other depths: what sampling does to a reading.</summary>
    internal StuckMachine WithSinkage(IReadOnlyList<Length> sinkage) => this with { Sinkage = sinkage };

    /// <summary>The same machine behind a ramp of another slope: what sampling does to a reading.</summary>
    internal StuckMachine WithDugSlope(double radians) => this with { DugSlope = Angle.FromRadians(radians) };

    internal Belly? BellyAsFound { get => field ?? Belly; private init; }

    /// <summary>Tells whether the wheels of an axle count as buried: sunk more than a tenth of their diameter (judgement).</summary>
    /// <param name="axle">Number of the axle, 0 the foremost.</param>
    /// <returns>True where they are buried.</returns>
    public bool IsBuried(int axle) => BuriedWheelKernel.IsBuried(Machine.Axles[Guard.Count(axle, 0, Sinkage.Count - 1, nameof(axle))].Tyre.OverallDiameter.Meters, Sinkage[axle].Meters);

    /// <summary>Takes a payload or an attachment off; the hole keeps its strengths.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The lighter stuck machine.</returns>
    /// <exception cref="ArgumentException">There is no such load, or it is fixed.</exception>
    public StuckMachine Without(string load) => this with { Machine = Machine.Without(load) };

    /// <summary>Leaves part of a payload on.</summary>
    /// <param name="load">Name of the load.</param>
    /// <param name="share">Share that stays, 0 to 1.</param>
    /// <returns>The lighter stuck machine.</returns>
    /// <exception cref="ArgumentException">There is no such load, or it is fixed.</exception>
    public StuckMachine WithShareOf(string load, Ratio share) => this with { Machine = Machine.WithShareOf(load, share) };

    /// <summary>Lets every tyre down to the lowest inflation its maker lists; tyres whose lowest inflation is not known stay.</summary>
    /// <returns>The stuck machine on softer tyres.</returns>
    public StuckMachine Deflated() => this with
    {
        Machine = Machine.WithAxles(Machine.Axles.Select(a => a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals ? a with { Tyre = a.Tyre.AtInflation(lowest) } : a)),
    };

    /// <summary>Lets every tyre down to a planned inflation; softer ones stay. Below what the maker lists the assessment raises a finding.</summary>
    /// <param name="planned">Planned inflation, 30 to 1,000 kPa.</param>
    /// <returns>The stuck machine on softer tyres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The inflation is outside its range.</exception>
    public StuckMachine DeflatedTo(Pressure planned)
    {
        var pascals = Guard.Pascals(planned, 30, 1000, nameof(planned));
        return this with { Machine = Machine.WithAxles(Machine.Axles.Select(a => pascals < a.Tyre.Inflation.Pascals ? a with { Tyre = a.Tyre.AtInflation(planned) } : a)) };
    }

    /// <summary>Digs the ground ahead of the wheels, in the direction of the pull, down to a ramp. Takes faces, step and suction away and replaces a steeper exit; never a flatter one.</summary>
    /// <param name="slope">Slope of the ramp, 0 to 45 degrees; 1:6 is 9.46 degrees.</param>
    /// <param name="sides">Whether the side walls are dug free as well.</param>
    /// <returns>The dug-out stuck machine.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside its range.</exception>
    public StuckMachine Dug(Angle slope, bool sides = false) => this with { DugSlope = Angle.FromRadians(Guard.Radians(slope, 0, 45, nameof(slope))), SidesDug = sides || SidesDug };

    /// <summary>Lets air or water in behind the wheels and under the belly.</summary>
    /// <returns>The vented stuck machine.</returns>
    public StuckMachine Vented() => this with { Seal = Seal.Vented };

    /// <summary>Digs the belly free. Its load goes to the wheels, so the net can be negative.</summary>
    /// <returns>The stuck machine with a clear belly.</returns>
    public StuckMachine WithBellyFreed() => this with { Belly = null, BellyAsFound = Belly ?? BellyAsFound, BellyFreed = true };

    /// <summary>Has the machine drive its own wheels gently with the pull: they turn. Its gross traction is a resource listed apart, never taken off the demand.</summary>
    /// <returns>The stuck machine with turning wheels.</returns>
    public StuckMachine DrivingItsWheels() => this with { Wheels = WheelMotion.Turning, DrivesItsWheels = true };

    /// <summary>Turns the pull round. The slope along the pull changes its sign; what was dug, the slope of the rut and which wheels meet uncut soil belonged to the other side and are open again.</summary>
    /// <returns>The stuck machine, to be drawn the other way.</returns>
    public StuckMachine DrawnTheOtherWay() => this with
    {
        Direction = Direction == PullDirection.Forwards ? PullDirection.Rearwards : PullDirection.Forwards,
        Grade = Grade.FromAngle(Angle.FromRadians(-Grade.Radians)),
        DugSlope = null,
        ExitSlope = null,
        MeetsUncutSoil = null,
    };

    /// <summary>Gives the same with another value: the uncut soil beside it. For callers whose language has no <c>with</c>.</summary>
    /// <param name="soil">The value, as in <see cref="Soil"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithSoil(Soil soil) => this with { Soil = soil };

    /// <summary>Gives the same with another value: the slope along the pull, positive where the ground rises in the direction of the pull. For callers whose language has no <c>with</c>.</summary>
    /// <param name="grade">The value, as in <see cref="Grade"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithGrade(Grade grade) => this with { Grade = grade };

    /// <summary>Gives the same with another value: the belly on the ground. For callers whose language has no <c>with</c>.</summary>
    /// <param name="belly">The value, as in <see cref="Belly"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithBelly(Belly? belly) => this with { Belly = belly };

    /// <summary>Gives the same with another value: the slope along the way by which it drove in, positive where the ground rose in the direction of entry. For callers whose language has no <c>with</c>.</summary>
    /// <param name="entryGrade">The value, as in <see cref="EntryGrade"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithEntryGrade(Grade? entryGrade) => this with { EntryGrade = entryGrade };

    /// <summary>Gives the same with another value: whether belly and rear faces are sealed. For callers whose language has no <c>with</c>.</summary>
    /// <param name="seal">The value, as in <see cref="Seal"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithSeal(Seal seal) => this with { Seal = seal };

    /// <summary>Gives the same with another value: what the wheels do. For callers whose language has no <c>with</c>.</summary>
    /// <param name="wheels">The value, as in <see cref="Wheels"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithWheels(WheelMotion wheels) => this with { Wheels = wheels };

    /// <summary>Gives the same with another value: the slope of the rut by which it has to come out, 0 to 45 degrees. For callers whose language has no <c>with</c>.</summary>
    /// <param name="exitSlope">The value, as in <see cref="ExitSlope"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithExitSlope(Angle? exitSlope) => this with { ExitSlope = exitSlope };

    /// <summary>Gives the same with another value: the height of the fender (lowest part of the body over the wheel) above the bottom of the deepest tyre. For callers whose language has no <c>with</c>.</summary>
    /// <param name="fenderHeight">The value, as in <see cref="FenderHeight"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithFenderHeight(Length? fenderHeight) => this with { FenderHeight = fenderHeight };

    /// <summary>Gives the same with another value: which axles meet uncut soil. For callers whose language has no <c>with</c>.</summary>
    /// <param name="meetsUncutSoil">The value, as in <see cref="MeetsUncutSoil"/>.</param>
    /// <returns>The changed copy.</returns>
    public StuckMachine WithMeetsUncutSoil(IReadOnlyList<bool>? meetsUncutSoil) => this with { MeetsUncutSoil = meetsUncutSoil };

    /// <summary>Gives the same with another value: the method for the soil ahead of buried wheels. For callers whose language has no <c>with</c>.</summary>
    /// <param name="faceMethod">The value, as in <see cref="FaceMethod"/>.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentException">The method holds the suction, which the sum counts apart.</exception>
    public StuckMachine WithFaceMethod(FaceMethod faceMethod) => this with { FaceMethod = faceMethod };

    /// <summary>Gives the stuck machine in words, invariant culture.</summary>
    /// <returns>Machine, soil and depths.</returns>
    public override string ToString() => Machine + ", sunk " + string.Join(" / ", Sinkage.Select(z => Text.Number(z.Meters, 3))) + " m, " + Soil;

    private static FaceMethod Choosable(FaceMethod value) => Guard.NotNull(value, nameof(FaceMethod)).HoldsSuction
        ? throw new ArgumentException("FaceMethod " + value.Name + " holds the suction behind the wheel, which the sum counts apart; choose " + FaceMethod.ApiSliding.Name + ".", nameof(FaceMethod))
        : value;
}
