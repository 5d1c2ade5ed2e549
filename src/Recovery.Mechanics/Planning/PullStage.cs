using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>One stage in which the pull is raised: the load, what a tape on the strap shows, and when to stop.</summary>
public sealed record PullStage
{
    private readonly int _parts;

    internal PullStage(int number, double load, double share, int parts, double leastStretch, double secondPullStretch, double greatestStretch, string action, string hold)
    {
        Number = number;
        LineLoad = Force.FromNewtons(load);
        ShareOfPuller = share;
        _parts = parts;
        LeastStretch = Length.FromMeters(leastStretch);
        SecondPullStretch = Length.FromMeters(secondPullStretch);
        GreatestStretch = Length.FromMeters(greatestStretch);
        Action = action;
        Hold = hold;
    }

    /// <summary>Gets the number of the stage, from 1.</summary>
    public int Number { get; }

    /// <summary>Gets the line load that is not exceeded in this stage.</summary>
    public Force LineLoad { get; }

    /// <summary>Gets that load over the high of what the puller sustains: how far the throttle is from its limit.</summary>
    public double ShareOfPuller { get; }

    /// <summary>Gets the stretch of the line at that load if it is as stiff as it may be: stop here unless the curve of the strap is known.</summary>
    public Length LeastStretch { get; }

    /// <summary>Gets the stretch at that load on a second pull, the line bedded in and as stiff as it may be: the first table would then be a higher load.</summary>
    public Length SecondPullStretch { get; }

    /// <summary>Gets the stretch at that load if it is as soft as it may be.</summary>
    public Length GreatestStretch { get; }

    /// <summary>Gets how far the puller has come from its peg at <see cref="LeastStretch"/>: the stretch itself, or through a tackle its multiple.</summary>
    public Length LeastTravel => LeastStretch * _parts;

    /// <summary>Gets the travel at <see cref="SecondPullStretch"/>.</summary>
    public Length SecondPullTravel => SecondPullStretch * _parts;

    /// <summary>Gets the travel at <see cref="GreatestStretch"/>.</summary>
    public Length GreatestTravel => GreatestStretch * _parts;

    /// <summary>Gets what the puller does.</summary>
    public string Action { get; }

    /// <summary>Gets what is looked at before going on.</summary>
    public string Hold { get; }

    /// <summary>Gives the stage in one line, invariant culture.</summary>
    /// <returns>Load and stretch.</returns>
    public override string ToString() => "stage " + Text.Number(Number) + ": " + Text.Kilonewtons(LineLoad.Newtons, 3) + ", stretch " + Text.Fixed(LeastStretch.Meters, 2) + " to " + Text.Fixed(GreatestStretch.Meters, 2) + " m";
}
