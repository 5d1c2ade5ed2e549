using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What one place of a rig carries, and what it may carry.</summary>
/// <remarks>Ratios are null where a strength is not known. The rated check holds the steady load against the allowable, the peak check the procedure load against the strength; a peak never meets a working load limit.</remarks>
public sealed record PartCheck
{
    private readonly RigPlace _place;
    private readonly RigOutcome _outcome;
    private readonly bool _runs;

    internal PartCheck(RigPart part, in RigPlace place, in RigOutcome outcome, double steady, double procedure, double careless, bool runs = false)
    {
        _runs = runs || part is Bridle;
        Part = part;
        _place = place;
        _outcome = outcome;
        Steady = Force.FromNewtons(steady * place.Share);
        Procedure = Force.FromNewtons(procedure * place.Share);
        Careless = Force.FromNewtons(careless * place.Share);
    }

    /// <summary>Gets the part.</summary>
    public RigPart Part { get; }

    /// <summary>Gets the kind of place.</summary>
    public PlaceKind Kind => _place.Kind;

    /// <summary>Gets the name of the place in words.</summary>
    public string Name => Called.ToString();

    /// <summary>Gets the share of the line load it carries, the upper end of friction.</summary>
    public double Share => _place.Share;

    /// <summary>Gets its derated strength.</summary>
    public Force? Strength => Known(_place.Strength);

    /// <summary>Gets what it may carry under the steady load.</summary>
    public Force? RatedAllowable => Known(_place.Rated);

    /// <summary>Gets its steady load.</summary>
    public Force Steady { get; }

    /// <summary>Gets its procedure peak.</summary>
    public Force Procedure { get; }

    /// <summary>Gets its careless peak.</summary>
    public Force Careless { get; }

    /// <summary>Gets the steady load over the rated allowable: above 1 fails.</summary>
    public double? RatedUtilisation => Finite(_outcome.RatedUtilisation);

    /// <summary>Gets strength over procedure peak: below <see cref="Floor"/> is a stop.</summary>
    public double? Reserve => Finite(_outcome.Reserve);

    /// <summary>Gets the procedure peak over what the full factors allow: above 1 fails.</summary>
    public double? PeakUtilisation => Finite(_outcome.PeakUtilisation);

    /// <summary>Gets strength over the peak of a second pull.</summary>
    public double? SecondPullReserve => Finite(_outcome.SecondReserve);

    /// <summary>Gets strength over the careless peak: below 1.5 is a caution.</summary>
    public double? CarelessReserve => Finite(_outcome.CarelessReserve);

    /// <summary>Gets the least reserve on the procedure load.</summary>
    public double Floor => _place.Floor;

    /// <summary>Gets the reserve on the procedure load that the full factors ask, for a shackle its strength over its peak limit; null for a bight without a maker's figure, of which only its floor is asked, and where it is not known.</summary>
    public double? FullFactors => Kind == PlaceKind.Bight ? null : Finite(Kind == PlaceKind.Shackle ? _place.Strength / _place.PeakLimit : _place.Full);

    /// <summary>Gets the line pull that meets the rated check exactly.</summary>
    public Force? AdmissibleRated => Known(_place.Rated / _place.Share);

    /// <summary>Gets the line pull that meets the full factors exactly.</summary>
    public Force? AdmissibleFull => Known(_place.Kind == PlaceKind.Shackle ? _place.PeakLimit / _place.Share : _place.Strength / (_place.Full * _place.Share));

    /// <summary>Gets the line pull that meets the floor exactly.</summary>
    public Force? AdmissibleFloor => Known(_place.Strength / (_place.Floor * _place.Share));

    /// <summary>Gets the line pull at which the careless reserve of 1.5 is met exactly.</summary>
    public Force? AdmissibleCareless => Known(_place.Strength / (RigKernel.CarelessFloor * _place.Share));

    /// <summary>Gets the line pull at which it parts by its derated strength.</summary>
    public Force? PartingPull => Known(_place.Strength / _place.Share);

    internal RigPlace Place => _place;

    internal RigOutcome Outcome => _outcome;

    /// <summary>The name of the place, for a translation.</summary>
    internal Phrase Called => NameOf(Part, Kind, _runs);

    /// <summary>Gives the check in one line, invariant culture.</summary>
    /// <returns>Name, load and reserve.</returns>
    public override string ToString() => Name + ": " + Text.Kilonewtons(Procedure.Newtons, 3) + ", reserve " + (Reserve is { } reserve ? Text.Number(reserve, 3) : "unknown");

    private static Force? Known(double newtons) => double.IsNaN(newtons) || double.IsInfinity(newtons) ? null : Force.FromNewtons(newtons);

    private static double? Finite(double value) => double.IsNaN(value) || double.IsInfinity(value) ? null : value;

    /// <summary>The name of a place of a part.</summary>
    internal static Phrase NameOf(RigPart part, PlaceKind kind, bool runs) => kind switch
    {
        PlaceKind.Bight => (runs ? RiggingPhrases.BightInEye : RiggingPhrases.EyeOnBight).With(part.Name),
        PlaceKind.BightWithFigure => RiggingPhrases.BightWithFigure.With(part.Name),
        _ => part is Bridle ? RiggingPhrases.Leg.With(part.Name) : Phrase.Name(part.Name),
    };
}
