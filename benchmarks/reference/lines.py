"""Recomputes take-ups in time, flight, sag and the energies of curves with SciPy, and writes shared/check-values/lines-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/lines.py           writes the file
    python3 benchmarks/reference/lines.py --time    prints how long solve_ivp takes for each take-up at an error near 1e-8
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math
import sys
import time

import numpy as np
import scipy
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/lines.py"
G = 9.80665
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-8"):
    def value(v):
        return v if isinstance(v, str) else repr(float(v))

    pack = lambda pairs: "; ".join(f"{k}={value(v)} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- take-ups -------------------------------------------------------------------------------------------------------------
# Puller (m1, x1, v1), casualty (m2, x2, v2; infinite where held), massless line of tension F(x1 - x2), slack before it.
# The casualty sticks while |F| <= Rs and then slides against Rk; every change of mode ends one solve_ivp and begins the next.
class Case:
    def __init__(self, name, line, m1, v, drive, s=0.0, m2=math.inf, Rs=math.inf, Rk=0.0, end=3.0):
        self.name, self.line, self.m1, self.v, self.drive, self.s, self.m2, self.Rs, self.Rk, self.end = name, line, m1, v, drive, s, m2, Rs, Rk, end
        self.force = tension_of(line)

    def push(self, t, v):
        kind = self.drive[0]
        if kind == "constant":
            return self.drive[1]
        if kind == "raised":
            return self.drive[1] * min(1.0, t / self.drive[2])
        _, p, vt, n = self.drive
        slip = 1 - v / vt
        return 0.0 if slip <= 0 else p if slip >= 1 else p * (1 - math.exp(-n * slip)) / (1 - math.exp(-n))


def tension_of(line):
    kind = line[0]
    if kind == "power":
        _, length, fb, eb, n = line
        return lambda x: fb * (x / (eb * length)) ** n if x > 0 else 0.0
    if kind == "table":
        _, length, strains, forces = line
        xs, fs = np.concatenate([[0], strains]) * length, np.concatenate([[0], forces])
        return lambda x: float(np.interp(x, xs, fs)) if x > 0 else 0.0
    if kind == "series":  # a power law and a linear part, one tension: solved for the tension at every call
        _, length, fb, eb, n, l2, f2, e2 = line
        stretch = lambda f: length * eb * (f / fb) ** (1 / n) + l2 * e2 * f / f2
        return lambda x: brentq(lambda f: stretch(f) - x, 0, 2 * fb, xtol=1e-9, rtol=1e-15) if x > 0 else 0.0
    raise ValueError(kind)


def simulate(case, rtol=1e-12, atol=1e-13, step=0.01):
    """First peak with its time, greatest force, times of taut, break-out, slack and stop, puller speed at slack; what did not happen is missing."""
    t, y = 0.0, np.array([-case.s, case.v, 0.0, 0.0])
    taut, way = case.s == 0, 0
    out = {"F": 0.0}
    edges = [case.drive[2]] if case.drive[0] == "raised" else []
    while t < case.end - 1e-12:
        f = lambda y: case.force(y[0] - y[2]) if taut else 0.0

        def rhs(t, y):
            tension = f(y)
            return [y[1], (case.push(t, y[1]) - tension) / case.m1, y[3], (tension - way * case.Rk) / case.m2 if way else 0.0]

        events, names = [], []

        def add(name, g, direction, terminal=True):
            g.direction, g.terminal = direction, terminal
            events.append(g)
            names.append(name)

        if taut:
            add("peak", lambda t, y: y[1] - y[3], -1, False)
            add("slack", lambda t, y: y[0] - y[2], -1)
            if way == 0 and math.isfinite(case.m2):
                add("break", lambda t, y: f(y) - case.Rs, 1)
        else:
            add("taut", lambda t, y: y[0] - y[2], 1)
        if way:
            add("stop", lambda t, y: y[3], -1)
        upto = min([e for e in edges if e > t + 1e-12] + [case.end])
        sol = solve_ivp(rhs, (t, upto), y, method="DOP853", rtol=rtol, atol=atol, max_step=step, events=events)
        if "peak" in names:
            for at, state in zip(sol.t_events[0], sol.y_events[0]):
                if at <= sol.t[-1]:
                    out.setdefault("F_1", f(state))
                    out.setdefault("t_1", at)
                    out["F"] = max(out["F"], f(state))
        t, y = sol.t[-1], sol.y[:, -1].copy()
        if sol.status != 1:
            continue
        hit = [n for n, at in zip(names, sol.t_events) if n != "peak" and len(at) and abs(at[-1] - t) < 1e-13 * (1 + t)][0]
        out.setdefault("t_" + hit, t)
        if hit == "slack":
            out.setdefault("v_slack", y[1])
            taut = False
            y[0] = y[2]
        elif hit == "taut":
            taut = True
            y[0] = y[2]
        elif hit == "break":
            way = 1
        elif hit == "stop":
            y[3] = 0.0
            way = 1 if f(y) > case.Rs else 0
    return out


NYLON = ("power", 9.0, 588399.0, 0.25, 1.0)
CASES = [
    Case("linear-pull", NYLON, 20e3, 5 / 3.6, ("constant", 100e3), end=4.0),
    Case("linear-slack", NYLON, 18e3, 2 / 3.6, ("constant", 116e3), s=0.5, end=4.0),
    Case("linear-raised", ("power", 9.0, 588399.0, 0.2, 1.0), 18e3, 0.0, ("raised", 116e3, 2.0), end=4.0),
    Case("power-pull", ("power", 9.0, 588399.0, 0.25, 1.5), 20e3, 10 / 3.6, ("constant", 50e3), end=4.0),
    Case("power-slack", ("power", 12.0, 400e3, 0.15, 2.2), 14e3, 3 / 3.6, ("constant", 60e3), s=0.3, end=4.0),
    Case("table-pull", ("table", 9.0, (0.05, 0.12, 0.25), (40e3, 180e3, 588399.0)), 16e3, 4 / 3.6, ("constant", 70e3), end=4.0),
    Case("series-pull", ("series", 9.0, 588399.0, 0.25, 1.4, 6.0, 500e3, 0.1), 20e3, 5 / 3.6, ("constant", 80e3), end=3.0),
    Case("gear-slack", ("power", 9.0, 588399.0, 0.2, 1.0), 18e3, 0.0, ("gear", 116e3, 5 / 3.6, 9.5), s=0.5, end=5.0),
    Case("gear-power", ("power", 9.0, 588399.0, 0.25, 1.5), 18e3, 2 / 3.6, ("gear", 116e3, 2 / 3.6, 9.5), end=4.0),
    Case("break-out", NYLON, 20e3, 10 / 3.6, ("constant", 100e3), m2=30e3, Rs=150e3, Rk=100e3, end=2.0),
    Case("break-out-power", ("power", 9.0, 588399.0, 0.25, 1.5), 20e3, 5 / 3.6, ("constant", 60e3), m2=28e3, Rs=90e3, Rk=70e3, s=0.2, end=5.0),
    Case("gear-stick-slip", ("power", 9.0, 588399.0, 0.2, 1.0), 18e3, 0.6 / 3.6, ("gear", 116e3, 0.6 / 3.6, 9.5), m2=25e3, Rs=100e3, Rk=75e3, end=5.0),
]
UNITS = {"F": "N", "F_1": "N", "v_slack": "m/s"}


def given_of(c):
    g = [("line", c.line[0], "1"), ("L", c.line[1], "m")]
    if c.line[0] == "table":
        g += [("strains", "|".join(map(repr, c.line[2])), "1"), ("forces", "|".join(map(repr, c.line[3])), "N")]
    else:
        g += [("Fb", c.line[2], "N"), ("eb", c.line[3], "1"), ("n", c.line[4], "1")]
    if c.line[0] == "series":
        g += [("L2", c.line[5], "m"), ("Fb2", c.line[6], "N"), ("eb2", c.line[7], "1")]
    g += [("s", c.s, "m"), ("m1", c.m1, "kg"), ("v", c.v, "m/s"), ("drive", c.drive[0], "1"), ("P", c.drive[1], "N")]
    if c.drive[0] == "raised":
        g += [("t_r", c.drive[2], "s")]
    if c.drive[0] == "gear":
        g += [("v_t", c.drive[2], "m/s"), ("exponent", c.drive[3], "1")]
    if math.isfinite(c.m2):
        g += [("m2", c.m2, "kg"), ("Rs", c.Rs, "N"), ("Rk", c.Rk, "N")]
    return g + [("end", c.end, "s")]


if "--time" in sys.argv:
    total = 0.0
    for c in CASES:
        best, fine = math.inf, simulate(c)
        # Loosest of these tolerances that keeps every force and time within 1e-8.
        for rtol in (1e-7, 1e-8, 1e-9, 1e-10, 1e-11, 1e-12):
            result = simulate(c, rtol, rtol / 10, np.inf)
            error = max(abs(result.get(k, math.inf) / v - 1) for k, v in fine.items() if v)
            if error <= 1e-8:
                break
        for _ in range(5):
            start = time.perf_counter()
            simulate(c, rtol, rtol / 10, np.inf)
            best = min(best, time.perf_counter() - start)
        total += best
        print(f"{c.name:16} rtol {rtol:.0e} error {error:.1e} {1e3 * best:9.3f} ms")
    print(f"{'sum':16} {1e3 * total:.3f} ms")
    sys.exit()

for c in CASES:
    out = simulate(c)
    row("scipy-take-up-" + c.name, "take-up-in-time", given_of(c), [(k, v, UNITS.get(k, "s")) for k, v in out.items()])

# --- flight with quadratic drag ---------------------------------------------------------------------------------------------
for n, (mass, v, deg, h) in enumerate([(8.0, 60.0, 30.0, 0.6), (2.0, 120.0, 15.0, 1.2), (25.0, 35.0, 55.0, 0.5)]):
    b = 1.225 * 1.2 * (mass / 2600) ** (2 / 3) / (2 * mass)
    th = math.radians(deg)
    ground = lambda t, y: y[1]
    ground.terminal, ground.direction = True, -1
    speed = lambda y: math.hypot(y[2], y[3])
    sol = solve_ivp(lambda t, y: [y[2], y[3], -b * speed(y) * y[2], -b * speed(y) * y[3] - G], (0, 60), [0, h, v * math.cos(th), v * math.sin(th)], method="DOP853", rtol=1e-12, atol=1e-12, max_step=0.05, events=ground)
    y = sol.y[:, -1]
    row(f"scipy-flight-{n}", "flight", [("m", mass, "kg"), ("v0", v, "m/s"), ("theta", deg, "deg"), ("h", h, "m")], [("range", y[0], "m"), ("KE_land", mass * speed(y) ** 2 / 2, "J"), ("t", sol.t[-1], "s")])

# --- catenary: the differential equation of the hanging line, its length by quadrature --------------------------------------------
for n, (mass, span, h, rise, x) in enumerate([(2.0, 9.0, 400.0, 0.0, 3.0), (8.0, 20.0, 3000.0, 1.5, 14.0), (0.5, 12.0, 50.0, -0.8, 6.0)]):
    w = mass * G
    # y'' = (w/H) sqrt(1 + y'^2) from y(0) = 0 with the slope that meets the far anchor.
    def hang(slope, upto, points=None):
        return solve_ivp(lambda s, y: [y[1], w / h * math.sqrt(1 + y[1] ** 2)], (0, upto), [0, slope], method="DOP853", rtol=1e-13, atol=1e-14, max_step=span / 50)
    slope = brentq(lambda p: hang(p, span).y[0, -1] - rise, -5, 5, xtol=1e-14, rtol=1e-15)
    row(f"scipy-sag-{n}", "drop-at", [("m_line", mass, "kg/m"), ("L", span, "m"), ("H", h, "N"), ("dh", rise, "m"), ("x", x, "m")], [("drop", rise * x / span - hang(slope, x).y[0, -1], "m")])
for n, (span, sag) in enumerate([(9.0, 0.25), (12.0, 2.0), (30.0, 0.02)]):
    a = brentq(lambda a: 2 * a * math.sinh(span / (4 * a)) ** 2 - sag, span / 20, 100 * span * span / sag, xtol=1e-14, rtol=1e-15)
    excess = quad(lambda x: (lambda q: q * q / (1 + math.sqrt(1 + q * q)))(math.sinh(x / a)), -span / 2, span / 2, epsabs=0, epsrel=1e-13)[0]
    row(f"scipy-slack-{n}", "slack-by-catenary", [("L", span, "m"), ("sag", sag, "m")], [("slack", excess, "m")])

# --- energy of a power law and release wave of a stiffening line, both by quadrature -----------------------------------------------
for n, (length, fb, eb, exponent, f, mass) in enumerate([(9.0, 588399.0, 0.25, 1.5, 200e3, 2.0), (15.0, 300e3, 0.12, 2.4, 90e3, 1.1)]):
    strain = eb * (f / fb) ** (1 / exponent)
    energy = quad(lambda e: length * fb * (e / eb) ** exponent, 0, strain, epsabs=0, epsrel=1e-13)[0]
    # c = sqrt((dF/de)/m'); tip speed = integral of c over strain. Substituted so that the end at 0 is smooth.
    tip = quad(lambda q: 2 * q * math.sqrt(exponent * fb / eb * (q * q / eb) ** (exponent - 1) / mass), 0, math.sqrt(strain), epsabs=0, epsrel=1e-13)[0]
    row(f"scipy-curve-{n}", "curve-energy", [("L", length, "m"), ("Fb", fb, "N"), ("eb", eb, "1"), ("n", exponent, "1"), ("F", f, "N"), ("m_line", mass, "kg/m")], [("x", strain * length, "m"), ("E", energy, "J"), ("v_tip", tip, "m/s")])

# --- fitting on a released line: characteristics as a delay equation, integrated trip by trip -------------------------------------------
# u' = a (R - u) over one trip of length 2; R = 1 on the first, then R_next = R - 2 u; ends where R - u = 0 for the first time.
for n, a in enumerate([0.04, 0.12, 0.6, 2.5]):
    incoming, start, f = (lambda s: 1.0), 0.0, None
    while f is None:
        zero = lambda s, y, R=incoming: R(s) - y[0]
        zero.terminal, zero.direction = True, -1
        sol = solve_ivp(lambda s, y, R=incoming: [a * (R(s) - y[0])], (0, 2), [start], method="DOP853", rtol=1e-12, atol=1e-13, max_step=0.02, dense_output=True, events=zero)
        if sol.status == 1:
            f = sol.y[0, -1]
        incoming, start = (lambda s, R=incoming, u=sol.sol: R(s) - 2 * u(s)[0]), sol.y[0, -1]
    row(f"scipy-fitting-{n}", "fitting-by-trips", [("a", a, "1")], [("f", f, "1")])

with open("shared/check-values/lines-scipy.csv", "w", newline="") as out:
    w = csv.writer(out, lineterminator="\n")
    w.writerow(["id", "model", "given", "expected", "tolerance", "authority", "standing"])
    w.writerows(ROWS)
print(len(ROWS), "rows")
