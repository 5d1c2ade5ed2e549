using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Lines;

/// <summary>Sources of the room: the line under load.</summary>
internal static class LinesSources
{
    /// <summary>Energy of a linear spring.</summary>
    public static readonly Source Spring = new("linear-spring", "Work of a linear spring; engineering strain on the unstretched length", Standing.Derived);

    /// <summary>Release wave.</summary>
    public static readonly Source ReleaseWave = new("release-wave", "One-dimensional release wave in unstretched coordinates, exact for a linear line, no loss", Standing.Derived);

    /// <summary>Bound on hardware at the end of lines.</summary>
    public static readonly Source HardwareBound = new("hardware-bound", "Bound min(F0/Z, 1.02 sqrt(2E/(M + m_L/3))) on the speed of hardware at the end of a chain of lines, from the exact solution and lumped-line runs", Standing.Derived);

    /// <summary>Held anchor.</summary>
    public static readonly Source HeldAnchor = new("held-anchor", "Energy balance of a take-up on a held anchor, F = P + sqrt(P^2 + 2kPs + k m v^2)", Standing.Derived);

    /// <summary>Locked gear.</summary>
    public static readonly Source LockedGear = new("locked-gear", "Take-up in a locked gear: the rims never exceed the theoretical speed, so F is at most P + v_t sqrt(k m)", Standing.Derived);

    /// <summary>Raised throttle.</summary>
    public static readonly Source Throttle = new("raised-throttle", "Envelope of the response to a force raised evenly, P min(2, 1 + T/(pi t_r)), longest natural period", Standing.Derived);

    /// <summary>Careless load.</summary>
    public static readonly Source Careless = new("careless-load", "Careless load: 0.5 m of slack and 5 km/h on a held anchor (judgement)", Standing.Judgement);

    /// <summary>Stiffness of nylon webbing on first loading.</summary>
    public static readonly Source NylonWebbing = new("nylon-webbing-stiffness", "Nylon webbing: EA/MBS 2 on first loading (8 to 10 % at a fifth of breaking strength, reported) to 5 (strap that breaks at 20 %); the band is a choice", Standing.FromMemory);

    /// <summary>Stiffness of polyester webbing.</summary>
    public static readonly Source PolyesterWebbing = new("polyester-webbing-stiffness", "Polyester webbing: EA/MBS 6 to 8", Standing.FromMemory);

    /// <summary>Stiffness of bedded HMPE rope.</summary>
    public static readonly Source HmpeRope = new("hmpe-rope-stiffness", "HMPE rope, bedded: EA/MBS 50 to 85, published mooring-line fits, basis of OMAE2025-156384", Standing.Secondary);

    /// <summary>Second pull.</summary>
    public static readonly Source SecondPull = new("bedded-in", "A rope cycled to half of break takes about half of its first energy, so about twice the stiffness: Turner and van de Griend, History and Science of Knots, p. 185", Standing.Secondary);

    /// <summary>Distance rule.</summary>
    public static readonly Source Distance = new("distance-rules", "Largest published rule, 2.5 x the line, to the side: NSW Farmers safety programme, reported 2022. Others: 1.5 x (copies of the Australian strap instructions), 2 x the paid-out line and one cable length (US Army recovery manuals)", Standing.Secondary);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } = [Spring, ReleaseWave, HardwareBound, HeldAnchor, LockedGear, Throttle, Careless, NylonWebbing, PolyesterWebbing, HmpeRope, SecondPull, Distance];
}
