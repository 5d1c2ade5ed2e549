using System.Collections.Generic;

namespace Recovery.Mechanics.Provenance;

/// <summary>Collects worked steps.</summary>
internal sealed class WorkingBuilder(string title)
{
    private readonly List<WorkedStep> _steps = [];

    public WorkingBuilder Step(string symbol, string meaning, string expression, string substitution, string value, Source source)
    {
        _steps.Add(new WorkedStep(symbol, meaning, expression, substitution, value, source));
        return this;
    }

    public WorkingBuilder Include(Working other)
    {
        _steps.AddRange(other.Steps);
        return this;
    }

    public Working Build() => new(title, _steps.AsReadOnly());
}
