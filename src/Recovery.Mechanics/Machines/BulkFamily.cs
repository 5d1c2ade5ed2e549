namespace Recovery.Mechanics.Machines;

/// <summary>Family of a harvested good.</summary>
public enum BulkFamily
{
    /// <summary>Cereals and maize.</summary>
    Grain,

    /// <summary>Peas and beans, soybean among them.</summary>
    Pulse,

    /// <summary>Rape, flax, sunflower.</summary>
    Oilseed,

    /// <summary>Sugar beet.</summary>
    Beet,

    /// <summary>Potatoes.</summary>
    Potato,

    /// <summary>Chopped forage and silage maize.</summary>
    Forage,

    /// <summary>Anything else, given by the caller.</summary>
    Other,
}
