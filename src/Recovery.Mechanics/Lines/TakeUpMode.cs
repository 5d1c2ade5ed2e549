using System;

namespace Recovery.Mechanics.Lines;

/// <summary>Equations of one mode of a take-up: line taut or not, casualty stuck or sliding, drive in one phase. Exact solution where that is linear, right-hand side for the Runge-Kutta pair elsewhere.</summary>
/// <remarks>State: A, B position and speed of the puller; C, D of the casualty; E force of the tyres; F work put in; G heat. Stretch is A - C.</remarks>
internal struct TakeUpMode : IOdeRightHandSide
{
    // Five-point Gauss-Legendre rule on 0 to 1: exact for polynomials of degree nine (arithmetic).
    private static readonly double[] GaussNodes = [0.04691007703066802, 0.23076534494715845, 0.5, 0.7692346550528415, 0.9530899229693320];
    private static readonly double[] GaussWeights = [0.11846344252809454, 0.23931433524968324, 0.28444444444444444, 0.23931433524968324, 0.11846344252809454];

    public CurveShape Line;
    public TowDriveKind Drive;
    public double Pull;
    public double Rise;
    public double GearSpeed;
    public double SlipExponent;
    public double TyreStiffness;
    public double Damping;

    /// <summary>Reciprocal mass of the puller; zero where its speed is given.</summary>
    public double Puller;

    /// <summary>Reciprocal mass of the casualty; zero while it is stuck.</summary>
    public double Casualty;

    /// <summary>Resistance with its sign, zero while stuck.</summary>
    public double Resistance;

    /// <summary>Way in which wheels on elastic tyres slide at the full pull: 1 driving, -1 braking, 0 not.</summary>
    public int TyreSlides;

    /// <summary>Whether the line acts.</summary>
    public bool Taut;

    /// <summary>Whether the line also pushes.</summary>
    public bool Bilateral;

    /// <summary>Whether sines, cosines and powers solve this mode.</summary>
    public readonly bool IsExact => (Drive is TowDriveKind.Constant or TowDriveKind.Raised or TowDriveKind.Speed) && (!Taut || (Line.IsLinear && Damping == 0) || IsDrawn);

    /// <summary>Whether a line without a dashpot is drawn at a given speed from a casualty that does not move: any curve is exact then.</summary>
    private readonly bool IsDrawn => Drive == TowDriveKind.Speed && Casualty == 0 && Damping == 0;

    /// <summary>Force in the line.</summary>
    public readonly double Tension(in OdeState y)
    {
        if (!Taut) return 0;
        var x = y.A - y.C;
        if (Bilateral) return Line.LinearStiffness * x;
        var f = CurveKernel.Force(Line, x);
        return Damping == 0 ? f : f + (Damping * (y.B - y.D));
    }

    /// <summary>Rate of the force in the line; without a dashpot only its sign is used, that of the closing speed.</summary>
    public readonly double Rate(in OdeState y, double t)
    {
        if (Damping == 0 || !Taut) return y.B - y.D;
        var f = Tension(y);
        return (CurveKernel.Slope(Line, y.A - y.C) * (y.B - y.D)) + (Damping * ((Puller * (Force(t, y) - f)) - (Casualty * (f - Resistance))));
    }

    /// <summary>Contact force of the puller's wheels.</summary>
    public readonly double Force(double t, in OdeState y) => Drive switch
    {
        TowDriveKind.Constant => Pull,
        TowDriveKind.Raised => t >= Rise ? Pull : Pull * t / Rise,
        TowDriveKind.LockedGear => SlipForce(y.B),
        TowDriveKind.LockedGearOnTyres => y.E,
        _ => Tension(y),
    };

    /// <summary>T = P (1 - e^(-n i))/(1 - e^(-n)), i = 1 - v/v_t between 0 and 1.</summary>
    public readonly double SlipForce(double speed)
    {
        var slip = 1 - (speed / GearSpeed);
        return slip <= 0 ? 0 : slip >= 1 ? Pull : Pull * (1 - Math.Exp(-SlipExponent * slip)) / (1 - Math.Exp(-SlipExponent));
    }

    /// <inheritdoc/>
    public readonly void Evaluate(double t, in OdeState y, out OdeState dy)
    {
        double f = Tension(y), drive = Force(t, y), closing = y.B - y.D;
        dy = new OdeState
        {
            A = y.B,
            B = Puller * (drive - f),
            C = y.D,
            D = Casualty * (f - Resistance),
            F = drive * y.B,
            G = (Resistance * y.D) + (Taut ? Damping * closing * closing : 0),
        };
        if (Drive != TowDriveKind.LockedGearOnTyres || TyreSlides != 0) return;
        // Slip of the rim over the ground that the force needs, mirrored for braking; the rest winds the tyre.
        var share = Math.Min(1, Math.Abs(y.E) / Pull) * (1 - Math.Exp(-SlipExponent));
        var slipSpeed = -Math.Log(1 - share) / SlipExponent * GearSpeed * Math.Sign(y.E);
        dy.E = TyreStiffness * (Rim(t) - y.B - slipSpeed);
    }

    /// <summary>Speed of the rims where the tyres are a spring.</summary>
    public readonly double Rim(double t) => t >= Rise ? GearSpeed : GearSpeed * t / Rise;

    /// <summary>Exact state after h.</summary>
    public readonly void Propagate(double t, in OdeState y, double h, out OdeState z)
    {
        z = y;
        Move(t, y, h, ref z);
        z.G += Resistance * (z.C - y.C);
        if (Drive == TowDriveKind.Constant)
        {
            z.F += Pull * (z.A - y.A);
            return;
        }

        if (Taut && IsDrawn && !Bilateral)
        {
            z.F += CurveKernel.Energy(Line, z.A - z.C) - CurveKernel.Energy(Line, y.A - y.C);
            return;
        }

        OdeState at = default;
        double work = 0;
        for (var i = 0; i < GaussNodes.Length; i++)
        {
            Move(t, y, h * GaussNodes[i], ref at);
            work += GaussWeights[i] * Force(t + (h * GaussNodes[i]), at) * at.B;
        }

        z.F += h * work;
    }

    private readonly void Move(double t, in OdeState y, double h, ref OdeState z)
    {
        double d0 = Drive == TowDriveKind.Speed ? 0 : Force(t, y), d1 = Drive == TowDriveKind.Raised && t < Rise ? Pull / Rise : 0;
        var both = Puller + Casualty;
        if (!Taut || both == 0)
        {
            z.A = y.A + (h * (y.B + (h * Puller * ((d0 / 2) + (d1 * h / 6)))));
            z.B = y.B + (h * Puller * (d0 + (d1 * h / 2)));
            z.C = y.C + (h * (y.D - (h * Casualty * Resistance / 2)));
            z.D = y.D - (h * Casualty * Resistance);
            return;
        }

        // x = A - C: x'' = c - w^2 x with c linear in time; q = wC A + wP C moves as a power of time.
        var k = Line.LinearStiffness;
        double w2 = k * both, w = Math.Sqrt(w2), c0 = ((Puller * d0) + (Casualty * Resistance)) / w2, c1 = Puller * d1 / w2;
        double a = y.A - y.C - c0, b = (y.B - y.D - c1) / w, sin = Math.Sin(w * h), cos = Math.Cos(w * h);
        double x = c0 + (c1 * h) + (a * cos) + (b * sin), u = c1 + (w * ((b * cos) - (a * sin)));
        double product = Puller * Casualty, q0 = (Casualty * y.A) + (Puller * y.C), p0 = (Casualty * y.B) + (Puller * y.D);
        var q = q0 + (h * (p0 + (h * product * (((d0 - Resistance) / 2) + (d1 * h / 6)))));
        var p = p0 + (h * product * (d0 - Resistance + (d1 * h / 2)));
        z.A = (q + (Puller * x)) / both;
        z.B = (p + (Puller * u)) / both;
        z.C = (q - (Casualty * x)) / both;
        z.D = (p - (Casualty * u)) / both;
    }
}
