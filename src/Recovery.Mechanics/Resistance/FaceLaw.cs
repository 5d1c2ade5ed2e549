namespace Recovery.Mechanics.Resistance;

/// <summary>A face law with its numbers, flat. The default is Rankine, phi = 0.</summary>
/// <param name="Kind">The law.</param>
/// <param name="First">First number of the law.</param>
/// <param name="Second">Second number of the law.</param>
internal readonly record struct FaceLaw(FaceKind Kind, double First, double Second);
