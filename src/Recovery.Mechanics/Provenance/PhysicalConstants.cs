namespace Recovery.Mechanics.Provenance;

/// <summary>Constants that belong to no model.</summary>
internal static class PhysicalConstants
{
    /// <summary>Standard acceleration of free fall, m/s2 (<see cref="GeneralSources.StandardGravity"/>).</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>Pascals in one pound-force per square inch (definition).</summary>
    public const double PascalsPerPsi = 6894.757293168361;

    /// <summary>Newtons in one pound-force (definition).</summary>
    public const double NewtonsPerPoundForce = 4.4482216152605;

    /// <summary>Pascals in one pound-force per square foot (definition).</summary>
    public const double PascalsPerPsf = 47.88025898033584;

    /// <summary>Kilograms in one pound (definition).</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>Metres in one inch (definition).</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>Metres in one foot (definition).</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>Metres per second in one mile per hour (definition).</summary>
    public const double MetresPerSecondPerMilePerHour = 0.44704;
}
