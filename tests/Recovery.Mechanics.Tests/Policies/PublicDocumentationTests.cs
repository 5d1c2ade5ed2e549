using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Recovery.Mechanics.Provenance;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>Everything public is documented: every type, member and parameter. The compiler asks for a comment; this asks for one that says something.</summary>
public class PublicDocumentationTests
{
    private static readonly Dictionary<string, XElement> Members = XDocument.Load(Path.ChangeExtension(typeof(Source).Assembly.Location, ".xml"))
        .Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, StringComparer.Ordinal);

    private static readonly Regex Standing = new("primary|reported|from memory|judgement|derived|common practice|by definition|statics|geometry|arithmetic|numerical", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1));

    private static readonly Type[] Public = typeof(Source).Assembly.GetExportedTypes();

    [Fact]
    public void Every_public_type_says_what_it_is() => Assert.All(Public, t => Assert.True(Says("T:" + Name(t)), t.FullName));

    [Fact]
    public void Every_public_property_field_and_value_says_what_it_is()
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var silent = Public.SelectMany(t => t.GetProperties(All).Where(p => p.GetIndexParameters().Length == 0).Select(p => (Type: t, Id: "P:" + Name(t) + "." + p.Name, p.Name))
                .Concat(t.GetFields(All).Where(f => !f.IsSpecialName).Select(f => (Type: t, Id: "F:" + Name(t) + "." + f.Name, f.Name))))
            .Where(m => !Says(m.Id) && !Parameter(m.Type, m.Name)).Select(m => m.Id);
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_method_says_what_it_does_and_what_each_parameter_is()
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var wrong = new List<string>();
        foreach (var type in Public.Where(t => !typeof(Delegate).IsAssignableFrom(t)))
        {
            foreach (var method in type.GetMethods(All).Cast<MethodBase>().Concat(type.GetConstructors()).Where(m => !m.IsDefined(typeof(System.Runtime.CompilerServices.CompilerGeneratedAttribute), false)))
            {
                if (method.IsSpecialName && !method.IsConstructor) continue;
                var start = "M:" + Name(type) + "." + (method.IsConstructor ? "#ctor" : method.Name);
                var parameters = method.GetParameters();
                var texts = Members.Where(m => m.Key.StartsWith(start, StringComparison.Ordinal) && (m.Key.Length == start.Length || m.Key[start.Length] is '(' or '`' or '~')).Select(m => m.Value).ToList();
                if (method.IsConstructor && Members.TryGetValue("T:" + Name(type), out var own)) texts.Add(own);
                var documented = texts.Exists(t => t.Element("inheritdoc") is not null || parameters.All(p => t.Elements("param").Any(e => string.Equals(e.Attribute("name")?.Value, p.Name, StringComparison.Ordinal) && e.Value.Trim().Length > 2)));
                if (!documented && !(method.IsConstructor && parameters.Length == 0)) wrong.Add(start + "(" + string.Join(", ", parameters.Select(p => p.Name)) + ")");
            }
        }

        Assert.Empty(wrong);
    }

    /// <summary>A constant of a formula has its source: the kernel or the constant names one, with a link that the compiler follows, or says in words what stands behind it.</summary>
    [Fact]
    public void Every_constant_of_a_kernel_has_a_source()
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var silent = new List<string>();
        // The kernel of a whole plan calls kernels alone; its levels are those of the plan's rules.
        foreach (var type in typeof(Source).Assembly.GetTypes().Where(t => t.Name.EndsWith("Kernel", StringComparison.Ordinal) && !string.Equals(t.Name, "PlanKernel", StringComparison.Ordinal)))
        {
            if (Sourced("T:" + Name(type))) continue;
            var constants = type.GetFields(All).Where(f => f.FieldType == typeof(double) && (f.IsLiteral || f.IsInitOnly)).ToList();
            silent.AddRange(constants.Where(f => !Sourced("F:" + Name(type) + "." + f.Name)).Select(f => type.Name + "." + f.Name));
            if (constants.Count == 0) silent.Add(type.Name);
        }

        Assert.True(silent.Count == 0, string.Join(", ", silent));
    }

    private static bool Sourced(string id) => Members.TryGetValue(id, out var member)
        && (member.Descendants("see").Any(e => e.Attribute("cref")?.Value.Contains("Sources.", StringComparison.Ordinal) == true)
            || Standing.IsMatch(member.Value));

    private static string Name(Type type) => type.FullName!.Replace('+', '.');

    private static bool Says(string id) => Members.TryGetValue(id, out var member) && (member.Element("inheritdoc") is not null || member.Element("summary") is { } summary && (summary.Value.Trim().Length > 2 || summary.HasElements));

    private static bool Parameter(Type type, string name) => Members.TryGetValue("T:" + Name(type), out var member) && member.Elements("param").Any(p => string.Equals(p.Attribute("name")?.Value, name, StringComparison.Ordinal));
}
