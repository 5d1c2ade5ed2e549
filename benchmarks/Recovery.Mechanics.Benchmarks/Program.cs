using System.Globalization;
using BenchmarkDotNet.Running;
using Recovery.Mechanics.Benchmarks;

switch (args.Length > 0 ? args[0] : string.Empty)
{
    case "setup": ReferenceRuns.Setup(int.Parse(args[1], CultureInfo.InvariantCulture)); break;
    case "batches": ReferenceRuns.Batches(int.Parse(args[1], CultureInfo.InvariantCulture)); break;
    case "sampling": ReferenceRuns.Sampling(); break;
    case "take-ups": PlanRuns.TakeUps(); break;
    case "plans": PlanRuns.Plans(); break;
    default: BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args); break;
}
