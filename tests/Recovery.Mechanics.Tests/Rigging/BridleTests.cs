using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Recovery.Mechanics.Rigging;
using Recovery.Mechanics.Tests.Support;
using UnitsNet;
using Xunit;
using static Recovery.Mechanics.Tests.Support.ReferenceMachines;

namespace Recovery.Mechanics.Tests.Rigging;

public class BridleTests
{
    [Theory]
    [CheckRows("rigging", "bridle-symmetric")]
    public void Symmetric_bridle_matches(CheckRow row) => row.Matches(("T_over_P", BridleKernel.LegShare(row.Si("theta"))), ("H_over_P", BridleKernel.Inward(row.Si("theta"))), ("wrap", Math.PI - row.Si("theta")));

    [Theory]
    [CheckRows("rigging", "bridle-load-factor")]
    public void Printed_load_factors_match(CheckRow row) => row.Matches(("LF", 2 * BridleKernel.LegShare(Math.PI - (2 * row.Si("alpha")))));

    [Theory]
    [CheckRows("rigging", "bridle-ellipse")]
    public void Running_eye_sits_on_its_ellipse(CheckRow row)
    {
        var theta = BridleKernel.IncludedAngle(row.Si("w"), row.Si("L"), row.Si("delta"));
        row.MatchesOne("theta", theta);
        if (row.Has("P")) row.MatchesOne("T", BridleKernel.LegShare(theta) * row.Si("P"));
        else row.MatchesOne("T_over_P", BridleKernel.LegShare(theta));
    }

    [Theory]
    [CheckRows("rigging", "bridle-refused")]
    public void A_bridle_not_longer_than_its_spacing_is_refused(CheckRow row)
    {
        row.MatchesWord("result", "refuse");
        var refusal = Assert.Throws<ArgumentException>(() => Bridle.FreeRunning(new Strap("bridle", Fibre.Polyester, Rating.BreakingStrengthTonnes(60), Length.FromMeters(row.Si("L"))), Length.FromMeters(row.Si("w"))));
        Assert.Contains("2 m long and its anchors are 2 m apart", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [CheckRows("rigging", "bridle-friction")]
    public void Friction_band_matches(CheckRow row)
    {
        double theta = row.Si("theta"), mu = row.Si("mu"), high = BridleKernel.LegShareHigh(theta, mu), ratio = Math.Exp(mu * (Math.PI - theta));
        row.Matches(("ratio", ratio), ("T_high_over_P", high), ("T_low_over_P", high / ratio));
    }

    [Theory]
    [CheckRows("rigging", "choke-angle")]
    public void Choke_table_matches(CheckRow row) => row.Matches(("percent_of_choker", StrengthKernel.ChokeAngle(row.Si("choke_angle"))));

    [Theory]
    [CheckRows("rigging", "choke-angle-edge")]
    public void Choke_edges_take_the_lower_bin(CheckRow row) => row.Matches(("factor_on_choker", StrengthKernel.ChokeAngle(row.Si("choke_angle"))));

    [Theory]
    [CheckRows("rigging", "units")]
    public void Tonnes_are_tonnes_force(CheckRow row) => row.Matches(("force", Rating.BreakingStrengthTonnes(row.Si("mass") / 1000).Marked.Newtons));

    [Theory]
    [CheckRows("rigging", "partial-factor-wear")]
    public void Wear_stays_in_factor_and_floor(CheckRow row)
    {
        var wear = row.SiList("k_wear");
        row.MatchesList("sf", Array.ConvertAll(wear, w => PartialFactorKernel.Full(Fibre.Nylon, w)));
        row.MatchesList("floor", Array.ConvertAll(wear, w => PartialFactorKernel.Floor * w));
    }

    // Up to 120 deg, beyond which a bridle is refused: a nearly flat one (r cos(theta) below -1) would even be relieved by friction.
    [Property]
    public Property Each_leg_carries_at_least_half_and_more_the_wider_it_opens() => Prop.ForAll((from a in Gen.Choose(1, 1200) from mu in Gen.Choose(0, 30) select (a / 10.0, mu / 100.0)).ToArbitrary(), x =>
    {
        double theta = x.Item1 * Math.PI / 180, wider = theta + 0.01, share = BridleKernel.LegShare(theta);
        return share >= 0.5 && (wider >= Math.PI || BridleKernel.LegShare(wider) > share) && BridleKernel.LegShareHigh(theta, x.Item2) >= share - 1e-12;
    });

    [Property]
    public Property No_derating_raises_a_strength() => Prop.ForAll((from angle in Gen.Choose(0, 180) from wet in Gen.Elements(true, false) from fibre in Gen.Elements(Fibre.Nylon, Fibre.Polyester, Fibre.Hmpe) select (angle, wet, fibre)).ToArbitrary(), x =>
        new Strap("s", x.fibre, Rating.BreakingStrengthTonnes(40), M(2)) { Choked = true, AngleOfChoke = Angle.FromDegrees(x.angle), Condition = x.wet ? StrapCondition.Wet : StrapCondition.Sound }.Deratings <= 1);

    [Theory]
    [InlineData(5, 1)]
    [InlineData(5.0001, 0.70)]
    [InlineData(45, 0.70)]
    [InlineData(45.0001, 0.50)]
    [InlineData(90, 0.50)]
    [InlineData(90.0001, 0)]
    public void Shackle_steps_do_not_interpolate(double degrees, double factor) => Assert.Equal(factor, StrengthKernel.OffAxis(degrees * Math.PI / 180));
}
