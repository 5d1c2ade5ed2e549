using System;
using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>An engineering objection or remark: never an exception, always with a reason and with what would change it.</summary>
/// <remarks>Immutable. The text is made when it is read, so that a finding costs next to nothing until somebody looks.</remarks>
public sealed record Finding
{
    private readonly string? _name;
    private readonly Phrase? _words;

    internal Finding(FindingDefinition definition, Phrase subject, double required = double.NaN, double available = double.NaN, string unit = "", Severity? severity = null)
        : this(definition, string.Empty, required, available, unit, severity) => (_name, _words) = (null, subject);

    internal Finding(FindingDefinition definition, string subject, double required = double.NaN, double available = double.NaN, string unit = "", Severity? severity = null)
    {
        Definition = definition;
        _name = subject;
        Severity = severity ?? definition.Severity;
        RequiredOrNaN = required;
        AvailableOrNaN = available;
        Unit = unit;
    }

    /// <summary>Gets what this kind of finding means.</summary>
    public FindingDefinition Definition { get; }

    /// <summary>Gets the stable id.</summary>
    public string Id => Definition.Id;

    /// <summary>Gets how it bears on the job.</summary>
    public Severity Severity { get; }

    /// <summary>Gets the part or place it concerns.</summary>
    public string Subject => SubjectIn(static _ => null);

    /// <summary>Gets what is asked for, in <see cref="Unit"/>; null where there is no number.</summary>
    public double? Required => double.IsNaN(RequiredOrNaN) ? null : RequiredOrNaN;

    /// <summary>Gets what there is, in <see cref="Unit"/>; null where there is no number.</summary>
    public double? Available => double.IsNaN(AvailableOrNaN) ? null : AvailableOrNaN;

    /// <summary>Gets available over required; null where there are no numbers or nothing is required.</summary>
    public double? Ratio => Required is { } required && Available is { } available && required > 0 ? available / required : null;

    /// <summary>Gets the unit of <see cref="Required"/> and <see cref="Available"/>; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>Gets the source of the rule.</summary>
    public Source Source => Definition.Source;

    /// <summary>Gets what was found and why it matters, in English, invariant culture.</summary>
    public string Message => Fill(Definition.Message);

    /// <summary>Gets what would change it, in English, invariant culture.</summary>
    public string Remedy => Fill(Definition.Remedy);

    private double RequiredOrNaN { get; }

    private double AvailableOrNaN { get; }

    /// <summary>Raises a finding of a host's own kind.</summary>
    /// <param name="definition">What this kind of finding means.</param>
    /// <param name="subject">The part or place it concerns.</param>
    /// <param name="required">What is asked for, in <paramref name="unit"/>; null where there is no number.</param>
    /// <param name="available">What there is, in <paramref name="unit"/>; null where there is no number.</param>
    /// <param name="unit">Unit of both; empty for a pure number.</param>
    /// <returns>The finding.</returns>
    /// <exception cref="ArgumentNullException">The definition is null.</exception>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public static Finding Raise(FindingDefinition definition, string subject, double? required = null, double? available = null, string unit = "") =>
        new(Guard.NotNull(definition, nameof(definition)), Guard.Name(subject, nameof(subject)), required ?? double.NaN, available ?? double.NaN, Guard.NotNull(unit, nameof(unit)));

    /// <summary>Fills a template of the host's own language with the fields of this finding.</summary>
    /// <param name="template">Text with the fields <c>{subject}</c>, <c>{required}</c>, <c>{available}</c>, <c>{ratio}</c>.</param>
    /// <returns>The text with the fields put in; numbers to three digits, invariant culture.</returns>
    public string Fill(string template)
    {
        Guard.NotNull(template, nameof(template));
        return Fill(template, Subject);
    }

    /// <summary>The part or place it concerns, by the templates of a language.</summary>
    internal string SubjectIn(Func<string, string?> find) => _name ?? _words!.In(find);

    /// <summary>Fills a template with a subject in its language; the subject last, because a name may hold braces.</summary>
    internal string Fill(string template, string subject)
    {
        if (template.IndexOf('{') < 0) return template;
        return template
            .Replace("{required}", Show(Required, Unit))
            .Replace("{available}", Show(Available, Unit))
            .Replace("{ratio}", Show(Ratio, string.Empty))
            .Replace("{subject}", subject);
    }

    /// <summary>Gives severity, id, subject and message on one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Severity + " " + Id + ": " + Message;

    private static string Show(double? value, string unit) => value is { } number ? Text.With(number, unit, 3) : "unknown";
}
