namespace Recovery.Mechanics.Planning;

/// <summary>Units in which a report is written.</summary>
public enum DisplayUnits
{
    /// <summary>Kilonewtons, metres, kilopascals, kilograms, kilojoules, kilometres an hour.</summary>
    Metric,

    /// <summary>Thousands of pounds-force, feet, pounds-force per square inch, pounds, thousands of foot-pounds, miles an hour.</summary>
    Imperial,
}
