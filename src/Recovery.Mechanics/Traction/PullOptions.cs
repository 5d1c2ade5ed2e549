using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Puts the arrangements together and judges each.</summary>
internal sealed class PullOptions
{
    private readonly PullMeans _means;
    private readonly ForceBand _demand;
    private readonly double _planning;
    private readonly List<PullOption> _list = [];

    private PullOptions(PullMeans means, ForceBand demand, double planning)
    {
        _means = means;
        _demand = demand;
        _planning = planning;
    }

    public static IReadOnlyList<PullOption> All(PullMeans means, ForceBand demand, double planning)
    {
        var options = new PullOptions(means, demand, planning);
        foreach (var tower in means.Towers) options.Machine(tower);
        foreach (var tower in means.Tracked) options.Tracked(tower);
        options.Teams();
        foreach (var winch in means.Winches) options.Winch(winch);
        foreach (var tower in means.Towers) options.MachineTackle(tower);
        return options._list.OrderBy(o => o.Outcome).ThenBy(o => o.Utilisation ?? double.MaxValue).ThenBy(o => o.Anchor?.Utilisation ?? double.MaxValue).ToList().AsReadOnly();
    }

    private void Machine(TowingMachine tower)
    {
        var capability = PullCapability.Estimate(tower);
        var findings = new List<Finding>();
        Judge(findings, tower.Machine.Name, capability.Sustained);
        findings.AddRange(capability.Findings);
        _list.Add(new PullOption(tower.Machine.Name, PullOptionKind.Machine, capability.Sustained, capability.ImposableNewtons, _demand.CentralNewtons, findings.AsReadOnly()) { Assumptions = capability.Assumptions });
    }

    private void Tracked(TrackedTower tower)
    {
        var pull = TrackedPull.Estimate(tower);
        var findings = new List<Finding>();
        var capacity = pull.Sustained ?? ForceBand.FromNewtons(0, 0, 0);
        Judge(findings, tower.Name, capacity);
        findings.AddRange(pull.Findings);
        _list.Add(new PullOption(tower.Name, PullOptionKind.Machine, capacity, pull.Imposable.Newtons, _demand.CentralNewtons, findings.AsReadOnly()) { Assumptions = pull.Assumptions });
    }

    private void Teams()
    {
        // The weaker one ahead, so that the front point of the other carries the less.
        var towers = _means.Towers.OrderBy(t => PullCapability.Estimate(t).ImposableNewtons).ToArray();
        for (var i = 0; i < towers.Length; i++)
        {
            for (var j = i + 1; j < towers.Length; j++)
            {
                Team(TowingTeam.InLine([new TeamMember(towers[i]), new TeamMember(towers[j])]));
                var spread = Spread([towers[i], towers[j]]);
                Team(spread);
                if (_means.Equaliser) Team(TowingTeam.Equalised(spread.Members[0], spread.Members[1]));
            }
        }

        if (towers.Length is 3 or 4) Team(Spread(towers));
    }

    private TowingTeam Spread(TowingMachine[] towers)
    {
        var half = 0.5 * _means.SpreadAngle.Radians;
        return TowingTeam.SideBySide(towers.Select((t, i) => new TeamMember(t) { LineAngle = Angle.FromRadians(half - (2 * half * i / (towers.Length - 1))) }));
    }

    private void Team(TowingTeam team)
    {
        var pull = TeamPull.Estimate(team);
        var findings = new List<Finding>();
        Judge(findings, team.ToString(), pull.Sustained);
        findings.AddRange(pull.Findings);
        _list.Add(new PullOption(team.ToString(), PullOptionKind.Team, pull.Sustained, pull.Imposable.Newtons, _demand.CentralNewtons, findings.AsReadOnly()) { Assumptions = Once([.. team.Members.Select(m => CapabilityAssumptions.List(m.Tower))]) });
    }

    private void Winch(FarmWinch farm)
    {
        double effort = farm.Winch.EffortOnLayer(farm.Layer).Newtons, stall = farm.Winch.StallPull.Newtons;
        var single = new List<Finding>();
        var band = ForceBand.FromNewtons(effort, effort, effort);
        Judge(single, farm.Winch.Name, band);
        var held = Hold(farm, single, Math.Min(_planning, stall), stall);
        _list.Add(new PullOption(farm.Winch.Name + ", single line", PullOptionKind.Winch, band, stall, _demand.CentralNewtons, single.AsReadOnly()) { Holder = held, Assumptions = farm.HeldBy?.Assumptions ?? [] });
        Tackles(farm.Winch.Name, PullOptionKind.WinchTackle, band, stall, farm, null);
    }

    private void MachineTackle(TowingMachine tower)
    {
        var capability = PullCapability.Estimate(tower);
        if (capability.CentralNewtons > 0) Tackles(tower.Machine.Name, PullOptionKind.MachineTackle, capability.Sustained, capability.ImposableNewtons, null, capability);
    }

    private void Tackles(string name, PullOptionKind kind, ForceBand effort, double stall, FarmWinch? farm, PullCapability? capability)
    {
        if (_means.Blocks.Count == 0) return;
        // Smallest tackle whose fall line holds at the planning high; else the largest that the blocks allow.
        var greatest = Math.Min(12, _means.Blocks.Count + 1);
        var tries = TackleEstimate.Find(Force.FromNewtons(_planning), Force.FromNewtons(effort.CentralNewtons), false, greatest).Tries;
        var parts = Math.Max(2, tries[tries.Count - 1].MechanicalAdvantage);
        var anchors = _means.Anchors.Where(a => a.Name != name && (farm?.HeldBy is not { } holder || holder.Name != a.Name)).ToArray();
        if (anchors.Length == 0) Tackle(name, kind, effort, stall, farm, capability, parts, null);
        foreach (var anchor in anchors) Tackle(name, kind, effort, stall, farm, capability, parts, anchor);
    }

    private void Tackle(string name, PullOptionKind kind, ForceBand effort, double stall, FarmWinch? farm, PullCapability? capability, int parts, GroundAnchor? anchor)
    {
        var tackle = Traction.Tackle.Purchase(parts);
        var subject = name + " through " + Text.Number(parts) + ":1";
        double Moved(double pull) => TackleKernel.Load(pull, tackle.Sheaves, TackleKernel.HandbookFriction, tackle.MechanicalAdvantage);
        var capacity = ForceBand.FromNewtons(Moved(effort.LowNewtons), Moved(effort.CentralNewtons), Moved(effort.HighNewtons));
        var fall = tackle.HandbookFallLine(Force.FromNewtons(_planning)).Newtons;
        var findings = new List<Finding>();
        Judge(findings, subject, capacity);
        if (!(fall < effort.CentralNewtons)) findings.Add(new Finding(ChoiceFindings.BelowPlanningHigh, subject, fall / 1000, effort.CentralNewtons / 1000, "kN"));
        Blocks(findings, tackle.Sheaves, stall);
        var lossless = Ratio.FromDecimalFractions(1);
        // No more comes onto the anchor than the haul can impose, however high the planning high is.
        double stalled = tackle.Forces(Force.FromNewtons(stall), lossless).At(TacklePoint.Anchor).Newtons, onAnchor = Math.Min(stalled, tackle.ForcesAtLoad(Force.FromNewtons(_planning), lossless).At(TacklePoint.Anchor).Newtons);
        AnchorCheck? check = null;
        if (anchor is null) findings.Add(new Finding(ChoiceFindings.NoAnchor, subject, Math.Max(onAnchor, stalled) / 1000, double.NaN, "kN"));
        else findings.AddRange((check = anchor.Check(Force.FromNewtons(onAnchor), Force.FromNewtons(stalled))).Findings);
        var held = farm is null ? null : Hold(farm, findings, Math.Min(fall, stall), stall);
        if (capability is not null)
        {
            findings.Add(new Finding(ChoiceFindings.MachineThroughTackle, name));
            findings.AddRange(capability.Findings);
        }

        _list.Add(new PullOption(anchor is null ? subject : subject + " to " + anchor.Name, kind, capacity, stall * tackle.MechanicalAdvantage, _demand.CentralNewtons, findings.AsReadOnly())
        {
            Advantage = parts,
            TackleUtilisation = fall / effort.CentralNewtons,
            Anchor = check,
            Holder = held,
            Assumptions = Once(capability?.Assumptions, farm?.HeldBy?.Assumptions, anchor?.Assumptions),
        });
    }

    private void Blocks(List<Finding> findings, int sheaves, double stall)
    {
        var least = StallSizing.For(Force.FromNewtons(stall)).BlockAndAnchor.Newtons;
        // The strongest that are known first; those alike are named together.
        foreach (var alike in _means.Blocks.OrderByDescending(b => b.FailingLoad?.Newtons ?? -1).Take(sheaves).GroupBy(b => b.FailingLoad?.Newtons ?? -1))
        {
            var names = string.Join(", ", alike.Select(b => b.Name));
            if (alike.Key < 0) findings.Add(new Finding(ChoiceFindings.BlockUnknown, names, least / 1000, double.NaN, "kN"));
            else if (alike.Key < least) findings.Add(new Finding(ChoiceFindings.BlockWeak, names, least / 1000, alike.Key / 1000, "kN"));
        }
    }

    private static IReadOnlyList<Assumption> Once(params IReadOnlyList<Assumption>?[] lists) => lists.SelectMany(l => l ?? []).GroupBy(a => a.Id, StringComparer.Ordinal).Select(g => g.First()).ToList().AsReadOnly();

    private static AnchorCheck? Hold(FarmWinch farm, List<Finding> findings, double fall, double stall)
    {
        if (farm.HeldBy is not { } holder)
        {
            findings.Add(new Finding(ChoiceFindings.NotHeld, farm.Winch.Name, Math.Max(fall, stall) / 1000, double.NaN, "kN"));
            return null;
        }

        var check = holder.Check(Force.FromNewtons(fall), Force.FromNewtons(stall));
        findings.AddRange(check.Findings);
        return check;
    }

    private void Judge(List<Finding> findings, string subject, ForceBand capacity)
    {
        double demand = _demand.CentralNewtons, central = capacity.CentralNewtons;
        if (central < ChoiceFindings.WillNot * demand) findings.Add(new Finding(TractionFindings.WillNotMove, subject, demand / 1000, central / 1000, "kN"));
        else if (central < ChoiceFindings.Undecided * demand) findings.Add(new Finding(TractionFindings.Undecided, subject, demand / 1000, central / 1000, "kN"));
        else if (capacity.LowNewtons < _demand.HighNewtons) findings.Add(new Finding(TractionFindings.BandsOverlap, subject, _demand.HighNewtons / 1000, capacity.LowNewtons / 1000, "kN"));
    }
}
