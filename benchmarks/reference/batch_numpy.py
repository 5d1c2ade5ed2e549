"""The same loops as benchmarks/reference/batch.c in numpy. Arguments and output are alike."""
import sys
import time

import numpy as np


def main():
    n, shape, slip, axles, grade = int(sys.argv[1]), float(sys.argv[2]), float(sys.argv[3]), int(sys.argv[4]), float(sys.argv[5])
    numeric = [float(x) for x in sys.argv[6::2]]
    load = [float(x) for x in sys.argv[7::2]]
    i = np.arange(n)
    ci, w = 150.0 + i % 1500, 20.0 + i % 40
    gross = 0.88 * (1 - np.exp(-7.5 * slip))

    def net_traction():
        b = ci * shape / w
        return w * (gross * (1 - np.exp(-0.1 * b)) - 1 / b - 0.5 * slip / np.sqrt(b))

    def motion_resistance():
        b = ci * shape / w
        return w * (1 / b + 0.04 + 0.5 * slip / np.sqrt(b))

    def mobility():
        a = b = c = 0.0
        for k in range(axles):
            bn = ci * numeric[k]
            a = a + 0.88 * load[k] * (1 - np.exp(-0.1 * bn))
            b = b + 0.5 * load[k] / np.sqrt(bn)
            c = c + load[k] / bn
        s = np.clip(np.log(7.5 * a / b) / 7.5, 0, 0.3)
        return a * (1 - np.exp(-7.5 * s)) - b * s - c - grade

    for name, loop in (("net-traction", net_traction), ("motion-resistance", motion_resistance), ("mobility", mobility)):
        best = 1e9
        for _ in range(10 if n > 100_000 else 60):
            t = time.perf_counter()
            out = loop()
            best = min(best, time.perf_counter() - t)
        print(f"{name} {1e9 * best / n:.4f} {out.sum():.12e}")


main()
