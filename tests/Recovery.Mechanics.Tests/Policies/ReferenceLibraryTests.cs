using System;
using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Recovery.Mechanics.Tests.Traction;
using Recovery.Mechanics.Traction;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Policies;

/// <summary>Cases recomputed apart from the library with numpy and SciPy (<c>benchmarks/reference/chain.py</c>): quadrature, root finding, minimisation, integration.</summary>
public class ReferenceLibraryTests
{
    [Theory]
    [CheckRows("reference", "brixius")]
    public void Brixius(CheckRow row)
    {
        var model = row.Word("constants") == "radial" ? BrixiusModel.Radial : BrixiusModel.Bias;
        var wheel = new WheelOnSoil(M(row.Si("b")), M(row.Si("d")), Frac(row.Si("dh")), Force.FromNewtons(row.Si("W")), Pressure.FromPascals(row.Si("CI")));
        var result = model.Evaluate(wheel, Frac(row.Si("s")));
        row.Matches(("Bn", result.Numeric), ("MRR", result.MotionResistanceRatio!.Value), ("GTR", result.GrossTractionRatio!.Value), ("NTR", result.NetTractionRatio!.Value));
    }

    [Theory]
    [CheckRows("reference", "axle-loads")]
    public void Axle_loads(CheckRow row)
    {
        var loads = Harvester(row.Word("suspension") == "linked" ? Suspension.Equalised : Suspension.StraightFrame).AxleLoads(Grade.FromPercent(row.Printed("grade")), PullDirection.Rearwards);
        row.Matches(("N1", loads.Newtons[0]), ("N2", loads.Newtons[1]), ("N3", loads.Newtons[2]));
    }

    [Theory]
    [CheckRows("reference", "whole-machine")]
    public void Whole_machine(CheckRow row)
    {
        var z = M(row.Si("z"));
        var as_found = StuckHarvester();
        var stuck = new StuckMachine(as_found.Machine, Soil.FromConeIndex(Pressure.FromPascals(row.Si("CI")), Frac(row.Si("RI"))) with { DeclaredUnitWeight = as_found.Soil.UnitWeight }, [z, z, z], PullDirection.Rearwards) { Grade = as_found.Grade, Belly = as_found.Belly };
        stuck = row.Word("state") switch
        {
            "unloaded" => stuck.Without("beet"),
            "dug" => stuck.Without("beet").Dug(Angle.FromRadians(Math.Atan(1.0 / 6))),
            "freed" => stuck.Without("beet").Dug(Angle.FromRadians(Math.Atan(1.0 / 6))).WithBellyFreed(),
            "vented" => stuck.Vented(),
            "turning" => stuck with { Wheels = WheelMotion.Turning },
            _ => stuck,
        };
        var demand = PullDemand.Estimate(stuck);
        row.Matches(("low", demand.Total.LowNewtons), ("central", demand.Total.CentralNewtons), ("high", demand.Total.HighNewtons), ("critical", demand.CriticalConeIndex!.Value.Pascals));
    }

    [Theory]
    [CheckRows("reference", "towing-machine")]
    public void Towing_machine(CheckRow row)
    {
        var flat = CapabilityFlat.From(TowingMachineTests.Tower(), 0);
        var constants = row.Word("constants") == "radial" ? BrixiusConstants.Radial : BrixiusConstants.Bias;
        row.Matches(("P", CapabilityKernel.Greatest(flat, flat.Load, 0, row.Si("CI"), row.Si("limit"), constants, out _, out var residual)));
        Assert.True(Math.Abs(residual) < 1e-3, "residual " + residual);
    }

    [Theory]
    [CheckRows("reference", "held-peak")]
    public void Held_peak(CheckRow row) => row.Matches(("F", TakeUpKernel.HeldPeak(row.Si("P"), row.Si("k"), row.Si("m"), row.Si("v"), row.Si("s"))));

    [Theory]
    [CheckRows("reference", "linear-line")]
    public void Linear_line(CheckRow row)
    {
        var line = new ElasticLine(M(row.Si("L")), Force.FromNewtons(row.Si("EA")), Force.FromNewtons(row.Si("EA")), LinearDensity.FromKilogramsPerMeter(row.Si("m")), LineMaterial.NylonWebbing.Source);
        row.Matches(("E", line.StoredEnergy(Force.FromNewtons(row.Si("F"))).Joules), ("v", line.RecoilSpeed(Force.FromNewtons(row.Si("F"))).MetersPerSecond));
    }

    [Theory]
    [CheckRows("reference", "running-bridle")]
    public void Running_bridle(CheckRow row)
    {
        var theta = BridleKernel.IncludedAngle(row.Si("w"), row.Si("L"), row.Si("lean"));
        row.Matches(("theta", theta), ("T_over_P", BridleKernel.LegShare(theta)));
    }

    [Theory]
    [CheckRows("reference", "eye-friction")]
    public void Eye_friction(CheckRow row) => row.Matches(("T_high_over_P", BridleKernel.LegShareHigh(row.Si("theta"), row.Si("mu"))));
}
