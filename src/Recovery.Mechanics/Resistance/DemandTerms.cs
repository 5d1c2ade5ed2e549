namespace Recovery.Mechanics.Resistance;

/// <summary>The terms of one sum, N.</summary>
internal struct DemandTerms
{
    /// <summary>Rolling of buried wheels that turn.</summary>
    public double Roll;

    /// <summary>Base shear of locked wheels.</summary>
    public double Base;

    /// <summary>Adhesion on the side walls of buried wheels.</summary>
    public double Side;

    /// <summary>Soil ahead of buried wheels.</summary>
    public double Face;

    /// <summary>Suction behind buried wheels.</summary>
    public double Suction;

    /// <summary>Wheels that count the wheel model: rolling ones, and buried ones whose own terms come to less.</summary>
    public double Model;

    /// <summary>Drag of the belly.</summary>
    public double Belly;

    /// <summary>Share of the developed uplift that goes into the pull.</summary>
    public double Lift;

    /// <summary>Climb out of the hole.</summary>
    public double Climb;

    /// <summary>Grade.</summary>
    public double Grade;

    /// <summary>Weight that the belly carries.</summary>
    public double BellyLoad;

    /// <summary>Uplift that a sealed belly could hold.</summary>
    public double UpliftHeld;

    /// <summary>Uplift that develops, as far as the wheels can bear it.</summary>
    public double UpliftDeveloped;

    /// <summary>Axle that limits the uplift; -1 where none does.</summary>
    public int LimitingAxle;

    /// <summary>Floor strength the sum was made with, Pa.</summary>
    public double Floor;

    /// <summary>Axles whose buried wheels count the wheel model, one bit each.</summary>
    public int ModelGoverns;

    /// <summary>Whether the sum was made with braked wheels locked.</summary>
    public bool Locked;

    /// <summary>Whether central stands in for a bound whose own sum would cross it.</summary>
    public bool StandsIn;

    /// <summary>The sum.</summary>
    public readonly double Total => Roll + Base + Side + Face + Suction + Model + Belly + Lift + Climb + Grade;
}
