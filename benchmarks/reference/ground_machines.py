"""Recomputes soil strength, tyres and axle loads with numpy and SciPy, and writes shared/check-values/ground-machines-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/ground_machines.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.interpolate import interp1d
from scipy.optimize import brentq, fsolve

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/ground_machines.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    pack = lambda pairs: "; ".join(f"{k}={float(v)!r} {u}" if not isinstance(v, str) else f"{k}={v}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- class and moisture: a straight line in double logarithms, through two of its points -----------------------------
PSI = 4.4482216152605 / 0.0254**2
FITS = {  # class: a, b, a', b'
    "SW": (3.987, 0.815, 3.987, 0.815), "SP": (3.987, 0.815, 3.987, 0.815), "SM": (8.749, -1.1949, 12.542, -2.955),
    "SC": (9.056, -1.3566, 12.542, -2.955), "SM-SC": (9.056, -1.3566, 12.542, -2.955), "CL": (10.998, -1.848, 15.506, -3.530),
    "ML": (10.225, -1.565, 11.936, -2.407), "CL-ML": (9.454, -1.385, 14.236, -3.137), "CH": (13.816, -2.583, 13.686, -2.705),
    "MH": (12.321, -2.044, 23.641, -5.191), "OL": (10.977, -1.754, 17.399, -3.584), "OH": (13.046, -2.172, 12.189, -1.942),
}
for name, (a, b, a2, b2) in FITS.items():
    w = 0.33
    ends = np.array([1.0, 200.0])
    line = lambda c, m: math.exp(float(interp1d(np.log(ends), c + m * np.log(ends))(math.log(100 * w)))) * PSI
    ci, rci = line(a, b), line(a2, b2)
    row(f"gms-moisture-{name.lower()}", "moisture", [("uscs", name, ""), ("w", 33.0, "%")], [("CI", ci, "Pa"), ("RCI", min(ci, rci), "Pa"), ("RCI_uncapped", rci, "Pa")])

# --- liquidity index: from its slope d ln s/d LI = -ln 35, integrated from the liquid limit ---------------------------
for n, li in enumerate([-0.2, 0.35, 0.9, 1.3]):
    row(f"gms-liquidity-{n}", "liquidity-index", [("LI", li, "1")], [("s_u", 1700 * math.exp(quad(lambda x: -math.log(35), 1, li)[0]), "Pa")])

# --- adhesion ---------------------------------------------------------------------------------------------------------
for n, (su, p0) in enumerate([(3e3, 12e3), (9e3, 9e3), (15e3, 6e3), (60e3, 10e3)]):
    psi = su / p0
    row(f"gms-api-{n}", "adhesion-api", [("s_u", su, "Pa"), ("p0", p0, "Pa")], [("alpha", min(1.0, 0.5 / (math.sqrt(psi) if psi <= 1 else math.sqrt(math.sqrt(psi)))), "1")])
PSF = 4.4482216152605 / 0.3048**2
for n, c in enumerate([100, 310, 640, 1300]):
    row(f"gms-navfac-{n}", "adhesion-navfac-line", [("s_u", c * PSF, "Pa")], [("f", float(np.interp(c, [0, 250, 500, 1000], [0, 250, 460, 700])) * PSF, "Pa")])
for n, s in enumerate([10e3, 40e3, 85e3, 160e3]):
    row(f"gms-tomlinson-{n}", "adhesion-tomlinson", [("s_u", s, "Pa")], [("alpha", float(np.interp(s, [25e3, 100e3], [1, 0.3])), "1")])

# --- Bekker parameters to cone index: the cone as an integral of p(x) over its height ---------------------------------
TERRAINS = [("dry sand LLL", .99, 1528.43, 1.1), ("sandy loam LLL 15", 5.27, 1515.04, .7), ("sandy loam LLL 22", 2.56, 43.12, .2), ("upland", 74.6, 2080, 1.1), ("North Gower", 41.6, 2471, .73), ("heavy clay 25", 12.7, 1555.95, .13)]
for n, (_, kc, kphi, m) in enumerate(TERRAINS):
    for depth in (0.05, 0.2):
        z, tip = depth / 0.0254, depth / 0.0254 + 1.5
        c = kc * 1000 / 4.4482216152605 * 0.0254 ** (m + 1)
        f = kphi * 1000 / 4.4482216152605 * 0.0254 ** (m + 2)
        ci = 1.625 * (quad(lambda x: c * x**m, z, tip, epsabs=0, epsrel=1e-12)[0] + 0.517 * quad(lambda x: f * (tip - x) * x**m, z, tip, epsabs=0, epsrel=1e-12)[0])
        row(f"gms-bekker-cone-{n}-{int(depth * 100)}", "bekker-cone", [("kc", kc, "kN/m^(n+1)"), ("kphi", kphi, "kN/m^(n+2)"), ("n", m, "1"), ("z", depth, "m")], [("CI", ci * PSI, "Pa")])

# --- other fits of penetration resistance ------------------------------------------------------------------------------
for n, (sand, por, sat) in enumerate([(0.1, 0.5, 1.0), (0.7, 0.38, 0.4)]):
    row(f"gms-vega-nieva-{n}", "vega-nieva", [("sand", sand, "1"), ("porosity", por, "1"), ("S", sat, "1")], [("CI", 1e6 * math.exp(math.log(10) * float(np.dot([1.99, -0.38, -2.23, -0.72], [1, sand, por, sat]))), "Pa")])
for n, (w, h) in enumerate([(250, 2), (900, 8)]):
    row(f"gms-peat-{n}", "peat", [("w", float(w), "%")], [("CI", 10504e3 * math.exp(-0.561 * math.log(w)), "Pa")])
    row(f"gms-amarjan-{n}", "amarjan", [("w", float(w), "%"), ("H", float(h), "1")], [("CI", 2500e3 / w * (100 - 3.60 * math.exp(1.414 * math.log(h))), "Pa"), ("tau", 140e3 / w * (100 - 2.83 * math.exp(1.41 * math.log(h))), "Pa")])

# --- mean of a cone profile over a layer --------------------------------------------------------------------------------
Z, Q = np.array([0, 0.1, 0.25, 0.4, 0.6]), np.array([900e3, 700e3, 350e3, 420e3, 1100e3])
for n, (top, bottom) in enumerate([(0.0, 0.3048), (0.1524, 0.3048), (0.2286, 0.381), (0.0762, 0.2286)]):
    grid = np.unique(np.concatenate([Z[(Z > top) & (Z < bottom)], [top, bottom]]))
    row(f"gms-profile-{n}", "profile-mean", [("depths", "0|0.1|0.25|0.4|0.6 m", ""), ("readings", "900|700|350|420|1100 kPa", ""), ("top", top, "m"), ("bottom", bottom, "m")], [("CI", float(np.trapz(np.interp(grid, Z, Q), grid)) / (bottom - top), "Pa")])

# --- wheat: Nelson's polynomial by numpy -----------------------------------------------------------------------------------
for n, m in enumerate([0.0, 0.09, 0.155, 0.2, 0.3]):
    row(f"gms-nelson-{n}", "nelson", [("M", m, "1")], [("rho", float(np.polyval([311600, -148960, 18510, -703, 774.4], m)), "kg/m3")])

# --- pressure along a stiff track: a linear pressure that cannot pull, from its two sums --------------------------------------
for n, (load, length, width, e) in enumerate([(150e3, 2.2, 0.76, 0.0), (150e3, 2.2, 0.76, 0.3), (90e3, 1.9, 0.635, -0.28), (120e3, 3.0, 0.5, 0.9), (120e3, 3.0, 0.5, -1.1)]):
    half = length / 2

    def sums(v):
        if not np.isfinite(v).all():
            return np.full(2, 1e9)
        a, g = v  # pressure a + g x at x from the middle
        zero = -a / g if abs(g) > 1e-9 else np.inf
        cuts = [zero] if -half < zero < half else None
        p = lambda x: max(a + g * x, 0.0)
        pieces = [-half] + (cuts or []) + [half]
        f = sum(quad(p, lo, hi)[0] for lo, hi in zip(pieces, pieces[1:])) * width
        m = sum(quad(lambda x: x * p(x), lo, hi)[0] for lo, hi in zip(pieces, pieces[1:])) * width
        return np.array([f / load - 1, (m - load * e) / (load * length)])

    mean = load / (length * width)
    a, g = fsolve(sums, [mean, 8 * mean * e / length**2], xtol=1e-13)
    assert np.abs(sums([a, g])).max() < 1e-10, (n, sums([a, g]))
    row(f"gms-track-{n}", "track-pressure", [("W", load, "N"), ("l", length, "m"), ("b", width, "m"), ("e", e, "m")], [("mean", mean, "Pa"), ("front", max(a + g * half, 0), "Pa"), ("rear", max(a - g * half, 0), "Pa")], "rel 1e-8")

# --- taking loads off: axle loads as the least-squares (least-energy) solution on equal springs, before and after ------------
PARTS = {"body": (27e3, -2.75, 1.7), "front": (3e3, 2.2, 0.8), "beet": (22e3, -3.9, 2.6)}
AXLES = np.array([0.0, -4.9, -6.8])


def axle_loads(parts, grade, p):
    th = math.atan(grade)
    masses = np.array([v[0] for v in parts.values()])
    w = 9.80665 * masses.sum()
    xc, zc = (np.dot(masses, [v[k] for v in parts.values()]) / masses.sum() for k in (1, 2))
    rhs = np.array([w * math.cos(th), w * (xc * math.cos(th) - p * zc * math.sin(th))])
    return np.linalg.pinv(np.vstack([np.ones_like(AXLES), AXLES])) @ rhs  # least sum of squares = equal stiffness


for n, (name, grade, p) in enumerate([("beet", 0.02, -1), ("front", 0.02, -1), ("beet", 0.0, -1), ("front", -0.06, 1)]):
    change = axle_loads({k: v for k, v in PARTS.items() if k != name}, grade, p) - axle_loads(PARTS, grade, p)
    row(f"gms-unload-{n}", "unloading", [("load", name, ""), ("grade", 100 * grade, "%"), ("p", float(p), "1")], [(f"dN{i + 1}", float(c), "N") for i, c in enumerate(change)])

# --- tyre deflection, apart from the library's grouping of terms ---------------------------------------------------------------
IN = 0.0254


def saarilahti(w, p):  # kN, kPa -> m
    return np.polyval([0.365e-3 + 0.170 / p, 0.8e-3], w)


def lines_murphy(w, p, b, rim, age):  # kN, kPa, m, m, years -> m
    return w / np.dot([172, -1.77, 5.6, 0.34], [1, rim / IN, age, b / IN * rim / IN * p / 100])


for n, (w, p, b, d, h, age) in enumerate([(64, 180, 0.8, 2.05, 0.55, 0), (32, 120, 0.6, 1.6, 0.42, 8), (110, 320, 1.05, 1.95, 0.57, 15)]):
    row(f"gms-deflection-{n}", "deflection", [("W", w, "kN"), ("p", p, "kPa"), ("b", b, "m"), ("d", d, "m"), ("h", h, "m"), ("age", age, "1")], [("saarilahti", float(saarilahti(w, p)), "m"), ("lines_murphy", float(lines_murphy(w, p, b, d - 2 * h, age)), "m")])

# --- two tyres on one hub: the height of the hub by root finding ---------------------------------------------------------------
for n, (w, pi, po, di, do) in enumerate([(90, 160, 160, 1.95, 1.95), (90, 160, 110, 1.95, 1.95), (120, 200, 200, 1.95, 1.92), (60, 240, 120, 2.05, 2.07), (15, 240, 240, 2.05, 1.95)]):
    def carried(hub):
        def one(d, p):
            delta = d / 2 - hub
            return max(0.0, brentq(lambda f: saarilahti(f, p) - delta, -1e3, 1e4, xtol=1e-13, rtol=1e-14))
        return one(di, pi), one(do, po)

    hub = brentq(lambda y: sum(carried(y)) - w, 0.5, max(di, do) / 2, xtol=1e-15, rtol=1e-14)
    inner, outer = carried(hub)
    row(f"gms-dual-{n}", "dual", [("W", w, "kN"), ("p_i", pi, "kPa"), ("p_o", po, "kPa"), ("d_i", di, "m"), ("d_o", do, "m")], [("F_i", inner, "kN"), ("F_o", outer, "kN")], "abs 1e-6")

# --- contact after Keller, O'Sullivan and the yardstick: area by quadrature of the outline, alpha by root finding on the load ---
for n, (p, prec, d, w, W) in enumerate([(150, 150, 1.9, 0.65, 45), (90, 180, 2.05, 0.8, 58), (220, 160, 1.6, 0.6, 40), (200, 200, 2.1, 1.25, 80)]):
    length = 0.47 + 0.11 * d**2 - 0.16 * math.log(p / prec)
    shape = 2.1 * (w * d) ** 2 + 2
    peak = 34.4 + 1.13 * p + 0.72 * W - 33.4 * math.log(p / prec)
    decay = 9.3 - 7.3 * w
    half = lambda y: length / 2 * (1 - abs(2 * y / w) ** shape) ** (1 / shape)
    # t = 1 - (1 - s)^4 bunches the points at the edge of the footprint
    integral = lambda g: 2 * quad(lambda q: g(w / 2 * (1 - q**4)) * w / 2 * 4 * q**3, 0, 1, epsabs=0, epsrel=1e-12, limit=200)[0]
    area = integral(lambda y: 2 * half(y))
    raw = lambda y: (w / 2 - abs(y)) * math.exp(-decay * (w / 2 - abs(y)))
    scale = 1 / max(raw(y) for y in np.append(np.linspace(0, w / 2, 20001), w / 2 - 1 / decay if 0 < 1 / decay < w / 2 else 0))
    shape_integral = integral(lambda y: scale * raw(y) * half(y))
    carried = lambda a: 2 * peak * shape_integral * a / (a + 1)
    alpha = brentq(lambda a: carried(a) - W, 1e-6, 1e6, xtol=1e-13, rtol=1e-14)
    x, y = 0.15, 0.12
    sigma = peak * scale * raw(y) * (1 - (x / half(y)) ** alpha)
    given = [("p", p, "kPa"), ("p_rec", prec, "kPa"), ("d", d, "m"), ("w", w, "m"), ("W", W, "kN")]
    row(f"gms-keller-{n}", "keller", given, [("L", length, "m"), ("n", shape, "1"), ("A", area, "m2"), ("sigma_max", peak, "kPa"), ("mean", W / area, "kPa")], "rel 1e-8")
    row(f"gms-keller-stress-{n}", "keller-stress", given + [("x", x, "m"), ("y", y, "m")], [("sigma_max", peak, "kPa"), ("delta_y", decay, "1/m"), ("f_0", scale * raw(0), "1"), ("alpha", alpha, "1"), ("sigma_centre", peak * scale * raw(0), "kPa"), ("sigma_xy", sigma, "kPa")], "rel 1e-7")
    row(f"gms-osullivan-{n}", "osullivan", given, [("soft", float(np.dot([0.310, 0.00263, 0.239], [w * d, W, W / p])), "m2"), ("hard", float(np.dot([0.041, 0, 0.613], [w * d, W, W / p])), "m2")])
    row(f"gms-nominal-{n}", "nominal-pressure", [("W", W, "kN"), ("d", d, "m"), ("b", w, "m")], [("p_nom", W / (np.pi * (d / 2) ** 2) * np.pi * d / 2 / w, "kPa")])

# --- wheels left and right: a stiff body on equal springs at every wheel, three sums, least squares ---------------------------------
for n, (grade, side, p, tracks, left_of_middle) in enumerate([(0.0, 0.08, -1, (2.6, 2.6, 2.6), 0.0), (0.02, 0.10, -1, (2.6, 2.4, 2.2), 0.0), (-0.05, -0.06, 1, (2.7, 2.3, 2.3), 0.1)]):
    masses = np.array([v[0] for v in PARTS.values()])
    w = 9.80665 * masses.sum()
    xc, zc = (np.dot(masses, [v[k] for v in PARTS.values()]) / masses.sum() for k in (1, 2))
    yc = masses[2] * left_of_middle / masses.sum()
    down = np.array([-grade * p, -side, -1.0]) / math.sqrt(1 + grade**2 + side**2)  # gravity in the frame of the machine
    x = np.repeat(AXLES, 2)
    y = np.array([s * b / 2 for b in tracks for s in (1, -1)])
    # moments of the weight about the x and y axes through the foremost contact, and its normal part
    force, arm = w * down, np.array([xc, yc, zc])
    torque = np.cross(arm, force)
    # ground forces N at (x, y, 0): torque x: y N, torque y: -x N
    rhs = np.array([-force[2], -torque[0], -torque[1]])
    wheel = np.linalg.pinv(np.vstack([np.ones(6), y, -x])) @ rhs
    assert (wheel > 0).all()
    row(f"gms-wheels-{n}", "wheel-loads", [("grade", 100 * grade, "%"), ("side", 100 * side, "%"), ("p", float(p), "1"), ("B", "|".join(map(str, tracks)) + " m", ""), ("left", left_of_middle, "m")], [(f"{s}{i + 1}", float(wheel[2 * i + (0 if s == 'L' else 1)]), "N") for i in range(3) for s in "LR"])

# --- a rear axle on a pin: bodies cut free at the pin, solved as one linear system ----------------------------------------------------
for n, (mass, xc, zc, wheelbase, bf, br, pin, side) in enumerate([(20e3, -1.5, 1.6, 3.6, 2.6, 2.2, 0.6, 0.1), (18e3, -1.2, 1.9, 3.4, 2.8, 2.4, 0.8, -0.07)]):
    c = 1 / math.sqrt(1 + side**2)
    w, lateral = 9.80665 * mass * c, 9.80665 * mass * c * side  # normal part, part towards the right
    # unknowns: front left, front right, rear left, rear right; the side force goes with the axle load
    rear = w * -xc / wheelbase
    a = np.array([[1, 1, 1, 1], [0, 0, 1, 1], [-bf / 2, bf / 2, -br / 2, br / 2], [0, 0, -br / 2, br / 2]])
    b = np.array([w, rear, lateral * zc, lateral * rear / w * pin])
    fl, fr, rl, rr = np.linalg.solve(a, b)
    row(f"gms-pin-{n}", "pinned-axle", [("m", mass, "kg"), ("x", xc, "m"), ("z", zc, "m"), ("L", wheelbase, "m"), ("B_f", bf, "m"), ("B_r", br, "m"), ("h_p", pin, "m"), ("side", 100 * side, "%")], [("L1", fl, "N"), ("R1", fr, "N"), ("L2", rl, "N"), ("R2", rr, "N")])

# --- tyre markings: section width, rim and the height of the section twice, in inches and millimetres ------------------------------
for n, (marking, width, ratio, rim) in enumerate([("900/60R32", 0.900, 0.60, 32), ("500/50-17", 0.500, 0.50, 17), ("11.5/80-15.3", 11.5 * IN, 0.80, 15.3), ("VF650/75R38", 0.650, 0.75, 38)]):
    row(f"gms-size-{n}", "metric-size", [("marking", marking, "")], [("b", width, "m"), ("d", float(np.dot([IN, 2 * width], [rim, ratio])), "m"), ("rim", rim * IN, "m")])

with open("shared/check-values/ground-machines-scipy.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(["id", "model", "given", "expected", "tolerance", "authority", "standing"])
    writer.writerows(ROWS)
print(len(ROWS), "rows")
