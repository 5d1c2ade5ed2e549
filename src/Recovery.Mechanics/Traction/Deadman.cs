using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>A log or timber buried across the line of pull.</summary>
/// <remarks>
/// <para>Holds HP D_f (L - trench width), HP by <see cref="DeadmanModel"/>; length over diameter of a log at most 5, length over thickness of a squared timber at most 9.</para>
/// <para>The trench in which the line runs bears nothing: its width as dug counts, not less than 0.305 m; undeclared, 0.61 m is taken and listed.</para>
/// <para>Source: US Army TM 5-5420-278-10 (primary), trench width judgement. Immutable.</para>
/// </remarks>
public sealed class Deadman : GroundAnchor
{
    private static readonly Assumption Trench = new(
        "assume.deadman-trench", "width of the trench in which the line runs to the deadman", "0.61 m (2 ft)", "A wider trench leaves less of the log to bear.", AnchorSources.DeadmanTrench);

    private readonly double _trench;

    /// <summary>Describes a round log.</summary>
    /// <param name="name">Name.</param>
    /// <param name="diameter">Diameter of the log, 0.1 to 2 m.</param>
    /// <param name="length">Length of the log, 0.5 to 12 m.</param>
    /// <param name="meanDepth">Depth of its middle below the ground, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise: 3 for 1:3; 0 to 100.</param>
    /// <param name="soil">The soil down to that depth.</param>
    /// <exception cref="System.ArgumentException">The name is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Deadman(string name, Length diameter, Length length, Length meanDepth, double slopeRun, DeadmanSoil soil)
        : this(name, diameter, null, length, meanDepth, slopeRun, soil, null)
    {
    }

    /// <summary>Describes a log or a squared timber with everything declared.</summary>
    /// <param name="name">Name.</param>
    /// <param name="face">Diameter of the log, or height of the face of the timber that bears on the soil, 0.1 to 2 m.</param>
    /// <param name="thickness">Thickness of a squared timber along the pull, 0.1 to 2 m; null for a round log.</param>
    /// <param name="length">Length, 0.5 to 12 m.</param>
    /// <param name="meanDepth">Depth of its middle below the ground, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise: 3 for 1:3; 0 to 100.</param>
    /// <param name="soil">The soil down to that depth.</param>
    /// <param name="trenchWidth">Width of the trench of the line, 0 to 3 m, counted as at least 0.305 m; null where it is not declared.</param>
    /// <exception cref="System.ArgumentException">The name is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Deadman(string name, Length face, Length? thickness, Length length, Length meanDepth, double slopeRun, DeadmanSoil soil, Length? trenchWidth)
        : base(name)
    {
        Face = Length.FromMeters(Guard.Metres(face, 0.1, 2, nameof(face)));
        Thickness = thickness is { } t ? Length.FromMeters(Guard.Metres(t, 0.1, 2, nameof(thickness))) : null;
        LogLength = Length.FromMeters(Guard.Metres(length, 0.5, 12, nameof(length)));
        MeanDepth = meanDepth;
        SlopeRun = slopeRun;
        Soil = soil;
        TrenchWidth = trenchWidth is { } w ? Length.FromMeters(Guard.Metres(w, 0, 3, nameof(trenchWidth))) : null;
        _trench = System.Math.Max(DeadmanKernel.LeastTrench, TrenchWidth?.Meters ?? 2 * DeadmanKernel.Foot);
        Holding = DeadmanModel.Instance.HoldingPower(meanDepth, slopeRun, soil);
    }

    /// <summary>Gets the diameter of the log or the height of the face of the timber.</summary>
    public Length Face { get; }

    /// <summary>Gets the thickness of a squared timber; null for a round log.</summary>
    public Length? Thickness { get; }

    /// <summary>Gets the length.</summary>
    public Length LogLength { get; }

    /// <summary>Gets the mean depth.</summary>
    public Length MeanDepth { get; }

    /// <summary>Gets the run of the line for one of rise.</summary>
    public double SlopeRun { get; }

    /// <summary>Gets the soil.</summary>
    public DeadmanSoil Soil { get; }

    /// <summary>Gets the declared width of the trench; null where it is not declared.</summary>
    public Length? TrenchWidth { get; }

    /// <summary>Gets the holding power.</summary>
    public DeadmanHolding Holding { get; }

    /// <summary>Gets length over diameter, or over thickness of a squared timber.</summary>
    public double Slenderness => LogLength.Meters / (Thickness ?? Face).Meters;

    /// <summary>Gets the greatest slenderness: 5 for a log, 9 for a squared timber.</summary>
    public double SlendernessLimit => Thickness is null ? DeadmanKernel.LogSlenderness : DeadmanKernel.TimberSlenderness;

    /// <inheritdoc/>
    public override Force? Holds => Holding.Power is { } power ? Force.FromNewtons(DeadmanKernel.Holds(LogLength.Meters, power.Pascals, Face.Meters, _trench)) : null;

    /// <inheritdoc/>
    public override Source Source => SlopeRun < 1 ? AnchorSources.DeadmanStraightUp : AnchorSources.Deadman;

    /// <inheritdoc/>
    public override IReadOnlyList<ValidityFlag> Flags => Holding.Flags;

    /// <inheritdoc/>
    public override IReadOnlyList<Assumption> Assumptions => TrenchWidth is null ? [Trench] : [];

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings
    {
        get
        {
            var list = new List<Finding>(3);
            if (Holding.Power is null) list.Add(new Finding(AnchorFindings.DeadmanShallow, Name, DeadmanKernel.LeastDepth, MeanDepth.Meters, "m"));
            if (Slenderness > SlendernessLimit) list.Add(new Finding(AnchorFindings.DeadmanSlender, Name, SlendernessLimit, Slenderness));
            if (SlopeRun is < 1 or > DeadmanKernel.FlattestRun) list.Add(new Finding(AnchorFindings.DeadmanSlope, Name, SlopeRun < 1 ? 1 : DeadmanKernel.FlattestRun, SlopeRun));
            list.Add(new Finding(AnchorFindings.DeadmanTrench, Name, MeanDepth.Meters + (0.5 * Face.Meters), double.NaN, "m"));
            return list.AsReadOnly();
        }
    }

    /// <summary>Gives the log that holds a load.</summary>
    /// <param name="load">Load, normally the breaking strength of the line, 0.1 to 20,000 kN.</param>
    /// <param name="diameter">Diameter of the log, 0.1 to 2 m.</param>
    /// <param name="meanDepth">Mean depth, 0.1 to 6 m.</param>
    /// <param name="slopeRun">Run of the line for one of rise, 0 to 100.</param>
    /// <param name="soil">The soil.</param>
    /// <param name="trenchWidth">Width of the trench of the line, 0 to 3 m, counted as at least 0.305 m.</param>
    /// <returns>The log with its slenderness; no length where the depth is too small for the table.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static DeadmanLog LogFor(Force load, Length diameter, Length meanDepth, double slopeRun, DeadmanSoil soil, Length trenchWidth) => new(
        Guard.Newtons(load, 0.1, 20000, nameof(load)),
        Guard.Metres(diameter, 0.1, 2, nameof(diameter)),
        DeadmanModel.Instance.HoldingPower(meanDepth, slopeRun, soil),
        System.Math.Max(DeadmanKernel.LeastTrench, Guard.Metres(trenchWidth, 0, 3, nameof(trenchWidth))));

    /// <inheritdoc/>
    public override Working Explain()
    {
        var working = new WorkingBuilder("What the deadman " + Name + " holds").Include(DeadmanModel.Instance.Explain(MeanDepth, SlopeRun, Soil));
        if (Holds is { } holds && Holding.Power is { } power)
            working.Step("F", "load that it holds", "HP D_f (L - trench)", Text.Number(power.Kilopascals) + " x " + Text.Number(Face.Meters) + " (" + Text.Number(LogLength.Meters) + " - " + Text.Number(_trench) + ")", Text.Kilonewtons(holds.Newtons), Source);
        return working.Step("L/d", "slenderness, at most " + Text.Number(SlendernessLimit), "L/d", Text.Number(LogLength.Meters) + "/" + Text.Number((Thickness ?? Face).Meters), Text.Number(Slenderness), AnchorSources.Deadman).Build();
    }
}
