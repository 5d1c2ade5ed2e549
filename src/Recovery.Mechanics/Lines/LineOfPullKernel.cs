using System;

namespace Recovery.Mechanics.Lines;

/// <summary>A straight line between two anchors, once. SI.</summary>
/// <remarks>Geometry and statics (derived); no constant of its own.</remarks>
internal static class LineOfPullKernel
{
    /// <summary>Angle to the level, asin(dh/L), L the taut length.</summary>
    public static double Pitch(double heightDifference, double tautLength) => Math.Asin(heightDifference / tautLength);

    /// <summary>Vertical part of the tension, F dh/L.</summary>
    public static double Vertical(double tension, double heightDifference, double tautLength) => tension * heightDifference / tautLength;

    /// <summary>Level part of the tension, F sqrt(1 - (dh/L)^2).</summary>
    public static double Level(double tension, double heightDifference, double tautLength)
    {
        var s = heightDifference / tautLength;
        return tension * Math.Sqrt((1 - s) * (1 + s));
    }

    /// <summary>Share of the tension that the level part lacks, 1 - cos(theta) = s^2/(1 + sqrt(1 - s^2)), s = dh/L; no digits are lost at small angles.</summary>
    public static double LevelLoss(double heightDifference, double tautLength)
    {
        var s = heightDifference / tautLength;
        return s * s / (1 + Math.Sqrt((1 - s) * (1 + s)));
    }

    /// <summary>Force on what the line is bent over by d at distances a and b from its ends: F d (1/a + 1/b).</summary>
    public static double ContactForce(double tension, double deflection, double toOneEnd, double toOther) => tension * deflection * ((1 / toOneEnd) + (1 / toOther));
}
