"""Recomputes cases of the wheel and track models with numpy and SciPy, and writes shared/check-values/terramechanics-scipy.csv.

The equations are stated here on their own, where it can be done by another road (quadrature of a slope, a root, a search for a maximum);
nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/terramechanics.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq, minimize_scalar

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/terramechanics.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    pack = lambda pairs: "; ".join(f"{k}={v} {u}" if isinstance(v, str) else f"{k}={float(v)!r} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


def wheel(ci, b, d, dh, w, s=None):
    given = [("CI", ci, "Pa"), ("b", b, "m"), ("d", d, "m"), ("dh", dh, "1"), ("W", w, "N")]
    return given if s is None else given + [("s", s, "1")]


def integral(slope, s):
    return quad(slope, 0, s, epsabs=1e-14, epsrel=1e-13)[0]


CASES = [(640e3, 0.71, 2.05, 0.22, 50e3, 0.3), (400e3, 0.90, 2.05, 0.20, 98.1e3, 0.25), (900e3, 0.60, 1.60, 0.22, 30e3, 0.16), (1500e3, 0.65, 1.90, 0.28, 40e3, 0.07)]

# --- Wismer and Luth: gross traction as the integral of its slope -----------------------------------------------------
for n, case in enumerate(CASES):
    ci, b, d, dh, w, s = case
    cn = ci * b * d / w
    gross = integral(lambda x: 0.75 * 0.3 * cn * math.exp(-0.3 * cn * x), s)
    row(f"tms-wismer-luth-{n}", "wismer-luth", wheel(*case), [("MR", w * (1.2 / cn + 0.04), "N"), ("GT", w * gross, "N"), ("NT", w * (gross - 1.2 / cn - 0.04), "N")])

# --- Gee-Clough: net traction as an integral, best efficiency by search ----------------------------------------------
for n, case in enumerate(CASES):
    ci, b, d, dh, w, s = case
    m = ci * b * d / w * math.sqrt(dh) / (1 + b / d / 2)
    top, rate, crr = 0.796 - 0.92 / m, 4.838 + 0.061 * m, 0.049 + 0.287 / m
    net = lambda x: integral(lambda y: rate * math.exp(-rate / top * y), x)
    best = minimize_scalar(lambda x: -net(x) * (1 - x) / (net(x) + crr), bounds=(1e-3, 0.9), method="bounded", options={"xatol": 1e-9})
    row(f"tms-gee-clough-{n}", "gee-clough", wheel(*case), [("M", m, "1"), ("MR", w * crr, "N"), ("NT", w * net(s), "N"), ("GT", w * (net(s) + crr), "N")])
    row(f"tms-gee-clough-eta-{n}", "gee-clough-efficiency", [("M", m, "1")], [("eta_max", -best.fun, "1")], "rel 1e-8")

# --- WES clay: the numeric at which the towed ratio has a value, by root ---------------------------------------------
for n, ratio in enumerate([0.06, 0.1, 0.3, 0.8]):
    nc = brentq(lambda x: 0.04 + 0.2 / (x - 2.5) - ratio, 2.5 + 1e-6, 100, xtol=1e-15, rtol=8.9e-16)
    b, d, dh, w = 0.60, 1.60, 0.20, 49.05e3
    row(f"tms-wes-clay-{n}", "wes-clay", wheel(nc * w / (b * d) * (1 + b / (2 * d)) / math.sqrt(dh), b, d, dh, w), [("Nc", nc, "1"), ("MR", ratio * w, "N")], "rel 1e-8")

# --- VTI, fine soil: s0 by root of gross traction --------------------------------------------------------------------
for n, case in enumerate(CASES):
    ci, b, d, dh, w, s = case
    nv = ci * b * d / (w * (1 - dh) ** 1.5 * (1 + b / d) ** 0.75)
    zero = math.exp(brentq(lambda x: x - math.log(21) + 2.5 * math.log(nv), -30, 10, xtol=1e-15, rtol=8.9e-16))
    gross = quad(lambda x: 0.5 / (math.log(10) * x), zero, s, epsabs=1e-14, epsrel=1e-13)[0]
    mrr = 12 / nv**2 + 0.007
    row(f"tms-vti-{n}", "vti-fine", wheel(*case), [("s0", zero, "1"), ("MR", w * mrr, "N"), ("GT", w * gross, "N"), ("NT", w * (gross * (1 + b / d) ** 0.25 - mrr), "N")])

# --- Maclaurin in logarithms -----------------------------------------------------------------------------------------
for n, (ci, b, d, delta, w, passes, a) in enumerate([(400e3, 0.90, 2.05, 0.11, 98.1e3, 1, 3.0), (700e3, 0.60, 1.60, 0.07, 40e3, 10, 3.5), (1200e3, 0.71, 2.05, 0.12, 55e3, 50, 4.5)]):
    mmp = math.exp(math.log(w) - 0.8 * (math.log(b) + math.log(d)) - 0.4 * math.log(delta))
    limit = brentq(lambda x: x / mmp - 1.85, 1, 1e8, xtol=1e-9, rtol=8.9e-16)
    rut = math.exp(math.log(0.224 * d) - 1.25 * math.log(ci / mmp))
    row(f"tms-maclaurin-{n}", "maclaurin", [("CI", ci, "Pa"), ("b", b, "m"), ("d", d, "m"), ("delta", delta, "m"), ("W", w, "N"), ("passes", passes, "1"), ("a", a, "1")],
        [("MMP", mmp, "Pa"), ("CI_limit", limit, "Pa"), ("z", rut, "m"), ("z_m", rut * math.exp(math.log(passes) / a), "m"), ("MR", w * (0.017 + 0.453 * mmp / ci), "N")])

# --- hard surface ----------------------------------------------------------------------------------------------------
for n, (name, r, k, b, d, w, s) in enumerate([("bias", 0.02, 300e3, 0.71, 2.05, 30e3, 0.15), ("radial", 0.01625, 500e3, 0.65, 1.9, 40e3, 0.1)]):
    cn = k * b * d / w
    net = integral(lambda x: 1.02 * cn * math.exp(-cn * x), s)
    row(f"tms-hard-{n}", "hard-surface", [("constants", name, "set")] + wheel(k, b, d, 0.2, w, s), [("MR", r * w, "N"), ("GT", w * (net + r), "N"), ("NT", w * net, "N")])

# --- multi-pass ------------------------------------------------------------------------------------------------------
for n, (ci, b, d, dh, w, _) in enumerate(CASES[:2]):
    bn = ci * b * d / w * (1 + 5 * dh) / (1 + 3 * b / d)
    row(f"tms-multi-pass-{n}", "multi-pass", wheel(ci, b, d, dh, w), [("CI_after", ci * (2.8 + integral(lambda x: -0.11 * 1.8 * math.exp(-0.11 * x), bn)), "Pa")])

with open("shared/check-values/terramechanics-scipy.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
