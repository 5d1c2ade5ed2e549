using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>Axle loads of the stuck machine before the pull and in it: what the height of the pull and the fall of the line move between its axles.</summary>
/// <remarks>
/// <para>Statics about its axles with the central demand P along the ground at the height of the attachment and P tan(pitch)/cos(yaw) up at it, where the line falls from the hitch to it; all weight on the wheels, linked axles or straight frame as governs the central demand.</para>
/// <para>It stands beside the demand, not in it: the demand keeps the loads before the pull. Source: statics (derived). Immutable.</para>
/// </remarks>
public sealed record StuckLoads
{
    private const double Most = 5e6, MostUp = 2e6;

    private StuckLoads(double pull, double up, double height, AxleLoads before, AxleLoads pulled)
    {
        Pull = Force.FromNewtons(pull);
        Up = Force.FromNewtons(up);
        Height = Length.FromMeters(height);
        Before = before;
        Pulled = pulled;
    }

    /// <summary>Gets the pull along the ground: the central demand.</summary>
    public Force Pull { get; }

    /// <summary>Gets the part of the line that lifts the attachment; negative where it presses on it.</summary>
    public Force Up { get; }

    /// <summary>Gets the height of the attachment above the ground.</summary>
    public Length Height { get; }

    /// <summary>Gets the axle loads before the pull.</summary>
    public AxleLoads Before { get; }

    /// <summary>Gets the axle loads in the pull.</summary>
    public AxleLoads Pulled { get; }

    /// <summary>Gives both in one line, invariant culture.</summary>
    /// <returns>Loads before and in the pull.</returns>
    public override string ToString() => "before: " + Before + "; in the pull: " + Pulled;

    /// <summary>Whether place and height of the attachment on the stuck machine are known.</summary>
    internal static bool Known(RecoveryPlan plan) => Place(plan) is not null && HeightOf(plan) is not null;

    /// <summary>Null where place or height of the attachment is not known, or where no line carries the pull.</summary>
    internal static StuckLoads? Of(RecoveryPlan plan, PullDemand demand)
    {
        if (Place(plan) is not { } place || HeightOf(plan) is not { } height) return null;
        double pull = Math.Max(0, demand.CentralNewtons), up = pull * Math.Tan(plan.Site.LinePitch.Radians) / Math.Cos(plan.Site.LineYaw.Radians);
        if (pull > Most || Math.Abs(up) > MostUp) return null;
        var stuck = plan.Stuck;
        var frame = demand.Compiled.Frame;
        return new StuckLoads(pull, up, height, stuck.Machine.AxleLoads(stuck.Grade, stuck.Direction, frame), stuck.Machine.AxleLoadsUnderPull(stuck.Grade, stuck.Direction, Force.FromNewtons(pull), Force.FromNewtons(up), Length.FromMeters(place), Length.FromMeters(height), frame));
    }

    internal static double? Place(RecoveryPlan plan)
    {
        var point = plan.Rig.Casualty;
        var axles = plan.Stuck.Machine.Axles;
        return point.Position?.Meters ?? (point.Kind == AttachmentKind.FrontAxle ? axles[0].Position.Meters : point.Kind == AttachmentKind.RearAxle ? axles[axles.Count - 1].Position.Meters : null);
    }

    /// <summary>The way under the machine is measured from the axle straps, so it knows their height.</summary>
    internal static double? HeightOf(RecoveryPlan plan) =>
        plan.Rig.Casualty.Height?.Meters ?? (plan.Rig.Casualty.Kind == AttachmentKind.FrontAxle ? plan.Site.UnderMachine?.AnchorHeight.Meters : null);
}
