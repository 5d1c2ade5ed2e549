namespace Recovery.Mechanics.Resistance;

/// <summary>Whether air or water reaches the back of buried wheels and the belly.</summary>
public enum Seal
{
    /// <summary>Not declared: the low is worked vented, central and high sealed.</summary>
    Undeclared,

    /// <summary>Mud closes round wheels and belly.</summary>
    Sealed,

    /// <summary>Air or water has been let in (dug, jetted, rocked loose).</summary>
    Vented,

    /// <summary>Air or water reaches some of the wheels or part of the belly, not known where: half of the suction at central, no credit at the high.</summary>
    PartVented,
}
