using System;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Terramechanics;

/// <summary>Mobility index and vehicle cone index of wheels and tracks, once. SI in, Pa out; the fits themselves are in pounds, inches, kips and psi.</summary>
/// <remarks>Sources: <see cref="TerramechanicsSources.MobilityIndex"/>, <see cref="TerramechanicsSources.OnePassWheels"/>, <see cref="TerramechanicsSources.FiftyPassesWheels"/>, <see cref="TerramechanicsSources.FiftyPassesHeavy"/>, <see cref="TerramechanicsSources.OnePassTracks"/>, <see cref="TerramechanicsSources.FiftyPassesTracks"/>; units by definition.</remarks>
internal static class MobilityKernel
{
    /// <summary>Mobility index at which the wheeled fits change branch.</summary>
    public const double Join = 115;

    /// <summary>Denominator of the one-pass fit for wheels in the 2006 paper; 2.14 is attributed to an edition of 1999.</summary>
    public const double OnePassDenominator = 3.74;

    /// <summary>Newtons in a kip.</summary>
    public const double NewtonsPerKip = 1000 * PhysicalConstants.NewtonsPerPoundForce;

    /// <summary>Watts per newton at ten horsepower a short ton.</summary>
    public const double EnginePowerLimit = 10 * 745.69987158227022 / (2000 * PhysicalConstants.NewtonsPerPoundForce);

    private const double Inch = PhysicalConstants.MetresPerInch;
    private const double Psi = PhysicalConstants.PascalsPerPsi;

    /// <summary>Nominal contact pressure of an axle, W/(0.5 n d b).</summary>
    public static double WheelContactPressure(double axleLoadNewtons, double wheels, double diameterMetres, double widthMetres) => axleLoadNewtons / (0.5 * wheels * diameterMetres * widthMetres);

    /// <summary>Nominal contact pressure of both tracks, W/(2 L w).</summary>
    public static double TrackContactPressure(double weightNewtons, double contactLengthMetres, double trackWidthMetres) => weightNewtons / (2 * contactLengthMetres * trackWidthMetres);

    /// <summary>Weight factor of wheels by kips per axle; 2 belongs to the branch above it, 13.5 and 20 to the one below.</summary>
    public static double AxleWeightFactor(double kipsPerAxle) =>
        kipsPerAxle < 2 ? 0.553 * kipsPerAxle
        : kipsPerAxle <= 13.5 ? (0.033 * kipsPerAxle) + 1.050
        : kipsPerAxle <= 20 ? (0.142 * kipsPerAxle) - 0.420
        : (0.278 * kipsPerAxle) - 3.115;

    /// <summary>Weight factor of a tracked machine by its gross weight in kips.</summary>
    public static double GrossWeightFactor(double kips) => kips < 50 ? 1.0 : kips < 70 ? 1.2 : kips < 100 ? 1.4 : 1.8;

    /// <summary>Tyre factor (10 + b)/100, b in inches.</summary>
    public static double TyreFactor(double widthMetres) => (10 + (widthMetres / Inch)) / 100;

    /// <summary>Track factor, track width in inches over 100.</summary>
    public static double TrackFactor(double trackWidthMetres) => trackWidthMetres / Inch / 100;

    /// <summary>Grouser factor of wheels: 1.05 with chains or grousers.</summary>
    public static double WheelGrouserFactor(bool grousers) => grousers ? 1.05 : 1.00;

    /// <summary>Grouser factor of tracks: 1.1 above 1.5 in.</summary>
    public static double TrackGrouserFactor(double grouserInches) => grouserInches > 1.5 ? 1.1 : 1.0;

    /// <summary>Wheel load factor: kips per wheel.</summary>
    public static double WheelLoadFactor(double axleLoadNewtons, double wheels) => axleLoadNewtons / NewtonsPerKip / wheels;

    /// <summary>Bogie factor (W/10)/(bogies x shoe area), W in pounds, area in square inches.</summary>
    public static double BogieFactor(double weightNewtons, double bogies, double shoeAreaSquareMetres) => weightNewtons / PhysicalConstants.NewtonsPerPoundForce / 10 / (bogies * (shoeAreaSquareMetres / (Inch * Inch)));

    /// <summary>Clearance factor, inches over 10.</summary>
    public static double ClearanceFactor(double clearanceMetres) => clearanceMetres / Inch / 10;

    /// <summary>Engine factor: 1.00 from ten horsepower a short ton, else 1.05.</summary>
    public static double EngineFactor(double wattsPerNewton) => wattsPerNewton >= EnginePowerLimit ? 1.00 : 1.05;

    /// <summary>Transmission factor: 1.05 manual.</summary>
    public static double TransmissionFactor(bool manual) => manual ? 1.05 : 1.00;

    /// <summary>MI = (CPF WF/(TF GF) + LF - CF) EF TrF.</summary>
    public static double Index(double contactPressurePascals, double weightFactor, double gearFactor, double grouserFactor, double loadFactor, double clearanceFactor, double engineFactor, double transmissionFactor) =>
        ((contactPressurePascals / Psi * weightFactor / (gearFactor * grouserFactor)) + loadFactor - clearanceFactor) * engineFactor * transmissionFactor;

    /// <summary>Deflection correction (0.15/(delta/h))^0.25.</summary>
    public static double DeflectionCorrection(double deflectionRatio) => Math.Sqrt(Math.Sqrt(0.15 / deflectionRatio));

    /// <summary>One pass of wheels, the branch to MI 115, psi.</summary>
    public static double OnePassLinear(double index, double denominator) => 11.48 + (0.2 * index) - (39.2 / (index + denominator));

    /// <summary>One pass of wheels, the branch above MI 115, psi.</summary>
    public static double OnePassPower(double index) => 4.1 * Math.Pow(index, 0.446);

    /// <summary>Fifty passes of wheels, the branch to MI 115, psi.</summary>
    public static double FiftyPassesLinear(double index) => 28.23 + (0.43 * index) - (92.67 / (index + 3.67));

    /// <summary>Fifty passes of wheels, the branch above MI 115, psi.</summary>
    public static double FiftyPassesPower(double index) => 9.0 * Math.Pow(index, 0.446);

    /// <summary>Vehicle cone index of wheels for one pass. The value at MI 115 is held until the upper branch regains it, so that a worse vehicle never scores better; a negative index counts as zero.</summary>
    public static double OnePassWheels(double index, double deflectionCorrection) => Psi * deflectionCorrection * (
        index <= Join ? OnePassLinear(Math.Max(0, index), OnePassDenominator) : Math.Max(OnePassLinear(Join, OnePassDenominator), OnePassPower(index)));

    /// <summary>Vehicle cone index of wheels for fifty passes, held at the join like the one for one pass.</summary>
    public static double FiftyPassesWheels(double index) => Psi * (
        index <= Join ? FiftyPassesLinear(Math.Max(0, index)) : Math.Max(FiftyPassesLinear(Join), FiftyPassesPower(index)));

    /// <summary>Vehicle cone index of tracks for one pass; a negative index counts as zero.</summary>
    public static double OnePassTracks(double index) => Psi * (7.0 + (0.2 * Math.Max(0, index)) - (39.2 / (Math.Max(0, index) + 5.6)));

    /// <summary>Vehicle cone index of tracks for fifty passes (from memory); a negative index counts as zero.</summary>
    public static double FiftyPassesTracks(double index) => Psi * (19.27 + (0.43 * Math.Max(0, index)) - (125.79 / (Math.Max(0, index) + 7.08)));
}
