using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>The loads of the wheels left and right on every axle, on ground that slopes along and across.</summary>
/// <remarks>
/// <para>Made by <see cref="Machine.WheelLoads"/>. Left and right are of the machine; the side slope is positive where the ground rises to its left. All tyres of one side count together.</para>
/// <para>How the axles share the side moment is statics only where one of them is rigid in roll. An axle on a pin (<see cref="Axle.PinHeight"/>) takes the side force at the height of its pin; rigid axles share the rest by the square of their track, the same stiffness at every wheel; the side force goes with the axle load (judgement).</para>
/// <para>Level track of a machine that stands still: the swing of a moving machine, a soft side and a line off its middle are not in it. Immutable.</para>
/// </remarks>
public sealed record WheelLoads
{
    internal WheelLoads(AxleLoads axles, IReadOnlyList<double> left, IReadOnlyList<double> right, double held, IReadOnlyList<Assumption> assumptions, IReadOnlyList<Finding> findings)
    {
        AxleLoads = axles;
        LeftNewtons = left;
        RightNewtons = right;
        TippingRatio = held;
        Assumptions = assumptions;
        Findings = findings;
    }

    /// <summary>Gets the axle loads that the wheels of both sides add up to.</summary>
    public AxleLoads AxleLoads { get; }

    /// <summary>Gets the load of the left wheels of each axle in newtons, the foremost first.</summary>
    public IReadOnlyList<double> LeftNewtons { get; }

    /// <summary>Gets the load of the right wheels of each axle in newtons, the foremost first.</summary>
    public IReadOnlyList<double> RightNewtons { get; }

    /// <summary>Gets the side moment over the moment at which nothing is left to hold it, 0 or more; at 1 the machine tips.</summary>
    public double TippingRatio { get; }

    /// <summary>Gets what was taken where it was not given.</summary>
    public IReadOnlyList<Assumption> Assumptions { get; }

    /// <summary>Gets the objections: a wheel that lifts, a machine that tips.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gives the load of the left wheels of one axle.</summary>
    /// <param name="axle">Number of the axle, 0 the foremost.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axle.</exception>
    public Force Left(int axle) => Force.FromNewtons(LeftNewtons[Guard.Count(axle, 0, LeftNewtons.Count - 1, nameof(axle))]);

    /// <summary>Gives the load of the right wheels of one axle.</summary>
    /// <param name="axle">Number of the axle, 0 the foremost.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such axle.</exception>
    public Force Right(int axle) => Force.FromNewtons(RightNewtons[Guard.Count(axle, 0, RightNewtons.Count - 1, nameof(axle))]);

    /// <summary>Gives all loads in words, invariant culture.</summary>
    /// <returns>Left and right of each axle.</returns>
    public override string ToString()
    {
        var parts = new string[LeftNewtons.Count];
        for (var i = 0; i < parts.Length; i++) parts[i] = AxleLoads.Axles[i].Name + " " + Text.Number(LeftNewtons[i] / 1000, 3) + " left, " + Text.Kilonewtons(RightNewtons[i], 3) + " right";
        return string.Join("; ", parts);
    }
}
