using System;
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
}
