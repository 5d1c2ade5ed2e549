"""Recomputes cases of the room Uncertainty with numpy and SciPy, and writes shared/check-values/uncertainty-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/uncertainty.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy import integrate, special, stats

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/uncertainty.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-12"):
    text = lambda v: v if isinstance(v, str) else "|".join(repr(float(x)) for x in v) if isinstance(v, (list, tuple, np.ndarray)) else repr(float(v))
    pack = lambda pairs: "; ".join(f"{k}={text(v)} 1" for k, v in pairs)
    ROWS.append([f"uncertainty-scipy-{ident}", model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- normal distribution ------------------------------------------------------------------------------------------------
for n, x in enumerate([-37.5, -12.5, -8.0, -5.66, -5.65, -3.7, -1.3, -0.6745, -0.6744, -1e-3, 0.0, 0.3, 0.6745, 1.96, 4.2, 8.0]):
    row(f"cdf-{n}", "normal-cdf", [("x", x)], [("P", special.ndtr(x))], "rel 4e-14")
for n, p in enumerate([1e-300, 1e-100, 1e-20, 2.3e-11, 1e-6, 0.02, 0.0749, 0.0751, 0.31, 0.5, 0.77, 0.9251, 0.999, 1 - 1e-9]):
    row(f"inverse-{n}", "normal-inverse", [("P", p)], [("x", special.ndtri(p))], "rel 1e-14" if p != 0.5 else "abs 1e-16")

# --- spreads: quantiles at eight probabilities, mean, deviation ------------------------------------------------------------
PROBABILITIES = [1e-9, 1e-3, 0.05, 0.3, 0.5, 0.8, 0.999, 1 - 1e-7]


def spread(ident, kind, given, dist, tolerance="rel 2e-12", upper=None):
    q = [dist.ppf(p) if p < 0.9 or upper is None else upper(1 - p) for p in PROBABILITIES]
    row(f"spread-{ident}", "spread", [("kind", kind)] + given + [("p", PROBABILITIES)], [("q", q), ("mean", dist.mean()), ("sd", dist.std())], tolerance)


zeta = math.sqrt(math.log(1 + 0.45**2))
spread("lognormal", "lognormal", [("a", 350.0), ("b", 0.45)], stats.lognorm(zeta, scale=350 / math.sqrt(1 + 0.45**2)), "rel 1e-11")
spread("normal", "normal", [("a", -2.0), ("b", 3.0)], stats.norm(-2, 3))
spread("uniform", "uniform", [("a", 2.0), ("b", 5.0)], stats.uniform(2, 3))
spread("triangular", "triangular", [("a", 10.0), ("b", 12.5), ("c", 20.0)], stats.triang(0.25, 10, 10), "rel 1e-9")
spread("triangular-left", "triangular", [("a", 1.0), ("b", 1.0), ("c", 3.0)], stats.triang(0, 1, 2), "rel 1e-9")
spread("pert", "pert", [("a", 0.1), ("b", 0.2), ("c", 0.8)], stats.beta(1 + 4 * 0.1 / 0.7, 1 + 4 * 0.6 / 0.7, 0.1, 0.7), "rel 1e-8")
scale = 4 * math.sqrt(6) / math.pi
spread("gumbel", "gumbel", [("a", 20.0), ("b", 4.0)], stats.gumbel_r(20 - np.euler_gamma * scale, scale), "rel 1e-9", upper=None)
spread("truncated", "truncated", [("a", 0.9), ("b", 0.1), ("c", 1 / 3), ("d", 1.0)], stats.truncnorm((1 / 3 - 0.9) / 0.1, 1, 0.9, 0.1), "rel 1e-6")


# --- binomial interval, and a summary of a stated sequence ------------------------------------------------------------------
for n, (hits, count) in enumerate([(0, 20), (1, 20), (7, 1000), (500, 1000), (999, 1000), (12, 1_000_000)]):
    lo = 0.0 if hits == 0 else stats.beta.ppf(0.025, hits, count - hits + 1)
    hi = 1.0 if hits == count else stats.beta.ppf(0.975, hits + 1, count - hits)
    row(f"binomial-{n}", "binomial", [("hits", hits), ("count", count)], [("low", lo), ("high", hi)], "rel 1e-7")
for n, (count, centre, width) in enumerate([(1000, 250e3, 0.4), (12_345, 1.2, 0.7), (4000, -30.0, 0.1), (999, 5e6, 1e-4)]):
    # x_i = centre exp(width sin(i)) + 0.1 centre width cos(2 i)
    i = np.arange(count, dtype=float)
    x = centre * np.exp(width * np.sin(i)) + 0.1 * centre * width * np.cos(2 * i)
    rank = lambda p: np.sort(x)[math.ceil(p * count) - 1]
    row(f"summary-{n}", "summary", [("count", count), ("centre", centre), ("width", width)], [("mean", np.mean(x)), ("sd", np.std(x, ddof=1))], "rel 1e-6" if width < 1e-3 else "rel 1e-8")
    row(f"quantile-{n}", "summary-quantile", [("count", count), ("centre", centre), ("width", width)], [(f"q{int(100 * p)}", rank(p)) for p in (0.05, 0.5, 0.95)], "rel 0.003907")

# --- reliability: smallest distance to the limit (SLSQP), probabilities by quadrature ------------------------------------------
from scipy import optimize  # noqa: E402

for n, rho in enumerate([0.0, 0.4]):
    zr = math.sqrt(math.log(1 + 0.08**2))
    gs = 30e3 * math.sqrt(6) / math.pi

    def values(u):
        z1 = u[0]
        z2 = rho * u[0] + math.sqrt(1 - rho * rho) * u[1]
        return (650e3 / math.sqrt(1 + 0.08**2) * math.exp(zr * z1), (250e3 - np.euler_gamma * gs) - gs * math.log(-special.log_ndtr(z2)), 0.6 + 0.4 * special.ndtr(u[2]))

    best = min((optimize.minimize(lambda u: 0.5 * u @ u, start, jac=lambda u: u, method="SLSQP", options={"ftol": 1e-16, "maxiter": 500},
                                  constraints={"type": "eq", "fun": lambda u: (values(u)[0] * values(u)[2] - values(u)[1]) / 1e5})
                for start in ([-0.5, 1.0, -0.5], [0.0, 3.0, 0.0])), key=lambda r: r.fun)
    x = values(best.x)
    row(f"first-order-{n}", "first-order", [("R_mean", 650e3), ("R_cov", 0.08), ("S_mean", 250e3), ("S_sd", 30e3), ("w_min", 0.6), ("w_max", 1.0), ("rho", rho)],
        [("beta", math.sqrt(2 * best.fun)), ("R_star", x[0]), ("S_star", x[1]), ("w_star", x[2])], "rel 1e-4")

cubic = integrate.quad(lambda u: stats.norm.pdf(u) * stats.norm.cdf((np.cbrt(18 - (10 + 5 * u) ** 3) - 9.9) / 5), -12, 12, epsabs=0, epsrel=1e-11, limit=2000, points=[(18 ** (1 / 3) - 10) / 5, -2, -4])[0]
row("probability-0", "failure-probability", [("x1_mean", 10.0), ("x1_sd", 5.0), ("x2_mean", 9.9), ("x2_sd", 5.0)], [("Pf", cubic)], "rel 1e-6")

# --- Sobol points ----------------------------------------------------------------------------------------------------------
from scipy.stats import qmc  # noqa: E402

DIMENSIONS = [0, 1, 2, 3, 6, 12, 20, 36, 52, 77, 99]
plain = qmc.Sobol(d=100, scramble=False).random_base2(13)
for index in [0, 1, 2, 3, 7, 64, 1000, 4095, 4096, 8191]:
    row(f"sobol-{index}", "sobol-points", [("index", index), ("dimension", DIMENSIONS)], [("x", plain[index, DIMENSIONS])], "abs 1e-12")


def main():
    with open("shared/check-values/uncertainty-scipy.csv", "w", newline="", encoding="utf-8") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
        w.writerows(ROWS)
    print(len(ROWS), "rows")


main()
