package org.flexwright.shells.inflate;

import java.util.Arrays;

/**
 * w''''/4 + w = q by second-order differences on n cells, built in at both ends, w at most 1; q =
 * [p (1 - nu^2) ... ] from the held length: p = (1 - nu^2) q + nu^2 mean(w). Band solve with an
 * active set.
 */
final class HeldCylinder {

  private final int n;
  private final double h;
  private final double nu2;

  HeldCylinder(double length, double nu, int n) {
    this.n = n;
    h = length / n;
    nu2 = nu * nu;
  }

  /** Deflection without a bore at a pressure. */
  double[] free(double pressure) {
    return atPressure(pressure, false);
  }

  /** Deflection within the bore. */
  double[] pressed(double pressure) {
    return atPressure(pressure, true);
  }

  double contact(double pressure) {
    return h * Arrays.stream(pressed(pressure)).filter(w -> w >= 1 - 1e-9).count();
  }

  private double[] atPressure(double pressure, boolean bore) {
    double mean = 0.0;
    double[] w = new double[n + 1];
    for (int i = 0; i < 60; i++) {
      w =
          bore
              ? obstacle((pressure - nu2 * mean) / (1 - nu2))
              : solve((pressure - nu2 * mean) / (1 - nu2), new boolean[n + 1]);
      double next = Arrays.stream(w).sum() / n;
      if (Math.abs(next - mean) < 1e-12) {
        break;
      }
      mean += 0.7 * (next - mean);
    }
    return w;
  }

  private double[] obstacle(double q) {
    boolean[] held = new boolean[n + 1];
    double[] w = solve(q, held);
    // primal-dual active set: hold where above 1 or pressed against
    for (int i = 0; i < 400; i++) {
      boolean[] next = new boolean[n + 1];
      for (int k = 2; k <= n - 2; k++) {
        next[k] = held[k] ? q - load(w, k) > 0 : w[k] > 1;
      }
      if (Arrays.equals(next, held)) {
        break;
      }
      held = next;
      w = solve(q, held);
    }
    return w;
  }

  private double load(double[] w, int k) {
    double fourth = w[k - 2] - 4 * w[k - 1] + 6 * w[k] - 4 * w[k + 1] + w[k + 2];
    return fourth / (4 * h * h * h * h) + w[k];
  }

  private double[] solve(double q, boolean[] held) {
    double c = 1 / (4 * h * h * h * h);
    double[][] a = new double[n + 1][];
    double[] b = new double[n + 1];
    for (int k = 0; k <= n; k++) {
      if (k == 0 || k == n || held[k]) {
        a[k] = new double[] {0, 0, 1, 0, 0};
        b[k] = held[k] ? 1 : 0;
      } else {
        a[k] = new double[] {c, -4 * c, 6 * c + 1, -4 * c, c};
        b[k] = q;
        if (k == 1 || k == n - 1) {
          a[k][2] += c; // mirror image of the neighbour: no slope at the end
        }
      }
    }
    eliminate(a, b);
    return b;
  }

  private void eliminate(double[][] a, double[] b) {
    for (int k = 0; k <= n; k++) {
      for (int r = k + 1; r <= Math.min(n, k + 2); r++) {
        double f = a[r][2 - (r - k)] / a[k][2];
        for (int j = 0; j <= 2; j++) {
          a[r][2 - (r - k) + j] -= f * a[k][2 + j];
        }
        b[r] -= f * b[k];
      }
    }
    for (int k = n; k >= 0; k--) {
      for (int j = 1; j <= 2 && k + j <= n; j++) {
        b[k] -= a[k][2 + j] * b[k + j];
      }
      b[k] /= a[k][2];
    }
  }
}
