using Recovery.Mechanics.Ground;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;

namespace Recovery.Mechanics.Tests.Terramechanics;

/// <summary>Terrains of the check rows: parameters as printed, in kN and m.</summary>
internal static class Soils
{
    public static BekkerTerrain Of(CheckRow row) => new(
        "of the row", row.Has("kc") ? row.Printed("kc") : 1, row.Has("kphi") ? row.Printed("kphi") : 1000, row.Si("n", 1), Pressure.FromPascals(row.Si("c", 1000)), Angle.FromRadians(row.Si("phi", 0)));
}
