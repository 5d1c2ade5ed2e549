using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using Recovery.Mechanics.Provenance;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>Every id of a finding is asked for by a test: as words in its code or its data, or by its definition.</summary>
public class FindingIsRaisedTests
{
    private static readonly HashSet<string> Named = Collect();

    public static TheoryData<string> FindingIds => [.. FindingCatalogue.All.Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(FindingIds))]
    public void Every_finding_is_asked_for_by_a_test(string id)
    {
        var definition = FindingCatalogue.All.Single(d => string.Equals(d.Id, id, StringComparison.Ordinal));
        var fields = typeof(Source).Assembly.GetTypes().Where(t => t.Name.EndsWith("Findings", StringComparison.Ordinal))
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic).Where(f => ReferenceEquals(f.GetValue(null), definition)).Select(f => t.Name + "." + f.Name));
        Assert.True(Named.Contains(id) || fields.Any(Named.Contains), "no test asks for " + id);
    }

    private static HashSet<string> Collect()
    {
        var named = new HashSet<string>(StringComparer.Ordinal);
        var assembly = typeof(FindingIsRaisedTests).Assembly;
        using var stream = File.OpenRead(assembly.Location);
        using var file = new PEReader(stream);
        var reader = file.GetMetadataReader();
        for (var at = First(reader); !at.IsNil; at = reader.GetNextHandle(at)) named.Add(reader.GetUserString(at));
        foreach (var reference in reader.MemberReferences.Select(reader.GetMemberReference))
        {
            if (reference.Parent.Kind == HandleKind.TypeReference) named.Add(reader.GetString(reader.GetTypeReference((TypeReferenceHandle)reference.Parent).Name) + "." + reader.GetString(reference.Name));
        }

        foreach (var data in assembly.GetTypes().SelectMany(t => t.GetMethods(BindingFlags.Instance | BindingFlags.Public)).SelectMany(m => m.GetCustomAttributes<InlineDataAttribute>().SelectMany(a => a.GetData(m))))
            foreach (var word in data.OfType<string>()) named.Add(word);
        return named;
    }

    private static UserStringHandle First(MetadataReader reader) => reader.GetNextHandle(default(UserStringHandle));
}
