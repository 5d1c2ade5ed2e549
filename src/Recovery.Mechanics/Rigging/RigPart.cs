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

    /// <summary>Gives the name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
