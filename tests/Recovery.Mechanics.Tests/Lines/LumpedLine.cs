using System;

namespace Recovery.Mechanics.Tests.Lines;

/// <summary>A released line as lumps on springs that only pull, apart from the library: lines in series, the far end held, a fitting on the near one. Fixed steps, velocity before position.</summary>
internal static class LumpedLine
{
    /// <summary>One line: axial stiffness per unit strain, mass of a metre, length, number of lumps.</summary>
    internal readonly record struct Part(double AxialStiffness, double MassPerMetre, double Length, int Lumps);

    /// <summary>Greatest speed of a fitting on the near end of lines in series within a time.</summary>
    public static double FittingSpeed(double force, double fitting, double seconds, params Part[] parts)
    {
        var (springs, masses, step) = Chain(parts, fitting);
        int n = springs.Length;
        double[] stretch = new double[n], v = new double[n];
        for (var i = 0; i < n; i++) stretch[i] = force / springs[i];
        double fastest = 0;
        for (double t = 0; t < seconds; t += step)
        {
            double before = 0;
            for (var i = 0; i < n; i++)
            {
                var tension = stretch[i] > 0 ? springs[i] * stretch[i] : 0;
                v[i] += step * (tension - before) / masses[i];
                before = tension;
            }

            for (var i = 0; i < n; i++) stretch[i] += step * ((i + 1 < n ? v[i + 1] : 0) - v[i]);
            fastest = Math.Max(fastest, v[0]);
        }

        return fastest;
    }

    /// <summary>Greatest speed of a fitting on the loose end of a massless bridle with parallel legs that runs through a massless eye, before it meets the eye.</summary>
    public static double LooseEndSpeed(double force, double fitting, double bridleStiffness, double bridleLength, Part strap)
    {
        var (springs, masses, step) = Chain([strap], 0);
        int n = springs.Length;
        // Node 0 is the eye, without mass: its place follows from the balance of strap and bridle.
        double[] x = new double[n + 1], v = new double[n + 1];
        double eye = (bridleLength + (force / 2 / bridleStiffness)) / 2, y = 0, speed = 0, fastest = 0, rest = strap.Length / n;
        x[0] = eye;
        for (var i = 1; i <= n; i++) x[i] = x[i - 1] + rest + (force / springs[i - 1]);
        while (y < x[0] && speed >= fastest)
        {
            // Strap: k_s (x1 - e - rest); bridle: k_b (2 e - y - L_b); strap force = twice the bridle force.
            var ks = springs[0];
            var e = ((ks * (x[1] - rest)) + (2 * bridleStiffness * (y + bridleLength))) / (ks + (4 * bridleStiffness));
            var bridle = bridleStiffness * ((2 * e) - y - bridleLength);
            var before = Math.Max(0, ks * (x[1] - e - rest));
            if (bridle < 0) bridle = before = 0;
            x[0] = e;
            fastest = speed;
            speed += step * bridle / fitting;
            y += step * speed;
            for (var i = 1; i < n; i++)
            {
                var tension = Math.Max(0, springs[i] * (x[i + 1] - x[i] - rest));
                v[i] += step * (tension - before) / masses[i];
                before = tension;
            }

            for (var i = 1; i < n; i++) x[i] += step * v[i];
        }

        return fastest;
    }

    /// <summary>Springs from node to node, masses of the nodes (the first carries the fitting, the last is held) and a step well under the shortest transit.</summary>
    private static (double[] Springs, double[] Masses, double Step) Chain(Part[] parts, double fitting)
    {
        var n = 0;
        foreach (var part in parts) n += part.Lumps;
        double[] springs = new double[n], masses = new double[n];
        masses[0] = fitting;
        var (at, step) = (0, double.PositiveInfinity);
        foreach (var part in parts)
        {
            var dx = part.Length / part.Lumps;
            step = Math.Min(step, 0.4 * dx / Math.Sqrt(part.AxialStiffness / part.MassPerMetre));
            for (var i = 0; i < part.Lumps; i++, at++)
            {
                springs[at] = part.AxialStiffness / dx;
                masses[at] += part.MassPerMetre * dx / 2;
                if (at + 1 < n) masses[at + 1] += part.MassPerMetre * dx / 2;
            }
        }

        return (springs, masses, step);
    }
}
