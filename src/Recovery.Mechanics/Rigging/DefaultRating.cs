using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>One printed working load limit of cargo gear that carries no rating of its own, 49 CFR 393.108 (tables reported, rules primary).</summary>
/// <remarks>Both columns are printed and lie up to 2.1 % apart: each is read, none is converted. Cargo gear is made to hold a load down, not to pull.</remarks>
public sealed record DefaultRating
{
    internal DefaultRating(string material, double millimetres, double kilograms, double? pounds, Source source)
    {
        Material = material;
        Size = Length.FromMillimeters(millimetres);
        Metric = Marking.Tonnes(kilograms / 1000);
        Imperial = pounds is { } lb ? Marking.Pounds(lb) : null;
        Source = source;
    }

    /// <summary>Gets the material.</summary>
    public string Material { get; }

    /// <summary>Gets the nominal size: diameter, or width of webbing.</summary>
    public Length Size { get; }

    /// <summary>Gets the limit of the metric column.</summary>
    public Marking Metric { get; }

    /// <summary>Gets the limit of the column in pounds; null where none is held.</summary>
    public Marking? Imperial { get; }

    /// <summary>Gets the source.</summary>
    public Source Source { get; }

    /// <summary>Gets the rating, by the metric column.</summary>
    public Rating Rating => Rating.WorkingLoadLimit(Metric);

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Material, size and limit.</returns>
    public override string ToString() => Material + " " + Text.With(Size.Meters * 1000, "mm") + ", " + Metric;
}
