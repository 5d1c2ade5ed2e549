using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;
using Recovery.Mechanics.Provenance;
using Xunit;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>Everything public is immutable, says itself in the invariant culture, and uses only the rooms above its own.</summary>
public class PublicShapePolicyTests
{
    private static readonly string[] Rooms = ["Provenance", "Ground", "Machines", "Terramechanics", "Resistance", "Traction", "Lines", "Rigging", "Planning", "Uncertainty", "Trafficability"];
    private static readonly Assembly Library = typeof(Source).Assembly;
    private static readonly Type[] Public = Library.GetExportedTypes();

    [Fact]
    public void Nothing_public_can_be_changed()
    {
        var settable = Public.Where(t => !typeof(Exception).IsAssignableFrom(t)).SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static))
            .Where(p => p.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)))
            .Select(p => p.DeclaringType + "." + p.Name);
        var fields = Public.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static))
            .Where(f => !f.IsInitOnly && !f.IsLiteral).Select(f => f.DeclaringType + "." + f.Name);
        Assert.Empty(settable.Concat(fields));
    }

    /// <summary>Nothing inside changes either: fields are read-only, or belong to a property that an initialiser alone sets.</summary>
    [Fact]
    public void Nothing_inside_a_public_type_changes()
    {
        var changing = Public.Where(t => !t.IsEnum && !t.IsInterface && !typeof(Exception).IsAssignableFrom(t))
            .SelectMany(t => t.GetFields(BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(f => !f.IsInitOnly && !f.IsLiteral && !Settable(f))
            .Select(f => f.DeclaringType!.Name + "." + f.Name).ToList();
        Assert.True(changing.Count == 0, string.Join(", ", changing));

        // The field of a property that is set by its initialiser alone is written once, by the constructor or by "with" on a copy.
        static bool Settable(FieldInfo field)
        {
            if (!field.Name.StartsWith('<')) return false;
            var property = field.DeclaringType!.GetProperty(field.Name[1..field.Name.IndexOf('>', StringComparison.Ordinal)], BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly);
            return property?.SetMethod is { } set && (set.IsPrivate || set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)));
        }
    }

    [Fact]
    public void Collections_come_out_read_only()
    {
        var mutable = Public.SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static))
            .Where(p => p.PropertyType.IsArray || (p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() is { } g && (g == typeof(List<>) || g == typeof(IList<>) || g == typeof(Dictionary<,>))))
            .Select(p => p.DeclaringType + "." + p.Name);
        Assert.Empty(mutable);
    }

    [Fact]
    public void Every_public_record_and_value_says_itself()
    {
        // A record's own ToString prints quantities in the thread's culture.
        var silent = Public.Where(t => !t.IsEnum && !t.IsInterface && !(t.IsAbstract && t.IsSealed) && IsRecord(t))
            .Where(t => t.GetMethod("ToString", BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly, []) is not { } own || own.IsDefined(typeof(CompilerGeneratedAttribute), false))
            .Select(t => t.FullName);
        Assert.Empty(silent);
    }

    [Fact]
    public void A_room_uses_only_the_rooms_above_it()
    {
        var wrong = new List<string>();
        foreach (var type in Library.GetTypes().Where(t => Room(t) >= 0))
        {
            // The catalogues collect from every room by design.
            if (type == typeof(SourceCatalogue) || type == typeof(FindingCatalogue)) continue;
            foreach (var used in Used(type).Where(u => Room(u) > Room(type))) wrong.Add(type.FullName + " -> " + used.FullName);
        }

        Assert.Empty(wrong.Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void Nothing_public_mentions_a_boxed_quantity() =>
        Assert.Empty(Public.SelectMany(t => t.GetMethods()).Where(m => m.GetParameters().Any(p => p.ParameterType.Name == "IQuantity") || m.ReturnType.Name == "IQuantity").Select(m => m.Name));

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null || (type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null);

    private static int Room(Type type) => type.Namespace is { } name && name.StartsWith("Recovery.Mechanics.", StringComparison.Ordinal) ? Array.IndexOf(Rooms, name["Recovery.Mechanics.".Length..]) : -1;

    private static IEnumerable<Type> Used(Type type)
    {
        const BindingFlags All = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        var direct = type.GetFields(All).Select(f => f.FieldType)
            .Concat(type.GetProperties(All).Select(p => p.PropertyType))
            .Concat(type.GetMethods(All).SelectMany(m => m.GetParameters().Select(p => p.ParameterType).Append(m.ReturnType).Concat(m.GetMethodBody()?.LocalVariables.Select(v => v.LocalType) ?? [])))
            .Concat(type.GetConstructors(All).SelectMany(c => c.GetParameters().Select(p => p.ParameterType)));
        if (type.BaseType is { } parent) direct = direct.Append(parent);
        return direct.Concat(type.GetInterfaces()).SelectMany(Parts);
    }

    private static IEnumerable<Type> Parts(Type type) => type.HasElementType ? Parts(type.GetElementType()!) : type.IsGenericType ? type.GetGenericArguments().SelectMany(Parts).Append(type.GetGenericTypeDefinition()) : [type];
}
