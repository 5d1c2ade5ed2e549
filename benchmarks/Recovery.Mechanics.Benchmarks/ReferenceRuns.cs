using System;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Runtime.CompilerServices;
using Recovery.Mechanics.Machines;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Scenarios;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Trafficability;
using Recovery.Mechanics.Uncertainty;
using UnitsNet;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>The library's side of <c>benchmarks/reference/run-all</c>: what to run elsewhere, the same loops here, and whole plans sampled.</summary>
internal static class ReferenceRuns
{
    private const double Width = 0.65, Diameter = 1.9, Deflection = 0.2, Slip = 0.2;

    /// <summary>Arguments for the loops in C and numpy.</summary>
    public static void Setup(int elements)
    {
        var machine = PolderHarvester.Create().Stuck.Machine;
        var loads = machine.AxleLoads(default, PullDirection.Forwards);
        var axles = machine.Axles.Select((a, i) =>
        {
            var load = Force.FromNewtons(loads.Newtons[i] / a.Tyres);
            var ratio = a.Tyre.Deflection(load).Meters / a.Tyre.SectionHeight.Meters;
            return Text(BrixiusKernel.Numeric(1000, a.Tyre.SectionWidth.Meters, a.Tyre.OverallDiameter.Meters, ratio, load.Newtons)) + " " + Text(loads.Newtons[i] / machine.Weight.Newtons);
        });
        Console.WriteLine(string.Join(" ", elements, Text(BrixiusKernel.Numeric(1, Width, Diameter, Deflection, 1)), Text(Slip), machine.Axles.Count, 0, string.Join(" ", axles)));
    }

    public static void Batches(int elements)
    {
        double[] index = new double[elements], load = new double[elements], result = new double[elements];
        for (var i = 0; i < elements; i++) (index[i], load[i]) = (150 + (i % 1500), 20 + (i % 40));
        var soils = MachineOnSoils.Of(PolderHarvester.Create().Stuck.Machine);
        Best("net-traction", () => BrixiusBatch.Bias.NetTraction(index, load, Width, Diameter, Deflection, Slip, result), result);
        Best("motion-resistance", () => BrixiusBatch.Bias.MotionResistance(index, load, Width, Diameter, Deflection, Slip, result), result);
        Best("mobility", () => soils.Mobility(index, result), result);
    }

    public static void Sampling()
    {
        var plan = PolderHarvester.Create();
        var sampler = PlanSampler.WithDefaults(plan);
        Rate(sampler, 100_000);
        Console.WriteLine("Demo plan with its default spreads, " + sampler.Inputs.Count + " inputs. Aim: 1,000,000 samples a second a core, no memory a sample.");
        Console.WriteLine();
        Console.WriteLine("| samples | seconds, one core | samples a second | bytes a sample |");
        Console.WriteLine("|---|---|---|---|");
        foreach (var samples in new[] { 10_000, 100_000, 1_000_000 })
        {
            var rate = Rate(sampler, samples);
            var block = new BlockSampler(sampler, 1, PointSet.Random);
            block.Run(0, 8192, default);
            var before = GC.GetAllocatedBytesForCurrentThread();
            block.Run(8192, samples / 10, default);
            Console.WriteLine($"| {samples} | {Text(samples / rate, "0.000")} | {Text(rate, "0")} | {Text((GC.GetAllocatedBytesForCurrentThread() - before) / (samples / 10.0), "0.0")} |");
        }

        Console.WriteLine();
        Console.WriteLine("| cores | samples a second | times one core |");
        Console.WriteLine("|---|---|---|");
        double one = 0;
        for (var cores = 1; cores <= Environment.ProcessorCount; cores *= 2)
        {
            var rate = Parallel(sampler, cores);
            if (cores == 1) one = rate;
            Console.WriteLine($"| {cores} | {Text(rate, "0")} | {Text(rate / one, "0.00")} |");
        }

        Console.WriteLine();
        Console.WriteLine("| parts of the rig | samples a second, one core |");
        Console.WriteLine("|---|---|");
        foreach (var more in new[] { 0, 4, 12 })
        {
            var longer = Longer(plan, more);
            Console.WriteLine($"| {longer.Rig.Parts.Count} | {Text(Rate(PlanSampler.WithDefaults(longer), 200_000), "0")} |");
        }

        Console.WriteLine();
        Memory(plan);

        Console.WriteLine();
        Console.WriteLine("An input that makes the plan anew (a mass, a depth) costs " + Text(1e6 / Rate(sampler.With("stuck.load:body", Spread.LognormalAround(1, 0.05)), 5000), "0") + " microseconds a sample and allocates.");
    }

    /// <summary>What is held: by a sampler, by one thread that samples, and by a result; it turns on the places of the rig, not on the samples.</summary>
    private static void Memory(RecoveryPlan plan)
    {
        Console.WriteLine("Memory for one thread. It is that of the bins in which every place of the rig is counted, and does not grow with the samples:");
        Console.WriteLine();
        Console.WriteLine("| parts of the rig | samples | bytes held by a sampler | bytes held by a result | bytes allocated by the run |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (var more in new[] { 0, 4, 12 })
        {
            var longer = Longer(plan, more);
            PlanSampler.WithDefaults(longer).RunPart(0, 1000, 1);
            foreach (var samples in new[] { 10_000, 100_000, 1_000_000 })
            {
                var sampler = Held(() => PlanSampler.WithDefaults(longer), out var bySampler);
                var before = GC.GetAllocatedBytesForCurrentThread();
                sampler.RunPart(0, samples, 1);
                var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
                GC.KeepAlive(Held(() => sampler.RunPart(0, samples, 1), out var byResult));
                Console.WriteLine($"| {longer.Rig.Parts.Count} | {samples} | {bySampler} | {byResult} | {allocated} |");
            }
        }
    }

    /// <summary>Bytes by which the heap has grown once something is made and all else is collected; the middle of nine, because the runtime takes and frees some for itself as well.</summary>
    private static T Held<T>(Func<T> make, out long bytes)
    {
        bytes = Enumerable.Range(0, 9).Select(_ => Once(make)).OrderBy(b => b).ElementAt(4);
        return make();
    }

    /// <summary>On a frame of its own, so that nothing of an earlier turn is still held.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static long Once<T>(Func<T> make)
    {
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var made = make();
        var after = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(made);
        return after - before;
    }

    private static RecoveryPlan Longer(RecoveryPlan plan, int more) => plan.With(new Rig(plan.Rig.Drawbar, plan.Rig.Parts.Concat(Enumerable.Range(0, more).Select(i => new Shackle("shackle " + i, Rating.WorkingLoadLimitTonnes(12, 5), Mass.FromKilograms(8)))), plan.Rig.Casualty));

    private static double Rate(PlanSampler sampler, int samples)
    {
        var best = double.PositiveInfinity;
        for (var r = 0; r < 3; r++)
        {
            var watch = Stopwatch.StartNew();
            sampler.RunPart(0, samples, 1);
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        return samples / best;
    }

    private static double Parallel(PlanSampler sampler, int cores)
    {
        const int Samples = 500_000;
        var best = double.PositiveInfinity;
        for (var r = 0; r < 3; r++)
        {
            var watch = Stopwatch.StartNew();
            System.Threading.Tasks.Parallel.For(0, cores, i => sampler.RunPart((long)i * Samples, Samples, 1));
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        return (double)cores * Samples / best;
    }

    private static void Best(string name, Action loop, double[] result)
    {
        // Long enough for the optimised code to be in place.
        var warm = Stopwatch.StartNew();
        while (warm.ElapsedMilliseconds < 500) loop();
        var best = long.MaxValue;
        for (var r = 0; r < Math.Max(20, 5_000_000 / result.Length); r++)
        {
            var start = Stopwatch.GetTimestamp();
            loop();
            best = Math.Min(best, Stopwatch.GetTimestamp() - start);
        }

        Console.WriteLine(name + " " + Text(1e9 * best / Stopwatch.Frequency / result.Length, "0.0000") + " " + Text(result.Sum(), "0.000000000000e+00"));
    }

    private static string Text(double value, string format = "R") => value.ToString(format, CultureInfo.InvariantCulture);
}
