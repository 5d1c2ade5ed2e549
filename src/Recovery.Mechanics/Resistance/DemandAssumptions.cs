using Recovery.Mechanics.Ground;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the three bounds of a demand are made with, as plain numbers.</summary>
internal struct DemandAssumptions
{
    /// <summary>Wall and floor.</summary>
    public StuckSoilStrength Strength;

    /// <summary>Cone index fed to the wheel model at the low, Pa.</summary>
    public double IndexLow;

    /// <summary>Cone index fed to the wheel model at central, Pa.</summary>
    public double IndexCentral;

    /// <summary>Cone index fed to the wheel model at the high, Pa.</summary>
    public double IndexHigh;

    /// <summary>Exit slope at the low, radians.</summary>
    public double ExitLow;

    /// <summary>Exit slope at central, radians.</summary>
    public double ExitCentral;

    /// <summary>Exit slope at the high, radians.</summary>
    public double ExitHigh;

    /// <summary>Axles that meet uncut soil at the low, one bit each.</summary>
    public int MeetsLow;

    /// <summary>Axles that meet uncut soil at central, one bit each.</summary>
    public int MeetsCentral;

    /// <summary>Axles that meet uncut soil at the high, one bit each.</summary>
    public int MeetsHigh;

    /// <summary>Whether wheels are declared to turn (true), to be locked (false), or nothing is declared (null).</summary>
    public bool? Turning;

    /// <summary>Whether belly and rear faces are declared vented.</summary>
    public bool Vented;

    /// <summary>Whether part of them is declared vented.</summary>
    public bool PartVented;
}
