namespace Recovery.Mechanics.Provenance;

/// <summary>A root with what shows that it is one.</summary>
/// <param name="Value">Where the function is zero.</param>
/// <param name="Residual">What the function gives there.</param>
/// <param name="Lower">Lower end of the bracket.</param>
/// <param name="Upper">Upper end of the bracket.</param>
/// <param name="Calls">Calls of the function.</param>
internal readonly record struct Root(double Value, double Residual, double Lower, double Upper, int Calls);
