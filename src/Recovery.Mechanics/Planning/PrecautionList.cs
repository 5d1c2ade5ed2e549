using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The precautions that this plan calls for, in the order of the work: read, agree, lighten, dig, prepare both machines, rig, clear the place, take up, pull, afterwards.</summary>
internal static class PrecautionList
{
    public static IReadOnlyList<Precaution> Of(Assessment assessment, Display display)
    {
        var plan = assessment.Plan;
        var list = new List<Precaution>();
        Prepare(plan, Add);
        Lighten(plan, Add);
        Dig(plan.Stuck, Add);
        Machines(assessment, display, Add);
        Rig(assessment, Add);
        Pull(assessment, display, Add);
        return list.AsReadOnly();

        void Add(string key, string action, string why, Source source) => list.Add(new Precaution(key, action, why, source));
    }

    private delegate void Adder(string key, string action, string why, Source source);

    private static void Prepare(RecoveryPlan plan, Adder add)
    {
        add("manual", "Read the manuals of the " + plan.Stuck.Machine.Name + " and the " + plan.Tower.Machine.Name + ": recovery points, towing, neutral.", "They come before anything in this report.", GeneralSources.Trade);
        add("command", "One person in command, radio contact, one word that stops everything.", "Two people deciding is nobody deciding.", GeneralSources.Trade);
    }

    private static void Lighten(RecoveryPlan plan, Adder add)
    {
        var machine = plan.Stuck.Machine;
        foreach (var load in machine.Loads)
        {
            if (load.Kind == LoadKind.Payload) add("unload:" + load.Name, "Unload the " + load.Name + "; an unloading conveyor that has to leave its cradle is restrained so that it cannot swing, and look up for power lines.", "Mass acts on rolling, climb, grade and belly at once.", GeneralSources.Trade);
            if (load.Kind == LoadKind.Detachable) add("detach:" + load.Name, "Take the " + load.Name + " off if it can be set down and drawn away there.", "It acts with a lever ahead of the front axle.", GeneralSources.Trade);
        }

        if (machine.Axles.Any(a => a.Tyre.LowestInflation is { } lowest && lowest.Pascals < a.Tyre.Inflation.Pascals)) add("deflate", "Let the tyres that are not buried down to the lowest pressure their maker lists for the load; write the old pressures down.", "They are restored before the road.", GeneralSources.Trade);
    }

    private static void Dig(StuckMachine stuck, Adder add)
    {
        if (!stuck.AnyWheelBuried && stuck.Belly is null) return;
        if (stuck.DugSlope is null || stuck.Belly is not null)
        {
            add("dig-dangers", "Before a spade goes in: where are the drains, cables and pipes? Nobody under the machine or in the trench while it can move, nobody in a trench that can fall in.", "A machine in a hole moves without warning when the soil that holds it goes.", PlanningSources.DigFirst);
            add("leaks", "Look for oil and fuel in the hole.", "A pipe torn off by the mud makes digging and welding a fire.", GeneralSources.Trade);
        }

        if (stuck.AnyWheelBuried && stuck.DugSlope is null) add("dig", "Dig on the pull side of the wheels first.", "It takes more off the pull than a bigger tractor adds.", PlanningSources.DigFirst);
        if (stuck.Belly is not null) add("belly", "Free the belly or let air and water under it.", "A sealed belly drags and cannot be lifted by wheels that have nothing to stand on.", GeneralSources.Trade);
        else if (stuck.AnyWheelBuried && stuck.Seal != Seal.Vented) add("vent", "Let air or water in behind the wheels.", "Suction holds only where neither can follow.", GeneralSources.Trade);
    }

    private static void Machines(Assessment a, Display display, Adder add)
    {
        var stuck = a.Plan.Stuck;
        if (stuck.DrivesItsWheels) add("stuck-machine", "Park brake off; wheels driven gently with the pull, in contact with the puller, and no faster than the puller goes.", "A machine that drives up to the puller slackens the line and takes it up again with a jerk.", GeneralSources.Trade);
        else add("stuck-machine", "Park brake off, transmission in neutral; find out from the manual whether it freewheels without its engine.", stuck.Wheels == WheelMotion.Turning ? "The demand counts on wheels that turn." : "Locked wheels would take " + display.Force(a.Demand.CentralLocked.Newtons) + " instead of " + display.Force(a.Demand.CentralNewtons) + " at central.", GeneralSources.Trade);
        add("steering", "Who steers the freed machine, and do steering and brakes work without its engine?", "Many have neither then.", GeneralSources.Trade);
        if (stuck.Machine.Axles.Concat(a.Plan.Tower.Machine.Axles).Any(x => x.Tyres > 2)) add("duals", "One wheel of a pair of duals mounted the other way round bites when backing.", "Lugs shed the soil one way only.", GeneralSources.Trade);
        if (a.Capability.LowNewtons < 0.25 * a.Capability.Flat.Weight) add("route", "Walk the puller's way in and out, and where it will stand.", "On the weakest reading it pulls little more than itself: a second stuck machine is the usual second act.", GeneralSources.Trade);
    }

    private static void Rig(Assessment a, Adder add)
    {
        var rig = a.Plan.Rig;
        add("between", "Both machines parked before anybody walks between them to hook on.", "Nobody is between two machines while either can move.", PlanningSources.PeopleBetween);
        if (rig.Drawbar.Kind == AttachmentKind.Drawbar) add("hitch", "Hitch to the drawbar alone.", "Above it the tractor rears over backwards.", PlanningSources.HitchLow);
        if (rig.Casualty.Kind == AttachmentKind.FrontAxle) add("axle-straps", "Pad the axle straps from edges, close inboard of the wheels, clear of hoses and shafts.", "An edge cuts a loaded strap at a fraction of its strength.", GeneralSources.Trade);
        if (rig.Bridle is not null) add("bridle", "See that the bridle runs free in the eye with no steel there.", "A parted recovery strap then carries none.", GeneralSources.Trade);
        if (rig.Parts.Any(p => p is Shackle)) add("shackles", "Pins seated and secured, not torqued; look at every one.", "Mud hides a pin that is not home.", GeneralSources.Trade);
        if (a.Loads is not null) add("zero-mark", "Mark a known length on the strap while it lies straight and slack.", "The tape is read against it at every stage.", GeneralSources.Trade);
        if (a.Plan.Site.MassOnLine) add("mass", "The mass on the line is worth having and earns no number here.", "No measured effect is published.", GeneralSources.Trade);
        else add("mass", "Lay a mass over the line near each end.", "Often asked for; no measured effect is published, so it changes no number here.", GeneralSources.Trade);
    }

    private static void Pull(Assessment a, Display display, Adder add)
    {
        var plan = a.Plan;
        add("cab", "Shield the rear window of the puller; only those who drive sit in a cab.", "The line points at it.", PlanningSources.LineVictims);
        add("people", "Everybody who is not needed well away before tension comes on, nobody at either end.", "Drivers and bystanders on the line are the ones who die.", PlanningSources.LineVictims);
        add("line-taut", "Put a little tension on, stop, and look along the line from the side.", plan.Site.UnderMachine is null ? "How it runs was not measured." : "It will move as the machine rises.", GeneralSources.Trade);
        add("creep", "Lowest gear, power in steps, no run-up, no jerk.", "One careless take-up would put " + (a.Loads is { } loads ? display.Force(loads.Output.Careless) : "a multiple of the pull") + " into the line.", GeneralSources.Trade);
        var downhill = a.Findings.Any(f => f.Id == PlanningFindings.RunsAway.Id || f.Id == PlanningFindings.MayRunAway.Id);
        add("runs-on", "Agree what stops the freed machine and which way the puller turns off.", downhill ? "It comes out downhill and may not stop by itself." : "A stretched line goes on drawing it towards the puller.", GeneralSources.Trade);
        add("afterwards", "Look at straps and attachments afterwards; take out of service what was overloaded.", "A strap loaded once near its limit is a weaker strap.", GeneralSources.Trade);
    }
}
