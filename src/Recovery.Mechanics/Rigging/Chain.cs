using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>A chain by its grade and size. Avoided in recovery: it is heavy for its rating, and what it throws is heavy.</summary>
/// <remarks>
/// <para>Breaking strength 10 x grade N/mm2 on both limbs of a link; working load limit as printed for cargo chain (49 CFR 393.108), unless the tag says another. Without a grade mark it counts as grade 30. A higher grade is not always a higher limit.</para>
/// <para>Partial factor: no material factor is published for chain, so the highest of any line, 2.5, is taken (judgement). Stiffness EA 70 to 90 times the breaking strength of its size in grade 80, whatever its grade (from memory). Sources: tables reported, unmarked rule primary, breaking strength derived. Immutable, equality by value.</para>
/// </remarks>
public sealed record Chain : RigPart
{
    /// <summary>Sizes of link that are described, m.</summary>
    internal const double Thinnest = 0.005, Thickest = 0.05;

    /// <summary>Describes a chain.</summary>
    /// <param name="name">Name, unique in its rig.</param>
    /// <param name="grade">Its grade.</param>
    /// <param name="diameter">Diameter of its link, 5 to 50 mm.</param>
    /// <param name="length">Its length, 0.2 to 100 m.</param>
    /// <param name="tag">Rating on its tag; null where there is none.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Chain(string name, ChainGrade grade, Length diameter, Length length, Rating? tag = null)
        : base(name)
    {
        Grade = Guard.Defined(grade, grade is >= ChainGrade.Unmarked and <= ChainGrade.Grade100, nameof(grade));
        Diameter = Length.FromMeters(Guard.Metres(diameter, Thinnest, Thickest, nameof(diameter)));
        Length = Length.FromMeters(Guard.Metres(length, 0.2, 100, nameof(length)));
        Tag = tag;
    }

    /// <summary>Gets its grade.</summary>
    public ChainGrade Grade { get; }

    /// <summary>Gets the diameter of its link.</summary>
    public Length Diameter { get; }

    /// <summary>Gets its length.</summary>
    public Length Length { get; private init; }

    /// <summary>Gets the rating on its tag; null where there is none.</summary>
    public Rating? Tag { get; private init; }

    /// <summary>Gets how it is laid.</summary>
    public Hitch Hitch { get; init => field = Guard.NotNull(value, nameof(Hitch)); } = Hitch.Straight;

    /// <summary>Gets the temperature it works at, -60 to 600 deg C; null where it was not declared.</summary>
    public Temperature? Temperature { get; init => field = value is { } v ? UnitsNet.Temperature.FromDegreesCelsius(Guard.Range(v.DegreesCelsius, -60, 600, "deg C", nameof(Temperature))) : null; }

    /// <summary>Gets whether it is stretched, bent, cracked or worn by a tenth: out of service.</summary>
    public bool Damaged { get; init; }

    /// <summary>Gets the breaking strength by grade and size.</summary>
    public Force GradeBreaking => Force.FromNewtons(ChainKernel.Breaking(ChainKernel.Number(Grade), Diameter.Meters));

    /// <summary>Gets the rating that counts: the tag, else the printed limit of its grade and size with the design factor that lies in it; below the smallest printed size, and so far above the largest that its limit would be less than a fifteenth, its breaking strength alone.</summary>
    public Rating Rating => Tag ?? (DefaultRatings.OfChain(Grade, Diameter) is { } row && GradeBreaking.Newtons / row.Metric.Newtons is var factor && factor <= Rating.LargestDesignFactor ? Rating.WorkingLoadLimit(row.Metric).WithDesignFactor(factor) : Rating.BreakingStrength(GradeBreaking));

    /// <summary>Gets its mass: 2.2 kg/m at 10 mm (from memory), with the square of the size.</summary>
    public Mass Mass => Mass.FromKilograms(SteelKilograms);

    /// <summary>Gets its derated strength.</summary>
    public DeratedStrength Strength => DeratedStrength.Of(Name, Rating, WholeLengthDerating.OfChain(Name, Temperature), Hitch);

    /// <summary>Gets what was assumed of it: its grade where none is marked, its angle of choke where nobody looked.</summary>
    public System.Collections.Generic.IReadOnlyList<Assumption> Assumptions => Grade == ChainGrade.Unmarked && Tag is null ? [GearAssumptions.ChainGrade, .. Strength.Assumptions] : Strength.Assumptions;

    /// <summary>The same chain of another length, within its range: what sampling does to a reading.</summary>
    internal Chain WithMetres(double metres) => this with { Length = Length.FromMeters(metres) };

    internal override double LineMetres => Length.Meters;

    internal override ElasticLine Elastic => ElasticLine.Of(LineMaterial.ChainOfGrade80Size, Force.FromNewtons(ChainKernel.Breaking(80, Diameter.Meters)), Length);

    internal override double SteelKilograms => Elastic.MassKilograms;

    internal Chain WithTag(Rating? tag) => this with { Tag = tag };

    /// <summary>Gives the same with another value: how it is laid. For callers whose language has no <c>with</c>.</summary>
    /// <param name="hitch">The value, as in <see cref="Hitch"/>.</param>
    /// <returns>The changed copy.</returns>
    public Chain WithHitch(Hitch hitch) => this with { Hitch = hitch };

    /// <summary>Gives the same with another value: the temperature it works at. For callers whose language has no <c>with</c>.</summary>
    /// <param name="temperature">The value, as in <see cref="Temperature"/>.</param>
    /// <returns>The changed copy.</returns>
    public Chain WithTemperature(Temperature? temperature) => this with { Temperature = temperature };

    /// <summary>Gives the same with another value: whether it is damaged. For callers whose language has no <c>with</c>.</summary>
    /// <param name="damaged">The value, as in <see cref="Damaged"/>.</param>
    /// <returns>The changed copy.</returns>
    public Chain WithDamaged(bool damaged) => this with { Damaged = damaged };

    /// <summary>Gives the chain in words, invariant culture.</summary>
    /// <returns>Name, grade, size and rating.</returns>
    public override string ToString() => Name + ", " + Grade + ", " + Text.With(Diameter.Meters * 1000, "mm") + ", " + Rating;
}
