using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A winch: what it pulls on each layer of its drum, and what it can impose, which is its stall pull on the first layer.</summary>
/// <remarks>
/// <para>P_n = P_1/(1 + k (n - 1)), k = 2 d/(D + d): the torque is the same and every layer adds one rope diameter d of radius to the drum of diameter D, both in m.</para>
/// <para>A published line-pull table of five layers follows it within 0.1 %: on the fifth layer 71 % of the first. The pull is highest with most rope paid out, so the gear is sized on the first layer whatever layer the job ends on.</para>
/// <para>Fleet angle at most 1.5 degrees (smooth drum) or 2 degrees (grooved), at least 0.5 degrees: from memory. At least five wraps stay on the drum: published.</para>
/// <para>Source: TM 9-2320-279-10-2 (pull by layer and wraps, primary; formula derived), FM 5-125 (fleet angles, from memory). Immutable.</para>
/// </remarks>
public sealed record Winch
{
    /// <summary>Describes a winch.</summary>
    /// <param name="name">Name.</param>
    /// <param name="stallPull">Pull at which it stalls on the first layer, 1 to 2,000 kN. A rating at which it still runs is no stall pull.</param>
    /// <param name="drumDiameter">Diameter of the bare drum, 0.05 to 2 m.</param>
    /// <param name="ropeDiameter">Diameter of the rope, 0.004 to 0.08 m.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Winch(string name, Force stallPull, Length drumDiameter, Length ropeDiameter)
    {
        Name = Guard.Name(name, nameof(name));
        StallPull = Force.FromNewtons(Guard.Newtons(stallPull, 1, 2000, nameof(stallPull)));
        DrumDiameter = Length.FromMeters(Guard.Metres(drumDiameter, 0.05, 2, nameof(drumDiameter)));
        RopeDiameter = Length.FromMeters(Guard.Metres(ropeDiameter, 0.004, 0.08, nameof(ropeDiameter)));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the stall pull on the first layer: the most it can put into its rope, whatever the job asks for.</summary>
    public Force StallPull { get; }

    /// <summary>Gets the diameter of the bare drum.</summary>
    public Length DrumDiameter { get; }

    /// <summary>Gets the diameter of the rope.</summary>
    public Length RopeDiameter { get; }

    /// <summary>Gets the pull on the first layer at which it still runs; null where only the stall pull is known. Accepted range 1 kN to the stall pull.</summary>
    public Force? RatedPull { get; init => field = value is { } v ? Force.FromNewtons(Guard.Newtons(v, 1, StallPull.Kilonewtons, nameof(RatedPull))) : null; }

    /// <summary>Gets the width of the drum between its flanges; null where it is not known, then layer and fleet angle are not known either. Accepted range 0.05 m, and no less than the rope is thick, to 3 m.</summary>
    public Length? DrumWidth { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, Math.Max(0.05, RopeDiameter.Meters), 3, nameof(DrumWidth))) : null; }

    /// <summary>Gets the length of the rope; null where it is not known. Accepted range 5 to 1,000 m.</summary>
    public Length? RopeLength { get; init => field = value is { } v ? Length.FromMeters(Guard.Metres(v, 5, 1000, nameof(RopeLength))) : null; }

    /// <summary>Gets whether the drum is grooved.</summary>
    public bool Grooved { get; init; }

    /// <summary>Gets the radius that one layer adds, over the radius of the first layer.</summary>
    public double LayerConstant => WinchKernel.LayerConstant(RopeDiameter.Meters, DrumDiameter.Meters);

    /// <summary>Gets the greatest fleet angle of this drum (from memory).</summary>
    public Angle GreatestFleetAngle => Angle.FromDegrees(Grooved ? WinchKernel.GroovedDegrees : WinchKernel.SmoothDegrees);

    /// <summary>Gets the least distance to the first sheave that keeps the fleet angle; null where the width of the drum is not known.</summary>
    public Length? LeastLead => DrumWidth is { } width ? Length.FromMeters(WinchKernel.Lead(width.Meters / 2, GreatestFleetAngle.Radians)) : null;

    /// <summary>Gets the rope that can be paid out with five wraps left on the drum; null where the length of the rope is not known.</summary>
    public Length? UsableRope => RopeLength is { } rope ? Length.FromMeters(Math.Max(0, rope.Meters - WinchKernel.LastWraps(RopeDiameter.Meters, DrumDiameter.Meters))) : null;

    /// <summary>Describes a winch whose pull is marked for a layer that is not the first.</summary>
    /// <param name="name">Name.</param>
    /// <param name="stallPull">Pull at which it stalls on that layer, 1 to 1,000 kN.</param>
    /// <param name="layer">The layer, 1 to 20.</param>
    /// <param name="drumDiameter">Diameter of the bare drum, 0.05 to 2 m.</param>
    /// <param name="ropeDiameter">Diameter of the rope, 0.004 to 0.08 m.</param>
    /// <returns>The winch, with the higher stall pull of its first layer.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Winch FromPullOnLayer(string name, Force stallPull, int layer, Length drumDiameter, Length ropeDiameter)
    {
        double d = Guard.Metres(ropeDiameter, 0.004, 0.08, nameof(ropeDiameter)), drum = Guard.Metres(drumDiameter, 0.05, 2, nameof(drumDiameter));
        var pull = Guard.Newtons(stallPull, 1, 1000, nameof(stallPull));
        return new Winch(name, Force.FromNewtons(WinchKernel.FirstLayerPull(pull, WinchKernel.LayerConstant(d, drum), Guard.Count(layer, 1, 20, nameof(layer)))), drumDiameter, ropeDiameter);
    }

    /// <summary>Gives the stall pull on a layer.</summary>
    /// <param name="layer">The layer, 1 on the bare drum, up to 20.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The layer is outside its range.</exception>
    public Force StallOnLayer(int layer) => OnLayer(StallPull, layer);

    /// <summary>Gives the effort to reckon with on a layer: the rated pull where it is known, else the stall pull.</summary>
    /// <param name="layer">The layer, 1 on the bare drum, up to 20.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The layer is outside its range.</exception>
    public Force EffortOnLayer(int layer) => OnLayer(RatedPull ?? StallPull, layer);

    /// <summary>Gives the layer from which the rope runs with a length of it paid out; null where drum width or rope length are not known.</summary>
    /// <param name="paidOut">Rope paid out, 0 m to its length.</param>
    /// <returns>The layer, evenly wound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public int? LayerWith(Length paidOut)
    {
        if (DrumWidth is not { } width || RopeLength is not { } rope) return null;
        return WinchKernel.Layer(RopeDiameter.Meters, DrumDiameter.Meters, width.Meters, rope.Meters - Guard.Metres(paidOut, 0, rope.Meters, nameof(paidOut)));
    }

    /// <summary>Gives the greatest fleet angle for a distance to the first sheave; null where the width of the drum is not known.</summary>
    /// <param name="lead">Distance from the drum to the first sheave or to the casualty, 0.5 to 1,000 m.</param>
    /// <returns>The angle, between the rope at the flange and the middle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public Angle? FleetAngle(Length lead)
    {
        var metres = Guard.Metres(lead, 0.5, 1000, nameof(lead));
        return DrumWidth is { } width ? Angle.FromRadians(WinchKernel.FleetAngle(width.Meters / 2, metres)) : null;
    }

    /// <summary>Looks for objections to how the winch stands: fleet angle and wraps left.</summary>
    /// <param name="lead">Distance from the drum to the first sheave or to the casualty, 0.5 to 1,000 m.</param>
    /// <param name="paidOut">Most rope that is to be paid out, 0 to 1,000 m.</param>
    /// <returns>The findings; what is not known is not looked at.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public IReadOnlyList<Finding> Check(Length lead, Length paidOut)
    {
        double metres = Guard.Metres(lead, 0.5, 1000, nameof(lead)), rope = Guard.Metres(paidOut, 0, 1000, nameof(paidOut));
        var list = new List<Finding>(2);
        if (LeastLead is { } least && metres < least.Meters) list.Add(new Finding(WinchFindings.FleetAngle, Name, least.Meters, metres, "m"));
        if (DrumWidth is { } width && WinchKernel.FleetAngle(width.Meters / 2, metres) < WinchKernel.LeastDegrees * Math.PI / 180)
            list.Add(new Finding(WinchFindings.FleetAngleSmall, Name, WinchKernel.Lead(width.Meters / 2, WinchKernel.LeastDegrees * Math.PI / 180), metres, "m"));
        if (UsableRope is { } usable && rope > usable.Meters) list.Add(new Finding(WinchFindings.FewWraps, Name, rope, usable.Meters, "m"));
        return list.AsReadOnly();
    }

    /// <summary>Works the stall pull on a layer out step by step.</summary>
    /// <param name="layer">The layer, 1 to 20.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The layer is outside its range.</exception>
    public Working Explain(int layer)
    {
        var pull = StallOnLayer(layer);
        string d = Text.Number(RopeDiameter.Meters), drum = Text.Number(DrumDiameter.Meters), k = Text.Number(LayerConstant);
        return new WorkingBuilder("Pull of " + Name + " on layer " + Text.Number(layer))
            .Step("P_1", "stall pull on the first layer", "as marked", "given", Text.Kilonewtons(StallPull.Newtons), GeneralSources.Caller)
            .Step("k", "radius added by a layer, over that of the first", "2 d/(D + d)", "2 x " + d + "/(" + drum + " + " + d + ")", k, GeneralSources.Statics)
            .Step("P_n", "stall pull on the layer", "P_1/(1 + k (n - 1))", Text.Number(StallPull.Kilonewtons) + "/(1 + " + k + " x " + Text.Number(layer - 1) + ")", Text.Kilonewtons(pull.Newtons), WinchSources.Layers)
            .Build();
    }

    /// <summary>Gives the winch in words, invariant culture.</summary>
    /// <returns>Name and stall pull.</returns>
    public override string ToString() => Name + ", stalls at " + Text.Kilonewtons(StallPull.Newtons, 3) + " on the first layer";

    private Force OnLayer(Force first, int layer) => Force.FromNewtons(WinchKernel.PullOnLayer(first.Newtons, LayerConstant, Guard.Count(layer, 1, 20, nameof(layer))));
}
