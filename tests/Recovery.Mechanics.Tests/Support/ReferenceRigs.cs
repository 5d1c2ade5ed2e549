using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Rigging;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>The rig of the worked example: 60 t nylon strap, 60 t polyester bridle, 12 t shackles, 40 t axle straps; tractor 18 t, 116 kN, gear of 2 km/h.</summary>
internal static class ReferenceRigs
{
    public static Rig Worked(double strapTonnes = 60, double axleStrapTonnes = 40, Angle? choke = null, bool chokeKnown = true) => new Rig(
        new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true),
        [
            new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(strapTonnes), M(9)) { Condition = StrapCondition.Wet },
            Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), M(4)) { Measured = BridleLine }, M(1.3)),
            new Shackle("shackle", Rating.WorkingLoadLimitTonnes(12), Mass.FromKilograms(8), Force.FromKilonewtons(60 * 9.80665), Force.FromKilonewtons(24 * 9.80665)),
            new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(axleStrapTonnes), M(1.2)) { Choked = true, AngleOfChoke = chokeKnown ? choke ?? Angle.FromDegrees(100) : null },
        ],
        new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true)).WithWear(1);

    /// <summary>Polyester webbing at EA/MBS 7, as in the worked example.</summary>
    private static ElasticLine BridleLine => new(M(4), KN(7 * 588.399), KN(7 * 588.399), LinearDensity.FromKilogramsPerMeter(1.29), LineMaterial.PolyesterWebbing.Source);

    public static LineLoads Loads(Rig rig, bool? secondPull = null, double gear = 2) =>
        LineLoads.Evaluate(KN(116), Mass.FromTonnes(18), rig.Line!, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(gear)) with { SecondPull = secondPull });
}
