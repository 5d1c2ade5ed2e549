using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>The layer that counts after the drop-layer rule, with its cone index.</summary>
/// <remarks>Immutable.</remarks>
public sealed record GoverningLayer
{
    internal GoverningLayer(CriticalLayer critical, double criticalIndex, double top, double bottom, double index, bool complete)
    {
        Critical = critical;
        CriticalConeIndex = Pressure.FromPascals(criticalIndex);
        Top = Length.FromMeters(top);
        Bottom = Length.FromMeters(bottom);
        ConeIndex = Pressure.FromPascals(index);
        MeasuredDeepEnough = complete;
    }

    /// <summary>Gets the critical layer by load.</summary>
    public CriticalLayer Critical { get; }

    /// <summary>Gets the mean cone index of the critical layer.</summary>
    public Pressure CriticalConeIndex { get; }

    /// <summary>Gets where the governing layer begins.</summary>
    public Length Top { get; }

    /// <summary>Gets where the governing layer ends.</summary>
    public Length Bottom { get; }

    /// <summary>Gets the mean cone index of the governing layer.</summary>
    public Pressure ConeIndex { get; }

    /// <summary>Gets whether a weaker layer below replaced the critical one.</summary>
    public bool Dropped => ConeIndex.Pascals < CriticalConeIndex.Pascals;

    /// <summary>Gets whether the readings reach as deep as the rule asks; where they do not, a softer layer below may have been missed.</summary>
    public bool MeasuredDeepEnough { get; }

    /// <summary>Gets whether the index lies at or above the full scale of the army cone, 2,068 kPa: it is then at least that.</summary>
    public bool AtFullScale => ConeIndex.Pascals >= MoistureKernel.FullScalePascals;

    /// <summary>Gives the layer in words, invariant culture.</summary>
    /// <returns>Depths, index and what is missing.</returns>
    public override string ToString() => Text.Kilopascals(ConeIndex.Pascals) + " from " + Text.Number(Top.Meters, 2) + " to " + Text.With(Bottom.Meters, "m", 2)
        + (Dropped ? ", weaker than the critical layer" : string.Empty) + (MeasuredDeepEnough ? string.Empty : ", not measured deep enough") + (AtFullScale ? ", at least" : string.Empty);
}
