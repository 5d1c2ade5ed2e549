using System;

namespace Recovery.Mechanics.Lines;

/// <summary>One step of the embedded Runge-Kutta method of order 8 after Dormand and Prince with the error estimates of orders 5 and 3 of Hairer, Norsett and Wanner 1993 (Solving Ordinary Differential Equations I, method DOP853). A test holds its order.</summary>
internal static class DormandPrince853
{
    private const int Stages = 12;

    /// <summary>Makes a step of length h and says whether its estimated error is under the tolerance; <paramref name="grow"/> is the factor for the next step length either way.</summary>
    /// <remarks>F and G of the state hold accumulated work and heat: audited apart, not part of the error control.</remarks>
    public static bool TryStep<T>(ref T rhs, double t, in OdeState y, double h, double relative, double absolute, out OdeState next, out double grow)
        where T : struct, IOdeRightHandSide
    {
        Span<OdeState> k = stackalloc OdeState[Stages];
        rhs.Evaluate(t, y, out k[0]);
        OdeState s;
        s = default;
        s.Add(0.05260015195876773, k[0]);
        rhs.Evaluate(t + (h * 0.05260015195876773), y.Plus(h, s), out k[1]);
        s = default;
        s.Add(0.0197250569845379, k[0]);
        s.Add(0.0591751709536137, k[1]);
        rhs.Evaluate(t + (h * 0.0789002279381516), y.Plus(h, s), out k[2]);
        s = default;
        s.Add(0.02958758547680685, k[0]);
        s.Add(0.08876275643042054, k[2]);
        rhs.Evaluate(t + (h * 0.1183503419072274), y.Plus(h, s), out k[3]);
        s = default;
        s.Add(0.2413651341592667, k[0]);
        s.Add(-0.8845494793282861, k[2]);
        s.Add(0.924834003261792, k[3]);
        rhs.Evaluate(t + (h * 0.2816496580927726), y.Plus(h, s), out k[4]);
        s = default;
        s.Add(0.037037037037037035, k[0]);
        s.Add(0.17082860872947386, k[3]);
        s.Add(0.12546768756682242, k[4]);
        rhs.Evaluate(t + (h * 0.3333333333333333), y.Plus(h, s), out k[5]);
        s = default;
        s.Add(0.037109375, k[0]);
        s.Add(0.17025221101954405, k[3]);
        s.Add(0.06021653898045596, k[4]);
        s.Add(-0.017578125, k[5]);
        rhs.Evaluate(t + (h * 0.25), y.Plus(h, s), out k[6]);
        s = default;
        s.Add(0.03709200011850479, k[0]);
        s.Add(0.17038392571223998, k[3]);
        s.Add(0.10726203044637328, k[4]);
        s.Add(-0.015319437748624402, k[5]);
        s.Add(0.008273789163814023, k[6]);
        rhs.Evaluate(t + (h * 0.3076923076923077), y.Plus(h, s), out k[7]);
        s = default;
        s.Add(0.6241109587160757, k[0]);
        s.Add(-3.3608926294469414, k[3]);
        s.Add(-0.868219346841726, k[4]);
        s.Add(27.59209969944671, k[5]);
        s.Add(20.154067550477894, k[6]);
        s.Add(-43.48988418106996, k[7]);
        rhs.Evaluate(t + (h * 0.6512820512820513), y.Plus(h, s), out k[8]);
        s = default;
        s.Add(0.47766253643826434, k[0]);
        s.Add(-2.4881146199716677, k[3]);
        s.Add(-0.590290826836843, k[4]);
        s.Add(21.230051448181193, k[5]);
        s.Add(15.279233632882423, k[6]);
        s.Add(-33.28821096898486, k[7]);
        s.Add(-0.020331201708508627, k[8]);
        rhs.Evaluate(t + (h * 0.6), y.Plus(h, s), out k[9]);
        s = default;
        s.Add(-0.9371424300859873, k[0]);
        s.Add(5.186372428844064, k[3]);
        s.Add(1.0914373489967295, k[4]);
        s.Add(-8.149787010746927, k[5]);
        s.Add(-18.52006565999696, k[6]);
        s.Add(22.739487099350505, k[7]);
        s.Add(2.4936055526796523, k[8]);
        s.Add(-3.0467644718982196, k[9]);
        rhs.Evaluate(t + (h * 0.8571428571428571), y.Plus(h, s), out k[10]);
        s = default;
        s.Add(2.273310147516538, k[0]);
        s.Add(-10.53449546673725, k[3]);
        s.Add(-2.0008720582248625, k[4]);
        s.Add(-17.9589318631188, k[5]);
        s.Add(27.94888452941996, k[6]);
        s.Add(-2.8589982771350235, k[7]);
        s.Add(-8.87285693353063, k[8]);
        s.Add(12.360567175794303, k[9]);
        s.Add(0.6433927460157636, k[10]);
        rhs.Evaluate(t + h, y.Plus(h, s), out k[11]);

        s = default;
        s.Add(0.054293734116568765, k[0]);
        s.Add(4.450312892752409, k[5]);
        s.Add(1.8915178993145003, k[6]);
        s.Add(-5.801203960010585, k[7]);
        s.Add(0.3111643669578199, k[8]);
        s.Add(-0.1521609496625161, k[9]);
        s.Add(0.20136540080403034, k[10]);
        s.Add(0.04471061572777259, k[11]);
        next = y.Plus(h, s);
        OdeState five = default;
        five.Add(0.01312004499419488, k[0]);
        five.Add(-1.2251564463762044, k[5]);
        five.Add(-0.4957589496572502, k[6]);
        five.Add(1.6643771824549864, k[7]);
        five.Add(-0.35032884874997366, k[8]);
        five.Add(0.3341791187130175, k[9]);
        five.Add(0.08192320648511571, k[10]);
        five.Add(-0.022355307863886294, k[11]);
        var three = s;
        three.Add(-0.2440944881889764, k[0]);
        three.Add(-0.7338466882816118, k[8]);
        three.Add(-0.022058823529411766, k[11]);

        double sum5 = 0, sum3 = 0;
        Sum(five.A, three.A, y.A, next.A, relative, absolute, ref sum5, ref sum3);
        Sum(five.B, three.B, y.B, next.B, relative, absolute, ref sum5, ref sum3);
        Sum(five.C, three.C, y.C, next.C, relative, absolute, ref sum5, ref sum3);
        Sum(five.D, three.D, y.D, next.D, relative, absolute, ref sum5, ref sum3);
        Sum(five.E, three.E, y.E, next.E, relative, absolute, ref sum5, ref sum3);
        var both = sum5 + (0.01 * sum3);
        var error = both > 0 ? Math.Abs(h) * sum5 / Math.Sqrt(both) : 0;
        grow = error > 0 ? Math.Min(5, Math.Max(0.1, 0.9 * Math.Pow(error, -1.0 / 8))) : 5;
        return error <= 1;
    }

    private static void Sum(double five, double three, double from, double to, double relative, double absolute, ref double sum5, ref double sum3)
    {
        var scale = absolute + (relative * Math.Max(Math.Abs(from), Math.Abs(to)));
        sum5 += five / scale * (five / scale);
        sum3 += three / scale * (three / scale);
    }
}
