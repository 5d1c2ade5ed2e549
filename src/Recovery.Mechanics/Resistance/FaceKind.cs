namespace Recovery.Mechanics.Resistance;

/// <summary>Which law gives the resistance of the soil ahead of a buried wheel.</summary>
internal enum FaceKind
{
    /// <summary>Rankine, phi = 0: b (gamma z^2/2 + 2 s_u z).</summary>
    Rankine,

    /// <summary>Rankine with cohesion and friction: First K_p, Second sqrt(K_p).</summary>
    RankineFriction,

    /// <summary>Offshore code, sliding: First K_ru.</summary>
    Sliding,

    /// <summary>Soft-clay p-y, integrated: First J.</summary>
    SoftClay,

    /// <summary>Passive resistance of a pipe after Verley and Lund.</summary>
    VerleyLund,

    /// <summary>Lateral breakout of a pipe: First, Second factors of depth and of soil weight.</summary>
    Lateral,

    /// <summary>Earth-moving equation, phi = 0: First K_pc.</summary>
    Reece,

    /// <summary>Bulldozing: First K_pc, Second K_pg.</summary>
    Bulldozing,
}
