using System.Collections.Generic;
using System.Linq;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What one axle of the stuck machine grips and asks for in its present state, by the wheel model.</summary>
/// <remarks>Brixius with bias constants at slip 0.30, on the load beside the belly, at the rating cone index held at the machine's own critical value. An axle whose wheels are buried is in no wheel model's range: its figures are listed, never credited.</remarks>
public sealed record AxleTraction
{
    internal AxleTraction(string name, bool driven, bool buried, double load, double numeric, double gross, double resistance, IReadOnlyList<ValidityFlag> flags)
    {
        Name = name;
        Driven = driven;
        Buried = buried;
        Load = Force.FromNewtons(load);
        Numeric = numeric;
        GrossTraction = Force.FromNewtons(gross);
        MotionResistance = Force.FromNewtons(resistance);
        NetTraction = Force.FromNewtons(gross - resistance);
        Flags = flags;
    }

    /// <summary>Gets the name of the axle.</summary>
    public string Name { get; }

    /// <summary>Gets whether the axle is driven.</summary>
    public bool Driven { get; }

    /// <summary>Gets whether its wheels are buried: then no wheel model covers them.</summary>
    public bool Buried { get; }

    /// <summary>Gets the load that its wheels carry: what a belly on the ground bears is taken off.</summary>
    public Force Load { get; }

    /// <summary>Gets the wheel numeric B_n; 0 where the axle carries nothing.</summary>
    public double Numeric { get; }

    /// <summary>Gets the gross traction at slip 0.30; zero where it is not driven.</summary>
    public Force GrossTraction { get; }

    /// <summary>Gets the motion resistance by the model, at slip 0.30 where driven and at no slip where not.</summary>
    public Force MotionResistance { get; }

    /// <summary>Gets gross traction less motion resistance; negative where the axle holds more than it grips.</summary>
    public Force NetTraction { get; }

    /// <summary>Gets the limits of the wheel model that were left.</summary>
    public IReadOnlyList<ValidityFlag> Flags { get; }

    /// <summary>Gets whether the model covers the axle: wheels that roll, load on them, no limit left.</summary>
    public bool InRange => !Buried && Flags.Count == 0 && Load.Newtons > 0;

    /// <summary>Gives the axle in one line, invariant culture.</summary>
    /// <returns>Name, net traction, and why it is not credited.</returns>
    public override string ToString() => Name + (Driven ? ": grips " + Text.Kilonewtons(GrossTraction.Newtons, 3) + ", asks " : ": not driven, asks ") + Text.Kilonewtons(MotionResistance.Newtons, 3) + Aside();

    /// <summary>Why the figures are not credited, to stand behind the name; empty where they are.</summary>
    internal string Aside() => Called().ToString().Substring(Name.Length);

    /// <summary>The name, with why the figures are not credited where they are not.</summary>
    internal Phrase Called() => Buried ? SelfPhrases.AxleBuried.With(Name)
        : !(Load.Newtons > 0) ? SelfPhrases.AxleEmpty.With(Name)
        : Flags.Count > 0 ? SelfPhrases.AxleOutside.With(Name, string.Join(", ", Flags.Select(f => f.Limit.Symbol)))
        : Phrase.Name(Name);
}
