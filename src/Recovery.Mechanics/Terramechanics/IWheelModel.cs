using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>A published model of one wheel on one soil.</summary>
public interface IWheelModel : IModel
{
    /// <summary>Gives motion resistance, gross and net traction of one wheel.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="slip">Slip (travel reduction ratio), 0 to 1; 0 for a towed or undriven wheel.</param>
    /// <returns>The result with its flags.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside 0 to 1 or not a number.</exception>
    WheelResult Evaluate(WheelOnSoil wheel, Ratio slip);

    /// <summary>Gives the same result as worked steps.</summary>
    /// <param name="wheel">The wheel, its load and its soil.</param>
    /// <param name="slip">Slip, 0 to 1.</param>
    /// <returns>Symbol, expression, numbers put in, value and source, step by step.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wheel"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slip"/> is outside 0 to 1 or not a number.</exception>
    Working Explain(WheelOnSoil wheel, Ratio slip);
}
