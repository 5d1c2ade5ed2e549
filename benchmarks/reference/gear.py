"""Recomputes gear cases with numpy and SciPy, and writes shared/check-values/rigging-gear-scipy.csv.

The equations are stated here on their own; nothing is shared with the library. Run from the repository root:
    python3 benchmarks/reference/gear.py
Needs numpy and SciPy (Debian: python3-numpy python3-scipy).
"""
import csv
import math

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq

AUTHORITY = f"numpy {np.__version__}, SciPy {scipy.__version__}, benchmarks/reference/gear.py"
ROWS = []


def row(ident, model, given, expected, tolerance="rel 1e-9"):
    pack = lambda pairs: "; ".join(f"{k}={v!r} {u}" if not isinstance(v, str) else f"{k}={v} {u}" for k, v, u in pairs)
    ROWS.append([ident, model, pack(given), pack(expected), tolerance, AUTHORITY, "reference library"])


# --- drawbar pin: beam on two supports, load spread over a width, moment by integrating the shear force -----------------
def pin(d, s, b, f):
    a0, a1 = (s - b) / 2, (s + b) / 2

    def shear(x):
        if x < a0:
            return f / 2
        return f / 2 - f * (x - a0) / b if b > 0 and x < a1 else -f / 2

    moment = quad(shear, 0, s / 2, points=[a0] if 0 < a0 < s / 2 else None, epsabs=1e-10, epsrel=1e-13)[0]
    # Second moment of area of the round section, by integration over its height.
    inertia = quad(lambda y: 2 * y * y * math.sqrt(max(d * d / 4 - y * y, 0)), -d / 2, d / 2, epsabs=1e-18, epsrel=1e-12)[0]
    area = quad(lambda y: 2 * math.sqrt(max(d * d / 4 - y * y, 0)), -d / 2, d / 2, epsabs=1e-16, epsrel=1e-12)[0]
    return moment * (d / 2) / inertia, f / 2 / area


for n, (d, s, b, f, fy) in enumerate([(0.038, 0.10, 0.0, 100e3, 640e6), (0.05, 0.13, 0.06, 200e3, 640e6), (0.07, 0.16, 0.16, 350e3, 355e6), (0.07, 0.075, 0.05, 350e3, 355e6)]):
    sigma, tau = pin(d, s, b, f)
    at_yield = brentq(lambda x: max(x * sigma / f / fy, x * tau / f * math.sqrt(3) / fy) - 1, 1, 1e9, xtol=1e-6, rtol=1e-14)
    row(f"gear-pin-{n}", "drawbar-pin-spread", [("d", d, "m"), ("s", s, "m"), ("b", b, "m"), ("F", f, "N"), ("fy", fy, "Pa")], [("sigma", sigma, "Pa"), ("tau", tau, "Pa"), ("F_yield", at_yield, "N")], "rel 1e-8")

# --- eye on a pin: half opening at which the straight side touches the pin and meets the end of the eye -------------------
for n, (d, l) in enumerate([(0.05, 0.175), (0.038, 0.15), (0.07, 0.2)]):
    # The eye, inside length l: the far end of the pin lies at its end, the sides meet at the distance l - d/2 from its centre.
    half = brentq(lambda e: (l - d / 2) * math.sin(e) - d / 2, 1e-6, math.pi / 2 - 1e-6, xtol=1e-15)
    row(f"gear-eye-{n}", "eye-opening", [("D", d, "m"), ("l", l, "m")], [("e", 2 * half, "rad")])

# --- strap chosen with its own growing stiffness: 116 kN from an 18 t tractor in a gear of 2 km/h, wet nylon -------------
P, M, V, L, RATIO = 116e3, 18e3, 2 / 3.6, 9.0, 5.0


def peak(mbs):
    return P + V * math.sqrt(M * RATIO * mbs / L)


for n, (sf, wet) in enumerate([(4.225, 0.85), (2.3, 0.85), (4.225 * 1.2, 0.85)]):
    need = brentq(lambda mbs: mbs * wet / peak(mbs) - sf, 1e4, 1e8, xtol=1e-3, rtol=1e-14)
    row(f"gear-strap-{n}", "choice-own-stiffness", [("sf", sf, "1"), ("k_wet", wet, "1")], [("MBS", need, "N")], "rel 1e-7")

with open("shared/check-values/rigging-gear-scipy.csv", "w", newline="") as out:
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow("id,model,given,expected,tolerance,authority,standing".split(","))
    writer.writerows(ROWS)
