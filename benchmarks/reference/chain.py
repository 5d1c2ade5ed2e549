"""Recomputes cases of every formula of the chain with numpy and SciPy, and writes shared/check-values/reference.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/chain.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, fsolve, minimize_scalar

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/chain.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    pack = lambda pairs: "; ".join(f"{k}={v!r} {u}" if not isinstance(v, str) else f"{k}={v} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- Brixius wheel ---------------------------------------------------------------------------------------------------
SETS = {"bias": (7.5, 0.04, 1.0), "radial": (9.5, 0.0325, 0.9)}


def numeric(ci, b, d, dh, w):
    return ci * b * d / w * (1 + 5 * dh) / (1 + 3 * b / d)


def mrr(bn, s, name):
    k, r, c = SETS[name]
    return c / bn + r + 0.5 * s / math.sqrt(bn)


def gtr(bn, s, name):
    k, r, c = SETS[name]
    # Gross traction as the integral of its slip derivative plus the rolling share.
    slope = lambda x: 0.88 * -math.expm1(-0.1 * bn) * k * math.exp(-k * x)
    return quad(slope, 0, s, epsabs=1e-14, epsrel=1e-13)[0] + r


for n, (name, ci, b, d, dh, w, s) in enumerate([("bias", 640e3, 0.71, 2.05, 0.22, 50e3, 0.3), ("bias", 300e3, 0.9, 2.05, 0.2, 98.1e3, 0.12), ("radial", 900e3, 0.6, 1.6, 0.22, 30e3, 0.46), ("radial", 1500e3, 0.65, 1.9, 0.28, 40e3, 0.05)]):
    bn = numeric(ci, b, d, dh, w)
    row(f"ref-brixius-{n}", "brixius", [("constants", name, "set"), ("CI", ci, "Pa"), ("b", b, "m"), ("d", d, "m"), ("dh", dh, "1"), ("W", w, "N"), ("s", s, "1")],
        [("Bn", bn, "1"), ("MRR", mrr(bn, s, name), "1"), ("GTR", gtr(bn, s, name), "1"), ("NTR", gtr(bn, s, name) - mrr(bn, s, name), "1")])

# --- axle loads: least squares on the two sums ------------------------------------------------------------------------
G = 9.80665
BODY = [(27e3, -2.75, 1.7), (3e3, 2.2, 0.8), (22e3, -3.9, 2.6)]


def axle_loads(loads, x, theta, p, linked):
    w = G * sum(m for m, _, _ in loads)
    xc = sum(m * a for m, a, _ in loads) / sum(m for m, _, _ in loads)
    zc = sum(m * z for m, _, z in loads) / sum(m for m, _, _ in loads)
    n, m = w * math.cos(theta), w * (xc * math.cos(theta) - p * zc * math.sin(theta))
    if linked and len(x) > 2:
        a = np.array([[1.0, len(x) - 1.0], [0.0, sum(x[1:])]])
        front, each = np.linalg.solve(a, [n, m])
        return np.array([front] + [each] * (len(x) - 1)), w
    # A stiff frame on equal stiffness: N_i = a + c x_i.
    a = np.array([[len(x), sum(x)], [sum(x), sum(v * v for v in x)]])
    c0, c1 = np.linalg.solve(a, [n, m])
    return np.array([c0 + c1 * v for v in x]), w


X3 = [0.0, -4.9, -6.8]
for n, (linked, percent) in enumerate([(True, 2), (False, 2), (True, -7), (False, 11)]):
    loads, w = axle_loads(BODY, X3, math.atan(percent / 100), -1, linked)
    row(f"ref-axles-{n}", "axle-loads", [("suspension", "linked" if linked else "frame", "class"), ("grade", percent, "%")], [(f"N{i + 1}", v, "N") for i, v in enumerate(map(float, loads))])

# --- whole machine: bounds by dense search over the floor ---------------------------------------------------------------
WHEELS = [(2, 0.80, 2.05), (2, 1.00, 1.95), (2, 1.00, 1.95)]
NC, CAP = 2 + 3.14, 12e3


def contact(d, z):
    return d if z >= d / 2 else 2 * math.sqrt(d * z - z * z)


def segment(d, z):
    r = d / 2
    return 2 * quad(lambda h: math.sqrt(max(0.0, r * r - (r - h) ** 2)), 0, z, epsabs=1e-13)[0]


class Case:
    def __init__(self, loads, found, z, belly, ci, ri, dug=None, vented=False, turning=None, freed=False):
        self.z, self.gamma, self.alpha, self.dug, self.vented, self.turning = z, 17e3, 0.5, dug, vented, turning
        theta = math.atan(0.02)
        self.n, self.w = axle_loads(loads, X3, theta, -1, True)
        nf, wf = axle_loads(found, X3, theta, -1, True)
        self.u = nf / nf.sum()
        self.grade = self.w * math.sin(theta)
        self.area = sum(c * b * contact(d, z) for c, b, d in WHEELS)
        a_found = belly[0] * belly[1]
        sb = (wf - self.gamma * z * self.area - self.gamma * belly[2] * a_found) / (NC * (self.area + a_found))
        self.belly = (0.0, 0.0, 0.0) if freed else belly
        rci = ci * ri
        low, reading = max(sb, 1e3), rci / 12.5
        self.floor = (low, low, low) if low > reading else (low, min(math.sqrt(low * reading), min(reading, 4 * low)), min(reading, 4 * low))
        self.wall = (min(reading, 3 * low), reading, ci / 12.5)

        def surplus(index, weights):
            def net(s):
                total = 0.0
                for (c, b, d), load in zip(WHEELS, weights):
                    bn = numeric(index, b, d, 0.2, load / c)
                    total += load * (0.88 * (1 - math.exp(-0.1 * bn)) * (1 - math.exp(-9.5 * s)) - 0.9 / bn - 0.5 * s / math.sqrt(bn))
                return total
            best = minimize_scalar(lambda s: -net(s), bounds=(0, 0.3), method="bounded", options={"xatol": 1e-13})
            return max(-best.fun, net(0.3)) - wf * math.sin(theta)
        self.critical = brentq(lambda q: surplus(q, nf), 5e4, 2e6, xtol=1e-6, rtol=1e-14)
        self.index = (min(ci, self.critical), min(rci, self.critical), min(rci, self.critical))

    def total(self, wall, floor, index, rho, locked, sealed, f, exit_slope, meets):
        a = self.belly[0] * self.belly[1]
        wb = min(self.w * a / (a + self.area), NC * floor * a) if a else 0.0
        carry = 1 - wb / self.w
        out = self.w * math.sin(exit_slope) + self.grade
        if a:
            out += min(self.alpha * floor, CAP) * a + self.belly[1] * (0.5 * self.gamma * self.belly[2] ** 2 + 2 * floor * self.belly[2])
            if sealed:
                lift = f * NC * floor * a
                for (c, b, d), load, share in zip(WHEELS, self.n, self.u):
                    bears = c * b * contact(d, self.z) * (NC * floor + self.gamma * self.z)
                    lift = min(lift, max(0.0, bears - load) / share)
                out += lift * math.sin(exit_slope)
        for i, ((c, b, d), load) in enumerate(zip(WHEELS, self.n)):
            wi = load * carry / c
            full = numeric(index, b, d, 0.2, load / c) / carry
            model = wi * (0.9 / full + 0.0325)
            own = floor * b * contact(d, self.z) if locked else rho * wi
            own += (1.0 if locked else 0.5) * 2 * segment(d, self.z) * min(self.alpha * wall, CAP)
            if self.dug is None:
                k = 1 - 2 * self.z / d
                if i in meets:
                    own += min(b * (0.5 * self.gamma * self.z ** 2 + 2 * wall * self.z), wi * math.sqrt(1 - k * k) / k)
                if sealed:
                    own += 2 * wall * b * self.z
            out += c * max(own, model)
        return out

    def bounds(self):
        exits = [math.atan(v) if self.dug is None else min(math.atan(v), self.dug) for v in (0.1, 1 / 6, 0.25)]
        floors = np.unique(np.concatenate([np.linspace(self.floor[0], self.floor[2], 20001), [self.w / (NC * (self.belly[0] * self.belly[1] + self.area))]]))
        floors = floors[(floors >= self.floor[0]) & (floors <= self.floor[2])]
        s = not self.vented
        low = min(self.total(self.wall[0], v, self.index[0], 0.10, False, False, 0, exits[0], ()) for v in floors)
        central = self.total(self.wall[1], self.floor[1], self.index[1], 0.15, False, s, 0.5, exits[1], (2,))
        high = max(self.total(self.wall[2], v, self.index[2], 0.25, lock, s, 1, exits[2], (0, 1, 2)) for v in floors for lock in ((False,) if self.turning else (False, True)))
        return min(low, central), central, max(high, central)


BELLY = (3.0, 1.6, 0.15)
EMPTY = BODY[:2]
for n, (name, case) in enumerate([
    ("found", Case(BODY, BODY, 0.5, BELLY, 350e3, 0.7)),
    ("unloaded", Case(EMPTY, BODY, 0.5, BELLY, 350e3, 0.7)),
    ("dug", Case(EMPTY, BODY, 0.5, BELLY, 350e3, 0.7, dug=math.atan(1 / 6))),
    ("freed", Case(EMPTY, BODY, 0.5, BELLY, 350e3, 0.7, dug=math.atan(1 / 6), freed=True)),
    ("vented", Case(BODY, BODY, 0.5, BELLY, 350e3, 0.7, vented=True)),
    ("turning", Case(BODY, BODY, 0.5, BELLY, 350e3, 0.7, turning=True)),
    ("firm", Case(BODY, BODY, 0.35, BELLY, 500e3, 0.8)),
]):
    low, central, high = case.bounds()
    ci, ri, z = (500e3, 0.8, 0.35) if name == "firm" else (350e3, 0.7, 0.5)
    row(f"ref-machine-{n}", "whole-machine", [("state", name, "class"), ("CI", ci, "Pa"), ("RI", ri, "1"), ("z", z, "m")], [("low", low, "N"), ("central", central, "N"), ("high", high, "N"), ("critical", case.critical, "Pa")], "rel 1e-6")

# --- towing machine -------------------------------------------------------------------------------------------------
def sustained(ci, name, limit):
    def net(s, p):
        out = 0.0
        for c, b, d, load in ((2, 0.60, 1.60, 62.8e3 - p * 0.5 / 3), (2, 0.71, 2.05, 94.2e3 + p * 0.5 / 3)):
            bn = numeric(ci, b, d, 0.22, load / c)
            out += load * (gtr(bn, s, name) - mrr(bn, s, name))
        return out

    def best(p):
        found = minimize_scalar(lambda s: -net(s, p), bounds=(0, limit), method="bounded", options={"xatol": 1e-12})
        return max(-found.fun, net(limit, p))
    return brentq(lambda p: best(p) - p, 1e3, 3e5, xtol=1e-6, rtol=1e-13)


for n, (ci, name, limit) in enumerate([(640e3, "bias", 0.3), (720e3, "bias", 0.3), (900e3, "radial", 1.0), (1800e3, "radial", 1.0)]):
    row(f"ref-tower-{n}", "towing-machine", [("CI", ci, "Pa"), ("constants", name, "set"), ("limit", limit, "1")], [("P", sustained(ci, name, limit), "N")], "rel 1e-8")

# --- take-up against a held anchor, by integration ---------------------------------------------------------------------
for n, (k, m, p, v, s) in enumerate([(261510.666667, 20e3, 100e3, 5 / 3.6, 0.0), (326888.333333, 18e3, 116e3, 5 / 3.6, 0.5), (653776.666667, 30e3, 60e3, 0.0, 1.5), (3652383.61, 12e3, 80e3, 2.0, 0.2)]):
    rate = lambda t, y: [y[1], (p - (k * (y[0] - s) if y[0] > s else 0.0)) / m]
    stop = lambda t, y: y[1] if t > 1e-9 else 1.0
    stop.terminal, stop.direction = True, -1
    taut = lambda t, y: y[0] - s
    first = solve_ivp(rate, (0, 60), [0.0, v], method="DOP853", rtol=1e-12, atol=1e-12, events=[stop], max_step=0.01)
    row(f"ref-take-up-{n}", "held-peak", [("k", k, "N/m"), ("m", m, "kg"), ("P", p, "N"), ("v", v, "m/s"), ("s", s, "m")], [("F", float(k * (first.y_events[0][0][0] - s)), "N")], "rel 1e-6")

# --- line energy and release ---------------------------------------------------------------------------------------------
for n, (ea, length, mass, f) in enumerate([(2353596.0, 9.0, 2.0, 200e3), (5.9e6, 15.0, 2.2, 90e3)]):
    energy = quad(lambda x: ea / length * x, 0, f * length / ea, epsabs=1e-9, epsrel=1e-13)[0]
    row(f"ref-line-{n}", "linear-line", [("EA", ea, "N"), ("L", length, "m"), ("m", mass, "kg/m"), ("F", f, "N")], [("E", energy, "J"), ("v", math.sqrt(2 * energy / (mass * length)), "m/s")])

# --- running bridle: equilibrium of the eye by a solver -----------------------------------------------------------------
for n, (w, length, lean) in enumerate([(1.3, 4.0, 0.0), (2.0, 4.0, math.radians(17)), (1.9, 18.0, math.radians(-8)), (3.0, 7.5, math.radians(40))]):
    def unbalanced(q):
        a, b = np.array([q[0] + w / 2, q[1]]), np.array([q[0] - w / 2, q[1]])
        u, v = a / np.hypot(*a), b / np.hypot(*b)
        pull = u + v
        return [np.hypot(*a) + np.hypot(*b) - length, pull[0] * math.cos(lean) - pull[1] * math.sin(lean)]
    x, y = fsolve(unbalanced, [math.sin(lean) * length / 2, math.cos(lean) * math.sqrt(length * length - w * w) / 2], xtol=1e-14)
    a, b = np.array([x + w / 2, y]), np.array([x - w / 2, y])
    theta = math.acos(a @ b / (np.hypot(*a) * np.hypot(*b)))
    pull = a / np.hypot(*a) + b / np.hypot(*b)
    row(f"ref-bridle-{n}", "running-bridle", [("w", w, "m"), ("L", length, "m"), ("lean", lean, "rad")], [("theta", theta, "rad"), ("T_over_P", float(1 / np.hypot(*pull)), "1")], "rel 1e-7")

# --- friction in the eye: tensions in a given ratio, resultant one ------------------------------------------------------
for n, (theta, mu) in enumerate([(math.radians(37.93), 0.3), (math.radians(80), 0.15)]):
    ratio = math.exp(mu * (math.pi - theta))
    high = brentq(lambda t: t * t + (t / ratio) ** 2 + 2 * t * t / ratio * math.cos(theta) - 1, 0.1, 5, xtol=1e-15)
    row(f"ref-friction-{n}", "eye-friction", [("theta", theta, "rad"), ("mu", mu, "1")], [("T_high_over_P", high, "1")])

with open("shared/check-values/reference.csv", "w", newline="", encoding="utf-8") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
print(len(ROWS), "rows,", AUTHORITY)
