namespace Recovery.Mechanics.Ground;

/// <summary>The two undrained strengths of a stuck machine, each as three bounds, Pa.</summary>
internal readonly record struct StuckSoilStrength(double FloorLow, double FloorCentral, double FloorHigh, double WallLow, double WallCentral, double WallHigh, bool ReadingBelowBound);
