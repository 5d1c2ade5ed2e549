using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What every part of a rig carries under the steady, the procedure and the careless load, and what it may carry.</summary>
/// <remarks>
/// <para>Two checks, never multiplied. Rated: steady load against the lesser of tag working load limit x deratings and breaking strength x deratings / design factor of the named policy. Peak: strength R over procedure load F against the partial factors load 1.3 x consequence 1.3 x wear x twist x material (nylon 2.5, polyester 1.65, HMPE 2.0) and their floor 2.3 x wear x twist, both factors those of the rig.
/// A shackle: steady within its limit, peak within the lesser of MBL/3 and proof. The gear is checked against what the puller can impose, never against what the mud is hoped to need.</para>
/// <para>Below the floor: stop. Above it but failing the rated check or the full factors: caution. Below 1.5 on the careless load: caution. Source: partial factors 0027/ND (primary, since replaced), levels judgement.</para>
/// </remarks>
public sealed class RigCheck
{
    private readonly RigPlace[] _places;
    private readonly RigOutcome[] _outcomes;
    private readonly Phrase?[] _names;
    private readonly LineLoads _loads;

    internal RigCheck(Rig rig, DesignFactorPolicy policy, LineLoads loads, RigPlace[] places, RigOutcome[] outcomes)
    {
        Rig = rig;
        Policy = policy;
        _loads = loads;
        _places = places;
        _outcomes = outcomes;
        _names = new Phrase?[places.Length];
    }

    /// <summary>Gets the rig.</summary>
    public Rig Rig { get; }

    /// <summary>Gets the design factor policy as named.</summary>
    public DesignFactorPolicy Policy { get; }

    /// <summary>Gets the line loads it was checked with.</summary>
    public LineLoads Loads => _loads;

    /// <summary>Gets every place, in the order of the load path.</summary>
    public IReadOnlyList<PartCheck> Parts
    {
        get
        {
            var parts = new PartCheck[_places.Length];
            for (var i = 0; i < parts.Length; i++) parts[i] = Part(i);
            return Array.AsReadOnly(parts);
        }
    }

    /// <summary>Gets the place with the least reserve on the procedure load over what is asked of it; null where no strength is known.</summary>
    public PartCheck? Weakest
    {
        get
        {
            var weakest = -1;
            for (var i = 0; i < _places.Length; i++)
            {
                if (_outcomes[i].Reserve > 0 && (weakest < 0 || _outcomes[i].Reserve / _places[i].Floor < _outcomes[weakest].Reserve / _places[weakest].Floor)) weakest = i;
            }

            return weakest < 0 ? null : Part(weakest);
        }
    }

    /// <summary>Gets the greatest steady line pull with which every part passes the rated check and the peak of the declared procedure at that pull stays within the full factors, a bight without a maker's figure within its own level. Zero where the take-up alone is more than they allow; null where a strength or a working load limit that it needs is not known: what is not known never counts as not limiting.</summary>
    /// <remarks>Steady and peak are never mixed: in a locked gear P + v_t sqrt(k m) meets the full factors, not P. Solved anew each time it is read.</remarks>
    public Force? AdmissiblePull => Known(PullLimits.Admissible(_places, _loads.Input));

    /// <summary>Gets the same for a second pull on the bedded-in line.</summary>
    public Force? AdmissibleSecondPull => Known(PullLimits.Admissible(_places, _loads.Input with { SecondPull = true }));

    /// <summary>Gets the peak of the declared procedure at <see cref="AdmissiblePull"/>; null where that is null.</summary>
    public Force? AdmissiblePeak => AdmissiblePull is { } pull ? Force.FromNewtons(PullLimits.Peak(_loads.Input, pull.Newtons)) : null;

    /// <summary>Gets the line load at which the first part meets its floor; null where a strength is not known.</summary>
    public Force? FloorPull => Known(PullLimits.Least(_places, RigLevelKind.Floor, out _));

    /// <summary>Gets the levels of the whole rig, rated check, full factors, floor, each with its line load, stretch and gear, the worse of first and second pull; a level that needs a number nobody knows is left out.</summary>
    public IReadOnlyList<RigLevel> Levels
    {
        get
        {
            var levels = new List<RigLevel>(3);
            foreach (var kind in (RigLevelKind[])[RigLevelKind.Rated, RigLevelKind.FullFactors, RigLevelKind.Floor])
            {
                var load = PullLimits.Least(_places, kind, out var place);
                if (place < 0 || double.IsNaN(load)) continue;
                levels.Add(new RigLevel(kind, Part(place).Name, load, load / PullLimits.WorstStiffness(_loads), load / _loads.Input.Soft, kind == RigLevelKind.Rated ? 0 : PullLimits.Gear(_loads, load)));
            }

            return levels.AsReadOnly();
        }
    }

    /// <summary>Gets what the drawbar takes.</summary>
    public AttachmentLoad DrawbarLoad => AttachmentLoad.OfDrawbar(Rig, _loads.Output);

    /// <summary>Gets what the casualty takes, on each side and on both together.</summary>
    public AttachmentLoad CasualtyLoad => AttachmentLoad.OfCasualty(Rig, _loads.Output);

    /// <summary>Gets what happens at each part if it lets go.</summary>
    public IReadOnlyList<FailureCase> Failures => FailureAnalysis.Of(this);

    internal RigPlace[] Places => _places;

    internal RigOutcome[] Outcomes => _outcomes;

    /// <summary>Checks a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="policy">The design factor policy, named.</param>
    /// <param name="loads">The line loads.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentNullException">An argument is null: an unnamed policy is refused.</exception>
    public static RigCheck Of(Rig rig, DesignFactorPolicy policy, LineLoads loads)
    {
        Guard.NotNull(rig, nameof(rig));
        DesignFactorPolicy.Chosen(policy, nameof(policy));
        Guard.NotNull(loads, nameof(loads));
        var places = RigPlaces.From(rig, policy, rig.WearAndTwist);
        return Of(rig, policy, loads, places);
    }

    /// <summary>Gives the speed of a locked gear above which the first place falls below its floor, on a first and on a second pull unless one of them is declared: a level to refuse above, never one to aim at. Null where the steady pull alone exceeds it or the rule of the locked gear is not claimed.</summary>
    /// <returns>The theoretical speed of a locked gear.</returns>
    public Speed? GearSpeedAtFloor() => GearSpeedAt(FloorPull);

    /// <summary>Gives the highest speed of a locked gear with which every place keeps the full factors, on a first and on a second pull unless one of them is declared. Null where the steady pull alone exceeds them or the rule of the locked gear is not claimed.</summary>
    /// <returns>The theoretical speed of a locked gear.</returns>
    public Speed? GearSpeedAtFullFactors() => GearSpeedAt(Known(PullLimits.Least(_places, RigLevelKind.FullFactors, out _)));

    /// <summary>Gives the breaking strength that a part would need for each of its places to meet its floor on the procedure load, with that part put into the rig and the whole rig checked again.</summary>
    /// <param name="part">Name of a part of the rig.</param>
    /// <returns>The remedy; null where the part has no strength of its own or no strength would do.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public RigRemedy? RemedyForFloor(string part) => RigRemedySearch.Find(this, part, static p => p.Floor);

    /// <summary>Gives the breaking strength that a part would need to meet the full partial factors as well, worked for the whole rig.</summary>
    /// <param name="part">Name of a part of the rig.</param>
    /// <returns>The remedy; null where the part has no strength of its own or no strength would do.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public RigRemedy? RemedyForFullFactors(string part) => RigRemedySearch.Find(this, part, static p => p.Kind == PlaceKind.Bight ? p.Floor : p.Full);

    /// <summary>Gives the rig in which every part that is below its floor is as strong as it needs to be with all the others: parts are chosen together, never one by one.</summary>
    /// <returns>The check of that rig; null where a strength is not known or no strength would do; this check itself where nothing is below its floor.</returns>
    public RigCheck? RemediedTogether() => RigRemedySearch.Together(this);

    /// <summary>Gives the breaking strength of <see cref="RemedyForFloor"/> alone.</summary>
    /// <param name="part">Name of a part of the rig.</param>
    /// <returns>The breaking strength; null where the part has none of its own or no strength would do.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public Force? BreakingStrengthForFloor(string part) => RemedyForFloor(part)?.BreakingStrength;

    /// <summary>Gives the breaking strength of <see cref="RemedyForFullFactors"/> alone.</summary>
    /// <param name="part">Name of a part of the rig.</param>
    /// <returns>The breaking strength; null where the part has none of its own or no strength would do.</returns>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public Force? BreakingStrengthForFullFactors(string part) => RemedyForFullFactors(part)?.BreakingStrength;

    /// <summary>Gives the check in one line, invariant culture.</summary>
    /// <returns>The weakest place.</returns>
    public override string ToString() => "weakest: " + (Weakest?.ToString() ?? "unknown");

    internal static RigCheck Of(Rig rig, DesignFactorPolicy policy, LineLoads loads, RigPlace[] places)
    {
        var outcomes = new RigOutcome[places.Length];
        RigKernel.Evaluate(places, loads.Output, outcomes);
        return new RigCheck(rig, policy, loads, places, outcomes);
    }

    internal PartCheck Part(int i) => new(Rig.Parts[_places[i].Part], _places[i], _outcomes[i], _loads.Output.Steady, _loads.Output.Procedure, _loads.Output.Careless);

    /// <summary>The name of a place, made once.</summary>
    internal Phrase PlaceName(int i) => _names[i] ??= PartCheck.NameOf(Rig.Parts[_places[i].Part], _places[i].Kind, Rig.Parts[_places[i].Part] is Bridle);

    internal void AddFindings(List<Finding> findings) => RigStrengthFindings.Add(this, findings);

    private Speed? GearSpeedAt(Force? limit) => limit is { } load && PullLimits.Gear(_loads, load.Newtons) is > 0 and var speed ? Speed.FromMetersPerSecond(speed) : null;

    private static Force? Known(double newtons) => double.IsNaN(newtons) || double.IsInfinity(newtons) ? null : Force.FromNewtons(newtons);
}
