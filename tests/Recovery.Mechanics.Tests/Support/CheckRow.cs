using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;
using Xunit.Abstractions;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>One published or independently computed value with its inputs. The tolerance is that of its printed rounding.</summary>
public sealed class CheckRow : IXunitSerializable
{
    private Dictionary<string, (string Text, string Unit)> _given = [];
    private Dictionary<string, (string Text, string Unit)> _expected = [];

    [Obsolete("For the test framework.")]
    public CheckRow()
    {
    }

    internal CheckRow(string file, string id, string model, string given, string expected, string tolerance, string authority, string standing)
    {
        (File, Id, Model, Tolerance, Authority, Standing) = (file, id, model, tolerance, authority, standing);
        _given = Parse(given);
        _expected = Parse(expected);
    }

    public string File { get; private set; } = string.Empty;

    public string Id { get; private set; } = string.Empty;

    public string Model { get; private set; } = string.Empty;

    public string Tolerance { get; private set; } = string.Empty;

    public string Authority { get; private set; } = string.Empty;

    public string Standing { get; private set; } = string.Empty;

    public IReadOnlyCollection<string> GivenNames => _given.Keys;

    public IReadOnlyCollection<string> ExpectedNames => _expected.Keys;

    public bool Has(string name) => _given.ContainsKey(name);

    /// <summary>A given value in SI (angles in radians).</summary>
    public double Si(string name) => Number(_given[name].Text) * Units.Factor(_given[name].Unit);

    /// <summary>A given value in SI, or a default where the row does not give it.</summary>
    public double Si(string name, double otherwise) => Has(name) ? Si(name) : otherwise;

    /// <summary>A given value as printed, in its own unit.</summary>
    public double Printed(string name) => Number(_given[name].Text);

    /// <summary>A given word.</summary>
    public string Word(string name) => _given[name].Text;

    /// <summary>A given list in SI.</summary>
    public double[] SiList(string name) => _given[name].Text.Split('|').Select(part => Number(part) * Units.Factor(_given[name].Unit)).ToArray();

    /// <summary>A given list as printed, in its own unit.</summary>
    public double[] PrintedList(string name) => _given[name].Text.Split('|').Select(Number).ToArray();

    /// <summary>Compares every expected value of the row; a missing or surplus name fails. Values in SI, angles in radians.</summary>
    public void Matches(params (string Name, double Si)[] actual)
    {
        Assert.Equal(_expected.Keys.OrderBy(n => n, StringComparer.Ordinal), actual.Select(a => a.Name).OrderBy(n => n, StringComparer.Ordinal));
        foreach (var (name, si) in actual) MatchesOne(name, si);
    }

    /// <summary>Compares a list such as a|b|c. Values in SI.</summary>
    public void MatchesList(string name, IReadOnlyList<double> actualSi)
    {
        var (text, unit) = _expected[name];
        var parts = text.Split('|');
        Assert.Equal(parts.Length, actualSi.Count);
        for (var i = 0; i < parts.Length; i++) Close(name, Number(parts[i]), actualSi[i] / Units.Factor(unit));
    }

    /// <summary>Compares one expected value. Value in SI, angles in radians.</summary>
    public void MatchesOne(string name, double si)
    {
        var (text, unit) = _expected[name];
        Close(name, Number(text), si / Units.Factor(unit));
    }

    /// <summary>Compares an expected word.</summary>
    public void MatchesWord(string name, string actual) => Assert.Equal(_expected[name].Text, actual);

    /// <summary>The printed text of an expected value.</summary>
    public string ExpectedText(string name) => _expected[name].Text;

    public override string ToString() => Id + " " + Model;

    public void Deserialize(IXunitSerializationInfo info)
    {
        var row = CheckValues.Load(info.GetValue<string>("file")).Single(r => r.Id == info.GetValue<string>("id"));
        (File, Id, Model, Tolerance, Authority, Standing, _given, _expected) = (row.File, row.Id, row.Model, row.Tolerance, row.Authority, row.Standing, row._given, row._expected);
    }

    public void Serialize(IXunitSerializationInfo info)
    {
        info.AddValue("file", File);
        info.AddValue("id", Id);
    }

    private void Close(string name, double expected, double actual)
    {
        var words = Tolerance.Split(' ');
        var allowed = words[0] switch
        {
            "exact" => Math.Abs(expected) * 1e-12,
            "rel" => Math.Abs(expected) * Number(words[1]),
            "abs" => Number(words[1]),
            _ => throw new FormatException($"Tolerance '{Tolerance}' of row {Id}."),
        };
        Assert.True(Math.Abs(actual - expected) <= allowed, string.Create(CultureInfo.InvariantCulture, $"{Id} {name}: expected {expected}, was {actual}, allowed {Tolerance} ({Authority})"));
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static Dictionary<string, (string Text, string Unit)> Parse(string list)
    {
        var result = new Dictionary<string, (string, string)>(StringComparer.Ordinal);
        foreach (var item in list.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var equals = item.IndexOf('=', StringComparison.Ordinal);
            var value = item[(equals + 1)..];
            // "name=value unit": the unit may hold a blank (N s/m, kN m), a value never ends in one.
            var blank = value.IndexOf(' ', StringComparison.Ordinal);
            result.Add(item[..equals], blank < 0 ? (value, "1") : (value[..blank], value[(blank + 1)..]));
        }

        return result;
    }
}
