using System.Collections.Generic;

namespace Recovery.Mechanics.Planning;

/// <summary>Collects the blocks of a report.</summary>
internal sealed class ReportBuilder(Display display)
{
    private readonly List<ReportSection> _sections = [];
    private List<ReportBlock> _blocks = [];

    /// <summary>Gets the units asked for.</summary>
    public Display Display { get; } = display;

    public void Section(string key, string heading)
    {
        _blocks = [];
        _sections.Add(new ReportSection(key, heading, _blocks.AsReadOnly()));
    }

    public void Paragraph(string text) => _blocks.Add(new ReportBlock(ReportBlockKind.Paragraph, string.Empty, text, [], []));

    public void Item(string mark, string text) => _blocks.Add(new ReportBlock(ReportBlockKind.Item, mark, text, [], []));

    public void Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows) => _blocks.Add(new ReportBlock(ReportBlockKind.Table, string.Empty, string.Empty, header, rows));

    public ReportDocument Build() => new(_sections.AsReadOnly());
}
