namespace Recovery.Mechanics.Lines;

/// <summary>A bridle that runs from the front axle beneath the machine to an eye behind its tail, once. x backwards from the axle, SI.</summary>
internal static class UnderMachineKernel
{
    /// <summary>Half spacing of the legs at x: (w/2)(1 - x/x_e).</summary>
    public static double HalfSpacing(double anchorSpacing, double apex, double x) => anchorSpacing / 2 * (1 - (x / apex));

    /// <summary>Height of the legs at x: z_a + (z_e - z_a) x/x_e.</summary>
    public static double Height(double anchorHeight, double apexHeight, double apex, double x) => anchorHeight + ((apexHeight - anchorHeight) * x / apex);

    /// <summary>Rise of the front axle until a gap is used up: (g + r x/L)/(x (1/L - 1/x_e)); infinite where the underside gains on the leg.</summary>
    public static double RiseToFoul(double gap, double x, double wheelbase, double apex, double rearRise)
    {
        var closing = x * ((1 / wheelbase) - (1 / apex));
        return closing <= 0 ? double.PositiveInfinity : (gap + (rearRise * x / wheelbase)) / closing;
    }
}
