using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Ground;

/// <summary>Coefficients of the two moisture fits of one soil class, and where each pair comes from.</summary>
internal readonly struct MoistureCoefficients
{
    private MoistureCoefficients(double a, double b, double ratingA, double ratingB, SoilKind kind, Source? cone = null, Source? rating = null)
    {
        (A, B, RatingA, RatingB, Kind) = (a, b, ratingA, ratingB, kind);
        ConeSource = cone ?? GroundSources.MoistureCone;
        RatingSource = rating ?? GroundSources.MoistureRating;
    }

    public double A { get; }

    public double B { get; }

    public double RatingA { get; }

    public double RatingB { get; }

    public SoilKind Kind { get; }

    public Source ConeSource { get; }

    public Source RatingSource { get; }

    /// <summary>The table. The slope of CH is printed as -5.583, which would leave 0.001 psi at 40 %; -2.583 is taken (from memory).</summary>
    public static MoistureCoefficients Of(UscsClass uscs) => uscs switch
    {
        UscsClass.SW or UscsClass.SP => new(3.987, 0.815, 3.987, 0.815, SoilKind.CleanSand),
        UscsClass.SM => new(8.749, -1.1949, 12.542, -2.955, SoilKind.SandWithFines),
        UscsClass.SC or UscsClass.SMSC => new(9.056, -1.3566, 12.542, -2.955, SoilKind.SandWithFines),
        UscsClass.CL => new(10.998, -1.848, 15.506, -3.530, SoilKind.FineGrained),
        UscsClass.ML => new(10.225, -1.565, 11.936, -2.407, SoilKind.FineGrained),
        UscsClass.CLML => new(9.454, -1.385, 14.236, -3.137, SoilKind.FineGrained, rating: GroundSources.MoistureRatingFromMemory),
        UscsClass.CH => new(13.816, -2.583, 13.686, -2.705, SoilKind.FineGrained, cone: GroundSources.MoistureFatClay),
        UscsClass.MH => new(12.321, -2.044, 23.641, -5.191, SoilKind.FineGrained, rating: GroundSources.MoistureRatingFromMemory),
        UscsClass.OL => new(10.977, -1.754, 17.399, -3.584, SoilKind.FineGrained, rating: GroundSources.MoistureRatingFromMemory),
        _ => new(13.046, -2.172, 12.189, -1.942, SoilKind.FineGrained),
    };
}
