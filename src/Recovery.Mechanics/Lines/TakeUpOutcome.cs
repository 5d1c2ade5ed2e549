namespace Recovery.Mechanics.Lines;

/// <summary>Summary of a simulated take-up, SI. What did not happen is not a number.</summary>
internal struct TakeUpOutcome
{
    public double Peak;

    public double PeakTime;

    public double PeakStretch;

    public double FirstPeak;

    public double FirstPeakTime;

    public double SecondPeak;

    public double TautTime;

    public double BreakOutTime;

    public double SlackTime;

    public double SlackPullerSpeed;

    public double SlackCasualtySpeed;

    public double FailTime;

    public double GreatestLineEnergy;

    public double Heat;

    public double Work;

    public double EnergyError;

    public double EndTime;

    public double PullerTravel;

    public double CasualtyTravel;

    public double CasualtyGreatestSpeed;

    public bool CurveEnded;

    public int Steps;
}
