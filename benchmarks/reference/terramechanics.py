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
import scipy.constants as const
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
        [("MMP", mmp, "Pa"), ("CI_limit", limit, "Pa"), ("z", rut, "m"), ("z_m", rut * math.exp(math.log(passes) / a), "m"), ("MR", w * (0.017 + 0.453 * mmp / ci), "N"), ("VCI1", (2.53 + 1.35 * mmp / const.psi) * const.psi, "Pa")])

# --- hard surface ----------------------------------------------------------------------------------------------------
for n, (name, r, k, b, d, w, s) in enumerate([("bias", 0.02, 300e3, 0.71, 2.05, 30e3, 0.15), ("radial", 0.01625, 500e3, 0.65, 1.9, 40e3, 0.1)]):
    cn = k * b * d / w
    net = integral(lambda x: 1.02 * cn * math.exp(-cn * x), s)
    row(f"tms-hard-{n}", "hard-surface", [("constants", name, "set")] + wheel(k, b, d, 0.2, w, s), [("MR", r * w, "N"), ("GT", w * (net + r), "N"), ("NT", w * net, "N")])

# --- multi-pass ------------------------------------------------------------------------------------------------------
for n, (ci, b, d, dh, w, _) in enumerate(CASES[:2]):
    bn = ci * b * d / w * (1 + 5 * dh) / (1 + 3 * b / d)
    row(f"tms-multi-pass-{n}", "multi-pass", wheel(ci, b, d, dh, w), [("CI_after", ci * (2.8 + integral(lambda x: -0.11 * 1.8 * math.exp(-0.11 * x), bn)), "Pa")])

# --- mobility index of wheels and tracks, in pounds, inches and psi by scipy.constants -------------------------------
def vci(axles, clearance, hp_per_ton=None, manual=False, grousers=False):
    """Axles as (load N, wheels, b m, d m, delta/h); the averages of all of them."""
    n = len(axles)
    load, wheels = sum(a[0] for a in axles) / const.lbf, sum(a[1] for a in axles)
    b, d, dh = (np.mean([a[k] for a in axles]) for k in (2, 3, 4))
    b, d = b / const.inch, d / const.inch
    x = load / 1000 / n
    wf = np.select([x < 2, x <= 13.5, x <= 20], [0.553 * x, 0.033 * x + 1.05, 0.142 * x - 0.42], 0.278 * x - 3.115)
    ef = 1.0 if hp_per_ton is not None and hp_per_ton >= 10 else 1.05
    mi = (load / (0.5 * wheels * d * b) * wf / ((10 + b) / 100 * (1.05 if grousers else 1.0)) + load / 1000 / wheels - clearance / const.inch / 10) * ef * (1.05 if manual else 1.0)
    low1 = lambda m: 11.48 + 0.2 * m - 39.2 / (m + 3.74)
    low50 = lambda m: 28.23 + 0.43 * m - 92.67 / (m + 3.67)
    one = low1(mi) if mi <= 115 else max(low1(115.0), 4.1 * mi**0.446)
    fifty = low50(mi) if mi <= 115 else max(low50(115.0), 9.0 * mi**0.446)
    return mi, one * (0.15 / dh) ** 0.25 * const.psi, fifty * const.psi


for n, (axle, clearance, power, mass, manual, grousers) in enumerate([
        ((60e3, 2, 0.65, 1.9, 0.22), 0.45, 120e3, 12000.0, False, False),
        ((30e3, 2, 0.5, 1.3, 0.15), 0.35, 60e3, 8000.0, True, True),
        ((128.1e3, 2, 1.0, 1.95, 0.2), 0.40, 400e3, 52000.0, False, False),
        ((8e3, 2, 0.4, 1.1, 0.12), 0.3, 40e3, 3000.0, False, False)]):
    mi, one, fifty = vci([axle], clearance, power / const.hp / (mass * const.g / const.lbf / 2000), manual, grousers)
    row(f"tms-vci-wheels-{n}", "vci-wheels", [("W_axle", axle[0], "N"), ("wheels", axle[1], "1"), ("b", axle[2], "m"), ("d", axle[3], "m"), ("dh", axle[4], "1"), ("clearance", clearance, "m"), ("power", power / 1000, "kW"), ("mass", mass, "kg"),
        ("manual", str(manual).lower(), "1"), ("grousers", str(grousers).lower(), "1")], [("MI", mi, "1"), ("VCI1", one, "Pa"), ("VCI50", fifty, "Pa")])
mi, one, fifty = vci([(196.2e3, 2, 0.9, 2.05, 0.2), (98.1e3, 2, 0.6, 1.6, 0.2)], 0.4, 12)
row("tms-vci-vehicle-0", "vci-vehicle", [("nf", 2, "1"), ("Wf", 98.1e3, "N"), ("bf", 0.9, "m"), ("df", 2.05, "m"), ("nr", 2, "1"), ("Wr", 49.05e3, "N"), ("br", 0.6, "m"), ("dr", 1.6, "m"), ("dh", 0.2, "1"), ("clearance", 0.4, "m")],
    [("MI", mi, "1"), ("VCI1", one, "Pa"), ("VCI50", fifty, "Pa")])

for n, (w, length, width, bogies, shoe, grouser, clearance) in enumerate([(160e3, 2.6, 0.6, 10, 0.09, 0.05, 0.4), (240e3, 3.0, 0.76, 12, 0.13, 0.03, 0.45), (350e3, 3.5, 0.9, 14, 0.15, 0.05, 0.45), (470e3, 4.0, 0.9, 16, 0.16, 0.06, 0.5)]):
    lb = w / const.lbf
    wf = 1.0 if lb < 5e4 else 1.2 if lb < 7e4 else 1.4 if lb < 1e5 else 1.8
    mi = (lb / (2 * length * width / const.inch**2) * wf / (width / const.inch / 100 * (1.1 if grouser / const.inch > 1.5 else 1.0)) + lb / 10 / (bogies * shoe / const.inch**2) - clearance / const.inch / 10) * 1.05
    row(f"tms-vci-tracks-{n}", "vci-tracks", [("W", w, "N"), ("l", length, "m"), ("b", width, "m"), ("bogies", bogies, "1"), ("shoe", shoe, "m2"), ("grouser", grouser, "m"), ("clearance", clearance, "m")],
        [("MI", mi, "1"), ("VCI1", const.psi * (7 + 0.2 * mi - 39.2 / (mi + 5.6)), "Pa"), ("VCI50", const.psi * (19.27 + 0.43 * mi - 125.79 / (mi + 7.08)), "Pa")])

# --- resistance and drawbar from the excess of rating cone index: the drawbar coefficient as the smaller root of D^2 - 2 X D + C RCI_x = 0
for n, (tracks, cpf, excess) in enumerate([(False, 10.0, 12.0), (False, 3.0, 30.0), (True, 7.0, 5.0), (True, 2.0, 50.0), (False, 4.0, 0.0)]):
    a, b, c = {(False, True): (0.3885, 0.0265, 0.0358), (False, False): (0.379, 0.0219, 0.0257), (True, True): (0.4554, 0.0392, 0.0526), (True, False): (0.544, 0.0463, 0.0702)}[(tracks, cpf >= 4)]
    drawbar = float(min(np.roots([1, -2 * (a + b * excess), c * excess]).real))
    high = 0.045 + 2.3075 / (excess + 6.5)
    row(f"tms-excess-{n}", "excess", [("tracks", str(tracks).lower(), "1"), ("CPF", cpf, "psi"), ("RCIx", excess, "psi")],
        [("low", high if tracks else 0.035 + 0.861 / (excess + 3.249), "1"), ("high", high, "1"), ("drawbar", drawbar, "1")], "rel 1e-9" if excess > 0 else "abs 1e-12")

# --- VTI, sand -------------------------------------------------------------------------------------------------------
for n, (ci, b, d, dh, w, s) in enumerate([(600e3, 0.6, 1.6, 0.2, 40e3, 0.15), (900e3, 0.71, 2.05, 0.22, 50e3, 0.3)]):
    g = ci / (3.47 * const.inch)
    ns = g * (b * d) ** 1.5 * dh / w
    y = 4.71 + 1.72 / s
    row(f"tms-vti-sand-{n}", "vti-sand", wheel(ci, b, d, dh, w, s), [("Ns", ns, "1"), ("GT", w * (0.66 - 0.66 * y / (ns + 10 + y)), "N")])

# --- Bekker and Wong: equilibrium by root, work in the rut by quadrature ---------------------------------------------
TERRAINS = {"Rubicon": (6.9e3, 752e3, 0.66, 3.7e3, 29.8), "Grenville": (0.06e3, 5880e3, 1.01, 3.1e3, 29.8), "Clayey": (13.19e3, 692.15e3, 0.5, 4.14e3, 13.0), "Made": (2e3, 300e3, 0.8, 6e3, 0.0)}


def soil(name):
    kc, kphi, n, c, phi = TERRAINS[name]
    return [("kc", kc / 1000, "1"), ("kphi", kphi / 1000, "1"), ("n", n, "1"), ("c", c, "Pa"), ("phi", phi, "deg")]


for n, (name, w, b, d, p) in enumerate([("Rubicon", 60e3, 0.7, 1.8, 150e3), ("Grenville", 40e3, 0.5, 1.5, 250e3), ("Clayey", 90e3, 0.8, 2.0, 120e3), ("Made", 30e3, 0.6, 1.6, 110e3)]):
    kc, kphi, e, c, phi = TERRAINS[name]
    k = kc / b + kphi
    rigid = brentq(lambda z: b * (3 - e) * k * math.sqrt(d) * z ** (e + 0.5) / 3 - w, 1e-9, 5, xtol=1e-16, rtol=8.9e-16)
    critical = k * rigid**e
    z = rigid if p > critical else brentq(lambda x: k * x**e - p, 1e-12, 5, xtol=1e-16, rtol=8.9e-16)
    rc = quad(lambda x: b * k * x**e, 0, z, epsabs=0, epsrel=1e-13)[0]
    f, gamma = math.radians(phi), 16e3
    nq = math.exp((1.5 * math.pi - f) * math.tan(f)) / (2 * math.cos(math.pi / 4 + f / 2) ** 2)
    nc = (nq - 1) / math.tan(f) if f else 1.5 * math.pi + 1
    twist = 2 * (math.exp(math.pi * math.tan(f)) * math.tan(math.pi / 4 + f / 2) ** 2 + 1) / (1 + 0.4 * math.sin(4 * f))
    a, l0 = math.acos(1 - 2 * z / d), z * math.tan(math.pi / 4 - f / 2) ** 2
    rb = b * (math.cos(f) * math.sin(a) + math.sin(f) * math.cos(a)) / (2 * math.sin(a) * math.cos(f)) * (2 * z * c * (nc - math.tan(f)) * math.cos(f) ** 2 + gamma * z**2 * (2 * twist + 1) * math.cos(f) ** 2) \
        + gamma * l0**3 * (math.pi / 2 - f) / 3 + c * l0**2 * (1 + math.tan(math.pi / 4 + f / 2))
    row(f"tms-bekker-{n}", "bekker-wheel", soil(name) + [("W", w, "N"), ("b", b, "m"), ("d", d, "m"), ("p", p, "Pa"), ("gamma", gamma, "N/m3")],
        [("z", z, "m"), ("pgcr", critical, "Pa"), ("Rc", rc, "N"), ("Rb", rb if z / d > 0.06 else 0.0, "N")], "rel 1e-8")

# --- a wheel in the rut of another, n = 1: load from the work of the slice between both depths, by root --------------
for n, (kc, kphi, w, b, d, rut) in enumerate([(0.06e3, 5880e3, 60e3, 0.7, 1.9, 0.08), (5e3, 1500e3, 40e3, 0.6, 1.6, 0.12), (5e3, 1500e3, 40e3, 0.6, 1.6, 0.0)]):
    z = brentq(lambda x: quad(lambda y: (kc + b * kphi) * math.sqrt(d) * math.sqrt(y), rut, x, epsabs=0, epsrel=1e-13)[0] - w, rut, 5, xtol=1e-15, rtol=8.9e-16)
    row(f"tms-bekker-rut-{n}", "bekker-rut", [("kc", kc / 1000, "1"), ("kphi", kphi / 1000, "1"), ("n", 1, "1"), ("W", w, "N"), ("b", b, "m"), ("d", d, "m"), ("rut", rut, "m")], [("z", z, "m")], "rel 1e-8")

# --- Janosi and Hanamoto: stress by its slope, thrust by summing the stress along the track, slip by root ------------
for n, (name, p, j, shear) in enumerate([("Rubicon", 40e3, 0.03, 0.025), ("Clayey", 80e3, 0.1, 0.05)]):
    kc, kphi, e, c, phi = TERRAINS[name]
    top = c + p * math.tan(math.radians(phi))
    row(f"tms-shear-{n}", "shear", soil(name) + [("p", p, "Pa"), ("j", j, "m"), ("K", shear, "m")], [("tau", integral(lambda x: top / shear * math.exp(-x / shear), j), "Pa")])
for n, (name, w, b, l, shear, s) in enumerate([("Rubicon", 70e3, 0.6, 2.8, 0.03, 0.2), ("Grenville", 90e3, 0.76, 3.2, 0.02, 0.08), ("Clayey", 60e3, 0.9, 3.5, 0.05, 0.001), ("Made", 80e3, 0.7, 3.0, 0.04, 1.0)]):
    kc, kphi, e, c, phi = TERRAINS[name]
    k, p = kc / min(b, l) + kphi, w / (b * l)
    z = brentq(lambda x: k * x**e - p, 1e-12, 5, xtol=1e-16, rtol=8.9e-16)
    rc = quad(lambda x: b * k * x**e, 0, z, epsabs=0, epsrel=1e-13)[0]
    thrust = lambda slip: quad(lambda x: b * (c + p * math.tan(math.radians(phi))) * -math.expm1(-slip * x / shear), 0, l, epsabs=0, epsrel=1e-13)[0]
    wanted = 0.5 * (thrust(1) - rc)
    row(f"tms-track-{n}", "track", soil(name) + [("W", w, "N"), ("b", b, "m"), ("l", l, "m"), ("K", shear, "m"), ("s", s, "1"), ("wanted", wanted, "N")],
        [("z", z, "m"), ("MR", rc, "N"), ("GT", thrust(s), "N"), ("NT", thrust(s) - rc, "N"), ("slip", brentq(lambda x: thrust(x) - rc - wanted, 1e-9, 1, xtol=1e-15, rtol=8.9e-16), "1")], "rel 1e-8")

# --- self-mobility: greatest net traction over slip by search, critical index by root --------------------------------
def net_ratio(model, ci, b, d, dh, w, s):
    """Net traction over load of a driven wheel at slip s, and towed resistance over load."""
    if model.startswith("brixius"):
        k, r, c = (7.5, 0.04, 1.0) if model.endswith("bias") else (9.5, 0.0325, 0.9)
        bn = ci * b * d / w * (1 + 5 * dh) / (1 + 3 * b / d)
        return 0.88 * (1 - math.exp(-0.1 * bn)) * (1 - math.exp(-k * s)) - c / bn - 0.5 * s / math.sqrt(bn), c / bn + r
    if model == "wismer-luth":
        cn = ci * b * d / w
        return 0.75 * (1 - math.exp(-0.3 * cn * s)) - 1.2 / cn - 0.04, 1.2 / cn + 0.04
    if model == "gee-clough":
        m = ci * b * d / w * math.sqrt(dh) / (1 + b / (2 * d))
        top = 0.796 - 0.92 / m
        return (top * (1 - math.exp(-(4.838 + 0.061 * m) / top * s)) if top > 0 else top), 0.049 + 0.287 / m
    nv = ci * b * d / (w * (1 - dh) ** 1.5 * (1 + b / d) ** 0.75)
    mrr = 12 / nv**2 + 0.007
    gross = 0.5 * math.log10(s * nv**2.5 / 21) if s > 0 else -1
    return (gross * (1 + b / d) ** 0.25 - mrr if gross > 0 else -mrr), mrr


def balance(model, ci, axles, dh, limit, force):
    def total(s):
        return sum(count * w * (net_ratio(model, ci, b, d, dh, w, s)[0] if driven else -net_ratio(model, ci, b, d, dh, w, 0)[1]) for w, b, d, count, driven in axles)
    found = minimize_scalar(lambda s: -total(s), bounds=(0, limit), method="bounded", options={"xatol": 1e-12})
    return max(total(limit), -found.fun) - force


for n, (model, limit, force) in enumerate([("brixius-bias", 0.3, 5e3), ("brixius-radial", 1.0, 0.0), ("wismer-luth", 0.3, 8e3), ("gee-clough", 0.25, 0.0), ("vti", 0.3, -4e3)]):
    axles = [(70e3, 0.8, 2.05, 2, True), (28e3, 0.65, 1.9, 4, True), (35e3, 0.6, 1.6, 2, False)]
    ci = math.exp(brentq(lambda x: balance(model, math.exp(x), axles, 0.2, limit, force), math.log(5e4), math.log(5e6), xtol=1e-13, rtol=8.9e-16))
    row(f"tms-self-mobility-{n}", "self-mobility", [("model", model, "1"), ("dh", 0.2, "1"), ("F", force, "N"), ("limit", limit, "1")] + [(f"{k}{i}", v, u) for i, a in enumerate(axles, 1) for k, v, u in (("W", a[0], "N"), ("b", a[1], "m"), ("d", a[2], "m"))],
        [("CI", ci, "Pa")], "rel 1e-7")

# --- one machine over many soils: axle loads from moments on the slope, greatest surplus by search, critical index by root ----------
def on_slope(parts, wheelbase, grade):
    """parts: mass kg, place ahead of the front axle m, height m. Front and rear axle load of a machine that stands facing up the slope."""
    angle = math.atan(grade)
    masses, places, heights = (np.array(v) for v in zip(*parts))
    weight = const.g * masses.sum()
    # moments of every part about the front contact: its normal part by its place, its downhill part by its height
    rear = const.g * np.sum(masses * (-places * math.cos(angle) + heights * math.sin(angle))) / wheelbase
    return weight, weight * math.cos(angle) - rear, rear, weight * math.sin(angle)


EMPTY = [(22e3, -2.3, 1.7)]
for n, (grade, fill, model) in enumerate([(0.0, 1.0, "brixius-bias"), (0.05, 0.5, "brixius-bias"), (-0.03, 0.0, "brixius-radial"), (0.02, 1.0, "brixius-radial")]):
    weight, front, rear, down = on_slope(EMPTY + [(8e3 * fill, -2.9, 2.6)], 4.9, grade)
    axles = [(front / 2, 0.8, 2.05, 2, True), (rear / 2, 0.7, 1.9, 2, n != 1)]
    surplus = lambda ci: balance(model, ci, axles, 0.2, 0.3, down)
    critical = math.exp(brentq(lambda x: surplus(math.exp(x)), math.log(5e4), math.log(5e6), xtol=1e-13, rtol=8.9e-16))
    row(f"tms-machine-on-soils-{n}", "machine-on-soils", [("model", model, "1"), ("grade", grade, "1"), ("fill", fill, "1"), ("rear_driven", float(n != 1), "1"), ("CI", 400e3, "Pa")],
        [("mobility", surplus(400e3) / weight, "1"), ("critical", critical, "Pa")], "rel 1e-6")

with open("shared/check-values/terramechanics-scipy.csv", "w", newline="") as file:
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
