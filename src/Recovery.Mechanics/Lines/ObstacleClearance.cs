using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Clearance between the line and one obstacle over a motion of the casualty.</summary>
/// <remarks>Equality by value.</remarks>
public sealed record ObstacleClearance
{
    private readonly double _x;
    private readonly double _height;
    private readonly double _from;
    private readonly double _contact;

    internal ObstacleClearance(LineClearance way, string name, bool ground, double x, double height, double from, double start, double least, double at, double contact)
    {
        Way = way;
        Name = name;
        IsGround = ground;
        _x = x;
        _height = height;
        _from = from;
        First = Length.FromMeters(start);
        Least = Length.FromMeters(least);
        LeastAt = Ratio.FromDecimalFractions(at);
        _contact = contact;
    }

    /// <summary>Gets the name of the obstacle.</summary>
    public string Name { get; }

    /// <summary>Gets whether it belongs to the ground and not to the casualty.</summary>
    public bool IsGround { get; }

    /// <summary>Gets the clearance as found, or when the line first passes it; negative where the line bears on it.</summary>
    public Length First { get; }

    /// <summary>Gets the least clearance; negative where the line bears on it.</summary>
    public Length Least { get; }

    /// <summary>Gets the share of the motion done at the least clearance.</summary>
    public Ratio LeastAt { get; }

    /// <summary>Gets the share of the motion done at first contact; null where there is none.</summary>
    public Ratio? ContactAt => double.IsNaN(_contact) ? null : Ratio.FromDecimalFractions(_contact);

    /// <summary>Gets the rise of the front axle at first contact, at which to stop and rig anew; null where there is none.</summary>
    public Length? RiseAtContact => double.IsNaN(_contact) ? null : Length.FromMeters(Way.FrontRise.Meters * Way.Risen(_contact));

    /// <summary>Gets whether the line bears on it as found.</summary>
    public bool FoulsAsFound => _from == 0 && First.Meters <= 0;

    internal LineClearance Way { get; }

    /// <summary>Gives the force on the obstacle where the line bears on it hardest, as if it did not give way.</summary>
    /// <param name="tension">Tension, 0 to 20,000 kN.</param>
    /// <returns>F d (1/a + 1/b); null where they do not touch, or where it lies at an end of the line.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The tension is outside its range.</exception>
    public Force? ContactForce(Force tension)
    {
        var f = Guard.Newtons(tension, 0, 20000, nameof(tension));
        if (Least.Meters >= 0) return null;
        double xa = Way.AttachmentBehindAxle.Meters, a = _x - (IsGround ? Way.Advance.Meters * LeastAt.DecimalFractions : 0) - xa, b = Way.DrawbarDistance.Meters - xa - a;
        return a < 0.05 || b < 0.05 ? null : Force.FromNewtons(LineOfPullKernel.ContactForce(f, -Least.Meters, a, b));
    }

    /// <summary>Gives the clearance in words, invariant culture.</summary>
    /// <returns>Name and least clearance.</returns>
    public override string ToString() => Name + ": " + Text.With(Least.Meters, "m", 3) + " at " + Text.With(LeastAt.Percent, "%", 3) + " of the motion";

    /// <summary>Clearance when a share of the motion is done; null where the line does not pass it then.</summary>
    internal double? At(double t) => Way.Clearance(IsGround, _x, _height, t);
}
