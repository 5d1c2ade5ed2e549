using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One size of shackle as one publication prints it. For recognising and choosing gear; a limit is never inferred from a size.</summary>
public sealed record ShackleSize
{
    internal ShackleSize(ShackleSpecification specification, double bodyMetres, Marking limit, double? pinMetres, double? jawMetres, Marking? ultimate, Source source)
    {
        Specification = specification;
        BodyDiameter = Length.FromMeters(bodyMetres);
        WorkingLoadLimit = limit;
        PinDiameter = pinMetres is { } pin ? Length.FromMeters(pin) : null;
        JawWidth = jawMetres is { } jaw ? Length.FromMeters(jaw) : null;
        UltimateLoad = ultimate;
        Source = source;
    }

    /// <summary>Gets the publication.</summary>
    public ShackleSpecification Specification { get; }

    /// <summary>Gets the diameter of the body, its nominal size.</summary>
    public Length BodyDiameter { get; }

    /// <summary>Gets the working load limit.</summary>
    public Marking WorkingLoadLimit { get; }

    /// <summary>Gets the diameter of the pin; null where it is not held.</summary>
    public Length? PinDiameter { get; }

    /// <summary>Gets the width of the jaw; null where it is not held.</summary>
    public Length? JawWidth { get; }

    /// <summary>Gets the ultimate load; null where it is not held.</summary>
    public Marking? UltimateLoad { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gives the size in one line, invariant culture.</summary>
    /// <returns>Publication, size and limit.</returns>
    public override string ToString() => Specification + ", body " + Text.With(BodyDiameter.Meters * 1000, "mm") + ", " + WorkingLoadLimit;
}
