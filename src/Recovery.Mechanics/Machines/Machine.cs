using System;
using System.Collections.Generic;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A machine on two or more axles: its loads, its centre of mass and what each axle carries.</summary>
/// <remarks>
/// <para>Frame: x forward from the foremost axle, y left, z up from the ground. N = W cos(theta) - F_z and M = W (x_c cos(theta) - p z_c sin(theta)) - x_a F_z + z_a F_x are what the axles make up; p is +1 for a pull forwards, -1 rearwards; theta is positive where the ground rises along the pull.
/// Two axles follow from statics; three and more need the suspension, which is an input.</para>
/// <para>Immutable. Source: statics (derived), g = 9.80665 m/s2.</para>
/// </remarks>
public sealed class Machine
{
    private readonly double[] _x;
    private readonly double[] _stiffness;

    /// <summary>Describes a machine.</summary>
    /// <param name="name">Name, as a person would call it.</param>
    /// <param name="axles">Two to eight axles, the foremost first and at x = 0.</param>
    /// <param name="loads">Its masses with their places; at least one, names unique, 1 to 200 t in all.</param>
    /// <param name="suspension">How three or more axles share the load; means nothing on two.</param>
    /// <exception cref="ArgumentException">Axles out of order, no load, a name given twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Number of axles or total mass outside its range.</exception>
    public Machine(string name, IEnumerable<Axle> axles, IEnumerable<NamedLoad> loads, Suspension suspension = Suspension.Undeclared)
    {
        Name = Guard.Name(name, nameof(name));
        Axles = new List<Axle>(Guard.NotNull(axles, nameof(axles))).AsReadOnly();
        Loads = new List<NamedLoad>(Guard.NotNull(loads, nameof(loads))).AsReadOnly();
        Suspension = Guard.Defined(suspension, suspension is >= Suspension.Undeclared and <= Suspension.StraightFrame, nameof(suspension));
        Guard.Count(Axles.Count, 2, AxleStaticsKernel.MostAxles, nameof(axles));
        _x = new double[Axles.Count];
        _stiffness = new double[Axles.Count];
        for (var i = 0; i < _x.Length; i++)
        {
            _x[i] = Axles[i].Position.Meters;
            _stiffness[i] = Axles[i].RelativeStiffness;
            if (i == 0 ? _x[i] != 0 : _x[i] >= _x[i - 1])
                throw new ArgumentException("axles must begin with the foremost at x = 0 and go rearwards; axle " + Axles[i].Name + " stands at " + Text.With(_x[i], "m") + ".", nameof(axles));
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        double mass = 0, mx = 0, my = 0, mz = 0;
        foreach (var load in Loads)
        {
            if (!names.Add(load.Name)) throw new ArgumentException("loads must have unique names; '" + load.Name + "' is given twice.", nameof(loads));
            mass += load.Mass.Kilograms;
            mx += load.Mass.Kilograms * load.Position.Meters;
            my += load.Mass.Kilograms * load.LeftOfMiddle.Meters;
            mz += load.Mass.Kilograms * load.Height.Meters;
        }

        Guard.Range(mass / 1000, 1, 200, "t", nameof(loads));
        MassKilograms = mass;
        CentreX = mx / mass;
        CentreLeft = my / mass;
        CentreZ = mz / mass;
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the axles, foremost first.</summary>
    public IReadOnlyList<Axle> Axles { get; }

    /// <summary>Gets the masses with their places.</summary>
    public IReadOnlyList<NamedLoad> Loads { get; }

    /// <summary>Gets how three or more axles share the load.</summary>
    public Suspension Suspension { get; }

    /// <summary>Gets the total mass.</summary>
    public Mass Mass => Mass.FromKilograms(MassKilograms);

    /// <summary>Gets the total weight, with g = 9.80665 m/s2.</summary>
    public Force Weight => Force.FromNewtons(WeightNewtons);

    /// <summary>Gets the position x of the centre of mass.</summary>
    public Length CentreOfMassPosition => Length.FromMeters(CentreX);

    /// <summary>Gets how far the centre of mass lies left of the middle.</summary>
    public Length CentreOfMassLeft => Length.FromMeters(CentreLeft);

    /// <summary>Gets the height of the centre of mass.</summary>
    public Length CentreOfMassHeight => Length.FromMeters(CentreZ);

    internal double MassKilograms { get; }

    internal double WeightNewtons => MassKilograms * PhysicalConstants.StandardGravity;

    internal double CentreX { get; }

    internal double CentreLeft { get; }

    internal double CentreZ { get; }

    /// <summary>Refuses a machine with an axle on tracks where a wheel model is asked.</summary>
    /// <param name="parameter">Name of the caller's parameter.</param>
    /// <param name="instead">What there is for tracks.</param>
    internal Machine OnTyres(string parameter, string instead)
    {
        for (var i = 0; i < Axles.Count; i++) Axles[i].OnTyres(parameter, instead);
        return this;
    }

    /// <summary>Smallest track width of its axles, m: what it stands on when it turns over sideways.</summary>
    internal double NarrowestTrack
    {
        get
        {
            var track = double.PositiveInfinity;
            for (var i = 0; i < Axles.Count; i++) track = Math.Min(track, Axles[i].TrackWidth.Meters);
            return track;
        }
    }

    internal AxlePlaces AxlePositions => new(_x, _stiffness);

    internal ReadOnlySpan<double> AxleStiffness => _stiffness;

    /// <summary>Gets whether the sharing among axles depends on a suspension that is not declared.</summary>
    public bool SuspensionMatters => Axles.Count > 2 && Suspension == Suspension.Undeclared;

    /// <summary>Gives the axle loads of the machine at rest.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="direction">Direction of the pull, which says which end is uphill.</param>
    /// <param name="suspension">Suspension to work with; undeclared takes that of the machine, and equalised where that is undeclared too.</param>
    /// <returns>The axle loads.</returns>
    public AxleLoads AxleLoads(Grade grade, PullDirection direction, Suspension suspension = Suspension.Undeclared) =>
        AxleLoadsUnderPull(grade, direction, Force.Zero, Force.Zero, Length.Zero, Length.Zero, suspension);

    /// <summary>Gives the axle loads with a line pulling on the machine.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="direction">Direction of the pull in the frame of the machine.</param>
    /// <param name="pull">Force of the line along the ground, in the direction of the pull, 0 to 5,000 kN.</param>
    /// <param name="lineUp">Force of the line normal to the ground, up positive, -2,000 to 2,000 kN.</param>
    /// <param name="attachmentPosition">Position x of the attachment, -40 to 15 m.</param>
    /// <param name="attachmentHeight">Height of the attachment above the ground, 0 to 6 m.</param>
    /// <param name="suspension">Suspension to work with.</param>
    /// <returns>The axle loads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AxleLoads AxleLoadsUnderPull(Grade grade, PullDirection direction, Force pull, Force lineUp, Length attachmentPosition, Length attachmentHeight, Suspension suspension = Suspension.Undeclared)
    {
        var sign = Sign(direction);
        var along = sign * Guard.Newtons(pull, 0, 5000, nameof(pull));
        var up = Guard.Newtons(lineUp, -2000, 2000, nameof(lineUp));
        var xa = Guard.Metres(attachmentPosition, -40, 15, nameof(attachmentPosition));
        var za = Guard.Metres(attachmentHeight, 0, 6, nameof(attachmentHeight));
        return Share(AxleStaticsKernel.MomentSum(WeightNewtons, CentreX, CentreZ, grade.Radians, sign, along, up, xa, za), AxleStaticsKernel.NormalSum(WeightNewtons, grade.Radians, up), suspension);
    }

    /// <summary>Gives the loads of the wheels left and right on every axle, at rest.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="sideSlope">Slope across, positive where the ground rises to the left of the machine.</param>
    /// <param name="direction">Direction of the pull, which says which end is uphill.</param>
    /// <param name="suspension">Suspension to work with; undeclared takes that of the machine, and equalised where that is undeclared too.</param>
    /// <returns>Left and right of every axle, with what was assumed and what is to be objected.</returns>
    /// <exception cref="ArgumentException">Every axle hangs on a pin, so that nothing holds the machine upright.</exception>
    public WheelLoads WheelLoads(Grade grade, Grade sideSlope, PullDirection direction, Suspension suspension = Suspension.Undeclared) => SideSlope.Of(this, grade, sideSlope, direction, suspension);

    /// <summary>Works out the wheel loads left and right step by step.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="sideSlope">Slope across, positive where the ground rises to the left of the machine.</param>
    /// <param name="direction">Direction of the pull.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentException">Every axle hangs on a pin, so that nothing holds the machine upright.</exception>
    public Working ExplainWheelLoads(Grade grade, Grade sideSlope, PullDirection direction) => SideSlope.Explain(this, grade, sideSlope, direction);

    /// <summary>Works out centre of mass and axle loads step by step.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="direction">Direction of the pull.</param>
    /// <returns>The worked steps.</returns>
    public Working Explain(Grade grade, PullDirection direction)
    {
        var loads = AxleLoads(grade, direction);
        var sign = Sign(direction);
        double n = AxleStaticsKernel.NormalSum(WeightNewtons, grade.Radians, 0), m = AxleStaticsKernel.MomentSum(WeightNewtons, CentreX, CentreZ, grade.Radians, sign, 0, 0, 0, 0);
        string w = Text.Number(WeightNewtons / 1000), xc = Text.Number(CentreX), zc = Text.Number(CentreZ), theta = Text.Number(grade.Radians * 180 / Math.PI) + " deg";
        var working = new WorkingBuilder("Axle loads of " + Name)
            .Step("W", "weight", "m g", Text.Number(MassKilograms / 1000) + " x 9.80665", Text.Kilonewtons(WeightNewtons), GeneralSources.StandardGravity)
            .Step("x_c", "centre of mass, forward of the foremost axle", "sum(m x)/sum(m)", "over " + Text.Number(Loads.Count) + " loads", Text.With(CentreX, "m"), GeneralSources.Statics)
            .Step("N", "what the axles carry together", "W cos(theta)", w + " cos(" + theta + ")", Text.Kilonewtons(n), GeneralSources.Statics)
            .Step("M", "moment about the foremost axle", "W (x_c cos(theta) - p z_c sin(theta))", w + " (" + xc + " cos(" + theta + ") - (" + Text.Number(sign) + ") " + zc + " sin(" + theta + "))", Text.With(m / 1000, "kN m"), GeneralSources.Statics);
        for (var i = 0; i < _x.Length; i++)
            working.Step("N_" + Text.Number(i + 1), "load of the axle " + Axles[i].Name + ", " + (Axles.Count == 2 ? "two axles" : loads.Suspension == Suspension.Equalised ? "rear axles equalised" : "straight frame"), "from N and M", "x = " + Text.Number(_x[i]), Text.Kilonewtons(loads.Newtons[i]), GeneralSources.Statics);
        return working.Build();
    }

    /// <summary>Gives what taking off each payload and each attachment, one at a time, does to each axle.</summary>
    /// <param name="grade">Slope along the pull.</param>
    /// <param name="direction">Direction of the pull, which says which end is uphill.</param>
    /// <param name="suspension">Suspension to work with; undeclared takes that of the machine, and equalised where that is undeclared too.</param>
    /// <returns>One row for each load that can be taken off, in the order of <see cref="Loads"/>.</returns>
    public IReadOnlyList<UnloadingEffect> UnloadingEffects(Grade grade, PullDirection direction, Suspension suspension = Suspension.Undeclared)
    {
        var before = AxleLoads(grade, direction, suspension);
        var effects = new List<UnloadingEffect>();
        foreach (var load in Loads)
        {
            if (load.Kind != LoadKind.Fixed) effects.Add(new UnloadingEffect(load, before, Without(load.Name).AxleLoads(grade, direction, suspension)));
        }

        return effects.AsReadOnly();
    }

    /// <summary>Gives the machine without one of its loads.</summary>
    /// <param name="name">Name of a payload or detachable.</param>
    /// <returns>The lighter machine.</returns>
    /// <exception cref="ArgumentException">There is no such load, or it is fixed.</exception>
    public Machine Without(string name) => WithShareOf(name, 0);

    /// <summary>Gives the machine with part of a payload left on.</summary>
    /// <param name="name">Name of a payload or detachable.</param>
    /// <param name="share">Share of it that stays, 0 to 1.</param>
    /// <returns>The lighter machine.</returns>
    /// <exception cref="ArgumentException">There is no such load, or it is fixed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public Machine WithShareOf(string name, Ratio share) => WithShareOf(name, Guard.Fraction(share, 0, 1, nameof(share)));

    /// <summary>Gives the machine with other axles, for example with other tyres.</summary>
    /// <param name="axles">The new axles.</param>
    /// <returns>The machine.</returns>
    /// <exception cref="ArgumentException">Axles out of order.</exception>
    public Machine WithAxles(IEnumerable<Axle> axles) => new(Name, axles, Loads, Suspension);

    /// <summary>Gives the machine in words, invariant culture.</summary>
    /// <returns>Name, mass and axles.</returns>
    public override string ToString() => Name + ", " + Text.With(MassKilograms / 1000, "t") + " on " + Text.Number(Axles.Count) + " axles";

    internal static int Sign(PullDirection direction) => direction == PullDirection.Forwards ? 1 : -1;

    internal AxleLoads Share(double moment, double normal, Suspension suspension)
    {
        var used = Resolve(suspension);
        var loads = new double[_x.Length];
        AxleStaticsKernel.Share(AxlePositions, used != Suspension.StraightFrame, normal, moment, loads);
        return new AxleLoads(Axles, Array.AsReadOnly(loads), used);
    }

    internal Suspension Resolve(Suspension wanted)
    {
        var used = wanted == Suspension.Undeclared ? Suspension : wanted;
        return used == Suspension.Undeclared ? Suspension.Equalised : used;
    }

    private Machine WithShareOf(string name, double share)
    {
        var loads = new List<NamedLoad>(Loads.Count);
        var found = false;
        foreach (var load in Loads)
        {
            if (load.Name != name)
            {
                loads.Add(load);
                continue;
            }

            found = true;
            if (load.Kind == LoadKind.Fixed) throw new ArgumentException("'" + name + "' is a fixed part of " + Name + " and cannot be taken off.", nameof(name));
            if (share > 0) loads.Add(new NamedLoad(load.Name, Mass.FromKilograms(load.Mass.Kilograms * share), load.Position, load.Height, load.Kind) { LeftOfMiddle = load.LeftOfMiddle });
        }

        if (!found) throw new ArgumentException(Name + " carries no load named '" + name + "'.", nameof(name));
        return new Machine(Name, Axles, loads, Suspension);
    }
}
