using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>Forces of a taut line on the two machines it joins.</summary>
/// <remarks>What it does to a machine goes into that machine's axle loads: the vertical part presses the higher end down and lifts the lower one. Equality by value.</remarks>
public sealed record LineForces
{
    private readonly double _tension;
    private readonly double _level;
    private readonly double _up;
    private readonly double _loss;
    private readonly double _casualtyYaw;
    private readonly double _pullerYaw;

    internal LineForces(LineOfPull line, double newtons, double pullerHeading, double casualtyHeading)
    {
        _tension = newtons;
        _level = LineOfPullKernel.Level(newtons, line.Rise, line.Taut);
        _up = LineOfPullKernel.Vertical(newtons, line.Rise, line.Taut);
        _loss = LineOfPullKernel.LevelLoss(line.Rise, line.Taut);
        _casualtyYaw = line.Direction - casualtyHeading;
        _pullerYaw = line.Direction - pullerHeading;
    }

    /// <summary>Gets the tension.</summary>
    public Force Tension => Force.FromNewtons(_tension);

    /// <summary>Gets its level part.</summary>
    public Force AlongGround => Force.FromNewtons(_level);

    /// <summary>Gets the share of the tension that the level part lacks.</summary>
    public Ratio LevelLoss => Ratio.FromDecimalFractions(_loss);

    /// <summary>Gets the vertical force on the casualty, up positive: it is lifted where the drawbar is higher.</summary>
    public Force UpOnCasualty => Force.FromNewtons(_up);

    /// <summary>Gets the vertical force on the puller, up positive: its drawbar is pressed down where it is the higher end.</summary>
    public Force UpOnPuller => Force.FromNewtons(-_up);

    /// <summary>Gets the force on the casualty in the direction in which it rolls.</summary>
    public Force AlongCasualty => Force.FromNewtons(_level * Math.Cos(_casualtyYaw));

    /// <summary>Gets the sideways force on the casualty, to its left positive as it looks the way it rolls.</summary>
    public Force LeftOnCasualty => Force.FromNewtons(_level * Math.Sin(_casualtyYaw));

    /// <summary>Gets the force on the puller against the direction in which it pulls.</summary>
    public Force AgainstPuller => Force.FromNewtons(_level * Math.Cos(_pullerYaw));

    /// <summary>Gets the sideways force on the puller, to its left positive as it looks the way it pulls.</summary>
    public Force LeftOnPuller => Force.FromNewtons(-_level * Math.Sin(_pullerYaw));

    /// <summary>Gives the forces in one line, invariant culture.</summary>
    /// <returns>Level and vertical parts.</returns>
    public override string ToString() => Text.Kilonewtons(_tension) + ": " + Text.Kilonewtons(_level) + " level, " + Text.Kilonewtons(Math.Abs(_up)) + (_up >= 0 ? " up" : " down") + " on the casualty and as much " + (_up >= 0 ? "down" : "up") + " on the puller";
}
