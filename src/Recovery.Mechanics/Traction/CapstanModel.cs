using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Traction;

/// <summary>Tension ratio of a rope or strap wrapped round something it may slip on.</summary>
/// <remarks>
/// <para>T_1 = T_2 exp(mu beta); beta wrap in radians, mu friction; whatever the radius, as long as the rope does not stiffen or flatten.</para>
/// <para>Take friction low (0.10) where it holds the load, high (0.30) where it multiplies the load on an edge: the two are not to be exchanged. On bark 0.3 to 0.5 (from memory).</para>
/// <para>Source: statics (derived); coefficients judgement.</para>
/// </remarks>
public sealed class CapstanModel : IModel
{
    private CapstanModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static CapstanModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Capstan";

    /// <inheritdoc/>
    public Source Source => WinchSources.Capstan;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("mu", "friction between rope and what it is wrapped round", 0.10, 0.50, string.Empty, WinchSources.WrapFriction));

    /// <summary>Gets the friction to take where friction holds the load (judgement).</summary>
    public Ratio FrictionThatHolds => Ratio.FromDecimalFractions(0.10);

    /// <summary>Gets the friction to take where friction multiplies a load (judgement).</summary>
    public Ratio FrictionThatLoads => Ratio.FromDecimalFractions(0.30);

    /// <summary>Gives the ratio of the greater to the lesser tension at the point of slipping.</summary>
    /// <param name="friction">Friction, 0 to 1.</param>
    /// <param name="wrap">Wrap, 0 to 3,600 degrees.</param>
    /// <returns>The ratio, at least 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public double TensionRatio(Ratio friction, Angle wrap) => CapstanKernel.Ratio(Guard.Fraction(friction, 0, 1, nameof(friction)), Guard.Radians(wrap, 0, 3600, nameof(wrap)));

    /// <summary>Gives the load that a tail force holds.</summary>
    /// <param name="tail">Force on the tail, 0 to 100 kN.</param>
    /// <param name="friction">Friction, 0 to 1; 0.10 where the wrap must hold.</param>
    /// <param name="wrap">Wrap, 0 to 3,600 degrees.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Force Held(Force tail, Ratio friction, Angle wrap) => Force.FromNewtons(Guard.Newtons(tail, 0, 100, nameof(tail)) * TensionRatio(friction, wrap));

    /// <summary>Gives the wrap that holds a load with a tail force.</summary>
    /// <param name="load">Load, 0.1 to 5,000 kN.</param>
    /// <param name="tail">Force on the tail, 0.01 kN to the load.</param>
    /// <param name="friction">Friction, 0.01 to 1.</param>
    /// <returns>The wrap.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Angle WrapThatHolds(Force load, Force tail, Ratio friction)
    {
        var newtons = Guard.Newtons(load, 0.1, 5000, nameof(load));
        return Angle.FromRadians(CapstanKernel.Wrap(Guard.Fraction(friction, 0.01, 1, nameof(friction)), newtons / Guard.Newtons(tail, 0.01, newtons / 1000, nameof(tail))));
    }

    /// <summary>Works the ratio out step by step.</summary>
    /// <param name="friction">Friction, 0 to 1.</param>
    /// <param name="wrap">Wrap, 0 to 3,600 degrees.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Ratio friction, Angle wrap) => new WorkingBuilder(Name)
        .Step("T_1/T_2", "tension ratio over the wrap", "exp(mu beta)", "exp(" + Text.Number(friction.DecimalFractions) + " x " + Text.Number(wrap.Radians) + ")", Text.Number(TensionRatio(friction, wrap)), Source)
        .Build();
}
