using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <content>What is changed on a tractor before a pull: ballast, duals, front-wheel assist.</content>
public sealed partial record TowingMachine
{
    /// <summary>Gives the machine with ballast. More of it pulls more on firm ground and sinks more on soft; at the front it holds the nose down.</summary>
    /// <param name="name">Name of the ballast, new on the machine.</param>
    /// <param name="mass">Mass, above 0 to 20 t.</param>
    /// <param name="position">Position x of its centre, -40 to 15 m.</param>
    /// <param name="height">Height of its centre, 0 to 6 m.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentException">The machine carries a load of that name already.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TowingMachine WithBallast(string name, Mass mass, Length position, Length height)
    {
        Guard.Kilograms(mass, 0.001, 20, nameof(mass));
        if (Machine.Loads.Any(l => string.Equals(l.Name, name, StringComparison.Ordinal))) throw new ArgumentException(Machine.Name + " carries a load named '" + name + "' already.", nameof(name));
        return this with { Machine = new Machine(Machine.Name, Machine.Axles, Machine.Loads.Append(new NamedLoad(name, mass, position, height, LoadKind.Detachable)), Machine.Suspension) };
    }

    /// <summary>Gives the machine with twice the tyres on an axle; they share its load. Their own mass is to be given as ballast.</summary>
    /// <param name="axle">Name of the axle.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentException">There is no such axle.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It would have more than eight tyres.</exception>
    public TowingMachine WithDuals(string axle) => Changed(axle, a => new Axle(a.Name, a.Position, 2 * a.Tyres, a.Tyre, a.Driven, a.TrackWidth) { Braked = a.Braked });

    /// <summary>Gives the machine with the drive of an axle on or off: front-wheel assist.</summary>
    /// <param name="axle">Name of the axle.</param>
    /// <param name="driven">Whether it is driven.</param>
    /// <returns>The changed copy.</returns>
    /// <exception cref="ArgumentException">There is no such axle.</exception>
    public TowingMachine WithDrive(string axle, bool driven) => Changed(axle, a => a.WithDriven(driven));

    private TowingMachine Changed(string name, Func<Axle, Axle> change)
    {
        if (!Machine.Axles.Any(a => string.Equals(a.Name, name, StringComparison.Ordinal))) throw new ArgumentException(Machine.Name + " has no axle named '" + name + "'.", nameof(name));
        return this with { Machine = Machine.WithAxles(Machine.Axles.Select(a => string.Equals(a.Name, name, StringComparison.Ordinal) ? change(a) : a)) };
    }
}
