using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>What is left of a team when one member loses its grip.</summary>
/// <remarks>A member without grip is credited with nothing. In line the ones ahead drag it, the ones behind go on; on spread lines the pull swings to the other side; on an equaliser the strap runs and nothing is left.</remarks>
public sealed record TeamLoss
{
    internal TeamLoss(string name, ForceBand remaining, double sidewaysNewtons, double offRadians)
    {
        Name = name;
        Remaining = remaining;
        Sideways = Force.FromNewtons(sidewaysNewtons);
        OffDirection = Angle.FromRadians(offRadians);
    }

    /// <summary>Gets the machine that lost its grip.</summary>
    public string Name { get; }

    /// <summary>Gets the pull that remains along the wanted direction.</summary>
    public ForceBand Remaining { get; }

    /// <summary>Gets the part across it at central, positive to the left.</summary>
    public Force Sideways { get; }

    /// <summary>Gets the angle of the remaining pull off the wanted direction at central.</summary>
    public Angle OffDirection { get; }

    /// <summary>Gives the loss in words, invariant culture.</summary>
    /// <returns>What is left and where it points.</returns>
    public override string ToString() => "without " + Name + ": " + Remaining + (Math.Abs(OffDirection.Degrees) < 0.05 ? string.Empty : ", " + Text.Number(OffDirection.Degrees, 3) + " deg off");
}
