using System;
using System.Collections.Generic;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Ground;

/// <summary>Adhesion of clay on tyre walls and steel by a named rule.</summary>
/// <remarks>
/// <para>Adhesion is a thin-film term: nearly independent of rate and of venting. Suction under a base is another term and depends on both; the two are never lumped.</para>
/// <list type="bullet">
/// <item><description>API RP 2GEO 2011 (reported): f = alpha s_u; alpha = 0.5 psi^-0.5 for psi up to 1, 0.5 psi^-0.25 above, at most 1; psi = s_u/p'0 with p'0 the effective overburden. Meant for piles at depth; psi up to 3 (from memory).</description></item>
/// <item><description>NAVFAC DM-7.2, steel piles (from memory): a broken line from 250 psf (all of the strength) by 460 psf at 500 to 700 psf at 1,000; held beyond, flagged.</description></item>
/// <item><description>Tomlinson (from memory): all of the strength up to 25 kPa, 0.3 of it from 100 kPa; a straight line between (judgement).</description></item>
/// <item><description>Wet farm clay (judgement, the rule of this library): 0.5 of the strength, 0.3 to 0.6 as a spread, at most 12 kPa.</description></item>
/// </list>
/// </remarks>
public sealed class AdhesionModel : IModel
{
    private readonly Func<double, double, double> _adhesion;
    private readonly Func<double, double, double> _limited;
    private readonly string _expression;

    private AdhesionModel(string name, Source source, string expression, ValidityLimit limit, Func<double, double, double> limited, Func<double, double, double> adhesion)
    {
        Name = name;
        Source = source;
        Validity = new Validity(limit);
        _expression = expression;
        _limited = limited;
        _adhesion = adhesion;
    }

    /// <summary>Gets the rule of API RP 2GEO 2011.</summary>
    public static AdhesionModel Api { get; } = new("Adhesion, API RP 2GEO", GroundSources.AdhesionApi, "min(1, 0.5 psi^-0.5 or 0.5 psi^-0.25) s_u", new ValidityLimit("psi", "strength over effective overburden", 0, 3, string.Empty, GroundSources.AdhesionApiRange), (s, p) => s / p, (s, p) => AdhesionKernel.ApiFactor(s, p) * s);

    /// <summary>Gets the rule of NAVFAC DM-7.2 for steel piles.</summary>
    public static AdhesionModel NavfacSteelPile { get; } = new("Adhesion, NAVFAC DM-7.2 steel piles", GroundSources.AdhesionNavfac, "broken line through 250, 460, 700 psf at 250, 500, 1000 psf", Strength(1000 * AdhesionKernel.PascalsPerPsf / 1000, GroundSources.AdhesionNavfac), (s, _) => s / 1000, (s, _) => AdhesionKernel.NavfacSteelPile(s));

    /// <summary>Gets the rule of Tomlinson.</summary>
    public static AdhesionModel Tomlinson { get; } = new("Adhesion, Tomlinson", GroundSources.AdhesionTomlinson, "alpha s_u, alpha from 1 at 25 kPa to 0.3 at 100 kPa", Strength(AdhesionKernel.TomlinsonLeastPascals / 1000, GroundSources.AdhesionTomlinson), (s, _) => s / 1000, (s, _) => AdhesionKernel.TomlinsonFactor(s) * s);

    /// <summary>Gets the rule of this library for wet farm clay; its limit is where the cap takes over.</summary>
    public static AdhesionModel FarmClay { get; } = new("Adhesion, wet farm clay", GroundSources.Adhesion, "min(0.5 s_u, 12 kPa)", Strength(AdhesionKernel.CapPascals / AdhesionKernel.FarmClayFactor / 1000, GroundSources.Adhesion), (s, _) => s / 1000, (s, _) => AdhesionKernel.Capped(s, AdhesionKernel.FarmClayFactor));

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Source Source { get; }

    /// <inheritdoc/>
    public Validity Validity { get; }

    /// <summary>Gives the adhesion of all rules side by side.</summary>
    /// <param name="undrainedShearStrength">Undrained shear strength, 0.1 to 500 kPa.</param>
    /// <param name="effectiveOverburden">Effective overburden p'0, 0.5 to 200 kPa; about 8 kPa at 0.5 m.</param>
    /// <returns>One result a rule, with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static IReadOnlyList<AdhesionResult> Compare(Pressure undrainedShearStrength, Pressure effectiveOverburden) =>
        Array.AsReadOnly([Api.Evaluate(undrainedShearStrength, effectiveOverburden), NavfacSteelPile.Evaluate(undrainedShearStrength, effectiveOverburden), Tomlinson.Evaluate(undrainedShearStrength, effectiveOverburden), FarmClay.Evaluate(undrainedShearStrength, effectiveOverburden)]);

    /// <summary>Gives the adhesion.</summary>
    /// <param name="undrainedShearStrength">Undrained shear strength, 0.1 to 500 kPa.</param>
    /// <param name="effectiveOverburden">Effective overburden p'0, 0.5 to 200 kPa; only the API rule uses it.</param>
    /// <returns>The adhesion with its flags.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AdhesionResult Evaluate(Pressure undrainedShearStrength, Pressure effectiveOverburden)
    {
        double s = Guard.Pascals(undrainedShearStrength, 0.1, 500, nameof(undrainedShearStrength)), p = Guard.Pascals(effectiveOverburden, 0.5, 200, nameof(effectiveOverburden));
        return new AdhesionResult(this, s, _adhesion(s, p), Validity.Flag(_limited(s, p)));
    }

    /// <summary>Works the adhesion out step by step.</summary>
    /// <param name="undrainedShearStrength">Undrained shear strength, 0.1 to 500 kPa.</param>
    /// <param name="effectiveOverburden">Effective overburden p'0, 0.5 to 200 kPa.</param>
    /// <returns>The worked steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Working Explain(Pressure undrainedShearStrength, Pressure effectiveOverburden)
    {
        var result = Evaluate(undrainedShearStrength, effectiveOverburden);
        return new WorkingBuilder(Name)
            .Step("alpha", "share of the strength", "f/s_u", "s_u = " + Text.Kilopascals(undrainedShearStrength.Pascals) + ", p'0 = " + Text.Kilopascals(effectiveOverburden.Pascals), Text.Number(result.AdhesionFactor.DecimalFractions), Source)
            .Step("f", "adhesion", _expression, Text.Number(result.AdhesionFactor.DecimalFractions) + " x " + Text.Number(undrainedShearStrength.Kilopascals), Text.Kilopascals(result.Adhesion.Pascals), Source)
            .Build();
    }

    private static ValidityLimit Strength(double mostKilopascals, Source source) => new("s_u", "undrained shear strength", 0, mostKilopascals, "kPa", source);
}
