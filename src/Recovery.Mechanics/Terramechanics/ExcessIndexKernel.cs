using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Motion resistance and drawbar pull from the excess of rating cone index over vehicle cone index, once. Pa in; the relations are in psi and all from memory.</summary>
internal static class ExcessIndexKernel
{
    /// <summary>Contact pressure at which the drawbar constants change: the upper set from 4 psi on.</summary>
    public const double PressureBreakPascals = 4 * PhysicalConstants.PascalsPerPsi;

    /// <summary>Towed resistance ratio, reading a: 0.045 + 2.3075/(RCI_x + 6.5).</summary>
    public static double ResistanceReadingA(double excessPascals) => 0.045 + (2.3075 / ((excessPascals / PhysicalConstants.PascalsPerPsi) + 6.5));

    /// <summary>Towed resistance ratio, reading b: 0.035 + 0.861/(RCI_x + 3.249).</summary>
    public static double ResistanceReadingB(double excessPascals) => 0.035 + (0.861 / ((excessPascals / PhysicalConstants.PascalsPerPsi) + 3.249));

    /// <summary>Drawbar coefficient D/W = X - sqrt(X^2 - C RCI_x), X = a + B RCI_x, in the form without cancellation.</summary>
    public static double Drawbar(double excessPascals, in DrawbarConstants constants)
    {
        var excess = excessPascals / PhysicalConstants.PascalsPerPsi;
        var x = constants.A + (constants.B * excess);
        return constants.C * excess / (x + Math.Sqrt((x * x) - (constants.C * excess)));
    }
}
