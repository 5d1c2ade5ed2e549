"""Recomputes cases of what holds the machine with numpy and SciPy, and writes shared/check-values/resistance-scipy.csv.

The equations are stated here on their own, pressures summed over depth by quadrature where the library has a closed form; nothing is shared
with the library. Run from the repository root:
    python3 benchmarks/reference/resistance.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
import scipy.constants
from scipy.integrate import quad
from scipy.optimize import brentq, minimize_scalar

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/resistance.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    pack = lambda pairs: "; ".join(f"{k}={v} {u}" if isinstance(v, str) else f"{k}={float(v)!r} {u}" for k, v, u in pairs)
    ROWS.append(["scipy-" + ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


def over_depth(pressure, z, breaks=()):
    return quad(pressure, 0, z, points=[x for x in breaks if 0 < x < z] or None, epsabs=1e-10, epsrel=1e-13, limit=200)[0]


# --- soil ahead of a wheel: pressure over depth --------------------------------------------------------------------------
def faces(b, d, z, s, gamma):
    out = {}
    out["rankine"] = b * over_depth(lambda x: gamma * x + 2 * s, z)
    out["sliding"] = b * over_depth(lambda x: 2 * s, z)
    out["full-contact"] = b * over_depth(lambda x: 4 * s, z)
    for name, j in (("matlock-upper", 0.5), ("matlock-lower", 0.25)):
        p = lambda x: min(3 * s + gamma * x + j * s * x / b, 9 * s)
        cross = brentq(lambda x: 3 * s + gamma * x + j * s * x / b - 9 * s, 0, 1e4)
        out[name] = b * over_depth(p, z, [cross])
    out["verley-lund"] = b * 4.1 * s * d * np.exp(1.31 * np.log(z / d) - 0.39 * np.log(s / (d * gamma)))
    for name, c1, c3 in (("lateral", 1.7, 0.6), ("lateral-laboratory", 0.78, 0.71)):
        out[name] = b * (c1 * s * d * np.power(z / d, 0.61) + c3 * gamma * z * z)
    out["reece"] = b * over_depth(lambda x: gamma * x + 2 * np.sqrt(1.5) * s, z)
    phi = math.radians(20)
    kp = (1 + math.sin(phi)) / (1 - math.sin(phi))
    out["friction-20"] = b * over_depth(lambda x: gamma * x * kp + 2 * s * math.sqrt(kp), z)
    local = math.atan(2 / 3 * math.tan(phi))
    kpc = (11.8 - math.tan(local)) * math.cos(local) ** 2
    kpg = (2 * 2.9 / math.tan(local) + 1) * math.cos(local) ** 2
    out["local-shear"] = b * over_depth(lambda x: 0.667 * s * kpc + gamma * x * kpg, z)
    return out


for n, (b, d, z, s, gamma) in enumerate([(0.6, 2.0, 0.5, 10e3, 17e3), (1.0, 1.95, 0.9, 3e3, 18e3), (0.4, 1.6, 0.25, 42e3, 16e3), (0.3, 1.5, 1.2, 1.2e3, 19e3)]):
    row(f"faces-{n}", "faces", [("b", b, "m"), ("d", d, "m"), ("z", z, "m"), ("s_u", s, "Pa"), ("gamma", gamma / 1000, "kN/m3")], [(k, v, "N") for k, v in faces(b, d, z, s, gamma).items()])


# --- a wheel as a short pipe -----------------------------------------------------------------------------------------------
def section(d, z):
    r = d / 2
    below = lambda h: 2 * math.sqrt(max(0.0, r * r - (r - h) ** 2)) if h < r else d
    return quad(below, 0, z, points=[r] if z > r else None, epsabs=1e-12, epsrel=1e-12)[0]


for n, (b, d, z, s, gamma, load) in enumerate([(0.7, 1.8, 0.4, 6e3, 17e3, 14e3), (0.6, 2.0, 1.2, 12e3, 9e3, 25e3), (1.0, 1.95, 0.12, 25e3, 18e3, 5e3)]):
    factor = min(6 * (z / d) ** 0.25, 3.4 * (10 * z / d) ** 0.5)
    bearing = b * (factor * d * s + 1.5 * gamma * section(d, z))
    needed = brentq(lambda q: b * (factor * d * q + 1.5 * gamma * section(d, z)) - bearing, 1.0, 1e6, xtol=1e-9)
    v = load / b
    breakout = b * (1.7 * s * d * (z / d) ** 0.61 + 0.23 * d * s * np.power(v / (d * s), 0.83) + 0.6 * gamma * z * z)
    row(f"immersed-{n}", "immersed", [("b", b, "m"), ("d", d, "m"), ("z", z, "m"), ("s_u", s, "Pa"), ("gamma", gamma / 1000, "kN/m3"), ("W", load, "N")],
        [("A", section(d, z), "m2"), ("Q", bearing, "N"), ("s_needed", needed, "Pa"), ("P", breakout, "N"), ("P_res", load * (0.32 + 0.8 * np.power(z / d, 0.8)), "N")], "rel 1e-8")


# --- vertical breakout -------------------------------------------------------------------------------------------------------
def skempton(b, l, d):
    return 5 * (1 + 0.2 * np.clip(d / b, 0, 2.5)) * (1 + 0.2 * b / l)


def code_factor(b, l, d):
    # The arc tangent as the integral of its derivative.
    return 5.14 * (1 + 0.18 * b / l + 0.3 * quad(lambda x: 1 / (1 + x * x), 0, d / b, epsabs=1e-14)[0])


for n, (b, l, d, s, gamma) in enumerate([(1.2, 3.0, 0.1, 5e3, 17e3), (1.6, 3.0, 0.15, 19.6e3, 17e3), (0.6, 0.6, 2.0, 14e3, 18e3), (1.0, 8.0, 0.9, 30e3, 16e3)]):
    q = gamma * d
    cap = (100e3 + q) * b * l
    lee = float(np.interp(d / b, [0, (0.97 - 0.21) / 0.86, 1e3], [0.21, 0.97, 0.97])) * skempton(b, l, d) * s * b * l
    row(f"breakout-{n}", "breakout", [("B", b, "m"), ("L", l, "m"), ("D", d, "m"), ("s_u", s, "Pa"), ("gamma", gamma / 1000, "kN/m3")],
        [("skempton", min(skempton(b, l, d) * s * b * l, cap), "N"), ("api", min(code_factor(b, l, d) * s * b * l, cap), "N"), ("lee", lee, "N"), ("plate", 9 * s * b * l, "N"), ("belly_half", min(0.5 * 5.14 * s * b * l, cap), "N"), ("belly_full", min(5.14 * s * b * l, cap), "N")])

for n, (load, minutes, ground_hours, h, cv) in enumerate([(90e3, 10.0, 24.0, 0.3, 3.1), (40e3, 260.0, 6.0, 0.5, 1.0), (70e3, 590.0, 72.0, 0.8, 0.4)]):
    # Muga as the solution of dF/dt = -0.0054 F through 0.2 of the load at 260 minutes.
    muga = 0.2 * load * math.exp(-quad(lambda t: 0.0054, 260.0, minutes)[0])
    # 90 % of one-dimensional consolidation: the root of the series of the average degree.
    degree = lambda tv: 1 - sum(8 / ((2 * m + 1) ** 2 * math.pi ** 2) * math.exp(-((2 * m + 1) ** 2) * math.pi ** 2 * tv / 4) for m in range(60))
    factor = brentq(lambda tv: degree(tv) - 0.9, 0.1, 2, xtol=1e-12)
    row(f"breakout-time-{n}", "breakout-time", [("W_b", load, "N"), ("t", minutes, "min"), ("T_in", ground_hours, "h")],
        [("muga", muga, "N"), ("liu", 1.5 * math.exp(-0.07 * math.log(minutes / 60 / ground_hours)), "1")])
    row(f"dissipation-{n}", "dissipation", [("H", h, "m"), ("c_v", cv, "m2/yr")], [("t90", factor * h * h / cv, "yr")], "rel 2e-4")

# --- the hole: contact, floor, belly, exit ---------------------------------------------------------------------------------
def standing(d, z, delta):
    """Where the circle of the tyre cuts the surface; not buried, at least as deep as the tyre is pressed flat."""
    r = d / 2
    depth = z if z > d / 10 else max(z, delta)
    if depth >= r:
        return d
    edge = brentq(lambda x: math.hypot(x, r - depth) - r, 0, r, xtol=1e-14)
    return 2 * edge


for n, (b, d, z, delta, s) in enumerate([(0.8, 2.05, 0.5, 0.11, 10.4835e3), (0.6, 1.6, 0.05, 0.09, 19.6e3), (0.9, 1.95, 0.15, 0.11, 14e3), (0.5, 1.5, 1.1, 0.1, 6e3)]):
    shear = s * quad(lambda x: b, 0, standing(d, z, delta))[0]
    row(f"base-shear-{n}", "base-shear", [("b", b, "m"), ("d", d, "m"), ("z", z, "m"), ("delta", delta, "m"), ("s_f", s, "Pa")], [("c", standing(d, z, delta), "m"), ("R", shear, "N")])

for n, (w, b, d, z, gamma, nc) in enumerate([(37.5e3, 0.6, 2.0, 0.5, 17e3, 5.14), (90e3, 0.8, 2.05, 0.7, 18.5e3, 6.0), (20e3, 0.4, 1.4, 0.9, 16e3, 5.5)]):
    c = standing(d, z, 0)
    bound = brentq(lambda q: (nc * q + gamma * z) * b * c - w, -1e6, 1e6, xtol=1e-9)
    row(f"floor-wheel-{n}", "floor-wheel", [("W", w, "N"), ("b", b, "m"), ("d", d, "m"), ("z", z, "m"), ("gamma", gamma / 1000, "kN/m3"), ("N_c", nc, "1")], [("s_b", bound, "Pa")])

for n, (l, w, z, s, gamma, alpha) in enumerate([(3.0, 1.2, 0.1, 5e3, 17e3, 0.5), (3.0, 1.6, 0.15, 10.4835e3, 17e3, 0.5), (2.2, 1.0, 0.4, 31e3, 19e3, 0.6)]):
    adhesion = np.clip(alpha * s, None, 12e3) * l * w
    front = w * over_depth(lambda x: gamma * x + 2 * s, z)
    row(f"underbody-{n}", "underbody", [("L", l, "m"), ("w", w, "m"), ("z", z, "m"), ("s_f", s, "Pa"), ("gamma", gamma / 1000, "kN/m3"), ("alpha", alpha, "1")], [("adhesion", adhesion, "N"), ("front", front, "N"), ("total", adhesion + front, "N")])

for n, (w, b, d, z, s, gamma) in enumerate([(42.3e3, 1.0, 1.95, 0.5, 19.6e3, 17e3), (5e3, 0.6, 2.0, 0.2, 30e3, 17e3), (60e3, 0.7, 1.8, 0.6, 14e3, 18e3)]):
    # Moments about the edge of the step: pull times its lever against load times its lever.
    r = d / 2
    lever = math.sqrt(r * r - (r - z) ** 2)
    step = brentq(lambda f: f * (r - z) - w * lever, 0, 1e9, xtol=1e-6)
    face = b * over_depth(lambda x: gamma * x + 2 * s, z)
    spoil = b * quad(lambda x: z - x / 6, 0, 6 * z)[0]
    row(f"rut-exit-{n}", "rut-exit", [("W", w, "N"), ("b", b, "m"), ("d", d, "m"), ("z", z, "m"), ("s_w", s, "Pa"), ("gamma", gamma / 1000, "kN/m3")], [("face", face, "N"), ("step", step, "N"), ("counts", min(face, step), "N"), ("spoil", spoil, "m3")])

# --- the stuck machine's own wheels ----------------------------------------------------------------------------------------
def brixius(numeric, s, c, r, k):
    gross = 0.88 * -np.expm1(-0.1 * numeric) * -np.expm1(-k * s) + r
    resistance = c / numeric + r + 0.5 * s / np.sqrt(numeric)
    return gross, resistance


def own_wheels(axles, carry, index, grade_force):
    """axles: axle load, wheels, b, d, delta/h, driven. Bias constants at slip 0.30 beside the belly; critical index with radial ones on full loads."""
    numeric = lambda load, n, b, d, dh, ci: ci * b * d / (load / n) * (1 + 5 * dh) / (1 + 3 * b / d)
    gross = resistance = 0.0
    for load, n, b, d, dh, driven in axles:
        g, r = brixius(numeric(load * carry, n, b, d, dh, index), 0.30 if driven else 0.0, 1.0, 0.04, 7.5)
        gross += load * carry * g if driven else 0.0
        resistance += load * carry * r

    def surplus(ci):
        def net(s):
            total = 0.0
            for load, n, b, d, dh, driven in axles:
                g, r = brixius(numeric(load, n, b, d, dh, ci), s if driven else 0.0, 0.9, 0.0325, 9.5)
                total += load * ((g if driven else 0.0) - r)
            return total
        inside = minimize_scalar(lambda s: -net(s), bounds=(0, 0.30), method="bounded", options={"xatol": 1e-12})
        return max(net(0.30), net(inside.x)) - grade_force

    critical = math.exp(brentq(lambda x: surplus(math.exp(x)), math.log(2e4), math.log(5e6), xtol=1e-13))
    return gross, resistance, critical


WHEELS = [(2, 0.80, 2.05, 0.20), (2, 1.00, 1.95, 0.20), (2, 1.00, 1.95, 0.20)]
for name, loads, belly, driven, percent in [("full", (256.196e3, 126.824e3, 126.824e3), 169.642e3, (1, 1, 1), 2), ("empty", (182.377e3, 55.882e3, 55.882e3), 97.8706e3, (1, 1, 1), 2), ("front", (256.196e3, 126.824e3, 126.824e3), 169.642e3, (1, 0, 0), 2), ("level", (150e3, 60e3, 80e3), 0.0, (1, 1, 0), 0)]:
    weight = sum(loads) / math.cos(math.atan(percent / 100))
    gross, resistance, critical = own_wheels([(l, *w, bool(p)) for l, w, p in zip(loads, WHEELS, driven)], 1 - belly / weight, 245e3, weight * math.sin(math.atan(percent / 100)))
    row("own-wheels-" + name, "own-wheels", [("state", name, "class")] + [(f"N{i + 1}", l, "N") for i, l in enumerate(loads)] + [(f"driven{i + 1}", p, "1") for i, p in enumerate(driven)] + [("W_b", belly, "N"), ("grade", percent / 100, "1"), ("CI", 245e3, "Pa")],
        [("gross", gross, "N"), ("resistance", resistance, "N"), ("critical", critical, "Pa")], "rel 1e-8")

# --- the same machine drawn the other way: loads from the moments of its masses on the slope, then the critical index ------------
def standing(masses, axle, rise):
    """Loads of the front axle and of each of two linked rear axles; masses: t, place ahead of the front axle, height; rise: slope towards the rear."""
    angle = math.atan(rise)
    along = np.array([math.cos(angle), math.sin(angle)])
    force = np.array([m * 1000 * scipy.constants.g for m, _, _ in masses])
    arm = np.array([[-x, -z] for _, x, z in masses])  # behind the front axle; weight has a part down the slope, forwards
    rear = float(force @ (arm @ along)) / -np.mean(axle)
    return float(force.sum()) * math.cos(angle) - rear, rear / 2


MASSES = {"full": [(27, -2.75, 1.7), (3, 2.2, 0.8), (22, -3.9, 2.6)], "empty": [(27, -2.75, 1.7), (3, 2.2, 0.8)]}
for name, rise in [("full", 0.02), ("full", 0.05), ("full", -0.04), ("empty", 0.02), ("full", 0.0)]:
    front, rear = standing(MASSES[name], (-4.9, -6.8), rise)
    weight = sum(m for m, _, _ in MASSES[name]) * 1000 * scipy.constants.g
    index = [own_wheels([(l, *w, True) for l, w in zip((front, rear, rear), WHEELS)], 1, 245e3, weight * math.sin(math.atan(g)))[2] for g in (rise, -rise)]
    row(f"own-wheels-turned-{name}-{round(100 * rise)}", "own-wheels-turned", [("state", name, "class"), ("grade", rise, "1")], [("N1", front, "N"), ("N2", rear, "N"), ("rearwards", index[0], "Pa"), ("forwards", index[1], "Pa")], "rel 1e-8")

# --- haul road: a line through its two printed points -----------------------------------------------------------------------
for n, (w, p) in enumerate([(300e3, 0.05), (120e3, 0.127), (510e3, 0.02)]):
    line = np.polynomial.Polynomial.fit([0, 6 * 0.0254], [0.02, 0.11], 1)
    row(f"haul-road-{n}", "haul-road", [("W", w, "N"), ("p", p, "m")], [("R", w * line(p), "N")])

# --- handbook depth rule: the deepest wheel by its place among hub and fender, the factor on the weight as a step ----------------
for n, (sinkage, diameters, fender, weight, mass) in enumerate([((0.5, 0.3), (2.05, 1.6), 1.5, 150e3, 8.0), ((0.5, 0.9), (2.05, 1.6), 1.5, 240e3, 12.5), ((1.6, 0.9), (2.05, 1.6), 1.5, 310e3, 4.0), ((0.1, 0.1), (2.05, 1.6), 1.5, 200e3, 3.0)]):
    above = [z > d / 10 for z, d in zip(sinkage, diameters)]  # a rolling wheel does not count
    k = max(int(np.searchsorted([0.0, d / 2, fender], z)) if buried else 0 for z, d, buried in zip(sinkage, diameters, above))
    taken = np.outer([1.0, 1 - 0.1, 1 - 0.4, 1 - 0.5], [k * weight]).ravel()
    row(f"depth-rule-{n}", "depth-rule", [("z1", sinkage[0], "m"), ("z2", sinkage[1], "m"), ("d1", diameters[0], "m"), ("d2", diameters[1], "m"), ("fender", fender, "m"), ("W", weight, "N"), ("m", mass, "Mg")],
        [("k", k, "1"), ("R", taken[0], "N"), ("direction", taken[1], "N"), ("tracks", taken[2], "N"), ("both", taken[3], "N"), ("lighter", k * mass * 1000 * scipy.constants.g, "N")])

with open("shared/check-values/resistance-scipy.csv", "w", newline="", encoding="utf-8") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
print(len(ROWS), "rows,", AUTHORITY)
