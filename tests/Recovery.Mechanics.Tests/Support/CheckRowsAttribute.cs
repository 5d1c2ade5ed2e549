using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Xunit.Sdk;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>Feeds the rows of some models of a check-value file to a theory. A policy test holds that every row of every file is fed to one.</summary>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class CheckRowsAttribute(string file, params string[] models) : DataAttribute
{
    public string File => file;

    public IReadOnlyList<string> Models => models;

    public override IEnumerable<object[]> GetData(MethodInfo testMethod)
    {
        var rows = CheckValues.Load(file).Where(r => models.Contains(r.Model, StringComparer.Ordinal)).ToList();
        foreach (var model in models)
        {
            if (rows.TrueForAll(r => r.Model != model)) throw new ArgumentException($"{file}.csv has no row of model '{model}'.");
        }

        return rows.Select(r => new object[] { r });
    }
}
