using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Planning;

/// <summary>Numbers of a report in the units asked for. SI in, text out, invariant culture.</summary>
internal sealed class Display
{
    private const double NewtonsPerKip = 1000 * PhysicalConstants.NewtonsPerPoundForce;
    private const double MetresPerFoot = PhysicalConstants.MetresPerFoot;
    private const double KilogramsPerPound = PhysicalConstants.KilogramsPerPound;
    private const double JoulesPerFootPound = 1.3558179483314004;
    private const double MetresPerSecondPerMilePerHour = PhysicalConstants.MetresPerSecondPerMilePerHour;

    private readonly bool _imperial;

    public static Display Metric { get; } = new(DisplayUnits.Metric);

    public Display(DisplayUnits units) => _imperial = units == DisplayUnits.Imperial;

    public string ForceUnit => _imperial ? "kip" : "kN";

    /// <summary>Unit that gear is marked in.</summary>
    public Rigging.MarkingUnit MarkingUnit => _imperial ? Rigging.MarkingUnit.ShortTon : Rigging.MarkingUnit.Tonne;

    public string Force(double newtons) => _imperial ? Text.Number(newtons / NewtonsPerKip, 3) + " kip" : Text.Number(newtons / 1000, 3) + " kN";

    /// <summary>A force for a table whose header names the unit: whole kilonewtons, or tenths of a kip.</summary>
    public string Cell(double newtons)
    {
        var value = _imperial ? newtons / NewtonsPerKip : newtons / 1000;
        var text = Text.Fixed(value, _imperial ? 1 : 0);
        return text is "-0" or "-0.0" or "0.0" ? "0" : text;
    }

    public string Length(double metres, int digits = 3) => _imperial ? Text.With(metres / MetresPerFoot, "ft", digits) : Text.With(metres, "m", digits);

    public string Stretch(double metres) => _imperial ? Text.Fixed(metres / MetresPerFoot, 1) : Text.Fixed(metres, 2);

    /// <summary>A length at which something must have stopped, to two digits and rounded down: a number to stop at is never beyond the place.</summary>
    public string LengthAtMost(double metres)
    {
        var value = _imperial ? metres / MetresPerFoot : metres;
        return Text.With(Down(value, 1 - Decade(value)), _imperial ? "ft" : "m");
    }

    /// <summary>The same of a stretch, without its unit; a short one shows two digits.</summary>
    public string StretchAtMost(double metres)
    {
        var value = _imperial ? metres / MetresPerFoot : metres;
        var decimals = Math.Min(4, Math.Max(_imperial ? 1 : 2, 1 - Decade(value)));
        return Text.Fixed(Down(value, decimals), decimals);
    }

    public string StretchUnit => _imperial ? "ft" : "m";

    public string Pressure(double pascals) => _imperial ? Text.With(pascals / PhysicalConstants.PascalsPerPsi, "psi", 2) : Text.Kilopascals(pascals, 2);

    public string Mass(double kilograms) => _imperial ? Text.With(kilograms / KilogramsPerPound, "lb", 2) : kilograms >= 1000 ? Text.With(kilograms / 1000, "t", 3) : Text.With(kilograms, "kg", 2);

    public string Energy(double joules) => _imperial ? Text.With(joules / JoulesPerFootPound / 1000, "thousand ft-lb", 2) : Text.With(joules / 1000, "kJ", 2);

    public string Speed(double metresPerSecond) => _imperial ? Text.With(metresPerSecond / MetresPerSecondPerMilePerHour, "mph", 2) : Text.With(metresPerSecond * 3.6, "km/h", 2);

    /// <summary>A force as gear is marked: metric tonnes, or pounds.</summary>
    public string Marked(double newtons) => _imperial ? Text.Number(newtons / PhysicalConstants.NewtonsPerPoundForce, 3) + " lb" : Text.Number(newtons / (1000 * PhysicalConstants.StandardGravity), 3) + " t";

    /// <summary>A bound on a recoil speed: one figure, rounded up.</summary>
    public string Bound(double metresPerSecond) => _imperial
        ? Text.Number(Rigging.FailureCase.RoundedUp(metresPerSecond / MetresPerSecondPerMilePerHour)) + " mph"
        : Text.Number(Rigging.FailureCase.RoundedUp(metresPerSecond)) + " m/s";

    /// <summary>Message or remedy of a finding with its numbers in the units asked for.</summary>
    public string Fill(Finding finding, string template, string subject)
    {
        if (!_imperial) return finding.Fill(template, subject);
        if (finding.Unit == "m/s") return finding.Fill(template.Replace("{available}", finding.Available is { } speed ? Text.Number(Rigging.FailureCase.RoundedUp(speed / MetresPerSecondPerMilePerHour)) + " mph" : "unknown"), subject);
        var (factor, unit) = finding.Unit switch
        {
            "kN" => (1000 / NewtonsPerKip, "kip"),
            "kPa" => (1000 / PhysicalConstants.PascalsPerPsi, "psi"),
            "m" => (1 / MetresPerFoot, "ft"),
            "kN m" => (1 / (NewtonsPerKip / 1000 * MetresPerFoot), "kip ft"),
            _ => (1, finding.Unit),
        };
        return template
            .Replace("{subject}", subject)
            .Replace("{required}", Show(finding.Required * factor, unit))
            .Replace("{available}", Show(finding.Available * factor, unit))
            .Replace("{ratio}", Show(finding.Ratio, string.Empty));
    }

    private static string Show(double? value, string unit) => value is { } number ? Text.With(number, unit, 3) : "unknown";

    private static int Decade(double value) => value > 0 ? (int)Math.Floor(Math.Log10(value)) : 0;

    /// <summary>Rounded down to a number of decimals; what lies within rounding of a whole one is that one.</summary>
    private static double Down(double value, int decimals) => Math.Floor((value * Math.Pow(10, decimals)) + 1e-9) / Math.Pow(10, decimals);
}
