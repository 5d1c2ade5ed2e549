namespace Recovery.Mechanics.Lines;

/// <summary>Where and how a thrown fitting lands, SI.</summary>
internal readonly struct Landing(double range, double speed, double seconds)
{
    public double Range { get; } = range;

    public double Speed { get; } = speed;

    public double Seconds { get; } = seconds;
}
