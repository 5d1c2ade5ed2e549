using System;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>Makes measures: typed, parameterised edits of a plan that can be put one after the other.</summary>
public static class RecoveryMeasures
{
    /// <summary>Unload a payload whole.</summary>
    /// <param name="load">Name of the payload.</param>
    /// <returns>The measure.</returns>
    public static Measure Unload(string load) => new("unload:" + Guard.Name(load, nameof(load)), "unload", [load], p => p.With(p.Stuck.Without(load)));

    /// <summary>Unload part of a payload.</summary>
    /// <param name="load">Name of the payload.</param>
    /// <param name="share">Share that stays on, 0 to 1.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    public static Measure UnloadPart(string load, Ratio share)
    {
        var stays = Guard.Fraction(share, 0, 1, nameof(share));
        return new Measure("unload-part:" + Guard.Name(load, nameof(load)), "unload-part", [load, Text.Number(stays * 100, 3)], p => p.With(p.Stuck.WithShareOf(load, share)));
    }

    /// <summary>Take an attachment off.</summary>
    /// <param name="attachment">Name of the attachment.</param>
    /// <returns>The measure.</returns>
    public static Measure Detach(string attachment) => new("detach:" + Guard.Name(attachment, nameof(attachment)), "detach", [attachment], p => p.With(p.Stuck.Without(attachment)));

    /// <summary>Let the tyres down to the lowest pressure their maker lists for the load.</summary>
    /// <returns>The measure.</returns>
    public static Measure Deflate() => new("deflate", "deflate", [], p => p.With(p.Stuck.Deflated()));

    /// <summary>Let the tyres down to a planned inflation. Below what their maker lists for the load the assessment raises a finding.</summary>
    /// <param name="planned">Planned inflation, 30 to 1,000 kPa.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The inflation is outside its range.</exception>
    public static Measure DeflateTo(Pressure planned) => new("deflate-to", "deflate-to", [Text.Kilopascals(Guard.Pascals(planned, 30, 1000, nameof(planned)), 3)], p => p.With(p.Stuck.DeflatedTo(planned)));

    /// <summary>Dig the ground away on the pull side of the wheels to a ramp.</summary>
    /// <param name="slope">Slope of the ramp, 0 to 45 degrees.</param>
    /// <param name="sides">Whether the side walls are dug free as well.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The slope is outside its range.</exception>
    public static Measure Dig(Angle slope, bool sides = false)
    {
        var run = 1 / Math.Tan(Guard.Radians(slope, 0.5, 45, nameof(slope)));
        return new Measure(sides ? "dig-with-sides" : "dig", sides ? "dig-with-sides" : "dig", [Text.Number(run, 2)], p => p.With(p.Stuck.Dug(slope, sides)));
    }

    /// <summary>Let air or water in behind the wheels and under the belly.</summary>
    /// <returns>The measure.</returns>
    public static Measure Vent() => new("vent", "vent", [], p => p.With(p.Stuck.Vented()));

    /// <summary>Dig the belly free.</summary>
    /// <returns>The measure.</returns>
    public static Measure FreeBelly() => new("free-belly", "free-belly", [], p => p.With(p.Stuck.WithBellyFreed()));

    /// <summary>Let the machine drive its own wheels gently with the pull.</summary>
    /// <returns>The measure.</returns>
    public static Measure DriveOwnWheels() => new("drive", "drive", [], p => p.With(p.Stuck.DrivingItsWheels()));

    /// <summary>Move the puller to firmer ground. It sustains more there, and it can put more into the gear.</summary>
    /// <param name="soil">The soil there.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The soil is null.</exception>
    public static Measure MoveTower(Soil soil) => new("move-tower", "move-tower", [Guard.NotNull(soil, nameof(soil)).ToString()], p => p.With(p.Tower with { Soil = soil }));

    /// <summary>Put ballast on the puller.</summary>
    /// <param name="mass">Mass, 0 to 20 t.</param>
    /// <param name="position">Position x of its centre in the frame of the puller.</param>
    /// <param name="height">Height of its centre.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Measure Ballast(Mass mass, Length position, Length height)
    {
        var load = new NamedLoad("added ballast", mass, position, height, LoadKind.Payload);
        return new Measure("ballast", "ballast", [Text.Number(mass.Kilograms / 1000, 3)], p => p.With(p.Tower with { Machine = new Machine(p.Tower.Machine.Name, p.Tower.Machine.Axles, p.Tower.Machine.Loads.Append(load), p.Tower.Machine.Suspension) }));
    }

    /// <summary>Use another towing machine.</summary>
    /// <param name="tower">The towing machine.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static Measure OtherTower(TowingMachine tower) => new("other-tower:" + Guard.NotNull(tower, nameof(tower)).Machine.Name, "other-tower", [tower.Machine.Name], p => p.With(tower));

    /// <summary>Use another part in the rig.</summary>
    /// <param name="name">Name of the part that is replaced.</param>
    /// <param name="part">The part that takes its place.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The part is null.</exception>
    public static Measure ReplacePart(string name, RigPart part) => new("replace:" + Guard.Name(name, nameof(name)), "replace", [Guard.NotNull(part, nameof(part)).ToString()!, name], p => p.With(p.Rig.Replace(name, part)));

    /// <summary>Use a longer strap of the same kind in the line.</summary>
    /// <param name="strap">Name of the strap.</param>
    /// <param name="length">New length, 0.3 to 100 m.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static Measure LongerLine(string strap, Length length)
    {
        var metres = Guard.Metres(length, 0.3, 100, nameof(length));
        return new Measure("longer-line", "longer-line", [Guard.Name(strap, nameof(strap)), Text.Number(metres, 3)], p => p.With(p.Rig.Replace(strap, p.Rig.Parts.OfType<Strap>().SingleOrDefault(s => s.Name == strap) is { } old ? old with { Length = length } : throw new ArgumentException("The rig has no strap named '" + strap + "'.", nameof(strap)))));
    }

    /// <summary>Engage a slower gear and keep it, with the line drawn taut first.</summary>
    /// <param name="theoreticalSpeed">Theoretical speed at high idle, 0.1 to 20 km/h.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range.</exception>
    public static Measure SlowerGear(Speed theoreticalSpeed)
    {
        Guard.MetresPerSecond(theoreticalSpeed, 0.1, 20, nameof(theoreticalSpeed));
        return new Measure("slower-gear", "slower-gear", [Text.Number(theoreticalSpeed.MetersPerSecond * 3.6, 3)], p => p.With(p.Procedure with { LockedGear = theoreticalSpeed, Slack = Length.Zero, ApproachSpeed = null }));
    }

    /// <summary>Draw the machine out the other way. Slope, ruts and digging of that side are open again; the way of the line under the machine and the ground between the machines belonged to the old direction.</summary>
    /// <param name="casualty">What the rig is made fast to on that end; only a point that the maker rates.</param>
    /// <param name="tower">The towing machine where it then stands.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Measure OtherDirection(AttachmentPoint casualty, TowingMachine tower)
    {
        Guard.NotNull(casualty, nameof(casualty));
        Guard.NotNull(tower, nameof(tower));
        return new Measure("other-direction", "other-direction", [casualty.Name], p => p.With(p.Stuck.DrawnTheOtherWay()).With(tower).With(new Rig(p.Rig.Drawbar, p.Rig.Parts, casualty)).With(p.Site with { UnderMachine = null, GroundBetween = null }));
    }

    /// <summary>Add a second machine ahead of the puller, in line, drawing its front.</summary>
    /// <param name="ahead">The machine, with its own ground.</param>
    /// <param name="front">Height and rating of the puller's front point; null takes 0.6 m and no rating.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static Measure SecondMachine(TeamMember ahead, TeamMember? front = null)
    {
        Guard.NotNull(ahead, nameof(ahead));
        return new Measure("second-machine:" + ahead.Tower.Machine.Name, "second-machine", [ahead.Tower.Machine.Name], p => p.WithAhead(p.Ahead.Append(ahead), front));
    }

    /// <summary>Put a tackle between puller and line. The gear behind it sees the multiple.</summary>
    /// <param name="tackle">The tackle.</param>
    /// <param name="movingBlock">What the line is then made fast to: the moving block, with its own ratings.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Measure WithTackle(LineTackle tackle, AttachmentPoint movingBlock)
    {
        Guard.NotNull(movingBlock, nameof(movingBlock));
        return new Measure("tackle:" + Text.Number(Guard.NotNull(tackle, nameof(tackle)).Parts), "tackle", [Text.Number(tackle.Parts)], p => p.WithTackle(tackle).With(new Rig(movingBlock, p.Rig.Parts, p.Rig.Casualty)));
    }

    /// <summary>Wait until the soil is drier. The hole keeps the machine's static bound; the readings are those of the drier soil.</summary>
    /// <param name="soil">The soil then, as it is expected or was read elsewhere.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentNullException">The soil is null.</exception>
    public static Measure WaitForDrierSoil(Soil soil) => new("wait", "wait", [Guard.NotNull(soil, nameof(soil)).ToString()], p => p.With(p.Stuck with { Soil = soil }));
}
