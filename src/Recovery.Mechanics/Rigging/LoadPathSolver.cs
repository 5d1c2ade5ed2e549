using System;
using MathNet.Numerics.LinearAlgebra;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>Finds where the free joints of a load path come to rest and what every part then carries.</summary>
/// <remarks>
/// <para>A part bears tension alone: T = max(0, (len - L)/c), c its compliance. A pulled part has a tension that is given. The energy of all of it is convex in the places of the joints, so its least value is the one equilibrium; it is found by Newton's method with a line search, the linear systems by MathNet.
/// A part that hardly stretches, or not at all, is given a small compliance of its own which multipliers take out again. Friction makes the tensions of the segments of a running part stand in fixed ratios; ratios and rest length follow the angles from round to round.</para>
/// <para>What comes out is checked apart from the solver: the forces at every free joint add up to less than 1e-10 of the pull, else it is a <see cref="SolverException"/>.</para>
/// </remarks>
internal sealed class LoadPathSolver
{
    /// <summary>Largest residual of a joint over the pull.</summary>
    public const double Tolerance = 1e-10;

    private const int MostSteps = 200, MostRounds = 60;

    private readonly Vector3[] _at;
    private readonly int[] _free;
    private readonly LoadPathElement[] _elements;
    private readonly double[] _compliance;
    private readonly double[] _softening;
    private readonly double[] _multiplier;
    private readonly double[] _rest;
    private readonly double[][] _weights;
    private readonly double _pull;
    private readonly int _unknowns;

    public LoadPathSolver(Vector3[] start, bool[] isFree, LoadPathElement[] elements)
    {
        _at = (Vector3[])start.Clone();
        _elements = elements;
        _free = new int[start.Length];
        for (var i = 0; i < start.Length; i++) _free[i] = isFree[i] ? _unknowns++ : -1;
        foreach (var e in elements) _pull += e.IsPulled ? e.Pull : 0;
        _compliance = new double[elements.Length];
        _softening = new double[elements.Length];
        _multiplier = new double[elements.Length];
        _rest = new double[elements.Length];
        _weights = new double[elements.Length][];
        for (var i = 0; i < elements.Length; i++)
        {
            var e = elements[i];
            _compliance[i] = e.IsPulled ? 0 : e.Length / e.Stiffness;
            _softening[i] = Math.Max(0, (e.Length / (500 * _pull)) - _compliance[i]);
            _rest[i] = e.Length;
            _weights[i] = new double[e.Nodes.Length - 1];
            for (var s = 0; s < _weights[i].Length; s++) _weights[i][s] = 1;
        }
    }

    /// <summary>Places of the nodes.</summary>
    public Vector3[] At => _at;

    /// <summary>Largest sum of forces at a free joint over the pull.</summary>
    public double Residual { get; private set; }

    /// <summary>Newton steps that were taken.</summary>
    public int Steps { get; private set; }

    /// <summary>Tension of a segment of a part, N.</summary>
    public double Tension(int element, int segment) => Base(element) * _weights[element][segment];

    /// <summary>Unit vector of a segment from its first to its second node.</summary>
    public Vector3 Direction(int element, int segment)
    {
        var e = _elements[element];
        var d = _at[e.Nodes[segment + 1]] - _at[e.Nodes[segment]];
        return 1 / d.Length * d;
    }

    /// <summary>Solves.</summary>
    public void Solve()
    {
        for (var round = 0; round < MostRounds; round++)
        {
            Newton();
            if (Update() < 1e-12) break;
        }

        // The last update moved multipliers and ratios by next to nothing, and what is left of it is balanced out.
        Newton();

        Residual = Gradient(out _) / _pull;
        if (!(Residual < Tolerance)) throw new SolverException("Load path", 0, _pull, Residual, Steps);
    }

    /// <summary>Whether equilibrium alone settles the tensions: the directions in which the taut parts hold the joints are independent.</summary>
    public bool IsDeterminate()
    {
        var columns = new System.Collections.Generic.List<Vector<double>>();
        for (var i = 0; i < _elements.Length; i++)
        {
            if (!_elements[i].IsPulled && Base(i) > 0) columns.Add(Normal(i));
        }

        return columns.Count == 0 || Matrix<double>.Build.DenseOfColumnVectors(columns).Rank() == columns.Count;
    }

    /// <summary>Sum of the forces of the parts on a node, N.</summary>
    public Vector3 ForceOn(int node)
    {
        var sum = default(Vector3);
        for (var i = 0; i < _elements.Length; i++)
        {
            var nodes = _elements[i].Nodes;
            for (var s = 0; s + 1 < nodes.Length; s++)
            {
                if (nodes[s] == node) sum += Tension(i, s) * Direction(i, s);
                if (nodes[s + 1] == node) sum -= Tension(i, s) * Direction(i, s);
            }
        }

        return sum;
    }

    private double Base(int i)
    {
        var e = _elements[i];
        if (e.IsPulled) return e.Pull;
        return Math.Max(0, (Weighted(i) - _rest[i] + (_softening[i] * _multiplier[i])) / (_compliance[i] + _softening[i]));
    }

    private double Segment(LoadPathElement e, int s) => (_at[e.Nodes[s + 1]] - _at[e.Nodes[s]]).Length;

    private double Weighted(int i)
    {
        double sum = 0;
        for (var s = 0; s < _weights[i].Length; s++) sum += _weights[i][s] * Segment(_elements[i], s);
        return sum;
    }

    private double Energy()
    {
        double sum = 0;
        for (var i = 0; i < _elements.Length; i++)
        {
            var t = Base(i);
            sum += _elements[i].IsPulled ? t * Weighted(i) : 0.5 * t * t * (_compliance[i] + _softening[i]);
        }

        return sum;
    }

    private double Gradient(out Vector<double> gradient)
    {
        gradient = Vector<double>.Build.Dense(3 * _unknowns);
        double worst = 0;
        for (var n = 0; n < _at.Length; n++)
        {
            if (_free[n] < 0) continue;
            var force = ForceOn(n);
            gradient[3 * _free[n]] = -force.X;
            gradient[(3 * _free[n]) + 1] = -force.Y;
            gradient[(3 * _free[n]) + 2] = -force.Z;
            worst = Math.Max(worst, force.Length);
        }

        return worst;
    }

    private Matrix<double> Hessian()
    {
        var h = Matrix<double>.Build.Dense(3 * _unknowns, 3 * _unknowns);
        for (var i = 0; i < _elements.Length; i++)
        {
            var e = _elements[i];
            var t = Base(i);
            if (!(t > 0)) continue;
            for (var s = 0; s + 1 < e.Nodes.Length; s++)
            {
                int a = _free[e.Nodes[s]], b = _free[e.Nodes[s + 1]];
                var u = Direction(i, s);
                var across = t * _weights[i][s] / Segment(e, s);
                Span<double> v = [u.X, u.Y, u.Z];
                for (var p = 0; p < 3; p++)
                {
                    for (var q = 0; q < 3; q++)
                    {
                        var k = across * ((p == q ? 1 : 0) - (v[p] * v[q]));
                        if (a >= 0) h[(3 * a) + p, (3 * a) + q] += k;
                        if (b >= 0) h[(3 * b) + p, (3 * b) + q] += k;
                        if (a < 0 || b < 0) continue;
                        h[(3 * a) + p, (3 * b) + q] -= k;
                        h[(3 * b) + p, (3 * a) + q] -= k;
                    }
                }
            }

            if (e.IsPulled) continue;
            var normal = Normal(i);
            h += normal.OuterProduct(normal) / (_compliance[i] + _softening[i]);
        }

        // Joints that nothing holds for the moment: a little of the largest stiffness keeps the system regular and moves no solution.
        double largest = 0;
        for (var d = 0; d < h.RowCount; d++) largest = Math.Max(largest, h[d, d]);
        for (var d = 0; d < h.RowCount; d++) h[d, d] += Math.Max(1e-11 * largest, 1e-6 * _pull);
        return h;
    }

    /// <summary>How the weighted length of a part changes with the places of the joints.</summary>
    private Vector<double> Normal(int i)
    {
        var e = _elements[i];
        var normal = Vector<double>.Build.Dense(3 * _unknowns);
        for (var s = 0; s + 1 < e.Nodes.Length; s++)
        {
            Add(_free[e.Nodes[s]], -_weights[i][s] * Direction(i, s));
            Add(_free[e.Nodes[s + 1]], _weights[i][s] * Direction(i, s));
        }

        return normal;

        void Add(int joint, Vector3 v)
        {
            if (joint < 0) return;
            normal[3 * joint] += v.X;
            normal[(3 * joint) + 1] += v.Y;
            normal[(3 * joint) + 2] += v.Z;
        }
    }

    private void Newton()
    {
        // A damping that grows where a step does not help and fades where it does: with enough of it every step goes down.
        double damping = 0;
        for (var step = 0; step < MostSteps; step++)
        {
            var residual = Gradient(out var gradient);
            // Not a number where two nodes fall together: no way on, and the residual says so.
            if (residual < 1e-14 * _pull || double.IsNaN(residual)) return;
            Steps++;
            var energy = Energy();
            var old = (Vector3[])_at.Clone();
            var hessian = Hessian();
            var moved = false;
            for (var attempt = 0; attempt < 16 && !moved; attempt++)
            {
                for (var d = 0; d < hessian.RowCount && damping > 0; d++) hessian[d, d] += damping;
                var direction = Solve(hessian, gradient);
                var length = direction is null ? 0 : Furthest(direction);
                for (var halving = 0; halving < 8 && direction is not null; halving++)
                {
                    Move(old, direction, length);
                    // Near the end the energy no longer tells; there the forces do.
                    moved = Energy() <= energy + (1e-4 * length * (gradient * direction)) - (1e-15 * Math.Abs(energy)) || Gradient(out _) < 0.9 * residual;
                    if (moved) break;
                    length /= 2;
                }

                damping = moved ? (damping > 1e-6 * _pull ? damping / 10 : 0) : Math.Max(10 * damping, 1e-3 * _pull);
            }

            if (moved) continue;
            Array.Copy(old, _at, old.Length);
            return;
        }
    }

    /// <summary>The step; null where the system is not regular to the rounding.</summary>
    private static Vector<double>? Solve(Matrix<double> hessian, Vector<double> gradient)
    {
        try
        {
            return hessian.Cholesky().Solve(-gradient);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Share of a step that shortens no segment to less than half: two nodes must not pass through each other.</summary>
    private double Furthest(Vector<double> direction)
    {
        double share = 1;
        foreach (var e in _elements)
        {
            for (var s = 0; s + 1 < e.Nodes.Length; s++)
            {
                var relative = (Step(direction, e.Nodes[s + 1]) - Step(direction, e.Nodes[s])).Length;
                if (share * relative > 0.5 * Segment(e, s)) share = 0.5 * Segment(e, s) / relative;
            }
        }

        return share;
    }

    private Vector3 Step(Vector<double> direction, int node) => _free[node] < 0 ? default : new Vector3(direction[3 * _free[node]], direction[(3 * _free[node]) + 1], direction[(3 * _free[node]) + 2]);

    private void Move(Vector3[] old, Vector<double> direction, double length)
    {
        for (var n = 0; n < _at.Length; n++)
        {
            if (_free[n] < 0) continue;
            var k = 3 * _free[n];
            _at[n] = old[n] + (length * new Vector3(direction[k], direction[k + 1], direction[k + 2]));
        }
    }

    /// <summary>Multipliers, friction ratios and rest lengths of the next round. Gives the largest relative change.</summary>
    private double Update()
    {
        double change = 0;
        for (var i = 0; i < _elements.Length; i++)
        {
            var e = _elements[i];
            var t = Base(i);
            if (_softening[i] > 0)
            {
                change = Math.Max(change, Math.Abs(t - _multiplier[i]) / _pull);
                _multiplier[i] = t;
            }

            if (e.Way == 0 || e.Nodes.Length < 3) continue;
            change = Math.Max(change, Reweigh(i));
            if (e.IsPulled) continue;
            // The parts of the strap stretch each with its own tension, and their lengths add up to its own.
            double plain = 0, weighted = 0;
            for (var s = 0; s < _weights[i].Length; s++)
            {
                plain += Segment(e, s);
                weighted += _weights[i][s] * Segment(e, s);
            }

            var mean = weighted / plain;
            var excess = plain - e.Length - (_compliance[i] * t * mean);
            var rest = weighted - (_compliance[i] * t) - (mean * excess);
            change = Math.Max(change, Math.Abs(rest - _rest[i]) / e.Length);
            _rest[i] = rest;
        }

        return change;
    }

    private double Reweigh(int i)
    {
        var e = _elements[i];
        var w = _weights[i];
        var fresh = new double[w.Length];
        fresh[0] = 1;
        for (var s = 1; s < w.Length; s++)
        {
            // Wrap is the angle by which the direction turns; the tension falls along the way of friction.
            var cosine = Math.Max(-1, Math.Min(1, Direction(i, s - 1).Dot(Direction(i, s))));
            var ratio = e.Ratio[s - 1] * Math.Exp(e.Friction[s - 1] * Math.Acos(cosine));
            fresh[s] = e.Way > 0 ? fresh[s - 1] / ratio : fresh[s - 1] * ratio;
        }

        if (e.IsPulled && e.PullAtEnd)
        {
            var last = fresh[fresh.Length - 1];
            for (var s = 0; s < fresh.Length; s++) fresh[s] /= last;
        }

        double change = 0;
        for (var s = 0; s < w.Length; s++)
        {
            change = Math.Max(change, Math.Abs(fresh[s] - w[s]) / fresh[s]);
            w[s] = fresh[s];
        }

        return change;
    }
}
