using System;
using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Rigging;

/// <summary>What one puller puts into its line: steady, at the peak of the declared procedure, and on a careless take-up.</summary>
public sealed record RigPull
{
    /// <summary>Describes the pull of one puller.</summary>
    /// <param name="steady">The most it can hold, 0.1 to 5,000 kN.</param>
    /// <param name="procedure">Peak of the declared procedure, not below the steady pull, to 20,000 kN.</param>
    /// <param name="careless">Peak of a careless take-up, not below the steady pull, to 20,000 kN.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RigPull(Force steady, Force procedure, Force careless)
    {
        Steady = Force.FromNewtons(Guard.Newtons(steady, 0.1, 5000, nameof(steady)));
        Procedure = Force.FromNewtons(Guard.Newtons(procedure, Steady.Newtons / 1000, 20000, nameof(procedure)));
        Careless = Force.FromNewtons(Guard.Newtons(careless, Steady.Newtons / 1000, 20000, nameof(careless)));
        ProcedureSoft = Procedure;
    }

    /// <summary>Gets the most the puller can hold.</summary>
    public Force Steady { get; }

    /// <summary>Gets the peak of the declared procedure.</summary>
    public Force Procedure { get; }

    /// <summary>Gets the peak of a careless take-up.</summary>
    public Force Careless { get; }

    /// <summary>Gets the peak of the declared procedure at the soft end of the line, for energy and recoil; that of the stiff end where it is not known apart.</summary>
    public Force ProcedureSoft { get; private init; }

    /// <summary>Takes the three loads of a line.</summary>
    /// <param name="loads">The line loads of that puller.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentNullException">The loads are null.</exception>
    public static RigPull Of(LineLoads loads) => new(Guard.NotNull(loads, nameof(loads)).Steady, loads.ProcedurePeak, loads.Careless) { ProcedureSoft = loads.ProcedurePeakSoft };

    /// <summary>One given pull, the same at all three levels: for statics alone.</summary>
    /// <param name="pull">The pull, 0.1 to 5,000 kN.</param>
    /// <returns>The pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public static RigPull Held(Force pull) => new(pull, pull, pull);

    /// <summary>Gives the three in one line, invariant culture.</summary>
    /// <returns>Steady, procedure, careless.</returns>
    public override string ToString() => "steady " + Text.Kilonewtons(Steady.Newtons) + ", procedure " + Text.Kilonewtons(Procedure.Newtons) + ", careless " + Text.Kilonewtons(Careless.Newtons);

    internal double At(RigLoadLevel level) => (level switch
    {
        RigLoadLevel.Steady => Steady,
        RigLoadLevel.Procedure => Procedure,
        RigLoadLevel.ProcedureSoft => ProcedureSoft,
        _ => Careless,
    }).Newtons;
}
