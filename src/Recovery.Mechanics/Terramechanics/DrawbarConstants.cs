namespace Recovery.Mechanics.Terramechanics;

/// <summary>Constants of the drawbar relation of one kind of running gear (from memory).</summary>
/// <param name="A">Constant of X.</param>
/// <param name="B">Slope of X, 1/psi.</param>
/// <param name="C">Factor of the excess, 1/psi.</param>
internal readonly record struct DrawbarConstants(double A, double B, double C)
{
    /// <summary>Wheels from 4 psi of contact pressure on.</summary>
    public static readonly DrawbarConstants Wheels = new(0.3885, 0.0265, 0.0358);

    /// <summary>Wheels below 4 psi.</summary>
    public static readonly DrawbarConstants LightWheels = new(0.379, 0.0219, 0.0257);

    /// <summary>Tracks from 4 psi on.</summary>
    public static readonly DrawbarConstants Tracks = new(0.4554, 0.0392, 0.0526);

    /// <summary>Tracks below 4 psi.</summary>
    public static readonly DrawbarConstants LightTracks = new(0.544, 0.0463, 0.0702);

    /// <summary>The set of a running gear and its contact pressure.</summary>
    public static DrawbarConstants Of(bool tracks, double contactPressurePascals) =>
        contactPressurePascals < ExcessIndexKernel.PressureBreakPascals ? (tracks ? LightTracks : LightWheels) : tracks ? Tracks : Wheels;
}
