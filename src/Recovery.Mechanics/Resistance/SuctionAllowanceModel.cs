using System;
using Recovery.Mechanics.Provenance;
using UnitsNet;

namespace Recovery.Mechanics.Resistance;

/// <summary>What mud holds by suction: behind a buried wheel along the pull, under a belly against a rise; sealed, part-vented or vented.</summary>
/// <remarks>
/// <para>Behind a wheel S_h = 2 s_w b z (full contact less none at the rear, K_ru 4 - 2); under a belly S_v = A min(f N_c s_f, 100 kPa + gamma z_b), N_c 5.14, f 0 vented to 1 closed and quick.</para>
/// <para>Low is vented in every state but nothing else changes it. Central: sealed or not declared S_h and f 0.5; part-vented half of S_h and f 0.3; vented nothing. High: S_h and f 1 unless vented: air somewhere is no credit everywhere. Shares are judgement.</para>
/// <para>s_w, s_f undrained strength of wall and floor in kPa; b width, z sinkage in m; A area in m2, z_b immersion in m, gamma unit weight in kN/m3. Published accuracy of suction is half to one and a half times. Thin-film adhesion is another term and does not fade.</para>
/// <para>Source: API RP 2GEO 2011 (secondary); shares judgement.</para>
/// </remarks>
public sealed class SuctionAllowanceModel : IModel
{
    private SuctionAllowanceModel()
    {
    }

    /// <summary>Gets the model.</summary>
    public static SuctionAllowanceModel Instance { get; } = new();

    /// <inheritdoc/>
    public string Name => "Suction allowance";

    /// <inheritdoc/>
    public Source Source => ResistanceSources.Suction;

    /// <inheritdoc/>
    public Validity Validity { get; } = new(new ValidityLimit("s_u", "undrained strength", 1, 60, "kPa", ResistanceSources.Composition));

    /// <summary>Gives the suction behind one buried wheel.</summary>
    /// <param name="sectionWidth">Tyre width b, 0.1 to 1.5 m.</param>
    /// <param name="sinkage">Sinkage z, 0 to 3 m.</param>
    /// <param name="wall">Undrained strength of the uncut soil, 0.1 to 500 kPa.</param>
    /// <param name="seal">Whether air or water reaches it.</param>
    /// <returns>Low, central and high along the pull.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SuctionAllowance BehindWheel(Length sectionWidth, Length sinkage, Pressure wall, Seal seal)
    {
        var s = Guard.Pascals(wall, 0.1, 500, nameof(wall));
        var full = BuriedWheelKernel.Suction(Guard.Metres(sectionWidth, 0.1, 1.5, nameof(sectionWidth)), Guard.Metres(sinkage, 0, 3, nameof(sinkage)), s);
        return Check(seal) switch
        {
            Seal.Vented => Of(seal, 0, 0, s),
            Seal.PartVented => Of(seal, (1 - SuctionKernel.PartVentedShare) * full, full, s),
            _ => Of(seal, full, full, s),
        };
    }

    /// <summary>Gives what a belly could hold against a rise, before the limit that the wheels set.</summary>
    /// <param name="belly">The belly.</param>
    /// <param name="floor">Undrained strength of the floor, 0.1 to 500 kPa.</param>
    /// <param name="unitWeight">Unit weight of the soil, 9 to 24 kN/m3.</param>
    /// <param name="seal">Whether air or water reaches it.</param>
    /// <returns>Low, central and high, vertical.</returns>
    /// <exception cref="ArgumentNullException">The belly is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SuctionAllowance UnderBelly(Belly belly, Pressure floor, SpecificWeight unitWeight, Seal seal)
    {
        Guard.NotNull(belly, nameof(belly));
        double s = Guard.Pascals(floor, 0.1, 500, nameof(floor)), area = belly.Length.Meters * belly.Width.Meters, q = Guard.NewtonsPerCubicMetre(unitWeight, 9, 24, nameof(unitWeight)) * belly.Immersion.Meters;
        return Check(seal) switch
        {
            Seal.Vented => Of(seal, 0, 0, s),
            Seal.PartVented => Of(seal, SuctionKernel.Uplift(SuctionKernel.UpliftPartVented, s, area, q), SuctionKernel.Uplift(1, s, area, q), s),
            _ => Of(seal, SuctionKernel.Uplift(SuctionKernel.UpliftSealed, s, area, q), SuctionKernel.Uplift(1, s, area, q), s),
        };
    }

    private SuctionAllowance Of(Seal seal, double central, double high, double strength) => new(seal, ForceBand.FromNewtons(0, central, high), Validity.Flag(strength / 1000));

    private static Seal Check(Seal seal) => Guard.Defined(seal, seal is >= Seal.Undeclared and <= Seal.PartVented, nameof(seal));
}
