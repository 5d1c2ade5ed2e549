using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Resistance;

/// <summary>Face laws as text for worked steps.</summary>
internal static class FaceText
{
    public static string Expression(in FaceLaw law) => law.Kind switch
    {
        FaceKind.Rankine => "b (gamma z^2/2 + 2 s_u z)",
        FaceKind.RankineFriction => "b z (gamma z K_p/2 + 2 c sqrt(K_p))",
        FaceKind.Sliding => "K_ru s_u b z",
        FaceKind.SoftClay => "b sum over z of min(3 s_u + gamma x + J s_u x/b, 9 s_u)",
        FaceKind.VerleyLund => "b 4.1 s_u d (z/d)^1.31 (d gamma/s_u)^0.39",
        FaceKind.Lateral => "b d s_u (c1 (z/d)^0.61 + c3 (gamma d/s_u)(z/d)^2)",
        FaceKind.Reece => "b (gamma z^2/2 + K_pc c z)",
        _ => "b (0.667 c z K_pc + z^2 gamma K_pg/2)",
    };

    public static string Substitution(in FaceLaw law, double width, double diameter, double sinkage, double strengthKilopascals, double unitWeightKilonewtons)
    {
        string b = Text.Number(width), d = Text.Number(diameter), z = Text.Number(sinkage), s = Text.Number(strengthKilopascals), g = Text.Number(unitWeightKilonewtons), one = Text.Number(law.First), two = Text.Number(law.Second);
        return law.Kind switch
        {
            FaceKind.Rankine => $"{b} ({g} x {z}^2/2 + 2 x {s} x {z})",
            FaceKind.RankineFriction => $"{b} x {z} ({g} x {z} x {one}/2 + 2 x {s} x {two})",
            FaceKind.Sliding => $"{one} x {s} x {b} x {z}",
            FaceKind.SoftClay => $"{b} sum to {z} of min(3 x {s} + {g} x + {one} x {s} x/{b}, 9 x {s})",
            FaceKind.VerleyLund => $"{b} x 4.1 x {s} x {d} ({z}/{d})^1.31 ({d} x {g}/{s})^0.39",
            FaceKind.Lateral => $"{b} x {d} x {s} ({one} ({z}/{d})^0.61 + {two} ({g} x {d}/{s})({z}/{d})^2)",
            FaceKind.Reece => $"{b} ({g} x {z}^2/2 + {one} x {s} x {z})",
            _ => $"{b} (0.667 x {s} x {z} x {one} + {z}^2 x {g} x {two}/2)",
        };
    }
}
