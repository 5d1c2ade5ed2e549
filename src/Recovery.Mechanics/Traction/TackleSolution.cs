namespace Recovery.Mechanics.Traction;

/// <summary>Forces of a tackle as plain numbers, newtons.</summary>
internal sealed class TackleSolution(double[] at, double[] ends, double load)
{
    /// <summary>Gets the force on each place, in the order of the layout.</summary>
    public double[] At => at;

    /// <summary>Gets the tension at each dead end, in the order of the ropes of the layout.</summary>
    public double[] Ends => ends;

    /// <summary>Gets the pull on the casualty.</summary>
    public double Load => load;
}
