using System;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Resistance;

/// <summary>Cases recomputed apart from the library with numpy and SciPy (<c>benchmarks/reference/resistance.py</c>).</summary>
public class ResistanceReferenceTests
{
    [Theory]
    [CheckRows("resistance-scipy", "faces")]
    public void Faces(CheckRow row)
    {
        double Of(FaceMethod method) => method.Evaluate(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Pressure.FromPascals(row.Si("s_u")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma"))).Force.Newtons;
        var local = Angle.FromRadians(Math.Atan(2.0 / 3 * Math.Tan(Math.PI / 9)));
        row.Matches(
            ("rankine", Of(FaceMethod.Rankine)), ("sliding", Of(FaceMethod.ApiSliding)), ("full-contact", Of(FaceMethod.ApiSlidingFullContact)),
            ("matlock-upper", Of(FaceMethod.MatlockUpper)), ("matlock-lower", Of(FaceMethod.MatlockLower)), ("verley-lund", Of(FaceMethod.VerleyLund)),
            ("lateral", Of(FaceMethod.DnvLateral)), ("lateral-laboratory", Of(FaceMethod.DnvLateralLaboratory)), ("reece", Of(FaceMethod.ReeceHalfRough)),
            ("friction-20", Of(FaceMethod.RankineFrictional(Angle.FromDegrees(20)))), ("local-shear", Of(FaceMethod.BulldozingLocalShear(local, 11.8, 2.9))));
    }

    [Theory]
    [CheckRows("resistance-scipy", "immersed")]
    public void Immersed_wheel(CheckRow row)
    {
        var (b, d, z, s, gamma, load) = (M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Pressure.FromPascals(row.Si("s_u")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")), Force.FromNewtons(row.Si("W")));
        var wheel = ImmersedWheelModel.Instance.Evaluate(b, d, z, s, gamma);
        var lateral = LateralBreakoutModel.Standard.Evaluate(b, d, z, load, s, gamma);
        row.Matches(
            ("A", wheel.PenetratedArea.SquareMeters), ("Q", wheel.Bearing.Newtons), ("s_needed", ImmersedWheelModel.Instance.StrengthThatBears(b, d, z, wheel.Bearing, gamma)!.Value.Pascals),
            ("P", lateral.Breakout.Newtons), ("P_res", lateral.Residual!.Value.Newtons));
    }

    [Theory]
    [CheckRows("resistance-scipy", "breakout")]
    public void Breakout(CheckRow row)
    {
        var (b, l, d, s, gamma) = (M(row.Si("B")), M(row.Si("L")), M(row.Si("D")), Pressure.FromPascals(row.Si("s_u")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        var belly = SuctionAllowanceModel.Instance.UnderBelly(new Belly(l, b, M(Math.Min(1.5, d.Meters))), s, gamma, Seal.Sealed).Force;
        row.MatchesOne("skempton", ReverseBearingModel.Skempton.Evaluate(b, l, d, s, gamma).Uplift.Newtons);
        row.MatchesOne("api", ReverseBearingModel.Api.Evaluate(b, l, d, s, gamma).Uplift.Newtons);
        row.MatchesOne("lee", LeeBreakoutModel.Instance.Evaluate(b, l, d, s).Force.CentralNewtons);
        row.MatchesOne("plate", PlateBreakoutModel.Instance.Evaluate(b, l, d, s).Force.CentralNewtons);
        row.MatchesOne("belly_half", belly.CentralNewtons);
        row.MatchesOne("belly_full", belly.HighNewtons);
    }

    [Theory]
    [CheckRows("resistance-scipy", "breakout-time")]
    public void Breakout_with_time(CheckRow row) => row.Matches(
        ("muga", MugaBreakoutModel.Instance.Evaluate(Force.FromNewtons(row.Si("W_b")), Duration.FromSeconds(row.Si("t"))).Force.CentralNewtons),
        ("liu", LiuBreakoutModel.Instance.Evaluate(Duration.FromSeconds(row.Si("t")), Duration.FromSeconds(row.Si("T_in"))).Ratio));

    /// <summary>The printed time factor 0.848 against the root of the series, to its last figure.</summary>
    [Theory]
    [CheckRows("resistance-scipy", "dissipation")]
    public void Dissipation(CheckRow row) => row.Matches(("t90", SuctionDissipationModel.Instance.Evaluate(M(row.Si("H")), row.Printed("c_v")).Time90.Seconds));

    [Theory]
    [CheckRows("resistance-scipy", "depth-rule")]
    public void Depth_rule(CheckRow row)
    {
        var weight = Force.FromNewtons(row.Si("W"));
        var machine = new Machine("two axles", [new Axle("first", M(0), 2, Tyre(0.6, row.Si("d1"), 0.5, 0.2), true, M(2)), new Axle("second", M(-4), 2, Tyre(0.6, row.Si("d2"), 0.4, 0.2), true, M(2))], [new NamedLoad("all", Mass.FromKilograms(weight.Newtons / 9.80665), M(-2), M(1.5))]);
        var found = DepthRule.Classify(new StuckMachine(machine, StuckHarvester().Soil, [M(row.Si("z1")), M(row.Si("z2"))], PullDirection.Rearwards).WithFenderHeight(M(row.Si("fender"))));
        var estimate = DepthRule.Resistance(found, weight);
        double Left(bool against, bool tracks) => DepthRule.Reduce(estimate, against, tracks, tracks).Reduced.Newtons;
        row.Matches(("k", DepthRule.Factor(found)), ("R", estimate.Newtons), ("direction", Left(true, false)), ("tracks", Left(false, true)), ("both", Left(true, true)), ("lighter", DepthRule.Lightening(found, Mass.FromKilograms(row.Si("m"))).Newtons));
    }

    [Theory]
    [CheckRows("resistance-scipy", "base-shear")]
    public void Base_shear(CheckRow row)
    {
        var r = BaseShearModel.Instance.Evaluate(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), M(row.Si("delta")), Pressure.FromPascals(row.Si("s_f")));
        row.Matches(("c", r.ContactLength.Meters), ("R", r.Force.Newtons));
    }

    [Theory]
    [CheckRows("resistance-scipy", "floor-wheel")]
    public void Floor_under_a_wheel(CheckRow row) => row.Matches(("s_b", FloorBoundModel.Instance.OneWheel(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Force.FromNewtons(row.Si("W")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")), row.Si("N_c")).Strength.Pascals));

    [Theory]
    [CheckRows("resistance-scipy", "underbody")]
    public void Underbody(CheckRow row)
    {
        var r = UnderbodyModel.Instance.Evaluate(new Belly(M(row.Si("L")), M(row.Si("w")), M(row.Si("z"))), Pressure.FromPascals(row.Si("s_f")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")), Frac(row.Si("alpha")));
        row.Matches(("adhesion", r.Adhesion.Newtons), ("front", r.Front.Newtons), ("total", r.Total.Newtons));
    }

    [Theory]
    [CheckRows("resistance-scipy", "rut-exit")]
    public void Rut_exit(CheckRow row)
    {
        var r = RutExitModel.Instance.Leave(M(row.Si("b")), M(row.Si("d")), M(row.Si("z")), Force.FromNewtons(row.Si("W")), Pressure.FromPascals(row.Si("s_w")), SpecificWeight.FromNewtonsPerCubicMeter(row.Si("gamma")));
        row.Matches(("face", r.SoilFailure.Newtons), ("step", r.Step!.Value.Newtons), ("counts", r.Counts.Newtons), ("spoil", RutExitModel.Instance.Spoil(M(row.Si("b")), M(row.Si("z")), Angle.FromRadians(Math.Atan(1.0 / 6))).CubicMeters));
    }
}
