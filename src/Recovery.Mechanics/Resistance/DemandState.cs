using System;

namespace Recovery.Mechanics.Resistance;

/// <summary>One state in which the demand is summed: strengths, shares and what the wheels do.</summary>
internal struct DemandState
{
    private double _exit;

    /// <summary>Undrained strength of uncut soil, Pa.</summary>
    public double Wall;

    /// <summary>Undrained strength under wheels and belly, Pa.</summary>
    public double Floor;

    /// <summary>Cone index fed to the wheel model, Pa.</summary>
    public double Index;

    /// <summary>Rolling ratio of a buried wheel that turns.</summary>
    public double Rho;

    /// <summary>Whether braked wheels are locked.</summary>
    public bool Locked;

    /// <summary>Whether rear faces and belly are sealed.</summary>
    public bool Sealed;

    /// <summary>Share of the suction behind wheels that part venting takes away.</summary>
    public double VentedShare;

    /// <summary>Share of the uplift of a sealed belly.</summary>
    public double Uplift;

    /// <summary>Slope on which the machine leaves the hole, radians; its sine is taken once, because a bound sums many states on one slope.</summary>
    public double Exit
    {
        readonly get => _exit;
        set => (_exit, ExitSine) = (value, Math.Sin(value));
    }

    /// <summary>Sine of the slope on which the machine leaves the hole.</summary>
    public double ExitSine { readonly get; private set; }

    /// <summary>Which axles meet uncut soil, one bit each.</summary>
    public int Meets;
}
