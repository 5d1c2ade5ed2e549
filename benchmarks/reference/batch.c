/* The same loops as the library's batches over arrays of soil strength, in plain C: what its speed is held against.
   gcc -O3 -march=native -ffast-math batch.c -lm;  ./a.out elements shape slip axles grade_over_weight {numeric_per_kPa load_share driven}...
   Prints a line per loop: name, nanoseconds an element (best of many), checksum. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { MOST = 3 };

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

__attribute__((noinline)) static void net_traction(const double *restrict ci, const double *restrict w, double *restrict out, int n, double shape, double slip) {
  const double gross = 0.88 * (1 - exp(-7.5 * slip));
  for (int i = 0; i < n; i++) {
    const double b = ci[i] * shape / w[i];
    out[i] = w[i] * (gross * (1 - exp(-0.1 * b)) - 1 / b - 0.5 * slip / sqrt(b));
  }
}

__attribute__((noinline)) static void motion_resistance(const double *restrict ci, const double *restrict w, double *restrict out, int n, double shape, double slip) {
  for (int i = 0; i < n; i++) {
    const double b = ci[i] * shape / w[i];
    out[i] = w[i] * (1 / b + 0.04 + 0.5 * slip / sqrt(b));
  }
}

__attribute__((noinline)) static void mobility(const double *restrict ci, double *restrict out, int n, const double *numeric, const double *load, double grade) {
  for (int i = 0; i < n; i++) {
    double a = 0, b = 0, c = 0;
    for (int k = 0; k < MOST; k++) { /* all driven, as in the demo machine */
      const double bn = ci[i] * numeric[k];
      a += 0.88 * load[k] * (1 - exp(-0.1 * bn));
      b += 0.5 * load[k] / sqrt(bn);
      c += load[k] / bn;
    }
    double s = log(7.5 * a / b) / 7.5;
    s = s < 0 ? 0 : s > 0.3 ? 0.3 : s;
    out[i] = a * (1 - exp(-7.5 * s)) - b * s - c - grade;
  }
}

static double sum(const double *x, int n) {
  double s = 0;
  for (int i = 0; i < n; i++) s += x[i];
  return s;
}

#define BEST(name, call)                                                  \
  do {                                                                    \
    double best = 1e9;                                                    \
    for (int r = 0; r < (n > 100000 ? 20 : 300); r++) {                                       \
      const double t = now();                                             \
      call;                                                               \
      const double d = now() - t;                                         \
      if (d < best) best = d;                                             \
    }                                                                     \
    printf("%s %.4f %.12e\n", name, 1e9 * best / n, sum(out, n));        \
  } while (0)

int main(int argc, char **argv) {
  if (argc < 6) return 1;
  const int n = atoi(argv[1]), axles = atoi(argv[4]);
  const double shape = atof(argv[2]), slip = atof(argv[3]), grade = atof(argv[5]);
  if (axles != MOST || argc != 6 + 2 * axles) return 2;
  double numeric[MOST], load[MOST];
  for (int k = 0; k < axles; k++) {
    numeric[k] = atof(argv[6 + 2 * k]);
    load[k] = atof(argv[7 + 2 * k]);
  }
  double *ci = aligned_alloc(64, n * sizeof *ci), *w = aligned_alloc(64, n * sizeof *w), *out = aligned_alloc(64, n * sizeof *out);
  for (int i = 0; i < n; i++) {
    ci[i] = 150 + i % 1500;
    w[i] = 20 + i % 40;
  }
  BEST("net-traction", net_traction(ci, w, out, n, shape, slip));
  BEST("motion-resistance", motion_resistance(ci, w, out, n, shape, slip));
  BEST("mobility", mobility(ci, out, n, numeric, load, grade));
  return 0;
}
