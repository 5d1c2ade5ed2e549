namespace Recovery.Mechanics.Planning;

/// <summary>Kind of a block of a report.</summary>
public enum ReportBlockKind
{
    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>An item of a list, with its mark.</summary>
    Item,

    /// <summary>A table: header and rows.</summary>
    Table,
}
