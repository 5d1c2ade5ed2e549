namespace Recovery.Mechanics.Terramechanics;

/// <summary>A wheel model that can be asked without quantities and without allocation: what the typed model, the batch and the solvers share.</summary>
internal interface IFlatWheelModel : IWheelModel
{
    /// <summary>Asks the kernel. SI in.</summary>
    WheelFlat At(double coneIndexPascals, double widthMetres, double diameterMetres, double deflectionRatio, double loadNewtons, double slip);
}
