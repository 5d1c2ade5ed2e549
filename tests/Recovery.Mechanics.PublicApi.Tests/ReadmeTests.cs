using System;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using Xunit;

namespace Recovery.Mechanics.PublicApi.Tests;

public class ReadmeTests
{
    private static string Read(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "documents", name)).Replace("\r\n", "\n", StringComparison.Ordinal);

    [Fact]
    public void The_embedding_example_is_the_compiled_one()
    {
        var printed = Regex.Match(Read("README.md"), "<!-- snippet: embed -->\n```csharp\n(.*?)```", RegexOptions.Singleline | RegexOptions.None, TimeSpan.FromSeconds(5)).Groups[1].Value;
        var compiled = Regex.Match(Read("EmbeddingExample.cs"), "// snippet: embed\n(.*?)\n *// endsnippet", RegexOptions.Singleline, TimeSpan.FromSeconds(5)).Groups[1].Value;
        Assert.NotEmpty(printed);
        Assert.Equal(compiled.Split('\n').Select(l => l.Length > 8 ? l[8..] : l.Trim()), printed.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void The_embedding_example_runs_and_prints_a_band_its_steps_and_a_worth()
    {
        var before = Console.Out;
        using var text = new StringWriter();
        Console.SetOut(text);
        try
        {
            EmbeddingExample.Run();
        }
        finally
        {
            Console.SetOut(before);
        }

        Assert.Matches(@"\d+ / \d+ / \d+ kN", text.ToString());
        Assert.Contains("Central demand of harvester", text.ToString(), StringComparison.Ordinal);
        Assert.Contains("unloading is worth", text.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dotnet run docs/examples/first-recovery.cs")]
    [InlineData("dotnet test")]
    public void The_readme_gives_the_commands(string command) => Assert.Contains("\n" + command + "\n", Read("README.md"), StringComparison.Ordinal);
}
