using System;
using System.Globalization;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Planning;

/// <summary>A 64-bit fingerprint (FNV-1a) over the compiled numbers of a plan, bit by bit, and over its names and declarations.</summary>
internal static class PlanFingerprint
{
    private const ulong Prime = 1099511628211UL;

    public static string Of(RecoveryPlan plan)
    {
        var hash = new Hash { Value = 14695981039346656037UL };
        var c = plan.Compiled;
        Add(ref hash, c.Stuck);
        if (c.StuckOnStraightFrame is { } straight) Add(ref hash, straight);
        Add(ref hash, c.Tower);
        var i = c.LineInput;
        foreach (var value in (double[])[c.Tension, i.Mass, i.Soft, i.Stiff, i.BeddedFactor, i.GearSpeed, i.Slack, i.Approach, i.Rise, i.CarelessSlack, i.CarelessSpeed, i.SecondPull ? 1 : 0, i.GearRuleBroken ? 1 : 0, i.ClutchMayDrop ? 1 : 0]) hash.Add(value);
        foreach (var place in c.Places)
        {
            foreach (var value in (double[])[place.Part, (int)place.Kind, place.Strength, place.Share, place.Rated, place.Full, place.Floor, place.PeakLimit]) hash.Add(value);
        }

        var t = plan.Tower;
        foreach (var value in (double[])[t.Soil.ConeIndex.Pascals, t.Soil.WeakestRatingConeIndex.Pascals, t.Soil.RatingConeIndex.Pascals, t.FirmestConeIndex?.Pascals ?? -1, t.HardSurfaceInReach ? 1 : 0, t.HardSurfaceFriction?.DecimalFractions ?? -1, t.DownhillInReach.Radians, t.EnginePower is { } power ? (double)power.Watts : -1, t.Efficiency.DecimalFractions, t.PullSpeed.MetersPerSecond, t.HitchRating?.Newtons ?? -1, t.DrawbarCategory is { } category ? (int)category : -1, t.HitchVerticalRating?.Newtons ?? -1]) hash.Add(value);
        hash.Add(plan.ToString());
        hash.Add(plan.Policy.Name + plan.Rig.Casualty + plan.Rig.Drawbar + plan.Procedure.SecondPull + plan.Site);
        foreach (var point in (Rigging.AttachmentPoint[])[plan.Rig.Drawbar, plan.Rig.Casualty])
        {
            hash.Add(point.WorkingLoad?.Newtons ?? -1);
            hash.Add(point.Yield?.Newtons ?? -1);
            hash.Add(point.Position?.Meters ?? double.MaxValue);
            hash.Add(point.Height?.Meters ?? -1);
        }

        foreach (var part in plan.Rig.Parts) hash.Add(part + "|" + Seen(part));
        hash.Add(plan.Site.StuckMachineOccupied + "|" + plan.Site.MassOnLine + "|" + plan.Site.FreedMachineHeld + "|" + plan.Stuck.DrivesItsWheels);
        if (plan.Site.UnderMachine is { } way)
        {
            foreach (var value in (double[])[way.TailBehindAxle.Meters, way.Wheelbase.Meters, way.AnchorHeight.Meters, way.ApexHeight.Meters, way.BellyEndBehindAxle?.Meters ?? -1, way.StrapWidth.Meters, way.StrapThickness.Meters]) hash.Add(value);
            foreach (var part in way.Parts)
            {
                hash.Add(part.Name);
                hash.Add(part.BehindAxle.Meters);
                hash.Add(part.Height.Meters);
            }
        }

        if (plan.Site.GroundBetween is { } ground)
        {
            hash.Add(ground.DrawbarHeight.Meters);
            hash.Add(ground.Travel.Meters);
            foreach (var hump in ground.Obstacles)
            {
                hash.Add(hump.Name);
                hash.Add(hump.BehindAxle.Meters);
                hash.Add(hump.Height.Meters);
            }
        }

        AddTyres(ref hash, plan.Stuck.Machine);
        AddTyres(ref hash, plan.Tower.Machine);
        if (c.Team is { } team)
        {
            foreach (var value in (double[])[team.Sustained.LowNewtons, team.Sustained.CentralNewtons, team.Sustained.HighNewtons, team.Imposable.Newtons]) hash.Add(value);
            foreach (var member in team.Team.Members) hash.Add(member + "|" + (member.FrontRating?.Newtons ?? -1).ToString("R", CultureInfo.InvariantCulture));
        }

        if (c.Tackle is { } tackle)
        {
            foreach (var value in (double[])[tackle.Parts, tackle.AnchorHolds?.Newtons ?? -1, tackle.BlockRating?.Newtons ?? -1]) hash.Add(value);
        }

        foreach (var soil in (Soil[])[plan.Stuck.Soil, t.Soil])
        {
            if (soil.RemouldingTest is { } test) hash.Add(test + "|" + test.Uscs);
        }

        foreach (var check in plan.Checks) hash.Add(check.Name);
        return hash.Value.ToString("x16", CultureInfo.InvariantCulture);
    }

    /// <summary>What findings on tyres rest on and the compiled numbers do not show.</summary>
    private static void AddTyres(ref Hash hash, Machine machine)
    {
        foreach (var axle in machine.Axles)
        {
            hash.Add(axle.Tyre.Inflation.Pascals);
            hash.Add(axle.Tyre.LowestInflation?.Pascals ?? -1);
            hash.Add(axle.Tyre.HighestInflation?.Pascals ?? -1);
            hash.Add(axle.OneDualReversed ? 1 : 0);
        }
    }

    private static void Add(ref Hash hash, CompiledStuckMachine s)
    {
        var f = s.Flat;
        for (var i = 0; i < f.Count.Length; i++)
        {
            foreach (var value in (double[])[f.Count[i], f.Width[i], f.Diameter[i], f.Sinkage[i], f.NumericPerPascal[i], f.Load[i], f.UpliftShare[i], f.BellyTakes?[i] ?? -1, f.Driven[i] ? 1 : 0, f.Braked[i] ? 1 : 0]) hash.Add(value);
        }

        foreach (var value in (double[])[f.Weight, f.Grade, f.BellyLength, f.BellyWidth, f.BellyImmersion, f.UnitWeight, f.AdhesionFactor, f.Dug ? 1 : 0, f.SidesDug ? 1 : 0, (int)f.Face.Kind, f.Face.First, f.Face.Second]) hash.Add(value);
        var a = s.Assumptions;
        foreach (var value in (double[])[a.Strength.FloorLow, a.Strength.FloorCentral, a.Strength.FloorHigh, a.Strength.WallLow, a.Strength.WallCentral, a.Strength.WallHigh, a.IndexLow, a.IndexCentral, a.IndexHigh, a.ExitLow, a.ExitCentral, a.ExitHigh, a.MeetsLow, a.MeetsCentral, a.MeetsHigh, a.Turning is { } turning ? (turning ? 1 : 0) : -1, a.Vented ? 1 : 0, a.PartVented ? 1 : 0]) hash.Add(value);
    }

    private static void Add(ref Hash hash, CapabilityFlat f)
    {
        for (var i = 0; i < f.Load.Length; i++)
        {
            foreach (var value in (double[])[f.NumericTimesLoad[i], f.Load[i], f.LoadPerPull[i], f.Count[i], f.Driven[i] ? 1 : 0]) hash.Add(value);
        }

        foreach (var value in (double[])[f.GradeForce, f.Weight, f.NoseMoment, f.CentreHeight, f.LineHeight]) hash.Add(value);
        if (!double.IsInfinity(f.SideLimit)) hash.Add(f.SideLimit);
    }

    private static string Seen(Rigging.RigPart part) => part switch
    {
        Rigging.Strap s => s.Condition + "|" + s.Hitch,
        Rigging.Bridle b => b.Strap.Condition.ToString(),
        Rigging.Shackle s => s.Pin + "|" + s.Damaged,
        Rigging.Chain c => Text.Number(c.Length.Meters) + "|" + c.Hitch + "|" + c.Damaged,
        Rigging.WireRope w => Text.Number(w.Length.Meters) + "|" + w.Strength + "|" + w.NewAndCertified + "|" + w.Damaged,
        _ => string.Empty,
    };

    private struct Hash
    {
        public ulong Value;

        public void Add(double value)
        {
            var bits = BitConverter.DoubleToInt64Bits(value);
            for (var i = 0; i < 8; i++) Value = (Value ^ (byte)(bits >> (8 * i))) * Prime;
        }

        public void Add(string text)
        {
            foreach (var c in text) Value = (Value ^ c) * Prime;
            Value = (Value ^ 0x1f) * Prime;
        }
    }
}
