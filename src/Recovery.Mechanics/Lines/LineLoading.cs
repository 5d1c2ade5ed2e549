namespace Recovery.Mechanics.Lines;

/// <summary>Loading for which a relative stiffness holds.</summary>
public enum LineLoading
{
    /// <summary>First pull from slack.</summary>
    FirstLoading,

    /// <summary>Slow loading of a bedded line.</summary>
    QuasiStatic,

    /// <summary>Small cycles about a mean load.</summary>
    Dynamic,
}
