"""Recomputes winch, tackle, anchors and the pull of several machines with numpy and SciPy, and writes shared/check-values/traction-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/traction.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.interpolate import RegularGridInterpolator
from scipy.optimize import brentq

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/traction.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    def value(v):
        return v if isinstance(v, str) else repr(float(v))

    pack = lambda pairs: "; ".join(f"{k}={value(v)} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- winch: torque balance and the length of rope wound turn by turn ----------------------------------------------------
for n, (p1, d, drum, width, rope) in enumerate([(120e3, 0.014, 0.22, 0.30, 60.0), (80e3, 0.012, 0.15, 0.25, 90.0), (250e3, 0.024, 0.40, 0.55, 120.0)]):
    radii = (drum + d) / 2 + d * np.arange(8)
    pulls = p1 * radii[0] / radii
    turns = math.floor(width / d)
    held = np.cumsum(turns * 2 * math.pi * radii)
    layer = int(np.searchsorted(held, rope)) + 1
    row(f"scipy-winch-{n}", "winch", [("P1", p1, "N"), ("d", d, "m"), ("D", drum, "m"), ("w", width, "m"), ("rope", rope, "m")],
        [("P2", pulls[1], "N"), ("P5", pulls[4], "N"), ("P8", pulls[7], "N"), ("layer", layer, "1"), ("on_layer", pulls[layer - 1], "N")])

# --- fleet angle: root of the tangent ------------------------------------------------------------------------------------
for n, (width, angle) in enumerate([(0.30, 1.5), (0.55, 2.0)]):
    lead = brentq(lambda a: math.degrees(math.atan2(width / 2, a)) - angle, 0.1, 1e3, xtol=1e-13, rtol=1e-14)
    row(f"scipy-fleet-{n}", "fleet-angle", [("w", width, "m"), ("grooved", "yes" if angle > 1.8 else "no", "class")], [("lead", lead, "m")])

# --- capstan: the differential equation dT/d(beta) = mu T ------------------------------------------------------------------
for n, (mu, wrap) in enumerate([(0.10, 540.0), (0.30, 270.0), (0.22, 45.0)]):
    sol = solve_ivp(lambda _, t: mu * t, (0, math.radians(wrap)), [1.0], rtol=1e-13, atol=1e-14, method="DOP853")
    row(f"scipy-capstan-{n}", "capstan", [("mu", mu, "1"), ("wrap", wrap, "deg")], [("ratio", sol.y[0, -1], "1")], "rel 1e-10")

# --- tackle: all tensions and place forces as one linear system, the advantage also from the lengths of the ropes --------------
#     A rope: (hauled at, [places of its sheaves], dead end). Places: H haul, A anchor, L load, other letters travellers.
RIGS = {
    "2-moving": [("H", ["L"], "A")],
    "3-moving": [("H", ["L", "A"], "L")],
    "4-fixed": [("H", ["A", "L", "A", "L"], "A")],
    "2-on-3": [("H", ["t"], "A"), ("t", ["L", "A"], "L")],
    "spanish": [("H", ["t"], "L"), ("t", ["A"], "L")],
    "two-travellers": [("H", ["t"], "A"), ("t", ["u"], "A"), ("u", ["L"], "A")],
}
BEYOND = {"spanish"}  # hauled away from the anchor
for name, ropes in RIGS.items():
    for eta in (1.0, 0.96, 0.91):
        # Unknowns: tension of every part of every rope; equations: haul = 1, each sheave, each traveller in balance.
        index, count = {}, 0
        for r, (_, blocks, _) in enumerate(ropes):
            for k in range(len(blocks) + 1):
                index[r, k] = count
                count += 1
        a, rhs = np.zeros((count, count)), np.zeros(count)
        eq = 0
        for r, (hauled, blocks, _) in enumerate(ropes):
            for k in range(len(blocks)):
                a[eq, index[r, k + 1]], a[eq, index[r, k]] = 1.0, -eta
                eq += 1
            a[eq, index[r, 0]] = 1.0
            if hauled == "H":
                rhs[eq] = 1.0
            else:
                for q, (_, other, dead) in enumerate(ropes):
                    for k, place in enumerate(other):
                        if place == hauled:
                            a[eq, index[q, k]] -= 1.0
                            a[eq, index[q, k + 1]] -= 1.0
                    if dead == hauled:
                        a[eq, index[q, len(other)]] -= 1.0
            eq += 1
        t = np.linalg.solve(a, rhs)

        def on(place):
            total = 0.0
            for q, (_, blocks, dead) in enumerate(ropes):
                total += sum(t[index[q, k]] + t[index[q, k + 1]] for k, p in enumerate(blocks) if p == place)
                total += t[index[q, len(blocks)]] if dead == place else 0.0
            return total

        row(f"scipy-tackle-{name}-{eta:g}", "tackle", [("rig", name, "class"), ("eta", eta, "1")], [("load", on("L"), "1"), ("anchor", on("A"), "1")], "rel 1e-12")

    # Kinematics: ropes keep their length while the casualty comes one metre nearer; travellers lie between anchor and casualty.
    travellers = sorted({h for h, _, _ in ropes if h != "H"})
    at = {"A": 0.0, "L": 100.0} | {p: 50.0 + 5 * i for i, p in enumerate(travellers)}
    order = {p: at[p] for p in at}
    # Rate of each point towards the anchor: unknown for travellers and for the haul.
    unknown = travellers + ["H"]
    m, b = np.zeros((len(ropes), len(unknown))), np.zeros(len(ropes))
    for r, (hauled, blocks, dead) in enumerate(ropes):
        way = [hauled] + blocks + [dead]
        for p, q in zip(way, way[1:]):
            if p == "H":
                # The haul stands fixed, by the anchor or beyond the casualty, and takes rope in at a rate of its own.
                far, near = ("B", q) if name in BEYOND else (q, "A")
                m[r, unknown.index("H")] += 1.0
            else:
                far, near = (p, q) if order[p] >= order[q] else (q, p)
            for place, sign in ((far, -1.0), (near, 1.0)):
                if place == "L":
                    b[r] -= sign
                elif place in travellers:
                    m[r, unknown.index(place)] += sign
    v = np.linalg.solve(m, b)
    row(f"scipy-tackle-way-{name}", "tackle-way", [("rig", name, "class")], [("rope_per_metre", v[-1], "1")], "rel 1e-12")

# --- a block: vector sum of its two parts ------------------------------------------------------------------------------------
for n, (t1, eta, angle) in enumerate([(100e3, 1.0, 60.0), (100e3, 1.0, 120.0), (80e3, 0.91, 90.0), (50e3, 0.96, 0.0)]):
    force = np.linalg.norm(t1 * np.array([1.0, 0.0]) + eta * t1 * np.array([math.cos(math.radians(angle)), math.sin(math.radians(angle))]))
    row(f"scipy-block-{n}", "block", [("T", t1, "N"), ("eta", eta, "1"), ("angle", angle, "deg")], [("F", force, "N")])

# --- handbook steps --------------------------------------------------------------------------------------------------------------
for n, (load, effort, fixed) in enumerate([(300e3, 100e3, 0), (430e3, 90e3, 0), (250e3, 60e3, 1)]):
    ma = np.arange(1, 13)
    sheaves = ma - 1 + fixed
    fall = load * (1 + 0.1 * sheaves) / ma
    first = int(-(-load // effort))
    best = int(np.argmax((ma >= first) & (fall < effort)))
    row(f"scipy-estimate-{n}", "estimate", [("load", load, "N"), ("effort", effort, "N"), ("fixed", "yes" if fixed else "no", "class")],
        [("MA", ma[best], "1"), ("fall_line", fall[best], "N"), ("tries", ma[best] - first + 1, "1")])

# --- deadman between the entries of its table: bilinear in mean depth and run -------------------------------------------------
TABLE = np.array([[950, 1300, 1450, 1500], [1750, 2200, 2600, 2700], [2800, 3600, 4000, 4100], [3800, 5100, 5800, 6000], [5100, 7000, 8000, 8400]], float)
grid = RegularGridInterpolator((np.array([3, 4, 5, 6, 7]) * 0.3048, np.array([1, 2, 3, 4])), TABLE * 0.45359237 * 9.80665 / 0.3048**2)
for n, (depth, run, factor, soil, length, face, trench) in enumerate([(1.00, 1.5, 1.0, "Loam", 2.0, 0.45, 0.40), (1.80, 2.7, 0.5, "FineGrainedOrWetSand", 2.4, 0.60, 0.50), (2.10, 3.3, 5.0, "RockOrHardpan", 1.5, 0.35, 0.31)]):
    power = float(grid([[depth, run]])[0]) * factor
    row(f"scipy-deadman-{n}", "deadman", [("depth", depth, "m"), ("run", run, "1"), ("soil", soil, "class"), ("L", length, "m"), ("face", face, "m"), ("trench", trench, "m")],
        [("HP", power, "Pa"), ("F", power * face * (length - trench), "N")], "rel 1e-10")

# --- a machine as an anchor: the braked axles grip, the other rolls; Brixius bias constants at slip up to 0.30, load transfer by moments ---
def machine_holds(index, axles, wheelbase, height, hitch, grade, braked):
    weight, theta = axles[0] + axles[1], math.atan(grade)
    xc = -wheelbase * axles[1] / weight
    tyres = [(0.60, 1.60), (0.71, 2.05)]

    def net(pull, slip):
        # Moments about the front contact: the line draws back at the hitch height, the weight acts at its height on the grade (ground rises ahead).
        rear = (-weight * (xc * math.cos(theta) - height * math.sin(theta)) + pull * hitch) / wheelbase
        loads = [weight * math.cos(theta) - rear, rear]
        # The deflection of a tyre is that of the machine standing on the grade without a pull, here given as a constant 0.22.
        total = 0.0
        for load, (b, d), holds in zip(loads, tyres, braked):
            bn = index * b * d / (load / 2) * (1 + 5 * 0.22) / (1 + 3 * b / d)
            mrr = lambda s: 1 / bn + 0.04 + 0.5 * s / math.sqrt(bn)
            total += load * ((0.88 * (1 - math.exp(-0.1 * bn)) * (1 - math.exp(-7.5 * slip)) + 0.04 - mrr(slip)) if holds else -mrr(0))
        return total - weight * math.sin(theta)

    return max(brentq(lambda p: net(p, s) - p, 0, weight, xtol=1e-9, rtol=1e-14) for s in np.linspace(0.2, 0.30, 41))


for n, (index, grade, braked) in enumerate([(640e3, 0.0, (True, True)), (640e3, 0.06, (False, True)), (900e3, -0.05, (False, True))]):
    row(f"scipy-machine-anchor-{n}", "machine-anchor", [("CI", index, "Pa"), ("axle_f", 62.8e3, "N"), ("axle_r", 94.2e3, "N"), ("L", 3.0, "m"), ("h", 1.0, "m"), ("H", 0.5, "m"), ("grade", grade, "1"), ("front", "yes" if braked[0] else "no", "class")],
        [("holds", machine_holds(index, (62.8e3, 94.2e3), 3.0, 1.0, 0.5, grade, braked), "N")], "rel 1e-6")

# --- several machines: vectors, a free strap, one drawn by the other, one speed over the ground -------------------------------
for n, (pulls, angles) in enumerate([((80e3, 60e3), (20.0, -30.0)), ((90e3, 90e3), (25.0, -25.0)), ((50e3, 70e3, 40e3), (35.0, 0.0, -40.0))]):
    total = sum(p * np.array([math.cos(math.radians(a)), math.sin(math.radians(a))]) for p, a in zip(pulls, angles))
    row(f"scipy-spread-{n}", "team-spread", [("pulls", "|".join(repr(p) for p in pulls), "N"), ("angles", "|".join(repr(a) for a in angles), "deg")],
        [("along", total[0], "N"), ("sideways", total[1], "N"), ("off", math.degrees(math.atan2(total[1], total[0])), "deg")], "rel 1e-9")

for n, (p1, p2, theta, mu) in enumerate([(90e3, 60e3, 40.0, 0.30), (70e3, 65e3, 30.0, 0.30), (100e3, 40e3, 60.0, 0.10)]):
    t = min(p1, p2)
    along = np.linalg.norm(t * np.array([math.cos(math.radians(theta / 2)), math.sin(math.radians(theta / 2))]) + t * np.array([math.cos(math.radians(theta / 2)), -math.sin(math.radians(theta / 2))]))
    grip = solve_ivp(lambda _, x: mu * x, (0, math.pi - math.radians(theta)), [1.0], rtol=1e-13, atol=1e-14, method="DOP853").y[0, -1]
    row(f"scipy-equaliser-{n}", "team-equaliser", [("P1", p1, "N"), ("P2", p2, "N"), ("theta", theta, "deg"), ("mu", mu, "1")], [("along", along, "N"), ("high_end", min(p1, p2 * grip), "N")], "rel 1e-9")

TYRES = [(0.60, 1.60), (0.71, 2.05)]


def net_on_level(index, axles, pull, hitch, lead, front, slip, wheelbase=3.0):
    rear = axles[1] + (pull * hitch - lead * front) / wheelbase
    total = 0.0
    for load, (b, d) in zip((axles[0] + axles[1] - rear, rear), TYRES):
        bn = index * b * d / (load / 2) * (1 + 5 * 0.22) / (1 + 3 * b / d)
        total += load * (0.88 * (1 - math.exp(-0.1 * bn)) * (1 - math.exp(-7.5 * slip)) + 0.04 - (1 / bn + 0.04 + 0.5 * slip / math.sqrt(bn)))
    return total


def most(index, axles, hitch, lead, front, limit):
    at = lambda s: brentq(lambda p: net_on_level(index, axles, p, hitch, lead, front, s) + lead - p, 0, 0.9 * sum(axles) + lead, xtol=1e-9, rtol=1e-14)
    return max(at(s) for s in (limit, 0.999 * limit))


for n, (index, one, two, front) in enumerate([(900e3, 1.0, 1.0, 0.6), (700e3, 1.3, 0.9, 0.8), (1200e3, 0.7, 1.2, 0.5)]):
    first = most(index, (62.8e3 * one, 94.2e3 * one), 0.5, 0.0, 0.0, 0.30)
    second = most(index, (62.8e3 * two, 94.2e3 * two), 0.5, first, front, 0.30)
    row(f"scipy-in-line-{n}", "team-in-line", [("CI", index, "Pa"), ("scale1", one, "1"), ("scale2", two, "1"), ("hf", front, "m")], [("first", first, "N"), ("second", second, "N")], "rel 1e-8")

for n, (index, one, two, a1, a2, v1, v2, wanted) in enumerate([(900e3, 1.0, 1.0, 10.0, -10.0, 2.0, 2.2, 120e3), (800e3, 1.4, 0.8, 0.0, 20.0, 2.0, 2.0, 130e3), (1100e3, 1.0, 1.2, 15.0, -15.0, 2.1, 2.0, 100e3)]):
    def pull_of(scale, slip):
        axles = (62.8e3 * scale, 94.2e3 * scale)
        if slip <= 0 or net_on_level(index, axles, 0, 0.5, 0, 0, slip) <= 0:
            return 0.0
        return brentq(lambda p: net_on_level(index, axles, p, 0.5, 0, 0, slip) - p, 0, 0.9 * sum(axles), xtol=1e-9, rtol=1e-14)

    total = lambda v: pull_of(one, 1 - v / v1) * math.cos(math.radians(a1)) + pull_of(two, 1 - v / v2) * math.cos(math.radians(a2)) - wanted
    v = brentq(total, 0.6 * min(v1, v2), max(v1, v2), xtol=1e-14, rtol=1e-14)
    row(f"scipy-sharing-{n}", "team-sharing", [("CI", index, "Pa"), ("scale1", one, "1"), ("scale2", two, "1"), ("a1", a1, "deg"), ("a2", a2, "deg"), ("v1", v1, "km/h"), ("v2", v2, "km/h"), ("wanted", wanted, "N")],
        [("P1", pull_of(one, 1 - v / v1), "N"), ("P2", pull_of(two, 1 - v / v2), "N"), ("s1", 1 - v / v1, "1"), ("s2", 1 - v / v2, "1")], "rel 1e-5")

with open("shared/check-values/traction-scipy.csv", "w", newline="") as handle:
    writer = csv.writer(handle, lineterminator="\n")
    writer.writerow(["id", "model", "given", "expected", "tolerance", "authority", "standing"])
    writer.writerows(ROWS)
print(len(ROWS), "rows")
