using System.Collections.Generic;
using Recovery.Mechanics.Provenance;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>Sources of the room: sampling and reliability.</summary>
internal static class UncertaintySources
{
    /// <summary>Counter-based generator.</summary>
    public static readonly Source Philox = new("philox", "Philox4x32-10: Salmon, Moraes, Dror and Shaw, Parallel random numbers: as easy as 1, 2, 3, SC11, 2011; Random123 known-answer vectors", Standing.Secondary);

    /// <summary>Combination of coefficients of variation.</summary>
    public static readonly Source CovCombination = new("cov-combination", "COV^2 = Gamma^2 COV_w^2 + COV_e^2 + COV_t^2: UFC 3-220-20 Eq. 7-5", Standing.Secondary);

    /// <summary>Cone index within a field.</summary>
    public static readonly Source ConeIndexScatter = new("cov-cone-index", "Coefficient of variation of cone index within one clay field, five depths, several dates: 0.165 to 0.458", Standing.Primary);

    /// <summary>Undrained strength.</summary>
    public static readonly Source StrengthScatter = new("cov-undrained-strength", "Coefficient of variation of undrained strength, site-specific clay 0.06 to 0.56, mean 0.28: compilation in UFC 3-220-20", Standing.Secondary);

    /// <summary>Measurement error of a cone.</summary>
    public static readonly Source ConeError = new("cov-cone-error", "Coefficient of variation of cone measurement error: electric 0.05 to 0.15, mechanical 0.15 to 0.25, reported", Standing.Secondary);

    /// <summary>A reading taken for the index of the ground: as weak as the weaker of the two.</summary>
    public static readonly Source ConeReading = new("cov-cone-reading", "Coefficient of variation of a cone index from a reading: that within a field (cov-cone-index, primary) with the error of a mechanical cone (cov-cone-error, reported)", Standing.Secondary);

    /// <summary>Cone to strength.</summary>
    public static readonly Source ConeTransformation = new("cov-cone-transformation", "Coefficient of variation of the transformation from cone to undrained strength 0.29 to 0.35: compilation in UFC 3-220-20", Standing.Secondary);

    /// <summary>New fibre rope.</summary>
    public static readonly Source NewStrengthScatter = new("cov-new-strength", "Coefficient of variation of new fibre-rope strength 0.02 to 0.05: two small sets of knotted 6 mm braid, reported", Standing.Secondary);

    /// <summary>Minimum strength.</summary>
    public static readonly Source MinimumStrength = new("minimum-strength", "Minimum breaking strength at least three standard deviations below the test mean: Cordage Institute CI-1801, reported", Standing.Secondary);

    /// <summary>Used gear.</summary>
    public static readonly Source UsedStrength = new("used-strength", "Used strength is a bias, not a scatter: a retired rescue cord lost 18 per cent of its mean, used dock lines broke at a third of their rating", Standing.Derived);

    /// <summary>Model error of the wheel equations.</summary>
    public static readonly Source WheelModelError = new("cov-wheel-model", "Model error of motion-resistance and traction equations of the Brixius class, coefficient of variation 0.15 to 0.30", Standing.FromMemory);

    /// <summary>Operator.</summary>
    public static readonly Source OperatorSpeed = new("cov-take-up-speed", "Coefficient of variation of the take-up speed an operator reaches, 0.2 to 0.3: no publication", Standing.FromMemory);

    /// <summary>Log spreads of the demand.</summary>
    public static readonly Source DemandScatter = new("demand-spread", "Logarithmic standard deviations of an extraction force: method 0.35, soil 0.50 without a test and 0.25 with several cone readings, sealing 0.35 and 0.30; engineering judgement", Standing.Judgement);

    /// <summary>Reliability method.</summary>
    public static readonly Source Form = new("form", "First-order reliability: Hasofer and Lind 1974, Rackwitz and Fiessler 1978; damped with a line search after Zhang and Der Kiureghian 1995", Standing.FromMemory);

    /// <summary>Sensitivity estimators.</summary>
    public static readonly Source Sobol = new("sobol-indices", "Variance-based sensitivity indices: Sobol 1993, estimators of Saltelli et al. 2010 and Jansen 1999; Ishigami and G-function values derived", Standing.Derived);

    /// <summary>Direction numbers.</summary>
    public static readonly Source SobolPoints = new("sobol-points", "Direction numbers of Joe and Kuo 2008 (new-joe-kuo-6.21201) for Sobol points, as SciPy carries them", Standing.Secondary);

    /// <summary>Normal distribution.</summary>
    public static readonly Source Normal = new("normal-functions", "Normal distribution function after Cody 1969 and its inverse after Wichura 1988 (AS 241); held against SciPy and MathNet", Standing.FromMemory);

    /// <summary>Binomial interval.</summary>
    public static readonly Source Binomial = new("binomial-interval", "Exact binomial interval of Clopper and Pearson 1934", Standing.FromMemory);

    /// <summary>All sources of the room.</summary>
    public static IEnumerable<Source> All { get; } =
    [
        Philox, CovCombination, ConeIndexScatter, StrengthScatter, ConeError, ConeReading, ConeTransformation, NewStrengthScatter, MinimumStrength, UsedStrength, WheelModelError, OperatorSpeed, DemandScatter,
        Form, Sobol, SobolPoints, Normal, Binomial,
    ];
}
