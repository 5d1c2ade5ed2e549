using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Planning;

/// <summary>The precautions that this plan calls for, in the order in which they are taken.</summary>
internal static class PrecautionList
{
    public static IReadOnlyList<Precaution> Of(Assessment assessment)
    {
        var plan = assessment.Plan;
        var stuck = plan.Stuck;
        var list = new List<Precaution>();
        Add("manual", "Read the operator's manuals for recovery points, towing and neutral.", "They come before anything in this report.", GeneralSources.Trade);
        if (stuck.Machine.Loads.Any(l => l.Kind == LoadKind.Payload)) Add("unload", "Unload before you pull.", "Mass acts on rolling, climb, grade and belly at once.", GeneralSources.Trade);
        if (stuck.AnyWheelBuried && stuck.DugSlope is null) Add("dig", "Dig out first: look for drains and cables, nobody under the machine or in the trench while it can move.", "It takes more off the pull than a bigger tractor adds.", PlanningSources.DigFirst);
        if (stuck.Belly is not null) Add("belly", "Free or vent the belly.", "A sealed belly drags and cannot be lifted by wheels that have nothing to stand on.", GeneralSources.Trade);
        if (plan.Rig.Casualty.Kind == AttachmentKind.FrontAxle) Add("axle-straps", "Pad the axle straps from edges, close inboard of the wheels, clear of hoses and shafts.", "An edge cuts a loaded strap at a fraction of its strength.", GeneralSources.Trade);
        if (plan.Rig.Bridle is not null) Add("bridle", "See that the bridle runs free in the eye with no steel there.", "A parted recovery strap then carries none.", GeneralSources.Trade);
        if (plan.Rig.Parts.Any(p => p is Shackle)) Add("shackles", "Pins seated and secured, not torqued; look at every one.", "Mud hides a pin that is not home.", GeneralSources.Trade);
        Add("line-taut", "Put a little tension on, stop, and look along the line from the side.", "It will move as the machine rises.", GeneralSources.Trade);
        Add("stuck-machine", stuck.DrivesItsWheels ? "Park brake off; wheels driven gently with the pull, in contact with the puller." : "Park brake off, transmission in neutral; chock nothing in the way of the pull.", stuck.Wheels == WheelMotion.Turning ? "The demand counts on wheels that turn." : "Locked wheels can double what it takes.", GeneralSources.Trade);
        Add("hitch", "Hitch to the drawbar alone.", "Above it the tractor rears over backwards.", PlanningSources.HitchLow);
        if (plan.Site.MassOnLine) Add("mass", "The mass on the line is worth having and earns no number here.", "No measured effect is published.", GeneralSources.Trade);
        else Add("mass", "Lay a mass over the line near each end.", "Often asked for; no measured effect is published, so it changes no number here.", GeneralSources.Trade);
        Add("people", "Everybody who is not needed well away before tension comes on, nobody at either end, both machines parked before anyone walks between them.", "Drivers and bystanders on the line are the ones who die.", PlanningSources.PeopleBetween);
        Add("command", "One person in command, radio contact, one word that stops everything.", "Two people deciding is nobody deciding.", GeneralSources.Trade);
        Add("creep", "Lowest gear, power in steps, no run-up, no jerk.", "A jerk multiplies the load; a second pull on the same strap is harder than the first.", GeneralSources.Trade);
        Add("runs-on", "Agree what stops the freed machine.", stuck.Grade.Radians < 0 ? "It comes out downhill towards the puller." : "It can run on towards the puller.", GeneralSources.Trade);
        Add("afterwards", "Look at straps and attachments afterwards; take out of service what was overloaded.", "A strap loaded once near its limit is a weaker strap.", GeneralSources.Trade);
        return list.AsReadOnly();

        void Add(string key, string action, string why, Source source) => list.Add(new Precaution(key, action, why, source));
    }
}
