using Recovery.Mechanics.Lines;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Rigging;

/// <summary>One part of a rig, named as a person would name it.</summary>
/// <remarks>Closed hierarchy: <see cref="Strap"/>, <see cref="Bridle"/>, <see cref="Shackle"/>, <see cref="SoftShackle"/>, <see cref="Chain"/>, <see cref="WireRope"/>, <see cref="SnatchBlock"/>. Immutable, equality by value.</remarks>
public abstract record RigPart
{
    private protected RigPart(string name)
    {
        Name = Guard.Name(name, nameof(name));
    }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Length it takes up in the line, m; 0 where it joins and is no line.</summary>
    internal virtual double LineMetres => 0;

    /// <summary>Elastic line between its two ends; null where it is no line or its strength is not known.</summary>
    internal virtual ElasticLine? Elastic => null;

    /// <summary>Mass of steel that flies with it, kg; 0 where there is none.</summary>
    internal virtual double SteelKilograms => 0;

    /// <summary>Whether it is a line: a strap, a chain or a wire rope.</summary>
    internal bool IsLine => this is Strap or Chain or WireRope;

    /// <summary>Whether it stretches much: a strap with a strain at break of more than some 2 %.</summary>
    internal bool StretchesMuch => this is Strap { Fibre: not Fibre.Hmpe };

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
