using System;
using System.Collections.Generic;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;

namespace Recovery.Mechanics.Planning;

/// <summary>What a plan comes to: the verdict with its reasons first, then demand, capability, line loads, rig, what flies, the measures, the stages, the areas and the precautions.</summary>
/// <remarks>Immutable and safe for concurrent use. The verdict is the worst severity of the findings; it says what was checked and never that a pull is without danger. Measures, stages, areas and texts are worked out when they are asked for.</remarks>
public sealed class Assessment
{
    private readonly PlanContext _context;

    private Assessment(PlanContext context, IReadOnlyList<Finding> findings, Verdict verdict)
    {
        _context = context;
        Findings = findings;
        Verdict = verdict;
    }

    /// <summary>Gets the plan.</summary>
    public RecoveryPlan Plan => _context.Plan;

    /// <summary>Gets the verdict: the worst severity among the findings.</summary>
    public Verdict Verdict { get; }

    /// <summary>Gets the findings, stops first.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>Gets what it takes.</summary>
    public PullDemand Demand => _context.Demand;

    /// <summary>Gets the axle loads of the stuck machine before the pull and in it, beside the demand; null where place or height of its attachment is not known.</summary>
    public StuckLoads? StuckLoads => Planning.StuckLoads.Of(Plan, Demand);

    /// <summary>Gets what the towing machine has.</summary>
    public PullCapability Capability => _context.Capability;

    /// <summary>Gets what several machines have together; null where one pulls alone.</summary>
    public TeamPull? Team => _context.Team;

    /// <summary>Gets what is sustained on the line along the ground: by the towing machine, by the team, through the tackle.</summary>
    public ForceBand Sustained => ForceBand.FromNewtons(Available.Low, Available.Central, Available.High);

    /// <summary>Gets the most that can come into the line along the ground.</summary>
    public Force Imposable => Force.FromNewtons(Available.Imposable);

    /// <summary>Gets the line loads; null where the strength of a strap in the line is not known.</summary>
    public LineLoads? Loads => _context.Loads;

    /// <summary>Gets the rig check; null where the line loads are not known.</summary>
    public RigCheck? Rig => _context.Rig;

    /// <summary>Gets what each measure is worth by itself, the most valuable first. Worths do not add.</summary>
    public IReadOnlyList<MeasureWorth> Measures => MeasureList.Rank(Plan, Demand);

    /// <summary>Gets the stages in which the pull is raised; empty where the rig is not known.</summary>
    public IReadOnlyList<PullStage> Stages => StageList.Of(this, Wording.Default);

    /// <summary>Gets what ends a pull at once, for this plan, in words that can be called out.</summary>
    public IReadOnlyList<Precaution> StopCriteria => StopList.Criteria(this, Wording.Default);

    /// <summary>Gets what is done again after every stop before tension comes on once more.</summary>
    public IReadOnlyList<Precaution> AfterAStop => StopList.AfterAStop(this, Wording.Default);

    /// <summary>Gets how far the line runs below each low part of the stuck machine, as found and over the climb; empty where that was not measured.</summary>
    public IReadOnlyList<UnderMachineClearance> Clearances => LineUnderMachine.Clearances(Plan);

    /// <summary>Gets the line over the humps that were measured between the machines, with its least clearance and where on the way that is; null where nothing was measured or an end of the line is not known. Stretch is left out, and the climb of the machine earns no lift of the line.</summary>
    public ClearanceSweep? GroundClearance => LineOverGround.Sweep(Plan);

    /// <summary>Gets the areas to keep clear. Reach estimates and quoted rules: none of them is a distance at which people are out of danger.</summary>
    public IReadOnlyList<HazardArea> HazardAreas => HazardAreaList.Of(this, Wording.Default);

    /// <summary>Gets what has to be done and looked at before this pull, in order.</summary>
    public IReadOnlyList<Precaution> Precautions => PrecautionList.Of(this, Wording.Default);

    /// <summary>Gets the least rating that each part of the rig and both attachments need under the named policy, with what marking to look for; empty where the line loads are not known.</summary>
    public IReadOnlyList<GearNeed> GearNeeds => Rig is { } rig ? GearChoice.For(rig) : [];

    /// <summary>Gets what takes a part of this rig out of service, by kind of gear, each with its source: to be gone through before anyone hooks on.</summary>
    public IReadOnlyList<RejectCriterion> Inspection => InspectionChecklist.For(Plan.Rig);

    /// <summary>Gets the facts that are still to measure, each with what it would change.</summary>
    public IReadOnlyList<Assumption> Assumptions => AssumptionList.Of(Plan, Demand);

    /// <summary>Gets every source that went into the assessment, each once: those of the terms, the line, the gear and the findings.</summary>
    public IReadOnlyList<Source> Sources => SourceList.Of(this);

    /// <summary>Gets the weakest standing among <see cref="Sources"/>: the standing of the whole.</summary>
    public Standing Standing => Standings.Weakest(Sources);

    /// <summary>Works every number out step by step: demand, capability, line loads, each part of the gear, what flies, verdict, stages, areas.</summary>
    /// <returns>One set of worked steps for each.</returns>
    public IReadOnlyList<Working> Explain() => AssessmentExplanation.Of(this);

    /// <summary>Gets the version of the library and of its set of models.</summary>
    public static string ModelSet => "Recovery.Mechanics 0.1, Brixius (bias sustained, radial imposable and resistance), wall and floor composition 1";

    /// <summary>Gets a fingerprint of the plan: equal plans give equal fingerprints on every machine.</summary>
    public string Fingerprint => PlanFingerprint.Of(Plan);

    /// <summary>Gives the whole assessment as plain text of a given width.</summary>
    /// <param name="columns">Width, 40 to 200 columns.</param>
    /// <returns>The report, invariant culture, line feeds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public string ToReport(int columns) => ToDocument(DisplayUnits.Metric).ToText(columns);

    /// <summary>Gives the whole assessment in structured form, for a host to render as it likes, as text or as Markdown.</summary>
    /// <param name="units">Units of the numbers.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined values.</exception>
    public ReportDocument ToDocument(DisplayUnits units) => ToDocument(units, ReportLanguage.English);

    /// <summary>Gives the whole assessment in structured form and in a host's own language.</summary>
    /// <param name="units">Units of the numbers.</param>
    /// <param name="language">The words, by key.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentNullException">The language is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The units are not one of the defined values.</exception>
    public ReportDocument ToDocument(DisplayUnits units, ReportLanguage language) => AssessmentReport.Of(this, new Wording(new Display(Guard.Defined(units, units is DisplayUnits.Metric or DisplayUnits.Imperial, nameof(units))), Guard.NotNull(language, nameof(language))));

    /// <summary>Gives the whole assessment as plain text of 72 columns.</summary>
    /// <returns>The report, invariant culture, line feeds.</returns>
    public string ToReport() => ToReport(72);

    /// <summary>Gives verdict and number of findings in one line.</summary>
    /// <returns>The verdict.</returns>
    public override string ToString() => Verdict + ", " + Text.Number(Findings.Count) + " findings";

    internal PullAvailable Available => _context.Available;

    internal static Assessment Of(RecoveryPlan plan)
    {
        var compiled = plan.Compiled;
        var demand = PullDemand.Estimate(plan.Stuck, compiled.Stuck, compiled.StuckOnStraightFrame);
        var capability = compiled.Capability;
        var available = new PullAvailable(capability, compiled);
        LineLoads? loads = null;
        RigCheck? rig = null;
        if (compiled.Line is { } line)
        {
            var input = compiled.LineInput;
            input.Pull = available.Imposable * compiled.Tension;
            LineLoadKernel.Evaluate(input, out var output);
            loads = new LineLoads(line, compiled.Procedure, input, output);
            rig = RigCheck.Of(plan.Rig, plan.Policy, loads, compiled.Places);
        }

        var context = new PlanContext(plan, demand, capability, available, loads, rig);
        var findings = new List<Finding>(24);
        for (var i = 0; i < plan.Checks.Count; i++) plan.Checks[i].Inspect(context, findings);
        if (!ReferenceEquals(plan.Checks, StandardChecks.All)) LeftOut(plan, findings);
        var worst = Order(findings);
        return new Assessment(context, findings.AsReadOnly(), worst == Severity.Stop ? Verdict.Stop : worst == Severity.Caution ? Verdict.NeedsCompetentReview : Verdict.NoObjectionFound);
    }

    /// <summary>Stable order, stops first.</summary>
    private static Severity Order(List<Finding> findings)
    {
        var worst = Severity.Note;
        for (var i = 0; i < findings.Count; i++)
        {
            var finding = findings[i];
            if (finding.Severity > worst) worst = finding.Severity;
            var k = i;
            while (k > 0 && findings[k - 1].Severity < finding.Severity)
            {
                findings[k] = findings[k - 1];
                k--;
            }

            findings[k] = finding;
        }

        return worst;
    }

    private static void LeftOut(RecoveryPlan plan, List<Finding> findings)
    {
        foreach (var standard in StandardChecks.All)
        {
            var kept = false;
            foreach (var check in plan.Checks) kept |= ReferenceEquals(check, standard);
            if (!kept) findings.Add(new Finding(PlanningFindings.CheckLeftOut, standard.Name));
        }
    }
}
