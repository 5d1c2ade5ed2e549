namespace Recovery.Mechanics.Lines;

/// <summary>Form of a load-elongation curve.</summary>
internal enum CurveKind
{
    /// <summary>F = Fb (x/xb)^n; n 1 is a linear line.</summary>
    Power,

    /// <summary>Straight between tabulated points.</summary>
    Table,

    /// <summary>Several curves one after the other: stretches add at equal tension.</summary>
    Series,
}
