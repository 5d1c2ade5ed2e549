using Recovery.Mechanics.Planning;
using Xunit;

namespace Recovery.Mechanics.Tests.Planning;

/// <summary>Numbers to stop at are rounded down: nobody who waits for the printed number has gone past the place.</summary>
public class DisplayTests
{
    [Theory]
    [InlineData(14.96, "14 m")]
    [InlineData(9.999, "9.9 m")]
    [InlineData(5.020647, "5 m")]
    [InlineData(0.1596, "0.15 m")]
    [InlineData(0.16, "0.16 m")]
    [InlineData(0.29, "0.29 m")]
    [InlineData(0, "0 m")]
    public void A_length_to_stop_at_is_never_beyond_the_place(double metres, string shown) => Assert.Equal(shown, Display.Metric.LengthAtMost(metres));

    // 1.18 and 0.164 ft, 47.9 ft.
    [Theory]
    [InlineData(0.36, "1.1 ft")]
    [InlineData(0.05, "0.16 ft")]
    [InlineData(14.6, "47 ft")]
    public void In_feet_as_well(double metres, string shown) => Assert.Equal(shown, new Display(DisplayUnits.Imperial).LengthAtMost(metres));

    [Theory]
    [InlineData(1.239, "1.23", "4.0")]
    [InlineData(0.3699, "0.36", "1.2")]
    [InlineData(0.20, "0.20", "0.65")]
    [InlineData(0.0169, "0.016", "0.055")]
    [InlineData(0, "0.00", "0.0")]
    public void A_stretch_to_stop_at_keeps_two_digits(double metres, string inMetres, string inFeet)
    {
        Assert.Equal(inMetres, Display.Metric.StretchAtMost(metres));
        Assert.Equal(inFeet, new Display(DisplayUnits.Imperial).StretchAtMost(metres));
    }
}
