namespace Recovery.Mechanics.Provenance;

/// <summary>How a finding bears on the job.</summary>
public enum Severity
{
    /// <summary>Something to know.</summary>
    Note,

    /// <summary>A competent person has to look at it before the job goes on.</summary>
    Caution,

    /// <summary>The job stops here until it is changed.</summary>
    Stop,
}
