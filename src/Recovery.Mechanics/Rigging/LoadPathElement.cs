namespace Recovery.Mechanics.Rigging;

/// <summary>One part of a load path as the solver reads it, SI: a strap from node to node, straight or running through others.</summary>
internal sealed class LoadPathElement
{
    /// <summary>Nodes in order, two at least.</summary>
    public int[] Nodes = [];

    /// <summary>Unstretched length, m.</summary>
    public double Length;

    /// <summary>Axial stiffness EA, N; infinite: does not stretch.</summary>
    public double Stiffness = double.PositiveInfinity;

    /// <summary>Tension at the puller, N, where a puller draws on this part; not a number elsewhere.</summary>
    public double Pull = double.NaN;

    /// <summary>Whether the pull is at the last node and not at the first.</summary>
    public bool PullAtEnd;

    /// <summary>Friction at every node between the ends: coefficient of a strap in an eye, signed by the way in which the tension falls from first to last. Nothing: free.</summary>
    public double[] Friction = [];

    /// <summary>Loss at every node between the ends that does not depend on the wrap, as a ratio of tensions, 1 or more; used with the sign of <see cref="Friction"/>.</summary>
    public double[] Ratio = [];

    /// <summary>Way in which friction works: 0 none, 1 the first segment is the harder one, -1 the last.</summary>
    public int Way;

    /// <summary>Whether a puller draws on it.</summary>
    public bool IsPulled => !double.IsNaN(Pull);
}
