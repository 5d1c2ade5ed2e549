using System.Linq;
using Recovery.Mechanics.Terramechanics;
using Recovery.Mechanics.Tests.Support;
using Xunit;

namespace Recovery.Mechanics.Tests.Terramechanics;

public class MultiPassTests
{
    [Theory]
    [CheckRows("terramechanics", "multi-pass")]
    public void Ratio_matches(CheckRow row) => row.Matches(("CI_after/CI_before", MultiPassKernel.ConeIndexRatio(row.Si("Bn"))));

    [Theory]
    [CheckRows("terramechanics-scipy", "multi-pass")]
    public void Agrees_with_SciPy(CheckRow row)
    {
        row.Matches(("CI_after", MultiPassModel.Instance.After(Wheels.Of(row)).ConeIndexAfter.Pascals));
        var after = new double[1];
        MultiPassModel.Instance.After([row.Si("CI") / 1000], [row.Si("W") / 1000], row.Si("b"), row.Si("d"), row.Si("dh"), after);
        row.MatchesOne("CI_after", after[0] * 1000);
    }

    [Fact]
    public void The_batch_refuses_bad_spans() =>
        Assert.Throws<System.ArgumentOutOfRangeException>(() => MultiPassModel.Instance.After([400], [double.NaN], 0.6, 1.6, 0.2, new double[1]));

    [Theory]
    [InlineData(121, false)] // B_n = CI/21.876 here
    [InlineData(109, true)]
    public void Flags_a_numeric_below_five(double coneIndex, bool flagged) => Assert.Equal(flagged, MultiPassModel.Instance.After(Wheels.Of(coneIndex, 30)).Flags.Any());

    [Fact]
    public void Explains_down_to_the_index_after()
    {
        var wheel = Wheels.Of(400, 30);
        var working = MultiPassModel.Instance.Explain(wheel);
        Assert.Equal(MultiPassModel.Instance.After(wheel).ConeIndexAfter.Kilopascals, double.Parse(working.Steps[^1].Value.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 0.05);
    }
}
