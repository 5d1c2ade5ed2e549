using System.Collections.Generic;
using System.Text;

namespace Recovery.Mechanics.Provenance;

/// <summary>The worked steps of a calculation, in the order in which they were taken.</summary>
/// <remarks>Immutable. What an <c>Explain</c> method of a model returns; the last step is the result of the model.</remarks>
public sealed class Working
{
    internal Working(string title, IReadOnlyList<WorkedStep> steps)
    {
        Title = title;
        Steps = steps;
    }

    /// <summary>Gets what is worked out.</summary>
    public string Title { get; }

    /// <summary>Gets the steps.</summary>
    public IReadOnlyList<WorkedStep> Steps { get; }

    /// <summary>Gets the weakest standing of the steps.</summary>
    public Standing Standing
    {
        get
        {
            var weakest = Standing.Primary;
            foreach (var step in Steps) weakest = Standings.Weakest(weakest, step.Source.Standing);
            return weakest;
        }
    }

    /// <summary>Gives all steps as plain text, two lines a step.</summary>
    /// <returns>Text with line feeds, invariant culture.</returns>
    public override string ToString()
    {
        var text = new StringBuilder(Title).Append('\n');
        foreach (var step in Steps)
            text.Append("  ").Append(step).Append('\n').Append("      ").Append(step.Meaning).Append("; ").Append(step.Source).Append('\n');
        return text.ToString();
    }
}
