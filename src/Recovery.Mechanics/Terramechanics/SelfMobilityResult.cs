using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>The cone index at which wheels just move themselves by one model, with what shows that it is a root; or why there is none.</summary>
public sealed record SelfMobilityResult
{
    internal SelfMobilityResult(IWheelModel model, string refusal)
    {
        Model = model;
        Refusal = refusal;
    }

    internal SelfMobilityResult(IWheelModel model, double indexPascals, double slip, double residualNewtons, int calls)
    {
        Model = model;
        CriticalConeIndex = Pressure.FromPascals(indexPascals);
        Slip = Ratio.FromDecimalFractions(slip);
        Residual = Force.FromNewtons(residualNewtons);
        Calls = calls;
        Refusal = string.Empty;
    }

    /// <summary>Gets the model.</summary>
    public IWheelModel Model { get; }

    /// <summary>Gets the critical cone index, the index that the model is fed with; null where there is none.</summary>
    public Pressure? CriticalConeIndex { get; }

    /// <summary>Gets the slip of the greatest net traction there; null where there is none.</summary>
    public Ratio? Slip { get; }

    /// <summary>Gets what is left of the balance of forces there; null where there is no root.</summary>
    public Force? Residual { get; }

    /// <summary>Gets how often the balance was worked out.</summary>
    public int Calls { get; }

    /// <summary>Gets why there is no critical cone index; empty where there is one.</summary>
    public string Refusal { get; }

    /// <summary>Gives the result in one line, invariant culture.</summary>
    /// <returns>Model and critical cone index, or the reason.</returns>
    public override string ToString() => Model.Name + ": " + (CriticalConeIndex is { } index ? Text.Kilopascals(index.Pascals) : Refusal);
}
