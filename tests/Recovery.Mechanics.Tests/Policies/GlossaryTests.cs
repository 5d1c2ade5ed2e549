using System;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Recovery.Mechanics.Provenance;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>The glossary explains every quantity that callers meet again and again.</summary>
public class GlossaryTests
{
    private const int Often = 3;

    [Fact]
    public void Every_quantity_that_is_asked_for_often_is_explained()
    {
        var glossary = string.Join('\n', Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "docs", "glossary"), "*.md").Select(File.ReadAllText)).ToLowerInvariant();
        var missing = typeof(Source).Assembly.GetExportedTypes()
            .SelectMany(t => t.GetConstructors().Cast<MethodBase>().Concat(t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)))
            .SelectMany(m => m.GetParameters())
            .Where(p => string.Equals((Nullable.GetUnderlyingType(p.ParameterType) ?? p.ParameterType).Namespace, "UnitsNet", StringComparison.Ordinal) && p.Name is not null)
            .GroupBy(p => Regex.Replace(p.Name!, "(?<=[a-z])(?=[A-Z])", " ", RegexOptions.None, TimeSpan.FromSeconds(1)).ToLowerInvariant(), StringComparer.Ordinal)
            .Where(g => g.Count() >= Often && g.Key.Length > 1 && !Regex.IsMatch(glossary, @"\b" + Regex.Escape(g.Key) + @"\b", RegexOptions.None, TimeSpan.FromSeconds(1)))
            .OrderByDescending(g => g.Count()).Select(g => g.Key + " (" + g.Count() + ")");
        Assert.True(!missing.Any(), string.Join(", ", missing));
    }

    [Fact]
    public void Every_page_has_a_heading_and_every_term_a_meaning()
    {
        foreach (var page in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "docs", "glossary"), "*.md"))
        {
            var lines = File.ReadAllLines(page);
            Assert.StartsWith("# ", lines[0], StringComparison.Ordinal);
            Assert.All(lines.Where(l => l.StartsWith('|')), l => Assert.True(l.Trim().Trim('|').Split('|') is { Length: 4 } cells && cells[0].Trim().Length > 0 && cells[3].Trim().Length > 2, page + ": " + l));
        }
    }
}
