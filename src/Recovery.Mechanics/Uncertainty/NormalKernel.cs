using System;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>The standard normal distribution, once: Cody's rational forms for the distribution function, Wichura's AS 241 for its inverse. No allocation, no exceptions.</summary>
/// <remarks>Sources: <see cref="UncertaintySources.Normal"/>; coefficients as published, held against SciPy.</remarks>
internal static class NormalKernel
{
    private const double InverseRootTwoPi = 0.39894228040143267794;

    /// <summary>Probability that a standard normal number is at most x. Full relative accuracy into the lower tail.</summary>
    public static double Cdf(double x)
    {
        var y = Math.Abs(x);
        if (y <= 0.67448975) return 0.5 + Centre(x);
        var tail = Tail(y);
        return x > 0 ? 1 - tail : tail;
    }

    /// <summary>Probability that a standard normal number is above x: the lower tail of -x, without the loss of 1 - Cdf.</summary>
    public static double Upper(double x) => Cdf(-x);

    /// <summary>Density.</summary>
    public static double Density(double x) => InverseRootTwoPi * Math.Exp(-0.5 * x * x);

    /// <summary>Number below which a standard normal lies with probability p, 0 and 1 excluded.</summary>
    public static double Inverse(double p)
    {
        var q = p - 0.5;
        return Math.Abs(q) <= 0.425 ? InverseCentre(q) : InverseTail(p, q);
    }

    /// <summary>Inverse of every number of a block, in place.</summary>
    public static void Inverse(Span<double> numbers)
    {
        for (var i = 0; i < numbers.Length; i++) numbers[i] = Inverse(numbers[i]);
    }

    internal static double InverseCentre(double q)
    {
        var r = 0.180625 - (q * q);
        return q * (((((((((((((2.5090809287301226727e3 * r) + 3.3430575583588128105e4) * r) + 6.7265770927008700853e4) * r) + 4.5921953931549871457e4) * r) + 1.3731693765509461125e4) * r) + 1.9715909503065514427e3) * r) + 1.3314166789178437745e2) * r + 3.3871328727963666080e0)
            / (((((((((((((5.2264952788528545610e3 * r) + 2.8729085735721942674e4) * r) + 3.9307895800092710610e4) * r) + 2.1213794301586595867e4) * r) + 5.3941960214247511077e3) * r) + 6.8718700749205790830e2) * r) + 4.2313330701600911252e1) * r + 1);
    }

    internal static double InverseTail(double p, double q)
    {
        var r = Math.Sqrt(-Math.Log(q < 0 ? p : 1 - p));
        double z;
        if (r <= 5)
        {
            r -= 1.6;
            z = (((((((((((((7.74545014278341407640e-4 * r) + 2.27238449892691845833e-2) * r) + 2.41780725177450611770e-1) * r) + 1.27045825245236838258e0) * r) + 3.64784832476320460504e0) * r) + 5.76949722146069140550e0) * r) + 4.63033784615654529590e0) * r + 1.42343711074968357734e0)
                / (((((((((((((1.05075007164441684324e-9 * r) + 5.47593808499534494600e-4) * r) + 1.51986665636164571966e-2) * r) + 1.48103976427480074590e-1) * r) + 6.89767334985100004550e-1) * r) + 1.67638483018380384940e0) * r) + 2.05319162663775882187e0) * r + 1);
        }
        else
        {
            r -= 5;
            z = (((((((((((((2.01033439929228813265e-7 * r) + 2.71155556874348757815e-5) * r) + 1.24266094738807843860e-3) * r) + 2.65321895265761230930e-2) * r) + 2.96560571828504891230e-1) * r) + 1.78482653991729133580e0) * r) + 5.46378491116411436990e0) * r + 6.65790464350110377720e0)
                / (((((((((((((2.04426310338993978564e-15 * r) + 1.42151175831644588870e-7) * r) + 1.84631831751005468180e-5) * r) + 7.86869131145613259100e-4) * r) + 1.48753612908506148525e-2) * r) + 1.36929880922735805310e-1) * r) + 5.99832206555887937690e-1) * r + 1);
        }

        return q < 0 ? -z : z;
    }

    private static double Centre(double x)
    {
        var s = x * x;
        double n = 0.065682337918207449113 * s, d = s;
        n = (n + 2.2352520354606839287) * s;
        d = (d + 47.20258190468824187) * s;
        n = (n + 161.02823106855587881) * s;
        d = (d + 976.09855173777669322) * s;
        n = (n + 1067.6894854603709582) * s;
        d = (d + 10260.932208618978205) * s;
        return x * (n + 18154.981253343561249) / (d + 45507.789335026729956);
    }

    private static double Tail(double y)
    {
        if (y > 38.5) return 0;
        // exp(-y^2/2) in two factors, so that the square of y loses no bits.
        double head = Math.Floor(y * 16) / 16, rest = (y - head) * (y + head);
        var bell = Math.Exp(-0.5 * head * head) * Math.Exp(-0.5 * rest);
        double n, d;
        if (y <= 5.656854249492381)
        {
            n = (((((((((((((((1.0765576773720192317e-8 * y) + 0.39894151208813466764) * y) + 8.8831497943883759412) * y) + 93.506656132177855979) * y) + 597.27027639480026226) * y) + 2494.5375852903726711) * y) + 6848.1904505362823326) * y) + 11602.651437647350124) * y) + 9842.7148383839780218;
            d = ((((((((((((((y + 22.266688044328115691) * y) + 235.38790178262499861) * y) + 1519.377599407554805) * y) + 6485.558298266760755) * y) + 18615.571640885098091) * y) + 34900.952721145977266) * y) + 38912.003286093271411) * y) + 19685.429676859990727;
            return bell * n / d;
        }

        var s = 1 / (y * y);
        n = (((((((((0.02307344176494017303 * s) + 0.21589853405795699) * s) + 0.1274011611602473639) * s) + 0.02223527787065) * s) + 0.001421619193227893466) * s) + 2.9112874951168792e-5;
        d = ((((((((s + 1.28426009614491121) * s) + 0.468238212480865118) * s) + 0.0659881378689285515) * s) + 0.00378239633202758244) * s) + 7.29751555083966205e-5;
        return bell * (InverseRootTwoPi - (s * n / d)) / y;
    }
}
