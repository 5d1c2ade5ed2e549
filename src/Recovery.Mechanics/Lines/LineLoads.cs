using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Lines;

/// <summary>The three loads in the line side by side: steady, procedure and careless.</summary>
/// <remarks>
/// <para>Steady P is the most that the puller can impose. Procedure is the peak of what is declared, the smaller of the rules that apply: held anchor F = P + sqrt(P^2 + 2 k P s + k m v^2); locked gear F = P + v_t sqrt(k m), not claimed where a condition is known not to be met, where the puller may face downhill, or on a line stiffer than 654 kN/m that is not declared free of slack or its clutch eased; throttle raised over t_r on a line declared taut P min(2, 1 + T/(pi t_r)).
/// Careless is the held anchor with 0.5 m of slack and 5 km/h. Nothing declared: the procedure is the careless load.</para>
/// <para>k stiffness of the line without bridle and axle straps, which could only lower a peak: the stiff end for rig checks, the soft end beside it for energy and stretch, each with its own peak. m mass of the puller, with what turns where its wheels cannot slip (<see cref="PullProcedure.RotatingMass"/>), v speed at the start of slack s.</para>
/// <para>No credit for damping, break-out, weights or wet line. An anchor that rolls away adds its speed to v_t. Source: energy balance and proof of the locked gear (derived), careless load judgement, stiffness bands from memory unless measured.</para>
/// </remarks>
public sealed class LineLoads
{
    private readonly LineLoadInput _input;
    private readonly LineLoadOutput _output;

    internal LineLoads(ElasticLine line, PullProcedure procedure, in LineLoadInput input, in LineLoadOutput output)
    {
        Line = line;
        Procedure = procedure;
        _input = input;
        _output = output;
    }

    /// <summary>Gets the line.</summary>
    public ElasticLine Line { get; }

    /// <summary>Gets the procedure as declared.</summary>
    public PullProcedure Procedure { get; }

    /// <summary>Gets the steady load: the most the puller can hold on the line.</summary>
    public Force Steady => Force.FromNewtons(_output.Steady);

    /// <summary>Gets the peak of the declared procedure, stiff end: what every part is checked against.</summary>
    public Force ProcedurePeak => Force.FromNewtons(_output.Procedure);

    /// <summary>Gets the peak of the declared procedure at the soft end, where stretch and often energy are greatest.</summary>
    public Force ProcedurePeakSoft => Force.FromNewtons(_output.ProcedureSoft);

    /// <summary>Gets the careless peak, stiff end.</summary>
    public Force Careless => Force.FromNewtons(_output.Careless);

    /// <summary>Gets the procedure peak of a second pull on the bedded-in line.</summary>
    public Force SecondPull => Force.FromNewtons(_output.SecondProcedure);

    /// <summary>Gets the careless peak of a second pull on the bedded-in line.</summary>
    public Force SecondPullCareless => Force.FromNewtons(_output.SecondCareless);

    /// <summary>Gets the rule that set the procedure.</summary>
    public LineLoadRule Rule => _output.Rule;

    /// <summary>Gets the greater of the energies stored in the line at the two ends, each with its own procedure peak.</summary>
    public Energy StoredEnergy => Energy.FromJoules(Math.Max(_output.EnergySoft, _output.EnergyStiff));

    /// <summary>Gets the stretch of the line at the procedure peak, each end with its own.</summary>
    public StretchBand Stretch => new(Math.Min(_output.StretchStiff, _output.StretchSoft), Math.Max(_output.StretchStiff, _output.StretchSoft));

    /// <summary>Gives what follows from the loads: a run-up, nothing declared, a gear whose rule is not claimed, what a second pull does.</summary>
    /// <returns>The findings; empty where there are none.</returns>
    public IReadOnlyList<Finding> Findings()
    {
        var findings = new List<Finding>();
        if (Procedure.IsRunUp) findings.Add(new Finding(LinesFindings.RunUp, "line"));
        if (!Procedure.IsDeclared) findings.Add(new Finding(LinesFindings.ProcedureUndeclared, "line", _output.Procedure / 1000, _output.Steady / 1000, "kN"));
        if (GearObjection() is { } objection) findings.Add(objection);
        if (Procedure.SecondPull is null && _input.BeddedFactor > 1) findings.Add(new Finding(LinesFindings.SecondPull, "line", _output.SecondProcedure / 1000, _output.Procedure / 1000, "kN"));
        return findings.AsReadOnly();
    }

    /// <summary>What keeps the rule of the declared gear from being claimed; null where it is claimed or no gear is declared.</summary>
    internal Finding? GearObjection()
    {
        if (!_output.GearRefused) return null;
        var reasons = Procedure.GearConditions?.NotMet(_output.StiffUsed) ?? [];
        if (_input.FacesDownhill && Procedure.GearConditions is not { LevelOrUphill: false }) reasons.Add(LinesPhrases.Downhill.With());
        if (Procedure.RotatingMass.Kilograms > 0 && Procedure.GearConditions is not { WheelsCanSlip: false }) reasons.Add(LinesPhrases.CannotSlip.With());
        if (Procedure.WheelsCannotSlip && !(Procedure.RotatingMass.Kilograms > 0)) reasons.Add(LinesPhrases.Turning.With());
        if (Procedure.ApproachPassesGear) reasons.Add(LinesPhrases.Approach.With());
        if (reasons.Count == 0) reasons.Add(LinesPhrases.Stiff.With(Text.With(_output.StiffUsed / 1000, "kN/m", 3)));
        return new Finding(LinesFindings.LockedGearNotMet, Phrase.List(reasons));
    }

    internal LineLoadOutput Output => _output;

    internal LineLoadInput Input => _input;

    /// <summary>Works out the line loads.</summary>
    /// <param name="imposablePull">Most that the puller can put into the line, 1 to 5,000 kN.</param>
    /// <param name="pullerMass">Mass of the puller, 0.5 to 200 t.</param>
    /// <param name="line">The elastic line.</param>
    /// <param name="procedure">The procedure as declared.</param>
    /// <param name="beddedFactor">How many times stiffer the line is on a second pull, 1 to 4.</param>
    /// <returns>The loads.</returns>
    /// <exception cref="ArgumentNullException">Line or procedure is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LineLoads Evaluate(Force imposablePull, Mass pullerMass, ElasticLine line, PullProcedure procedure, double beddedFactor = 2)
    {
        double pull = Guard.Newtons(imposablePull, 1, 5000, nameof(imposablePull)), mass = Guard.Kilograms(pullerMass, 0.5, 200, nameof(pullerMass));
        var turning = Guard.NotNull(procedure, nameof(procedure)).RotatingMass.Kilograms;
        var input = InputOf(pull, mass, turning, Guard.NotNull(line, nameof(line)), procedure, Guard.Range(beddedFactor, 1, 4, string.Empty, nameof(beddedFactor)));
        LineLoadKernel.Evaluate(input, out var output);
        return new LineLoads(line, procedure, input, output);
    }

    /// <summary>Works out steady load and procedure peak step by step, stiff end.</summary>
    /// <returns>The worked steps.</returns>
    public Working Explain()
    {
        string p = Text.Number(_input.Pull / 1000), k = Text.Number(_output.StiffUsed / 1000), m = Text.Number(_input.Mass / 1000);
        var working = new WorkingBuilder("Line loads")
            .Step("P", "steady load", "most that the puller can impose", p, p + " kN", GeneralSources.Caller)
            .Step("k", "stiffness, stiff end", "EA/L", Text.Number(Line.StiffNewtons / 1000) + "/" + Text.Number(Line.LengthMetres), k + " kN/m", Line.Source);
        if (_input.GearSpeed >= 0)
            working.Step("F_gear", "locked gear", "P + v_t sqrt(k m)", p + " + " + Text.Number(_input.GearSpeed) + " sqrt(" + k + " x " + m + ")", Text.Kilonewtons(TakeUpKernel.LockedGearPeak(_input.Pull, _output.StiffUsed, _input.Mass, _input.GearSpeed)), LinesSources.LockedGear);
        working.Step("F_careless", "held anchor with careless slack and speed", "P + sqrt(P^2 + 2 k P s + k m v^2)", p + " + sqrt(" + p + "^2 + 2 x " + k + " x " + p + " x " + Text.Number(_input.CarelessSlack) + " + " + k + " x " + Text.Number(LineLoadKernel.Moving(_input, _input.CarelessSpeed) / 1000) + " x " + Text.Number(_input.CarelessSpeed) + "^2)", Text.Kilonewtons(_output.Careless), LinesSources.Careless);
        return working.Step("F", "procedure peak", "smaller of the rules that apply", Rule.ToString(), Text.Kilonewtons(_output.Procedure), Rule switch
        {
            LineLoadRule.LockedGear => LinesSources.LockedGear,
            LineLoadRule.RaisedThrottle => LinesSources.Throttle,
            LineLoadRule.HeldAnchor => LinesSources.HeldAnchor,
            _ => LinesSources.Careless,
        }).Build();
    }

    /// <summary>Gives the three loads in one line, invariant culture.</summary>
    /// <returns>Steady, procedure, careless.</returns>
    public override string ToString() => "steady " + Text.Kilonewtons(_output.Steady) + ", procedure " + Text.Kilonewtons(_output.Procedure) + " (" + Rule + "), careless " + Text.Kilonewtons(_output.Careless);

    /// <summary>The same pull and procedure on another line.</summary>
    internal LineLoads WithLine(ElasticLine line) => With(line, Procedure, _input.Turning);

    /// <summary>The same pull and line with another procedure.</summary>
    internal LineLoads WithProcedure(PullProcedure procedure) => With(Line, procedure, procedure.RotatingMass.Kilograms);

    private LineLoads With(ElasticLine line, PullProcedure procedure, double turning)
    {
        var input = InputOf(_input.Pull, _input.Mass - _input.Turning, turning, line, procedure, _input.BeddedFactor, _input.FacesDownhill);
        LineLoadKernel.Evaluate(input, out var output);
        return new LineLoads(line, procedure, input, output);
    }

    internal static LineLoadInput InputOf(double pull, double mass, double turning, ElasticLine line, PullProcedure procedure, double beddedFactor, bool facesDownhill = false) => new()
    {
        Pull = pull,
        Mass = mass + turning,
        Turning = turning,
        Soft = ElasticKernel.Stiffness(line.SoftNewtons, line.LengthMetres),
        Stiff = ElasticKernel.Stiffness(line.StiffNewtons, line.LengthMetres),
        BeddedFactor = beddedFactor,
        GearSpeed = procedure.LockedGear?.MetersPerSecond ?? -1,
        GearRuleBroken = facesDownhill || procedure.WheelsCannotSlip || procedure.ApproachPassesGear || procedure.GearConditions?.NotMet(0).Count > 0,
        ClutchMayDrop = procedure.GearConditions is { } stated ? !stated.ClutchEasedOrLineDrawnTaut : procedure.Slack is not { Meters: 0 },
        FacesDownhill = facesDownhill,
        Slack = procedure.Slack?.Meters ?? -1,
        Approach = procedure.ApproachSpeed?.MetersPerSecond ?? -1,
        Rise = procedure.ThrottleRise?.Seconds ?? -1,
        CarelessSlack = procedure.CarelessSlack.Meters,
        CarelessSpeed = procedure.CarelessSpeed.MetersPerSecond,
        SecondPull = procedure.SecondPull == true,
    };
}
