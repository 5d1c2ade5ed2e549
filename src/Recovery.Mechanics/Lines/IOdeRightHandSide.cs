namespace Recovery.Mechanics.Lines;

/// <summary>Right-hand side of a small system of differential equations. Implemented by structs so that the call is direct.</summary>
internal interface IOdeRightHandSide
{
    /// <summary>Gives dy/dt.</summary>
    void Evaluate(double t, in OdeState y, out OdeState dy);
}
