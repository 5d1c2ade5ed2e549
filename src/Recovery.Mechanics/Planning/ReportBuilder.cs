using System.Collections.Generic;

namespace Recovery.Mechanics.Planning;

/// <summary>Collects the blocks of a report, texts by key.</summary>
internal sealed class ReportBuilder(Wording wording)
{
    private readonly List<ReportSection> _sections = [];
    private List<ReportBlock> _blocks = [];

    /// <summary>Gets language and units.</summary>
    public Wording Wording { get; } = wording;

    /// <summary>Gets the units asked for.</summary>
    public Display Display => Wording.Display;

    /// <summary>Begins a section with a heading by key.</summary>
    public void Section(string key, string heading)
    {
        _blocks = [];
        _sections.Add(new ReportSection(key, Wording.Say(heading), _blocks.AsReadOnly()));
    }

    /// <summary>A text by key.</summary>
    public string Say(string key, params string[] values) => Wording.Say(key, values);

    /// <summary>Adds a paragraph by key.</summary>
    public void Paragraph(string key, params string[] values) => _blocks.Add(new ReportBlock(ReportBlockKind.Paragraph, string.Empty, Say(key, values), [], []));

    /// <summary>Adds an item, its text already made.</summary>
    public void Item(string mark, string text) => _blocks.Add(new ReportBlock(ReportBlockKind.Item, mark, text, [], []));

    public void Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows) => _blocks.Add(new ReportBlock(ReportBlockKind.Table, string.Empty, string.Empty, header, rows));

    public ReportDocument Build() => new(_sections.AsReadOnly());
}
