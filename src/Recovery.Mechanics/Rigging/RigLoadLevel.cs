namespace Recovery.Mechanics.Rigging;

/// <summary>Which of the three loads of a puller is meant.</summary>
public enum RigLoadLevel
{
    /// <summary>The most the puller can hold.</summary>
    Steady,

    /// <summary>The peak of the declared procedure.</summary>
    Procedure,

    /// <summary>The peak of a careless take-up.</summary>
    Careless,

    /// <summary>The peak of the declared procedure at the soft end of the line: for energy and recoil, where each end has its own.</summary>
    ProcedureSoft,
}
