using System;
using System.Linq;
using System.Threading;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Provenance;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Traction;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Draws and evaluates samples of a plan, a block at a time, for one thread. After it is made it allocates nothing, unless an input makes the plan anew.</summary>
internal sealed class BlockSampler
{
    public const int Block = 256;

    private readonly PlanSampler _sampler;
    private readonly PlanNumbers _numbers;
    private readonly PlanScratch _scratch;
    private readonly ulong _seed;
    private readonly SobolPoints? _sobol;
    private readonly int[] _places;
    private readonly bool _remakes;
    private readonly bool _towerMoves;
    private readonly double[] _columns;
    private readonly double[] _sustainedIndex = new double[Block];
    private readonly double[] _imposableIndex = new double[Block];
    private readonly double[] _traction = new double[Block];
    private readonly double[] _onSoil = new double[Block];
    private readonly double[] _one = new double[4];
    private PlanTallies? _tallies;
    private PlanNumbers? _made;
    private PlanScratch? _madeScratch;

    public BlockSampler(PlanSampler sampler, ulong seed, PointSet points)
    {
        _sampler = sampler;
        _numbers = sampler.Numbers;
        _scratch = new PlanScratch(_numbers);
        _seed = seed;
        var inputs = sampler.Sampled;
        if (points == PointSet.ScrambledSobol && inputs.Length > 0) _sobol = SobolPoints.Scrambled(inputs.Length, seed);
        _columns = new double[inputs.Length * Block];
        _places = new int[inputs.Length];
        for (var i = 0; i < inputs.Length; i++)
        {
            _places[i] = inputs[i].RemakesThePlan || inputs[i].Input.Absent ? -1 : inputs[i].Input.IndexIn(_numbers);
            _remakes |= inputs[i].RemakesThePlan && !inputs[i].Stays;
            _towerMoves |= _places[i] is (int)PlanFactor.TowerConeIndex or (int)PlanFactor.TowerRemouldingIndex or (int)PlanFactor.FirmestConeIndex;
        }

        if (_towerMoves || _remakes) return;

        // Nothing moves the pulls of the towing machine: worked once.
        PlanKernel.TowerIndices(_numbers, _scratch.Factors, out var sustained, out var imposable);
        for (var i = 0; i < Block; i++) (_sustainedIndex[i], _imposableIndex[i]) = (sustained, imposable);
        Pulls(Block);
    }

    /// <summary>What was counted; made when it is first asked for, because it is large and a single evaluation needs none.</summary>
    public PlanTallies Tallies => _tallies ??= new PlanTallies(_numbers);

    /// <summary>The numbers that the last evaluation went by.</summary>
    public PlanNumbers Numbers => _made ?? _numbers;

    /// <summary>Draws, evaluates and counts consecutive samples.</summary>
    public void Run(long first, int count, CancellationToken cancellation)
    {
        var tallies = Tallies;
        for (var done = 0; done < count; done += Block)
        {
            cancellation.ThrowIfCancellationRequested();
            var size = Math.Min(Block, count - done);
            Draw(first + done, size);
            for (var s = 0; s < size; s++)
            {
                Evaluate(s, out var o);
                tallies.Add(o);
                var w = _madeScratch ?? _scratch;
                tallies.AddPlaces(w.Places, w.Outcomes, o.Parted);
            }
        }
    }

    /// <summary>Draws a block of at most 256 samples and works out the pulls of the towing machine.</summary>
    public void Draw(long first, int size)
    {
        // Whole vectors, so that a number goes the same way whatever block it falls into.
        var padded = (size + CapabilityBatch.Multiple - 1) / CapabilityBatch.Multiple * CapabilityBatch.Multiple;
        var inputs = _sampler.Sampled;
        for (var i = 0; i < inputs.Length; i++)
        {
            var column = _columns.AsSpan(i * Block, padded);
            if (inputs[i].Factor.IsFixed && _sampler.Correlation is null) continue;
            if (_sobol is null) Philox4x32.Fill(_seed, (ulong)first, (uint)i, 0, column);
            else _sobol.Uniforms(first, i, column.Slice(0, size));
            NormalKernel.Inverse(column.Slice(0, _sobol is null ? padded : size));
        }

        _sampler.Correlation?.Apply(_columns, Block, padded);
        for (var i = 0; i < inputs.Length; i++) inputs[i].Factor.FromNormals(_columns.AsSpan(i * Block, padded));
        if (!_towerMoves || _remakes) return;
        for (var s = 0; s < padded; s++)
        {
            Place(_scratch, s);
            PlanKernel.TowerIndices(_numbers, _scratch.Factors, out _sustainedIndex[s], out _imposableIndex[s]);
        }

        Pulls(padded);
    }

    /// <summary>Evaluates one sample of the drawn block; the rig's outcomes are in the scratch.</summary>
    public void Evaluate(int s, out PlanOutcome o)
    {
        if (_remakes)
        {
            Remake(s);
            One(_made!, _madeScratch!, out o);
            return;
        }

        Place(_scratch, s);
        PlanKernel.Evaluate(_numbers, _scratch, _traction[s], _onSoil[s], out o);
        Check(o.Residual);
    }

    /// <summary>Evaluates the plan at given values of its inputs.</summary>
    public void At(ReadOnlySpan<double> values, out PlanOutcome o)
    {
        for (var i = 0; i < values.Length; i++) _columns[i * Block] = values[i];
        if (_remakes)
        {
            Remake(0);
            One(_made!, _madeScratch!, out o);
            return;
        }

        Place(_scratch, 0);
        One(_numbers, _scratch, out o);
    }

    /// <summary>Least strength over peak load among the places of a part after <see cref="At"/>, with its own strength and wear; not a number where it is not known.</summary>
    public double LeastReserve(int part)
    {
        var (n, w) = (Numbers, _madeScratch ?? _scratch);
        var least = Least(part, static (in RigPlace _, in RigOutcome o) => o.Reserve) * w.Factors[n.StrengthOf(part)] * w.Factors[n.WearOf(part)];
        return double.IsInfinity(least) ? double.NaN : least;
    }

    /// <summary>The most in the line behind a machine of a team after <see cref="At"/>, the foremost first.</summary>
    public double LineBehind(int member) => (_madeScratch ?? _scratch).Team!.Imposable[member];

    /// <summary>Least margin among the places of a part; not a number where one is not known, infinite where nothing is asked of any.</summary>
    public double Least(int part, PlaceMargin margin)
    {
        var w = _madeScratch ?? _scratch;
        if (Numbers.Compiled.Line is null) return double.NaN;
        var least = double.PositiveInfinity;
        for (var i = 0; i < w.Places.Length; i++)
        {
            if (w.Places[i].Part == part) least = Math.Min(least, margin(w.Places[i], w.Outcomes[i]));
        }

        return least;
    }

    private void Pulls(int count)
    {
        double residual = 0;
        PlanKernel.Pulls(_numbers, _sustainedIndex.AsSpan(0, count), _imposableIndex.AsSpan(0, count), _traction.AsSpan(0, count), _onSoil.AsSpan(0, count), ref residual);
        Check(residual);
    }

    private void One(PlanNumbers n, PlanScratch w, out PlanOutcome o)
    {
        double residual = 0;
        PlanKernel.TowerIndices(n, w.Factors, out _one[0], out _one[1]);
        PlanKernel.Pulls(n, _one.AsSpan(0, 1), _one.AsSpan(1, 1), _one.AsSpan(2, 1), _one.AsSpan(3, 1), ref residual);
        Check(residual);
        PlanKernel.Evaluate(n, w, _one[2], _one[3], out o);
        Check(o.Residual);
    }

    private static void Check(double residual)
    {
        if (!(residual <= CapabilityKernel.AcceptedResidual)) throw new SolverException("pull of a sample", 0, 0, residual, 80);
    }

    private void Place(PlanScratch w, int s)
    {
        for (var i = 0; i < _places.Length; i++)
        {
            if (_places[i] >= 0) w.Factors[_places[i]] = _columns[(i * Block) + s];
        }
    }

    private void Remake(int s)
    {
        var plan = _sampler.Plan;
        for (var i = 0; i < _places.Length; i++) plan = _sampler.Sampled[i].Apply(plan, _columns[(i * Block) + s]);

        // Made anew, a plan may raise other findings: its severity is worked out again.
        try
        {
            _made = new PlanNumbers(plan);
        }
        catch (ArgumentException e)
        {
            var made = _sampler.Sampled.Select((i, k) => i.RemakesThePlan ? "'" + i.Input.Key + "' at " + (i.IsShift ? InputMove.By(_columns[(k * Block) + s]) : InputMove.Times(_columns[(k * Block) + s])).InWords : string.Empty).Where(t => t.Length > 0);
            throw new ArgumentException("The inputs " + string.Join(", ", made) + " together make no plan: " + e.Message, e);
        }

        _madeScratch = new PlanScratch(_made);
        Place(_madeScratch, s);
    }
}
