using System;
using System.Collections.Generic;
using System.Text;

namespace Recovery.Mechanics.Planning;

/// <summary>Plain text in a fixed width, for a phone: paragraphs, lists and small tables. No colour, no culture, line feeds only.</summary>
internal sealed class ReportWriter(int width)
{
    private readonly StringBuilder _text = new();

    /// <summary>Writes a heading with a rule under it.</summary>
    public void Heading(string heading)
    {
        if (_text.Length > 0) _text.Append('\n');
        Wrapped(heading.ToUpperInvariant(), string.Empty, string.Empty);
        _text.Append('-', Math.Min(width, heading.Length)).Append('\n');
    }

    /// <summary>Writes a paragraph, wrapped.</summary>
    public void Paragraph(string paragraph) => Wrapped(paragraph, string.Empty, string.Empty);

    /// <summary>Writes one item of a list, wrapped, with a hanging indent as wide as its mark.</summary>
    public void Item(string mark, string item) => Wrapped(item, mark, new string(' ', mark.Length));

    /// <summary>Writes an empty line.</summary>
    public void Blank() => _text.Append('\n');

    /// <summary>Writes a table: the first column to the left and as wide as is left over, the others to the right. A long first cell is wrapped.</summary>
    public void Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        var columns = header.Count;
        var widths = new int[columns];
        for (var c = 1; c < columns; c++)
        {
            widths[c] = header[c].Length;
            foreach (var row in rows) widths[c] = Math.Max(widths[c], row[c].Length);
        }

        widths[0] = width;
        for (var c = 1; c < columns; c++) widths[0] -= widths[c] + 2;
        var longest = header[0].Length;
        foreach (var row in rows) longest = Math.Max(longest, row[0].Length);
        widths[0] = Math.Max(8, Math.Min(widths[0], longest));
        Row(header, widths);
        foreach (var row in rows) Row(row, widths);
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private void Row(IReadOnlyList<string> cells, int[] widths)
    {
        var first = Provenance.Text.Wrap(cells[0], widths[0]);
        for (var i = 0; i < first.Count; i++)
        {
            var line = new StringBuilder(first[i]);
            if (i == first.Count - 1)
            {
                line.Append(' ', Math.Max(0, widths[0] - first[i].Length));
                for (var c = 1; c < cells.Count; c++) line.Append(' ', 2 + widths[c] - cells[c].Length).Append(cells[c]);
            }

            _text.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }

    private void Wrapped(string text, string first, string rest)
    {
        var lines = Provenance.Text.Wrap(text, width - first.Length);
        for (var i = 0; i < lines.Count; i++) _text.Append((i == 0 ? first : rest) + lines[i]).Append('\n');
    }
}
