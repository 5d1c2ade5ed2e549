namespace Recovery.Mechanics.Rigging;

/// <summary>How much the parts of a load path stretch when it is solved.</summary>
public enum StretchState
{
    /// <summary>Not at all: the geometry as it is laid out.</summary>
    Unstretched,

    /// <summary>As at the stiff end of every part's band.</summary>
    Stiff,

    /// <summary>As at the soft end of every part's band.</summary>
    Soft,
}
