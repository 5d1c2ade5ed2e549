using System;
using System.Diagnostics;
using System.Globalization;
using Recovery.Mechanics.Planning;
using Recovery.Mechanics.Resistance;
using Recovery.Mechanics.Scenarios;

namespace Recovery.Mechanics.Benchmarks;

/// <summary>Whole plans and take-ups by a plain stopwatch, for <c>benchmarks/reference/run-all</c>: best of many runs, and the bytes that one run allocates.</summary>
internal static class PlanRuns
{
    /// <summary>Name and milliseconds of each take-up, as <c>benchmarks/reference/lines.py --time</c> prints them.</summary>
    public static void TakeUps()
    {
        var runs = new TakeUpBenchmarks();
        foreach (var name in TakeUpBenchmarks.Names)
        {
            runs.Name = name;
            var (seconds, bytes) = Best(() => runs.Simulate(), 200);
            Console.WriteLine(name + " " + Text(1e3 * seconds, "0.00000") + " " + bytes.ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <summary>A table of assessing, making and searching.</summary>
    public static void Plans()
    {
        var plan = PolderHarvester.Create();
        Console.WriteLine("Demo plan, best of many runs on one thread.");
        Console.WriteLine();
        Console.WriteLine("| what | time | bytes allocated |");
        Console.WriteLine("|---|---|---|");
        Row("assess a plan", () => plan.Assess(), 20_000);
        Row("pull demand alone, from its typed machine", () => PullDemand.Estimate(plan.Stuck), 20_000);
        Row("make the plan anew with another stuck machine", () => plan.With(plan.Stuck.Vented()), 20_000);
        Row("make the plan from its parts", () => new RecoveryPlan(plan.Stuck, plan.Tower, plan.Rig, plan.Policy, plan.Procedure, plan.Site), 20_000);
        Row("build every part and the plan", PolderHarvester.Create, 5000);
        Row("assess it and print the report", () => plan.Assess().ToReport(), 300);
        Row("best set of up to three measures of its list", () => MeasureList.BestSet(plan, 3), 20);
        Row("search over twelve measures, " + MeasureSearch.Run(plan, AssessBenchmarks.Twelve).SetsTried.ToString(CultureInfo.InvariantCulture) + " sets tried", () => MeasureSearch.Run(plan, AssessBenchmarks.Twelve), 10);
    }

    private static void Row(string what, Func<object> run, int times)
    {
        var (seconds, bytes) = Best(run, times);
        Console.WriteLine($"| {what} | {(seconds < 1e-3 ? Text(1e6 * seconds, "0.0") + " us" : Text(1e3 * seconds, "0.0") + " ms")} | {bytes} |");
    }

    private static (double Seconds, long Bytes) Best<T>(Func<T> run, int times)
    {
        // Long enough for the optimised code to be in place.
        var warm = Stopwatch.StartNew();
        while (warm.ElapsedMilliseconds < 300) run();
        var best = long.MaxValue;
        for (var r = 0; r < times; r++)
        {
            var start = Stopwatch.GetTimestamp();
            run();
            best = Math.Min(best, Stopwatch.GetTimestamp() - start);
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        run();
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        return ((double)best / Stopwatch.Frequency, bytes);
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
