using System;
using System.Collections.Generic;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A plan as the plan kernel reads it: the compiled plan, the numbers that factors go on, and what the findings without numbers come to. Immutable.</summary>
internal sealed class PlanNumbers
{
    /// <summary>Findings that the kernel works out for itself from sampled numbers; the severity of all others is taken from the plan as it stands.</summary>
    private static readonly HashSet<string> Sampled = new(StringComparer.Ordinal)
    {
        "pull.will-not-move-it", "pull.undecided", "pull.nose-lift", "pull.nose-light", "pull.puller-may-bog", "pull.hitch-rating-exceeded", "pull.team-front-point-exceeded",
        "rig.below-floor", "rig.bight-below", "rig.bight-no-evidence", "rig.partial-factors", "rig.shackle-peak", "rig.shackle-rated", "rig.rated-exceeded", "rig.careless-low", "rig.careless-parts", "rig.second-pull-low",
        "rig.attachment-working-load", "rig.attachment-yield", "line.locked-gear-not-met",
        "mire.belly-drags", "pull.drawbar-vertical", "plan.line-sideways", "plan.runs-away", "plan.may-run-away", "plan.tackle-short", "plan.tackle-anchor-gives", "plan.tackle-blocks-exceeded",
    };

    /// <summary>Makes the numbers and works out the severity of the findings that are not sampled.</summary>
    public PlanNumbers(RecoveryPlan plan)
    {
        Compiled = plan.Compiled;
        Locked = plan.Stuck.Wheels == WheelMotion.Locked;
        ConeIndex = plan.Stuck.Soil.ConeIndex.Pascals;
        RemouldingIndex = plan.Stuck.Soil.RemouldingIndex.DecimalFractions;
        TowerConeIndex = plan.Tower.Soil.ConeIndex.Pascals;
        TowerRemouldingIndex = plan.Tower.Soil.RemouldingIndex.DecimalFractions;
        FirmestDeclared = plan.Tower.FirmestConeIndex?.Pascals ?? 0;
        Parts = plan.Rig.Parts.Count;
        BridleIndex = plan.Rig.BridleIndex < 0 ? int.MaxValue : plan.Rig.BridleIndex;
        SecondPullUndeclared = plan.Procedure.SecondPull is null;
        Drawbar = Limits(plan.Rig.Drawbar);
        Casualty = Limits(plan.Rig.Casualty);
        CasualtyShare = plan.Rig.Bridle?.LegShareWithFriction ?? 1;
        VerticalRating = plan.Tower.HitchVerticalRating?.Newtons ?? double.PositiveInfinity;
        FreedMachineHeld = plan.Site.FreedMachineHeld;
        HardSurfaceInReach = plan.Tower.HardSurfaceInReach;
        Pitch = plan.Site.LinePitch.Radians;
        Yaw = Math.Abs(plan.Site.LineYaw.Radians);
        HitchHeight = plan.Tower.HitchHeight.Meters;
        Team = Compiled.Team is { } together ? TeamFlat.Of(together.Team) : null;
        Advantage = Compiled.Tackle?.Parts ?? 1;
        SustainedAdvantage = Compiled.Tackle?.SustainedAdvantage ?? 1;
        AnchorHolds = Compiled.Tackle?.AnchorHolds?.Newtons ?? double.PositiveInfinity;
        BlockRating = Compiled.Tackle?.BlockRating?.Newtons ?? double.PositiveInfinity;
        Track = plan.Tower.Machine.NarrowestTrack;
        var assessed = plan.Assess();
        TackleNeeds = Compiled.Tackle is null ? 0 : assessed.Demand.PlanningHigh.Newtons;
        foreach (var finding in assessed.Findings)
        {
            if (finding.Severity > Standing && !Sampled.Contains(finding.Id)) Standing = finding.Severity;
        }
    }

    public CompiledPlan Compiled { get; }

    public bool Locked { get; }

    public double ConeIndex { get; }

    public double RemouldingIndex { get; }

    public double TowerConeIndex { get; }

    public double TowerRemouldingIndex { get; }

    public double FirmestDeclared { get; }

    public int Parts { get; }

    public int BridleIndex { get; }

    public bool SecondPullUndeclared { get; }

    public (double Working, double Yield) Drawbar { get; }

    public (double Working, double Yield) Casualty { get; }

    public double CasualtyShare { get; }

    /// <summary>Load down on the hitch that its maker allows; infinite where it is not known.</summary>
    public double VerticalRating { get; }

    public bool FreedMachineHeld { get; }

    public bool HardSurfaceInReach { get; }

    public double Pitch { get; }

    /// <summary>Angle of the line off to the side, whichever.</summary>
    public double Yaw { get; }

    public double HitchHeight { get; }

    /// <summary>Narrowest track width of the towing machine.</summary>
    public double Track { get; }

    /// <summary>Several machines in line; null where one pulls alone.</summary>
    public TeamFlat? Team { get; }

    /// <summary>Force in the line over that at the hitch, without friction; 1 without a tackle.</summary>
    public double Advantage { get; }

    /// <summary>Sustained pull on the line over that at the hitch; 1 without a tackle.</summary>
    public double SustainedAdvantage { get; }

    /// <summary>What the anchor of a tackle holds; infinite where it is not known, which is a finding of its own.</summary>
    public double AnchorHolds { get; }

    /// <summary>What the blocks of a tackle may carry; infinite where it is not known, which is a finding of its own.</summary>
    public double BlockRating { get; }

    /// <summary>Demand on which the tackle of the plan as it stands is sized, a bound that is not sampled; 0 without one.</summary>
    public double TackleNeeds { get; }

    /// <summary>Worst severity among the findings that do not turn on sampled numbers.</summary>
    public Severity Standing { get; } = Severity.Note;

    /// <summary>Machines ahead of the towing machine.</summary>
    public int Ahead => Team is null ? 0 : Team.Count - 1;

    /// <summary>Number of factors: the fixed ones, then strength and wear of every part, then cone index and remoulding index under every machine ahead.</summary>
    public int Factors => (int)PlanFactor.Count + (2 * (Parts + Ahead));

    public int StrengthOf(int part) => (int)PlanFactor.Count + part;

    public int WearOf(int part) => (int)PlanFactor.Count + Parts + part;

    public int ConeIndexOf(int ahead) => (int)PlanFactor.Count + (2 * Parts) + ahead;

    public int RemouldingIndexOf(int ahead) => (int)PlanFactor.Count + (2 * Parts) + Ahead + ahead;

    private static (double Working, double Yield) Limits(AttachmentPoint point) => point.Kind == AttachmentKind.Unidentified || point.Forbidden
        ? (double.PositiveInfinity, double.PositiveInfinity)
        : (point.WorkingLoad?.Newtons ?? double.PositiveInfinity, point.Yield?.Newtons ?? double.PositiveInfinity);
}
