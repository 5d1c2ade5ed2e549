using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What the choice of face method does to one demand.</summary>
public sealed record FaceMethodDemand
{
    internal FaceMethodDemand(FaceMethod method, double face, double total, ForceBand band)
    {
        Method = method;
        CentralFace = Force.FromNewtons(face);
        CentralTotal = Force.FromNewtons(total);
        Total = band;
    }

    /// <summary>Gets the method.</summary>
    public FaceMethod Method { get; }

    /// <summary>Gets the soil ahead of all buried wheels that meet uncut soil, central, each at most the rigid step of its wheel.</summary>
    public Force CentralFace { get; }

    /// <summary>Gets the central demand with that method.</summary>
    public Force CentralTotal { get; }

    /// <summary>Gets the band of bounds with that method.</summary>
    public ForceBand Total { get; }

    /// <summary>Gives the row in one line, invariant culture.</summary>
    /// <returns>Method, face and total.</returns>
    public override string ToString() => Method.Name + ": face " + Text.Kilonewtons(CentralFace.Newtons, 3) + " of " + Text.Kilonewtons(CentralTotal.Newtons, 3);
}
