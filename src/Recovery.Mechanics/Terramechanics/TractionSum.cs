using System;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Net traction of many wheels at one common slip in the Brixius form: NT(s) = A (1 - e^(-k s)) - B s - C.</summary>
/// <remarks>A sums 0.88 W (1 - e^(-0.1 B_n)) and B sums 0.5 W/sqrt(B_n) over driven wheels; C sums the soft-soil term of driven wheels and the whole towed resistance of undriven ones. The rolling share of a driven wheel stands in gross traction and in resistance and cancels.</remarks>
internal struct TractionSum
{
    /// <summary>Sum of the slip-bound gross traction, N.</summary>
    public double A;

    /// <summary>Sum of the slip-bound resistance, N.</summary>
    public double B;

    /// <summary>Sum of the resistance that does not depend on slip, N.</summary>
    public double C;

    /// <summary>Adds the wheels of one axle.</summary>
    public void Add(double numeric, double loadNewtons, bool driven, in BrixiusConstants constants)
    {
        if (!(loadNewtons > 0)) return;
        if (driven)
        {
            A += BrixiusKernel.GrossLimit * loadNewtons * (1 - Math.Exp(-BrixiusKernel.NumericDecay * numeric));
            B += BrixiusKernel.SlipResistance * loadNewtons / Math.Sqrt(numeric);
            C += constants.Soft / numeric * loadNewtons;
        }
        else
        {
            C += BrixiusKernel.MotionResistanceRatio(numeric, 0, constants) * loadNewtons;
        }
    }

    /// <summary>Net traction at a slip.</summary>
    public readonly double At(double slip, in BrixiusConstants constants) => (A * (1 - Math.Exp(-constants.SlipDecay * slip))) - (B * slip) - C;

    /// <summary>Slip of the greatest net traction between 0 and a limit: k A e^(-k s) = B.</summary>
    public readonly double BestSlip(double limit, in BrixiusConstants constants)
    {
        if (!(A > 0)) return 0;
        var slip = Math.Log(constants.SlipDecay * A / B) / constants.SlipDecay;
        return slip < 0 ? 0 : slip > limit ? limit : slip;
    }
}
