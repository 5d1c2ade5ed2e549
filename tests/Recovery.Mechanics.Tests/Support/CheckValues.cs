using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>The check-value files of the project's shared folder.</summary>
public static class CheckValues
{
    public const string Header = "id,model,given,expected,tolerance,authority,standing";

    private static readonly ConcurrentDictionary<string, IReadOnlyList<CheckRow>> Cache = new(StringComparer.Ordinal);

    public static string Folder => Path.Combine(AppContext.BaseDirectory, "shared", "check-values");

    public static IEnumerable<string> Files => Directory.EnumerateFiles(Folder, "*.csv").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal);

    public static IReadOnlyList<CheckRow> Load(string file) => Cache.GetOrAdd(file, Read);

    private static IReadOnlyList<CheckRow> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, file + ".csv"));
        if (lines[0] != Header) throw new FormatException($"{file}.csv must begin with '{Header}'.");
        return lines.Skip(1).Where(l => l.Length > 0).Select(l => Row(file, l)).ToList();
    }

    private static CheckRow Row(string file, string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') cell.Append(line[++i]);
            else if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) { cells.Add(cell.ToString()); cell.Clear(); }
            else cell.Append(c);
        }

        cells.Add(cell.ToString());
        if (cells.Count != 7) throw new FormatException($"{file}.csv: a row has {cells.Count} cells: {line}");
        return new CheckRow(file, cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6]);
    }
}
