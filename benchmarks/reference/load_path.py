"""Recomputes rigs in space with numpy and SciPy, and writes shared/check-values/load-path-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/load_path.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import warnings

import numpy as np
import scipy
from scipy.optimize import brentq, fsolve, minimize, minimize_scalar

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/load_path.py"
ROWS = []


def row(ident, model, given, expected, tolerance):
    pack = lambda pairs: "; ".join(f"{k}={v if isinstance(v, str) else repr(float(v))} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


unit = lambda v: v / np.linalg.norm(v)
xyz = lambda name, p: [(f"{name}{c}", x, "m") for c, x in zip("xyz", p)]

# --- a ring held by three elastic straps and drawn by two pullers: equilibrium of the ring as a root ----------------------------
CASES = [
    ([(0, -0.9, 0.5), (0, 0.9, 0.5), (-2, 0.1, 0.8)], [5.0, 5.2, 7.1], [1.2e6, 0.9e6, 2.5e6], [((20, -3, 0.6), 120e3), ((18, 7, 0.4), 60e3)]),
    ([(0, -1.2, 0.4), (0, 1.0, 0.6), (0.5, 0.0, 1.1)], [6.0, 5.9, 5.4], [4e6, 4e6, 3e6], [((25, 2, 0.5), 150e3), ((24, 5, 0.5), 90e3)]),
]
for n, (anchors, lengths, stiff, pulls) in enumerate(CASES):
    A = np.array(anchors)

    def tensions(x):
        d = np.linalg.norm(A - x, axis=1)
        return np.maximum(0, (d - np.array(lengths)) / np.array(lengths) * np.array(stiff))

    def balance(x):
        force = sum(t * unit(a - x) for t, a in zip(tensions(x), A))
        return (force + sum(p * unit(np.array(d) - x) for d, p in pulls)) / 1e5

    def energy(x):
        d = np.linalg.norm(A - x, axis=1)
        stretch = np.maximum(0, d - np.array(lengths))
        return (np.sum(stretch**2 * np.array(stiff) / np.array(lengths)) / 2 + sum(p * np.linalg.norm(np.array(e) - x) for e, p in pulls)) / 1e5

    rough = minimize(energy, [5.5, 0.0, 0.5], method="Nelder-Mead", options={"xatol": 1e-10, "fatol": 1e-15, "maxiter": 20000}).x
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it goes on to the rounding, which the assertion below holds
        best = fsolve(balance, rough, xtol=1e-14)
    assert np.linalg.norm(balance(best)) < 1e-10
    given = [("L", "|".join(map(str, lengths)), "m"), ("EA", "|".join(map(str, stiff)), "N"), ("P", "|".join(str(p) for _, p in pulls), "N")]
    for i, a in enumerate(anchors):
        given += xyz(f"a{i}", a)
    for i, (d, _) in enumerate(pulls):
        given += xyz(f"d{i}", d)
    t = tensions(best)
    row(f"scipy-ring-{n}", "ring", given, xyz("r", best) + [(f"T{i}", t[i], "N") for i in range(3)], "rel 1e-6")

# --- a running eye in space: the place on its spheroid that is nearest to the drawbar, by a search in the plane of all three ----
for n, (a, b, length, d) in enumerate([((0, -0.65, 0.5), (0, 0.65, 0.5), 4.0, (12, 3, 0.6)), ((0, -1, 0.4), (0.3, 1.1, 0.7), 6.0, (15, -6, 0.2)), ((0, -0.95, 0.5), (0, 0.95, 0.5), 18.0, (30, 9, 0.45))]):
    a, b, d = map(np.array, (a, b, d))
    a, b, d = a.astype(float), b.astype(float), d.astype(float)
    w = np.linalg.norm(b - a)
    mid, e = (a + b) / 2, unit(b - a)
    f = unit((d - mid) - np.dot(d - mid, e) * e)
    A, B = length / 2, np.sqrt(length**2 - w**2) / 2
    at = lambda t: mid + A * np.sin(t) * e + B * np.cos(t) * f
    t = minimize_scalar(lambda t: np.linalg.norm(at(t) - d), bounds=(-1.5, 1.5), method="bounded", options={"xatol": 1e-13}).x
    # The search stops at the root of the rounding; two Newton steps on the slope end it.
    for _ in range(4):
        slope = lambda t: np.dot(at(t) - d, A * np.cos(t) * e - B * np.sin(t) * f)
        t -= slope(t) / ((slope(t + 1e-5) - slope(t - 1e-5)) / 2e-5)
    eye = at(t)
    r1, r2 = np.linalg.norm(eye - a), np.linalg.norm(eye - b)
    theta = np.arccos(np.dot(unit(a - eye), unit(b - eye)))
    leg = 1 / np.linalg.norm(unit(a - eye) + unit(b - eye))
    row(f"scipy-eye-{n}", "eye-in-space", [("L", length, "m")] + xyz("a", a) + xyz("b", b) + xyz("d", d), xyz("e", eye) + [("r1", r1, "m"), ("r2", r2, "m"), ("theta", theta, "rad"), ("T_over_P", leg, "1")], "rel 1e-7")

# --- a running eye with friction, drawbar in the middle: the eye moves along its ellipse until the forces balance ----------------
for n, (w, length, mu, distance) in enumerate([(1.3, 4.0, 0.30, 14.0), (1.3, 6.4, 0.30, 14.0), (1.9, 3.2, 0.30, 25.0)]):
    A, B = length / 2, np.sqrt(length**2 - w**2) / 2

    def hang(t):
        e = np.array([A * np.sin(t), B * np.cos(t)])
        u1, u2 = unit(np.array([-w / 2, 0]) - e), unit(np.array([w / 2, 0]) - e)
        r = np.exp(mu * (np.pi - np.arccos(u1 @ u2)))
        return e, r, r * u1 + u2

    def moment(t):
        e, _, force = hang(t)
        d = np.array([0, distance]) - e
        return force[0] * d[1] - force[1] * d[0]

    e, r, force = hang(brentq(moment, -1.4, 1.4, xtol=1e-14))
    row(f"scipy-friction-{n}", "eye-with-friction", [("w", w, "m"), ("L", length, "m"), ("mu", mu, "1"), ("D", distance, "m")],
        [("aside", abs(e[0]), "m"), ("T_high_over_P", r / np.linalg.norm(force), "1"), ("T_low_over_P", 1 / np.linalg.norm(force), "1")], "rel 1e-7")

# --- two fixed legs on a ring, the line of pull leaning: two equations of force --------------------------------------------------
for n, (w, l1, l2, lean) in enumerate([(2.0, 2.0, 2.6, 5.0), (1.4, 3.0, 2.8, -3.0), (1.8, 2.2, 2.2, 12.0)]):
    x = (l1**2 - l2**2) / (2 * w)
    ring = np.array([x, np.sqrt(l1**2 - (x + w / 2) ** 2)])
    legs = np.array([unit(np.array([-w / 2, 0]) - ring), unit(np.array([w / 2, 0]) - ring)]).T
    t = np.linalg.solve(legs, -np.array([np.sin(np.radians(lean)), np.cos(np.radians(lean))]))
    assert (t > 0).all()
    row(f"scipy-fixed-{n}", "fixed-legs", [("w", w, "m"), ("L1", l1, "m"), ("L2", l2, "m"), ("lean", lean, "deg")], [("T1_over_P", t[0], "1"), ("T2_over_P", t[1], "1")], "rel 1e-9")

with open("shared/check-values/load-path-scipy.csv", "w", newline="") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
