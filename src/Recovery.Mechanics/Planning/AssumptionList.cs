using System;
using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>All facts of a plan that are still to measure.</summary>
internal static class AssumptionList
{
    private static readonly Assumption Stretch = new("assume.strap-stretch", "load-stretch curve of the recovery strap, or one known load on it", "the stiffness band of its fibre, soft for stretch and energy, stiff for peaks", "Until then the puller's travel tells the load only within the band of its fibre, which the stages show.", Lines.LinesSources.NylonWebbing);
    private static readonly Assumption Yield = new("assume.attachment-loads", "working and yield load of the attachments", "not known, the loads there are printed", "Their maker or dealer can say whether they carry it.", RiggingSources.Levels);

    private static readonly Assumption Straight = new("assume.line-straight", "how the line runs between the two hitches, in height and in plan", "level and straight", "An inclined or slanting line carries more for the same pull and loads or lightens both machines.", PlanningSources.LineInclined);
    private static readonly Assumption Height = new("assume.attachment-height", "where on the stuck machine the line is made fast, along it and above the ground", "not known; the axle loads in the pull are not listed", "A pull above the ground takes load off the axles that trail and puts it on those that lead; a slanting line lifts or presses besides.", GeneralSources.Statics);
    private static readonly Assumption Second = new("assume.second-pull", "whether this strap has already been pulled today", "a first pull; a second one is reckoned beside", "Nylon and polyester that were pulled a moment ago are about twice as stiff: the same take-up loads them harder.", Lines.LinesSources.NylonWebbing);
    private static readonly Assumption Under = new("assume.brakes", "which wheels of the stuck machine have brakes or can be locked by its drive", "every wheel", "Wheels that cannot lock lower the high.", ResistanceSources.Composition);

    public static IReadOnlyList<Assumption> Of(RecoveryPlan plan, PullDemand demand)
    {
        var all = new List<Assumption>(plan.FilledIn);
        all.AddRange(demand.Assumptions);
        foreach (var assumption in CapabilityAssumptions.List(plan.Tower)) all.Add(assumption);
        if (plan.Site.IsStraight) all.Add(Straight);
        if (!StuckLoads.Known(plan)) all.Add(Height);
        if (plan.Procedure.SecondPull is null && plan.Compiled.LineInput.BeddedFactor > 1) all.Add(Second);
        if (plan.Stuck.Wheels != WheelMotion.Turning && plan.Stuck.Machine.Axles.All(a => a.Braked)) all.Add(Under);
        if (plan.Rig.Parts.Any(p => p is Strap { Choked: true, AngleOfChoke: null })) all.Add(RigAssumptions.Choke);

        foreach (var part in plan.Rig.Parts)
        {
            if (part is WireRope wire) all.AddRange(wire.Strength.Assumptions);
            else if (part is Chain chain) all.AddRange(chain.Assumptions);
        }

        if (plan.Rig.DeclaredWear is null) all.Add(RigAssumptions.Wear);
        if (plan.Rig.LineParts[0] is not Strap { Measured: not null }) all.Add(Stretch);
        if (plan.Rig.Bridle is { } bridle && (bridle.Strap.MakersBightShare is null || plan.Rig.LineParts[plan.Rig.LineParts.Count - 1] is Strap { MakersBightShare: null })) all.Add(RigAssumptions.Bight);
        if ((plan.Rig.Casualty.WorkingLoad is null && plan.Rig.Casualty.Yield is null) || (plan.Rig.Drawbar.WorkingLoad is null && plan.Rig.Drawbar.Yield is null)) all.Add(Yield);
        return all.GroupBy(a => a.Id, StringComparer.Ordinal).Select(g => g.First()).ToList().AsReadOnly();
    }
}
