using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>How a machine stands between its wheels and a belly on the ground.</summary>
public sealed record BellyShare
{
    internal BellyShare(double weight, double byArea, double bearing, double carried, double changeOver)
    {
        ByArea = Force.FromNewtons(byArea);
        Bearing = Force.FromNewtons(bearing);
        Carried = Force.FromNewtons(carried);
        OnWheels = Force.FromNewtons(weight - carried);
        ChangeOverFloor = Pressure.FromPascals(changeOver);
    }

    /// <summary>Gets the share of the weight by area.</summary>
    public Force ByArea { get; }

    /// <summary>Gets what the floor bears under the belly, N_c s_f A.</summary>
    public Force Bearing { get; }

    /// <summary>Gets the weight that the belly carries: the smaller of both.</summary>
    public Force Carried { get; }

    /// <summary>Gets the weight left to the wheels.</summary>
    public Force OnWheels { get; }

    /// <summary>Gets the floor strength at which both are alike: below it the bearing of the floor limits, above it the area.</summary>
    public Pressure ChangeOverFloor { get; }

    /// <summary>Gives the share in one line, invariant culture.</summary>
    /// <returns>Belly and wheels.</returns>
    public override string ToString() => "belly " + Text.Kilonewtons(Carried.Newtons, 3) + ", wheels " + Text.Kilonewtons(OnWheels.Newtons, 3);
}
