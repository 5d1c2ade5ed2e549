using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>What lies in a tank: volume times bulk density, as a band.</summary>
/// <remarks>m = rho V f, its centre at z_0 + f h/2. The cautious side for a stuck machine is the high one. A weighed load replaces all of it. Immutable.</remarks>
public sealed record TankFill
{
    internal TankFill(Tank tank, BulkMaterial material, double fill, BulkDensityBand density)
    {
        Tank = tank;
        Material = material;
        FillLevel = Ratio.FromDecimalFractions(fill);
        Density = density;
    }

    /// <summary>Gets the tank.</summary>
    public Tank Tank { get; }

    /// <summary>Gets the good.</summary>
    public BulkMaterial Material { get; }

    /// <summary>Gets the volume of the good over the struck volume.</summary>
    public Ratio FillLevel { get; }

    /// <summary>Gets the bulk density as it lies, with its sources.</summary>
    public BulkDensityBand Density { get; }

    /// <summary>Gets the least mass.</summary>
    public Mass Low => Of(Density.Low);

    /// <summary>Gets the central mass.</summary>
    public Mass Central => Of(Density.Central);

    /// <summary>Gets the greatest mass.</summary>
    public Mass High => Of(Density.High);

    /// <summary>Gets the height of the centre of what lies in the tank.</summary>
    public Length Height => Length.FromMeters(BulkKernel.CentreHeight(Tank.FloorHeight.Meters, Tank.Depth.Meters, FillLevel.DecimalFractions));

    /// <summary>Gets the load at the least density.</summary>
    public NamedLoad LowLoad => Load(Low);

    /// <summary>Gets the load at the central density.</summary>
    public NamedLoad CentralLoad => Load(Central);

    /// <summary>Gets the load at the greatest density.</summary>
    public NamedLoad HighLoad => Load(High);

    /// <summary>Works mass and height out.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string v = Text.Number(Tank.Volume.CubicMeters), f = Text.Number(FillLevel.DecimalFractions);
        var source = Density.Sources[0];
        foreach (var s in Density.Sources)
        {
            if (Standings.Weakest(source.Standing, s.Standing) == s.Standing) source = s;
        }

        return new WorkingBuilder("What lies in the " + Tank.Name)
            .Step("rho", "bulk density of " + Material.Name + " as it lies, low / central / high", "table", Material.ToString(), Density.ToString(), source)
            .Step("m", "mass, low / central / high", "rho V f", Text.Number(Density.Central.KilogramsPerCubicMeter) + " x " + v + " x " + f, Text.Number(Low.Kilograms / 1000, 3) + " / " + Text.Number(Central.Kilograms / 1000, 3) + " / " + Text.With(High.Kilograms / 1000, "t", 3), source)
            .Step("z", "height of its centre", "z_0 + f h/2", Text.Number(Tank.FloorHeight.Meters) + " + " + f + " x " + Text.Number(Tank.Depth.Meters) + "/2", Text.With(Height.Meters, "m"), GeneralSources.Statics)
            .Build();
    }

    /// <summary>Gives the fill in words, invariant culture.</summary>
    /// <returns>Good, fill level and mass.</returns>
    public override string ToString() => Material.Name + " in " + Tank.Name + ", " + Text.With(FillLevel.Percent, "%", 3) + " full: " + Text.Number(Low.Kilograms / 1000, 3) + " / " + Text.Number(Central.Kilograms / 1000, 3) + " / " + Text.With(High.Kilograms / 1000, "t", 3);

    private Mass Of(Density density) => Mass.FromKilograms(BulkKernel.Mass(density.KilogramsPerCubicMeter, Tank.Volume.CubicMeters, FillLevel.DecimalFractions));

    private NamedLoad Load(Mass mass) => new(Tank.Name, mass, Tank.Position, Height, LoadKind.Payload);
}
