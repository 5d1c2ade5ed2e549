using System;

namespace Recovery.Mechanics.Traction;

/// <summary>Forces of a rope over sheaves. SI in, SI out, no allocation.</summary>
/// <remarks>Sources: <see cref="TackleSources.TenPercent"/>, <see cref="TackleSources.Steps"/>, <see cref="TackleSources.DeadLine"/>, <see cref="TackleSources.BlockEfficiency"/>.</remarks>
internal static class TackleKernel
{
    /// <summary>Handbook friction a sheave, share of the load resistance (published).</summary>
    public const double HandbookFriction = 0.10;

    /// <summary>Tackle resistance of the handbook: friction x load x sheaves.</summary>
    public static double Resistance(double load, int sheaves, double friction) => friction * load * sheaves;

    /// <summary>Fall-line force of the handbook: load and tackle resistance over the advantage.</summary>
    public static double FallLine(double load, int sheaves, double friction, double advantage) => (load + Resistance(load, sheaves, friction)) / advantage;

    /// <summary>Load that an effort at the fall line moves by the handbook, the same solved for the load: E MA/(1 + friction x sheaves).</summary>
    public static double Load(double effort, int sheaves, double friction, double advantage) => effort * advantage / (1 + (friction * sheaves));

    /// <summary>First estimate of the advantage: load over effort, rounded up, at least 1.</summary>
    public static int FirstEstimate(double load, double effort) => (int)Math.Max(1, Math.Ceiling(load / effort));

    /// <summary>Force of a block on what holds it: the resultant of its two parts at an included angle.</summary>
    public static double Block(double tensionIn, double tensionOut, double includedRadians) =>
        Math.Sqrt(Math.Max(0, (tensionIn * tensionIn) + (tensionOut * tensionOut) + (2 * tensionIn * tensionOut * Math.Cos(includedRadians))));

    /// <summary>Part of both tensions along the line that halves the included angle.</summary>
    public static double Along(double tensionIn, double tensionOut, double includedRadians) => (tensionIn + tensionOut) * Math.Cos(includedRadians / 2);

    /// <summary>Load over fall-line tension of parallel parts: sum of eta^k, from 0 where the fall leaves a moving block, from 1 where it leaves a fixed one.</summary>
    public static double Advantage(int parts, double efficiency, bool leavesFixed)
    {
        double sum = 0, power = leavesFixed ? efficiency : 1;
        for (var k = 0; k < parts; k++)
        {
            sum += power;
            power *= efficiency;
        }

        return sum;
    }
}
