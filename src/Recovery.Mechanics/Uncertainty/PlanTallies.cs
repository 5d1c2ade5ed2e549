using System.Collections.Generic;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Everything that is counted while a plan is sampled. Whole numbers throughout, so that parts add up exactly.</summary>
internal sealed class PlanTallies
{
    private readonly long[] _verdicts = new long[3];

    public PlanTallies(PlanNumbers numbers)
    {
        var weight = numbers.Compiled.Stuck.Flat.Weight;
        Demand = new Tally(weight);
        Sustained = new Tally(weight);
        Imposable = new Tally(weight);
        Procedure = new Tally(weight);
        Margin = new Tally(1);
        Places = new PlaceTallies[numbers.Compiled.Line is null ? 0 : numbers.Compiled.Places.Length];
        for (var i = 0; i < Places.Length; i++) Places[i] = new PlaceTallies();
    }

    public long Count { get; private set; }

    public long NotEnough { get; private set; }

    public long Frees { get; private set; }

    public long NotCovered { get; private set; }

    public Tally Demand { get; }

    public Tally Sustained { get; }

    public Tally Imposable { get; }

    public Tally Procedure { get; }

    public Tally Margin { get; }

    public PlaceTallies[] Places { get; }

    public long Of(Verdict verdict) => _verdicts[(int)verdict];

    public void Add(in PlanOutcome o)
    {
        Count++;
        if (o.Sustained < o.Demand) NotEnough++;
        if (double.IsNaN(o.OwnNet)) NotCovered++;
        else if (o.OwnNet >= o.OwnHolding) Frees++;
        _verdicts[(int)o.Verdict]++;
        Demand.Add(o.Demand);
        Sustained.Add(o.Sustained);
        Imposable.Add(o.Imposable);
        Margin.Add(o.Demand > 0 ? o.Sustained / o.Demand : Tally.Reach);
        if (Places.Length > 0) Procedure.Add(o.Procedure);
    }

    /// <summary>Counts the places of one sample.</summary>
    public void AddPlaces(RigPlace[] places, RigOutcome[] outcomes, ulong parted)
    {
        for (var i = 0; i < Places.Length; i++) Places[i].Add(places[i], outcomes[i], (parted & (1UL << i)) != 0);
    }

    public void Add(PlanTallies other)
    {
        Count += other.Count;
        NotEnough += other.NotEnough;
        Frees += other.Frees;
        NotCovered += other.NotCovered;
        for (var i = 0; i < _verdicts.Length; i++) _verdicts[i] += other._verdicts[i];
        Demand.Add(other.Demand);
        Sustained.Add(other.Sustained);
        Imposable.Add(other.Imposable);
        Procedure.Add(other.Procedure);
        Margin.Add(other.Margin);
        for (var i = 0; i < Places.Length; i++) Places[i].Add(other.Places[i]);
    }

    public void Write(List<byte> bytes)
    {
        Tally.Put(bytes, Count);
        Tally.Put(bytes, NotEnough);
        Tally.Put(bytes, Frees);
        Tally.Put(bytes, NotCovered);
        foreach (var count in _verdicts) Tally.Put(bytes, count);
        Demand.Write(bytes);
        Sustained.Write(bytes);
        Imposable.Write(bytes);
        Procedure.Write(bytes);
        Margin.Write(bytes);
        foreach (var place in Places) place.Write(bytes);
    }
}
