using System.Collections.Generic;
using System.Text;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>A report in structured form: sections of paragraphs, items and tables that a host renders as it likes.</summary>
/// <remarks>Immutable. The order is the order of reading: verdict and reasons first.</remarks>
public sealed class ReportDocument
{
    internal ReportDocument(IReadOnlyList<ReportSection> sections) => Sections = sections;

    /// <summary>Gets the sections.</summary>
    public IReadOnlyList<ReportSection> Sections { get; }

    /// <summary>Keeps some sections, in their order.</summary>
    /// <param name="keys">Keys of the sections that are kept.</param>
    /// <returns>The shorter report; the sections that were left out are still true of the plan.</returns>
    /// <exception cref="System.ArgumentNullException">The keys are null.</exception>
    public ReportDocument Only(params string[] keys)
    {
        Guard.NotNull(keys, nameof(keys));
        var kept = new List<ReportSection>();
        foreach (var section in Sections)
        {
            if (System.Array.IndexOf(keys, section.Key) >= 0) kept.Add(section);
        }

        return new ReportDocument(kept.AsReadOnly());
    }

    /// <summary>Renders plain text in a fixed width, for a phone.</summary>
    /// <param name="columns">Width, 40 to 200 columns.</param>
    /// <returns>Text with line feeds.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">The width is outside its range.</exception>
    public string ToText(int columns)
    {
        var writer = new ReportWriter(Guard.Count(columns, 40, 200, nameof(columns)));
        foreach (var section in Sections)
        {
            writer.Heading(section.Heading);
            foreach (var block in section.Blocks)
            {
                if (block.Kind == ReportBlockKind.Table) writer.Table(block.Header, block.Rows);
                else if (block.Kind == ReportBlockKind.Item) writer.Item(block.Mark, block.Text);
                else writer.Paragraph(block.Text);
            }
        }

        return writer.ToString();
    }

    /// <summary>Renders Markdown.</summary>
    /// <returns>Markdown with line feeds.</returns>
    public string ToMarkdown()
    {
        var text = new StringBuilder();
        foreach (var section in Sections)
        {
            text.Append(text.Length == 0 ? "# " : "\n## ").Append(section.Heading).Append("\n\n");
            var items = false;
            foreach (var block in section.Blocks)
            {
                if (items && block.Kind != ReportBlockKind.Item) text.Append('\n');
                items = block.Kind == ReportBlockKind.Item;
                if (block.Kind == ReportBlockKind.Table) Table(text, block);
                else if (block.Kind == ReportBlockKind.Item) Item(text, block);
                else text.Append(Escape(block.Text)).Append("\n\n");
            }
        }

        return text.ToString();
    }

    /// <summary>Gives the headings in one line.</summary>
    /// <returns>The headings.</returns>
    public override string ToString() => string.Join(", ", Sections);

    private static void Item(StringBuilder text, ReportBlock block)
    {
        var mark = block.Mark.Trim();
        if (mark == "->") text.Append("  - what would change it: ").Append(Escape(block.Text)).Append('\n');
        else if (mark == "-") text.Append("- ").Append(Escape(block.Text)).Append('\n');
        else if (mark.EndsWith(".", System.StringComparison.Ordinal)) text.Append(mark).Append(' ').Append(Escape(block.Text)).Append('\n');
        else text.Append("- **").Append(mark).Append("** ").Append(Escape(block.Text)).Append('\n');
    }

    private static void Table(StringBuilder text, ReportBlock block)
    {
        Row(text, block.Header);
        text.Append("|---");
        for (var i = 1; i < block.Header.Count; i++) text.Append("|---:");
        text.Append("|\n");
        foreach (var row in block.Rows) Row(text, row);
        text.Append('\n');
    }

    private static void Row(StringBuilder text, IReadOnlyList<string> cells)
    {
        foreach (var cell in cells) text.Append("| ").Append(Escape(cell)).Append(' ');
        text.Append("|\n");
    }

    private static string Escape(string text) => text.Replace("|", "\\|").Replace("*", "\\*").Replace("_", "\\_");
}
