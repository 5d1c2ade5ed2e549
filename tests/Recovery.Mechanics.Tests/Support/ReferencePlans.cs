using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;
using UnitsNet;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Support;

/// <summary>Whole plans for stories; invented numbers.</summary>
internal static class ReferencePlans
{
    /// <summary>Unloaded, dug, vented, belly free, wheels turning: a light case that a strong tractor moves with strong gear.</summary>
    public static RecoveryPlan Gentle()
    {
        var stuck = ReferenceMachines.StuckHarvester().Without("beet").Dug(Angle.FromDegrees(6), sides: true).WithBellyFreed().Vented().DrivingItsWheels() with { Grade = Grade.Level, ExitSlope = Angle.FromDegrees(4), MeetsUncutSoil = [false, false, false] };
        return new RecoveryPlan(stuck, Tractor(30), StrongRig(), DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(1)) with { SecondPull = false }, Site());
    }

    public static RecoveryPlan AsFound() => new(ReferenceMachines.StuckHarvester(), Tractor(18), ReferenceRigs.Worked(), DesignFactorPolicy.SlowPull, PullProcedure.DrawnTautInGear(Speed.FromKilometersPerHour(2)), Site());

    public static TowingMachine Tractor(double tonnes, double hitchHeight = 0.5) => new(
        new Machine("tractor", [new Axle("front axle", M(0), 4, Tyre(0.71, 1.80, 0.5, 0.22), true, M(2)), new Axle("rear axle", M(-3.3), 4, Tyre(0.80, 2.15, 0.6, 0.22), true, M(2))], [new NamedLoad("tractor", Mass.FromTonnes(tonnes), M(-1.6), M(1.0))]),
        Soil.FromConeIndex(KPa(1500), Frac(0.9)), M(-4.2), M(hitchHeight))
    { EnginePower = Power.FromKilowatts(400) };

    public static Rig StrongRig() => new Rig(
        new AttachmentPoint("drawbar", AttachmentKind.Drawbar, true) { WorkingLoad = KN(600), Yield = KN(900) },
        [
            new Strap("recovery strap", Fibre.Nylon, Rating.BreakingStrengthTonnes(300), M(15)) { MakersBightShare = Frac(0.8) },
            Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(20)) { MakersBightShare = Frac(0.8) }, M(1.9)),
            new Shackle("shackle", Rating.WorkingLoadLimitTonnes(55), Mass.FromKilograms(30), KN(3000), KN(1100)),
            new Strap("axle strap", Fibre.Polyester, Rating.BreakingStrengthTonnes(300), M(2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(130) },
        ],
        new AttachmentPoint("front axle", AttachmentKind.FrontAxle, true) { WorkingLoad = KN(500), Yield = KN(800) }).WithWear(1);

    public static RecoverySite Site() => new()
    {
        PeopleInLine = false,
        UnderMachine = new UnderMachineLine(M(8.5), M(4.9), M(0.4), M(0.3), [new UndersidePart("rear axle", M(6.8), M(1.2))]) { BellyEndBehindAxle = M(4.5) },
    };
}
