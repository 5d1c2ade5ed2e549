using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>Every number of an assessment, worked step by step.</summary>
internal static class AssessmentExplanation
{
    public static IReadOnlyList<Working> Of(Assessment a)
    {
        var all = new List<Working> { a.Demand.Explain(), a.Capability.Explain() };
        if (a.Team is { } team) all.Add(team.Explain());
        if (a.Loads is { } loads) all.Add(loads.Explain());
        foreach (var part in a.Plan.Rig.Parts)
        {
            if (part is Strap strap) all.Add(strap.Explain());
            if (part is Chain chain) all.Add(chain.Strength.Explain());
            if (part is WireRope wire) all.Add(wire.Strength.Explain());
            if (part is not Bridle bridle) continue;
            all.Add(bridle.Explain());
            all.Add(bridle.Strap.Explain());
        }

        if (a.Rig is { } rig)
        {
            all.Add(Parts(rig));
            all.Add(Failures(rig));
        }

        all.Add(Pull(a));
        if (a.Stages.Count > 0) all.Add(Stages(a));
        all.Add(Areas(a));
        return all.AsReadOnly();
    }

    private static Working Parts(RigCheck rig)
    {
        var working = new WorkingBuilder("Each part of the rig, under policy " + rig.Policy.Name);
        foreach (var p in rig.Parts)
        {
            working.Step("F", "procedure peak at the " + p.Name, "share x line load", Text.Number(p.Share, 4) + " x " + Text.Number(rig.Loads.Output.Procedure / 1000), Text.Kilonewtons(p.Procedure.Newtons), GeneralSources.Statics);
            if (p.Strength is { } strength && p.Reserve is { } reserve) working.Step("R/F", "what the " + p.Name + " keeps; asked " + Text.Number(p.Floor, 3), "derated strength over peak", Text.Number(strength.Kilonewtons) + "/" + Text.Number(p.Procedure.Kilonewtons), Text.Number(reserve), RiggingSources.PartialFactors);
            if (p.RatedAllowable is { } rated && p.RatedUtilisation is { } used) working.Step("F/A", "steady load over what the policy allows, " + p.Name, "steady over allowable", Text.Number(p.Steady.Kilonewtons) + "/" + Text.Number(rated.Kilonewtons), Text.Number(used), RiggingSources.Levels);
        }

        return working.Build();
    }

    private static Working Failures(RigCheck rig)
    {
        var working = new WorkingBuilder("If a part lets go");
        foreach (var f in rig.Failures) working.Step("v", f.Part + " lets go, towards " + f.Towards + ": " + f.Why + (f.Jam is { } jam ? " (" + jam + ")" : string.Empty), "least of force over impedance and energy over mass, rounded up", Text.With(f.StoredEnergy.Kilojoules, "kJ", 3) + " in the line", f.SpeedText, LinesSources.HardwareBound);
        return working.Build();
    }

    private static Working Pull(Assessment a)
    {
        double sustained = a.Available.Central, demand = a.Demand.CentralNewtons;
        return new WorkingBuilder("Verdict")
            .Step("P/R", "sustained pull over central demand; below " + Text.Number(ChoiceFindings.WillNot) + " it will not move, to " + Text.Number(ChoiceFindings.Undecided) + " undecided", "P/R", Text.Number(sustained / 1000) + "/" + Text.Number(demand / 1000), Text.Number(MeasureSearch.Margin(a)), PlanningSources.PlanRules)
            .Step("verdict", "worst severity of the findings", "max(severity)", string.Join(", ", a.Findings.GroupBy(f => f.Severity).Select(g => Text.Number(g.Count()) + " " + g.Key)), a.Verdict.ToString(), PlanningSources.PlanRules)
            .Build();
    }

    private static Working Stages(Assessment a)
    {
        var loads = a.Loads!;
        var working = new WorkingBuilder("Stages of the pull");
        working.Step("F_top", "load of the last stage", "min(steady pull whose peak the rig admits, steady, high of what is sustained)", "min(" + Text.Number(a.Rig!.AdmissiblePull!.Value.Kilonewtons) + ", " + Text.Number(loads.Output.Steady / 1000) + ", " + Text.Number(StageList.Sustains(a) / 1000) + ")", Text.Kilonewtons(a.Stages[a.Stages.Count - 1].LineLoad.Newtons), PlanningSources.Schedule);
        foreach (var s in a.Stages) working.Step("x", "stretch at stage " + Text.Number(s.Number), "F/k, stiff and soft end", Text.Number(s.LineLoad.Kilonewtons) + "/" + Text.Number(loads.Input.Stiff / 1000) + " and /" + Text.Number(loads.Input.Soft / 1000), Text.Fixed(s.LeastStretch.Meters, 3) + " to " + Text.Fixed(s.GreatestStretch.Meters, 3) + " m", LinesSources.NylonWebbing);
        return working.Build();
    }

    private static Working Areas(Assessment a)
    {
        var length = a.Plan.Rig.LengthMetres;
        var working = new WorkingBuilder("Areas to keep clear");
        foreach (var area in a.HazardAreas)
        {
            if (area.Radius.Meters > 0) working.Step("r", area.Key + ", " + area.Centre, area.Key == "sweep" ? "line + stretch" : "largest published rule x line", "line " + Text.With(length, "m", 3), Text.With(area.Radius.Meters, "m", 3), area.Source);
        }

        return working.Build();
    }
}
