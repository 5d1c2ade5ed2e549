namespace Recovery.Mechanics.Ground;

/// <summary>Consistency of a fine-grained soil by hand, from softest to hardest.</summary>
public enum Consistency
{
    /// <summary>A fist goes in several inches easily; undrained strength below 12 kPa.</summary>
    VerySoft,

    /// <summary>A thumb goes in several inches easily; 12 to 24 kPa.</summary>
    Soft,

    /// <summary>A thumb goes in with moderate effort; 24 to 48 kPa.</summary>
    Medium,

    /// <summary>A thumb makes a dent with great effort; 48 to 96 kPa.</summary>
    Stiff,

    /// <summary>A thumbnail makes a dent readily; 96 to 192 kPa.</summary>
    VeryStiff,

    /// <summary>A thumbnail makes a dent with difficulty; above 192 kPa.</summary>
    Hard,
}
