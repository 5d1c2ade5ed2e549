"""Recomputes winch, tackle, anchors and the pull of several machines with numpy and SciPy, and writes shared/check-values/traction-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/traction.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import quad, solve_ivp
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

# --- one machine by several wheel models, load transfer by moments ------------------------------------------------------------
def wismer(index, b, d, load, s):
    cn = index * b * d / load
    return 0.75 * (1 - math.exp(-0.3 * cn * s)) - (1.2 / cn + 0.04), 1.2 / cn + 0.04


def gee_clough(index, b, d, load, s):
    m = index * b * d / load * math.sqrt(0.22) / (1 + b / (2 * d))
    top = 0.796 - 0.92 / m
    return top * (1 - math.exp(-(4.838 + 0.061 * m) / top * s)), 0.049 + 0.287 / m


def brixius_radial(index, b, d, load, s):
    bn = index * b * d / load * (1 + 5 * 0.22) / (1 + 3 * b / d)
    mrr = lambda x: 0.9 / bn + 0.0325 + 0.5 * x / math.sqrt(bn)
    return 0.88 * (1 - math.exp(-0.1 * bn)) * (1 - math.exp(-9.5 * s)) + 0.0325 - mrr(s), mrr(0)


LAWS = {"wismer-luth": wismer, "gee-clough": gee_clough, "brixius-radial": brixius_radial}
for n, (law, index, slip, hitch, grade, front) in enumerate([
    ("wismer-luth", 900e3, 0.20, 0.5, 0.0, True), ("wismer-luth", 600e3, 0.30, 0.7, 0.05, False), ("gee-clough", 900e3, 0.20, 0.5, 0.0, True),
    ("gee-clough", 500e3, 0.30, 0.6, -0.03, False), ("brixius-radial", 720e3, 0.25, 0.5, 0.08, True)]):
    weight, theta, xc = 157e3, math.atan(grade), -3.0 * 94.2 / 157

    def out(p):
        rear = (-weight * (xc * math.cos(theta) - 1.0 * math.sin(theta)) + p * hitch) / 3.0
        loads = (weight * math.cos(theta) - rear, rear)
        nets = [LAWS[law](index, b, d, w / 2, slip if drive else 0.0) for w, (b, d), drive in zip(loads, TYRES, (front, True))]
        return sum(w * (net if drive else -mr) for w, (net, mr), drive in zip(loads, nets, (front, True))) - weight * math.sin(theta) - p

    row(f"scipy-model-pull-{n}", "model-pull", [("model", law, "class"), ("CI", index, "Pa"), ("s", slip, "1"), ("H", hitch, "m"), ("grade", grade, "1"), ("drive", "4wd" if front else "2wd", "class")],
        [("P", brentq(out, 0, 157e3, xtol=1e-9, rtol=1e-14), "N")], "rel 1e-7")

# --- overturning: the tension at which the unloaded side carries nothing, by moments of 3-D vectors about the line of the loaded contacts ---
for n, (t, pitch, yaw, slope, hd) in enumerate([(60e3, 0.0, 30.0, 5.0, 0.8), (40e3, 6.0, 60.0, -4.0, 1.0), (50e3, -12.0, 45.0, 8.0, 0.6)]):
    p, y, a = (math.radians(v) for v in (pitch, yaw, slope))
    arm_hitch, arm_mass = np.array([0, -1.0, hd]), np.array([0, -1.0, 1.0])  # from the loaded contact line, y towards the loaded side

    def moment(tension):
        # A part down on the hitch is not credited; a line that rises (pitch below 0) lifts.
        force = tension * np.array([-math.cos(p) * math.cos(y), math.cos(p) * math.sin(y), max(0.0, -math.sin(p))])
        gravity = 157e3 * np.array([0, math.sin(a), -math.cos(a)])
        return -(np.cross(arm_hitch, force)[0] + np.cross(arm_mass, gravity)[0])  # positive turns it over

    lift = brentq(moment, 0, 1e8, xtol=1e-6, rtol=1e-14)
    turns = 157e3 * math.sin(a) * 1.0 + t * math.cos(p) * math.sin(y) * hd
    holds = 1.0 * (157e3 * math.cos(a) - (-t * math.sin(p) if p < 0 else 0.0))
    row(f"scipy-overturn-{n}", "overturn", [("T", t, "N"), ("pitch", pitch, "deg"), ("yaw", yaw, "deg"), ("slope", slope, "deg"), ("h_d", hd, "m")],
        [("used", turns / holds, "1"), ("lift", lift, "N"), ("across", t * math.cos(p) * math.sin(y), "N")], "rel 1e-8")

# --- the same as a limit of the pull along the machine, on no side slope -----------------------------------------------------------
for n, (pitch, yaw, hd) in enumerate([(0.0, 45.0, 2.5), (0.0, 20.0, 0.8), (6.0, 30.0, 1.2), (-12.0, 40.0, 1.0), (-12.0, -40.0, 1.0)]):
    p, y = math.radians(pitch), math.radians(abs(yaw))

    def turning(along):
        force = along * np.array([-1.0, math.tan(y), max(0.0, -math.tan(p)) / math.cos(y)])
        return -(np.cross([0, -1.0, hd], force)[0] + np.cross([0, -1.0, 1.0], [0, 0, -157e3])[0])

    row(f"scipy-side-limit-{n}", "side-limit", [("pitch", pitch, "deg"), ("yaw", yaw, "deg"), ("h_d", hd, "m")], [("P", brentq(turning, 0, 1e8, xtol=1e-6, rtol=1e-14), "N")], "rel 1e-8")

# --- turning parts: the equation of motion of machine and turning parts on a linear line, wheels that cannot slip ---------------
for n, (je, jw, i, r, m, v, pull, k) in enumerate([(2.5, 800.0, 300.0, 0.95, 18e3, 0.5, 116e3, 327e3), (4.0, 1500.0, 80.0, 1.0, 24e3, 1.5, 150e3, 900e3)]):
    mr = (je * i**2 + jw) / r**2
    total = m + mr
    # The engine holds the speed of the wheels until the line takes the steady pull; after that only the pull acts.
    start = pull / k
    stop = lambda _, y: y[1]
    stop.terminal, stop.direction = True, -1
    sol = solve_ivp(lambda _, y: [y[1], (pull - k * y[0]) / total], (0, 1e3), [start, v], rtol=1e-12, atol=1e-13, method="DOP853", events=stop)
    row(f"scipy-rotating-{n}", "rotating-inertia", [("J_e", je, "1"), ("J_w", jw, "1"), ("i", i, "1"), ("r", r, "m"), ("m", m, "kg"), ("v", v, "m/s"), ("P", pull, "N"), ("k", k, "N/m")],
        [("m_r", mr, "kg"), ("E", 0.5 * total * v**2, "J"), ("F", k * sol.y_events[0][0][0], "N")], "rel 1e-8")

# --- a machine on two tracks: shear displacement integrated along the contact, sinkage of a plate, load by the falling line -------
for n, (m, kc, kphi, ex, c, phi, b, l, K, grade, pitch, slip) in enumerate([
    (13766.4, 4.37, 196.72, 1.6, 1.0e3, 19.7, 1.0, 3.6, 0.05, 0.0, 0.0, 0.30), (20000.0, 13.19, 692.15, 0.5, 4.14e3, 13.0, 0.6, 3.0, 0.03, 0.05, 0.0, 0.30),
    (18000.0, 13.19, 692.15, 0.5, 4.14e3, 13.0, 0.6, 2.8, 0.025, -0.04, 12.0, 0.15), (18000.0, 11.42, 808.96, 0.4, 9.65e3, 35.0, 0.6, 2.8, 0.025, 0.02, -8.0, 0.30)]):
    weight, theta, fall = m * 9.80665, math.atan(grade), math.tan(math.radians(pitch))

    def lacks(p):
        each = (weight * math.cos(theta) + p * fall) / 2
        tau = (c + each / (b * l) * math.tan(math.radians(phi)))
        thrust = b * quad(lambda x: tau * (1 - math.exp(-slip * x / K)), 0, l, epsabs=1e-9, epsrel=1e-12)[0]
        k = 1000 * (kc / min(b, l) + kphi)
        z = (each / (b * l) / k) ** (1 / ex)
        return 2 * (thrust - b * quad(lambda u: k * u**ex, 0, z, epsabs=1e-9, epsrel=1e-12)[0]) - weight * math.sin(theta) - p

    row(f"scipy-tracked-{n}", "tracked-pull", [("m", m, "kg"), ("kc", kc, "1"), ("kphi", kphi, "1"), ("n", ex, "1"), ("c", c, "Pa"), ("phi", phi, "deg"), ("b", b, "m"), ("l", l, "m"), ("K", K, "m"), ("grade", grade, "1"), ("pitch", pitch, "deg"), ("s", slip, "1")],
        [("P", brentq(lacks, 0, 3 * weight, xtol=1e-9, rtol=1e-14), "N")], "rel 1e-7")

for n, (m, xc, h, p, hd, behind, l, grade, pitch) in enumerate([(18000.0, 0.3, 0.9, 90e3, 0.5, 0.6, 3.0, 0.0, 0.0), (18000.0, 0.2, 1.0, 110e3, 0.6, 0.5, 2.8, 0.06, 5.0)]):
    # Moments of all forces about the middle of the contact, by vectors; the resultant makes the sum zero.
    weight, theta = m * 9.80665, math.atan(grade)
    gravity = weight * np.array([-math.sin(theta), -math.cos(theta)])
    line = p * np.array([-1.0, -math.tan(math.radians(pitch))])
    cross = lambda arm, force: arm[0] * force[1] - arm[1] * force[0]
    turn = cross(np.array([xc, h]), gravity) + cross(np.array([-l / 2 - behind, hd]), line)
    e = turn / (gravity[1] + line[1])  # moment of the ground e N and of all else sum to zero, N = -(gravity + line) upwards
    f = lambda x: (1 + 6 * abs(x) / l) if abs(x) <= l / 6 else None
    # Peak of the pressure that a resultant at e needs: linear over what bears, no tension.
    if abs(e) <= l / 6:
        peak = f(e)
    else:
        bearing = brentq(lambda a: (l / 2 - abs(e)) - a / 3, 1e-6, l)
        peak = 2 * l / bearing
    row(f"scipy-track-ends-{n}", "track-ends", [("m", m, "kg"), ("xc", xc, "m"), ("h", h, "m"), ("P", p, "N"), ("hd", hd, "m"), ("behind", behind, "m"), ("l", l, "m"), ("grade", grade, "1"), ("pitch", pitch, "deg")],
        [("e", e, "m"), ("peak", peak, "1")], "rel 1e-8")

with open("shared/check-values/traction-scipy.csv", "w", newline="") as handle:
    writer = csv.writer(handle, lineterminator="\n")
    writer.writerow(["id", "model", "given", "expected", "tolerance", "authority", "standing"])
    writer.writerows(ROWS)
print(len(ROWS), "rows")
