using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>No check value lies unused, none without authority and standing.</summary>
public class CheckValuePolicyTests
{
    private static readonly string[] Standings = ["primary", "secondary", "derived", "from memory", "reference library"];

    [Fact]
    public void Every_row_of_every_file_is_fed_to_a_test()
    {
        var fed = typeof(CheckValuePolicyTests).Assembly.GetTypes()
            .SelectMany(t => t.GetMethods(BindingFlags.Instance | BindingFlags.Public))
            .SelectMany(m => m.GetCustomAttributes<CheckRowsAttribute>())
            .SelectMany(a => a.Models.Select(m => (a.File, m)))
            .ToHashSet();
        var unused = CheckValues.Files.SelectMany(CheckValues.Load).Where(r => !fed.Contains((r.File, r.Model))).Select(r => r.File + "/" + r.Id).ToList();
        Assert.Empty(unused);
    }

    [Fact]
    public void Every_row_names_its_authority_and_a_known_standing()
    {
        var rows = CheckValues.Files.SelectMany(CheckValues.Load).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, r => Assert.False(string.IsNullOrWhiteSpace(r.Authority), r.Id));
        Assert.All(rows, r => Assert.Contains(r.Standing, Standings));
        Assert.Empty(rows.GroupBy(r => (r.File, r.Id)).Where(g => g.Count() > 1).Select(g => g.Key));
    }
}
