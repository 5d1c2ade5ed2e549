using System.Collections.Generic;

namespace Recovery.Mechanics.Planning;

/// <summary>A paragraph, an item of a list or a table of a report.</summary>
public sealed record ReportBlock
{
    internal ReportBlock(ReportBlockKind kind, string mark, string text, IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        Kind = kind;
        Mark = mark;
        Text = text;
        Header = header;
        Rows = rows;
    }

    /// <summary>Gets the kind.</summary>
    public ReportBlockKind Kind { get; }

    /// <summary>Gets the mark of an item, for example <c>STOP</c> or a number; empty for the others.</summary>
    public string Mark { get; }

    /// <summary>Gets the words; empty for a table.</summary>
    public string Text { get; }

    /// <summary>Gets the header of a table; empty for the others.</summary>
    public IReadOnlyList<string> Header { get; }

    /// <summary>Gets the rows of a table; empty for the others.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Rows { get; }

    /// <summary>Gives the words, or the header of a table.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Kind == ReportBlockKind.Table ? string.Join(" | ", Header) : Mark + Text;
}
