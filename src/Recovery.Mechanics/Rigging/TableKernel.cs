namespace Recovery.Mechanics.Rigging;

/// <summary>How printed tables of sizes are read, once.</summary>
/// <remarks>Sources: <see cref="PartSources.CargoTables"/>; how a table is read between its rows is judgement.</remarks>
internal static class TableKernel
{
    /// <summary>Whether a size reaches a printed one, rounding of inches and millimetres (2.5 %) allowed.</summary>
    public static bool Reaches(double metres, double printedMetres) => metres >= printedMetres * 0.975;
}
