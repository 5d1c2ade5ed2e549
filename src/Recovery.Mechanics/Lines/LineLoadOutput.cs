namespace Recovery.Mechanics.Lines;

/// <summary>What the line-load kernel gives, N.</summary>
internal struct LineLoadOutput
{
    /// <summary>Steady load.</summary>
    public double Steady;

    /// <summary>Procedure peak, stiff end: for rig checks.</summary>
    public double Procedure;

    /// <summary>Procedure peak, soft end: for energy and stretch.</summary>
    public double ProcedureSoft;

    /// <summary>Careless peak, stiff end.</summary>
    public double Careless;

    /// <summary>Careless peak, soft end.</summary>
    public double CarelessSoft;

    /// <summary>Procedure peak of a second pull on the bedded-in line.</summary>
    public double SecondProcedure;

    /// <summary>Careless peak of a second pull.</summary>
    public double SecondCareless;

    /// <summary>Stiffness of the stiff end that the procedure used, N/m.</summary>
    public double StiffUsed;

    /// <summary>Stretch at the soft end with its own procedure peak, m.</summary>
    public double StretchSoft;

    /// <summary>Stretch at the stiff end with its own procedure peak, m.</summary>
    public double StretchStiff;

    /// <summary>Energy at the soft end with its own procedure peak, J.</summary>
    public double EnergySoft;

    /// <summary>Energy at the stiff end with its own procedure peak, J.</summary>
    public double EnergyStiff;

    /// <summary>Whether a gear is declared whose rule is not claimed on the stiffness that the procedure used.</summary>
    public bool GearRefused;

    /// <summary>Rule that set the procedure.</summary>
    public LineLoadRule Rule;
}
