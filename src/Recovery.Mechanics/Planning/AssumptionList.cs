using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>All facts of a plan that are still to measure.</summary>
internal static class AssumptionList
{
    private static readonly Assumption Choke = new("assume.angle-of-choke", "angle of choke of the axle straps", "the lowest bin, 0.49 of the choker rating", "A look at the hitch can more than double what the axle straps may carry.", RiggingSources.ChokeAngle);
    private static readonly Assumption Stretch = new("assume.strap-stretch", "load-stretch curve of the recovery strap, or one known load on it", "the stiffness band of its fibre, soft for stretch and energy, stiff for peaks", "Until then a tape on the strap tells the load only within a factor of two to three.", Lines.LinesSources.NylonWebbing);
    private static readonly Assumption Yield = new("assume.attachment-loads", "working and yield load of the attachments", "not known, the loads there are printed", "Their maker or dealer can say whether they carry it.", RiggingSources.Levels);
    private static readonly Assumption Bight = new("assume.bight", "maker's figure for the bridle's bight in the strap's eye", "0.5 of the strap, from memory", "A figure replaces the 0.5 and its level.", RiggingSources.Bight);

    public static IReadOnlyList<Assumption> Of(RecoveryPlan plan, PullDemand demand)
    {
        var all = new List<Assumption>(demand.Assumptions);
        if (plan.RemouldingIndexBorrowed) all.Add(CapabilityAssumptions.RemouldingIndex);
        foreach (var part in plan.Rig.Parts)
        {
            if (part is Strap { Choked: true, AngleOfChoke: null }) all.Add(Choke);
        }

        if (plan.Rig.LineStraps[0].Measured is null) all.Add(Stretch);
        if (plan.Rig.Bridle is { } bridle && (bridle.Strap.MakersBightShare is null || plan.Rig.LineStraps[plan.Rig.LineStraps.Count - 1].MakersBightShare is null)) all.Add(Bight);
        if ((plan.Rig.Casualty.WorkingLoad is null && plan.Rig.Casualty.Yield is null) || (plan.Rig.Drawbar.WorkingLoad is null && plan.Rig.Drawbar.Yield is null)) all.Add(Yield);
        return all.AsReadOnly();
    }
}
