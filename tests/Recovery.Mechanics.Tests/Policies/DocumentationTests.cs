using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Recovery.Mechanics.Provenance;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>Every finding has its page, every source its line in the bibliography, every model its page. <c>.ci/docs</c> rewrites the generated ones.</summary>
public class DocumentationTests
{
    private static string Docs => Environment.GetEnvironmentVariable("UPDATE_DOCS") is { Length: > 0 } repository ? Path.Combine(repository, "docs") : Path.Combine(AppContext.BaseDirectory, "docs");

    public static TheoryData<string> FindingIds => [.. FindingCatalogue.All.Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(FindingIds))]
    public void Every_finding_has_its_page(string id) => UpToDate(Path.Combine("findings", id + ".md"), Page(FindingCatalogue.All.Single(d => d.Id == id)));

    [Fact]
    public void Every_source_stands_in_the_bibliography() => UpToDate("bibliography.md", Bibliography());

    [Fact]
    public void Every_finding_stands_in_the_list_of_findings() => UpToDate("findings.md", Findings());

    [Fact]
    public void The_index_leads_to_every_page()
    {
        var index = File.ReadAllText(Path.Combine(Docs, "README.md"));
        foreach (var folder in (string[])["models", "glossary"])
            Assert.All(Directory.EnumerateFiles(Path.Combine(Docs, folder), "*.md"), f => Assert.Contains("(" + folder + "/" + Path.GetFileName(f) + ")", index, StringComparison.Ordinal));
        foreach (Match link in Regex.Matches(index, @"\(([a-z-]+/[a-z-]+\.md)\)", RegexOptions.None, TimeSpan.FromSeconds(1)))
            Assert.True(File.Exists(Path.Combine(Docs, link.Groups[1].Value)), link.Value);
    }

    [Fact]
    public void Finding_ids_are_unique_and_of_our_form()
    {
        Assert.All(FindingCatalogue.All, d => Assert.Matches("^[a-z]+\\.[a-z0-9-]+$", d.Id));
        Assert.Equal(FindingCatalogue.All.Count, FindingCatalogue.All.Select(d => d.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(FindingCatalogue.All, d => Assert.Contains(d.Source, SourceCatalogue.All));
    }

    [Fact]
    public void Sources_are_unique_and_say_something()
    {
        Assert.Equal(SourceCatalogue.All.Count, SourceCatalogue.All.Select(s => s.Key).Distinct(StringComparer.Ordinal).Count());
        Assert.All(SourceCatalogue.All, s => Assert.True(s.Citation.Length > 10, s.Key));
    }

    [Fact]
    public void No_page_of_a_finding_is_left_over() =>
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(Docs, "findings"), "*.md").Select(Path.GetFileNameWithoutExtension).Except(FindingCatalogue.All.Select(d => d.Id), StringComparer.Ordinal));

    [Fact]
    public void Every_model_has_source_range_and_page()
    {
        var models = typeof(IModel).Assembly.GetTypes().Where(t => typeof(IModel).IsAssignableFrom(t) && t is { IsAbstract: false, IsInterface: false }).ToList();
        Assert.NotEmpty(models);
        foreach (var instance in models.SelectMany(Instances))
        {
            Assert.False(string.IsNullOrWhiteSpace(instance.Name));
            Assert.Contains(instance.Source, SourceCatalogue.All);
            Assert.NotEmpty(instance.Validity.Limits);
        }

        Assert.All(models, t => Assert.True(File.Exists(Path.Combine(Docs, "models", Kebab(t.Name) + ".md")), Kebab(t.Name)));
    }

    [Fact]
    public void No_page_promises_safety()
    {
        foreach (var file in Directory.EnumerateFiles(Docs, "*.md", SearchOption.AllDirectories))
            Assert.DoesNotMatch(@"(?i)\bsafe (distance|zone|to stand|to pull)\b", File.ReadAllText(file));
    }

    private static IEnumerable<IModel> Instances(Type type) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Static).Where(p => typeof(IModel).IsAssignableFrom(p.PropertyType)).Select(p => (IModel)p.GetValue(null)!);

    private static string Kebab(string name) => Regex.Replace(name.Replace("Model", string.Empty, StringComparison.Ordinal), "(?<=[a-z])(?=[A-Z])", "-", RegexOptions.None, TimeSpan.FromSeconds(1)).ToLowerInvariant();

    private static void UpToDate(string name, string expected)
    {
        var path = Path.Combine(Docs, name);
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") is { Length: > 0 })
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, expected);
        }

        Assert.True(File.Exists(path), name + " is missing: run .ci/docs");
        Assert.Equal(expected, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Page(FindingDefinition d)
    {
        static string Plain(string template) => template
            .Replace("{subject}", "*subject*", StringComparison.Ordinal).Replace("{required}", "*required*", StringComparison.Ordinal)
            .Replace("{available}", "*available*", StringComparison.Ordinal).Replace("{ratio}", "*ratio*", StringComparison.Ordinal);
        return new StringBuilder("# ").Append(d.Id).Append("\n\n")
            .Append("| | |\n|---|---|\n")
            .Append("| severity | ").Append(d.Severity).Append(" |\n")
            .Append("| meaning | ").Append(Plain(d.Message)).Append(" |\n")
            .Append("| what would change it | ").Append(Plain(d.Remedy)).Append(" |\n")
            .Append("| source | ").Append(d.Source.Citation).Append(" |\n")
            .Append("| standing | ").Append(Standings.Describe(d.Source.Standing)).Append(" |\n\n")
            .Append("Words in italics are fields that the finding fills in. The id is public API and keeps its meaning.\n").ToString();
    }

    private static string Findings()
    {
        var text = new StringBuilder("# Findings\n\nEvery id the library can raise, by area. The id is public API and keeps its meaning; the words may improve.\n");
        foreach (var area in FindingCatalogue.All.GroupBy(d => d.Id[..d.Id.IndexOf('.', StringComparison.Ordinal)], StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append("\n## ").Append(area.Key).Append("\n\n| id | severity |\n|---|---|\n");
            foreach (var d in area.OrderBy(d => d.Id, StringComparer.Ordinal)) text.Append("| [").Append(d.Id).Append("](findings/").Append(d.Id).Append(".md) | ").Append(d.Severity).Append(" |\n");
        }

        return text.ToString();
    }

    private static string Bibliography()
    {
        var text = new StringBuilder("# Bibliography\n\nEvery source the library rests on, with the standing of what was taken from it. \"Reported\" means confirmed in a secondary publication; \"from memory\" means not confirmed and shown so wherever it comes out.\n\n| key | source | standing |\n|---|---|---|\n");
        foreach (var s in SourceCatalogue.All) text.Append("| ").Append(s.Key).Append(" | ").Append(s.Citation.Replace("|", "/", StringComparison.Ordinal)).Append(" | ").Append(Standings.Describe(s.Standing)).Append(" |\n");
        return text.ToString();
    }
}
