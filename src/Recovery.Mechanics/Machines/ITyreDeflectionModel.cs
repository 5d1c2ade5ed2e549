using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Machines;

/// <summary>A published law for the static deflection of a tyre.</summary>
public interface ITyreDeflectionModel : IModel
{
    /// <summary>Gives the deflection by this law alone; data of the tyre are left aside.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The deflection with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    TyreDeflection Evaluate(Tyre tyre, Force load);

    /// <summary>Works the deflection out.</summary>
    /// <param name="tyre">The tyre.</param>
    /// <param name="load">Wheel load, 0 to 500 kN.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    Working Explain(Tyre tyre, Force load);
}
