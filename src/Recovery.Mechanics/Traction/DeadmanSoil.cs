namespace Recovery.Mechanics.Traction;

/// <summary>Soil around a buried log, as the table of holding power knows it.</summary>
public enum DeadmanSoil
{
    /// <summary>Loam: the table as it stands.</summary>
    Loam,

    /// <summary>Fine-grained or wet sandy soil: half of loam. Wet clay belongs here.</summary>
    FineGrainedOrWetSand,

    /// <summary>Rock or hardpan: five times loam.</summary>
    RockOrHardpan,
}
