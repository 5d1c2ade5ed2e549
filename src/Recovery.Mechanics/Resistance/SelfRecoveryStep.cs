using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What one step of lightening does to the soil that a stuck machine needs to move itself.</summary>
public sealed record SelfRecoveryStep
{
    internal SelfRecoveryStep(string name, double critical, double before, double rating, double gross, double holds, string remark)
    {
        Name = name;
        CriticalConeIndex = double.IsNaN(critical) ? null : Pressure.FromPascals(critical);
        Change = double.IsNaN(critical) || double.IsNaN(before) ? null : Pressure.FromPascals(critical - before);
        ReadingSuffices = critical <= rating;
        GrossTraction = Force.FromNewtons(gross);
        Holds = Force.FromNewtons(holds);
        Remark = remark;
    }

    /// <summary>Gets what is done.</summary>
    public string Name { get; }

    /// <summary>Gets the critical cone index after it, wheels rolling; null where no soil would do.</summary>
    public Pressure? CriticalConeIndex { get; }

    /// <summary>Gets what it does to that number; negative where softer ground would do. Null where no soil would do before or after.</summary>
    public Pressure? Change { get; }

    /// <summary>Gets whether the rating cone index beside the machine reaches the critical one after it.</summary>
    public bool ReadingSuffices { get; }

    /// <summary>Gets the gross traction of all driven axles after it: listed, not counted where wheels are buried.</summary>
    public Force GrossTraction { get; }

    /// <summary>Gets the central demand after it, wheels turning.</summary>
    public Force Holds { get; }

    /// <summary>Gets why the number moved so little or the wrong way; empty where it did what one expects.</summary>
    public string Remark { get; }

    /// <summary>Gives the step in one line, invariant culture.</summary>
    /// <returns>Name, critical index and its change.</returns>
    public override string ToString() => Name + ": " + (CriticalConeIndex is { } index ? "critical cone index " + Text.Kilopascals(index.Pascals, 3) : "no soil would do") + (Change is { } change ? " (" + (change.Pascals > 0 ? "+" : string.Empty) + Text.Kilopascals(change.Pascals, 3) + ")" : string.Empty) + (Remark.Length > 0 ? ", " + Remark : string.Empty);
}
