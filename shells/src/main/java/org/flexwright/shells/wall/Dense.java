package org.flexwright.shells.wall;

/** Small dense linear systems solved in place, so that a walk along a path makes no garbage. */
final class Dense {

  private Dense() {}

  /**
   * Solves a x = b by elimination with row exchange. Destroys a; b becomes x.
   *
   * @return false if the system has no single finite solution
   */
  static boolean solve(double[][] a, double[] b) {
    int n = b.length;
    for (int k = 0; k < n; k++) {
      int p = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(a[i][k]) > Math.abs(a[p][k])) {
          p = i;
        }
      }
      double pivot = a[p][k];
      if (!(Math.abs(pivot) > 0.0 && Math.abs(pivot) < Double.POSITIVE_INFINITY)) {
        return false;
      }
      double[] row = a[p];
      a[p] = a[k];
      a[k] = row;
      double right = b[p];
      b[p] = b[k];
      b[k] = right;
      for (int i = k + 1; i < n; i++) {
        reduce(a[i], row, k, a[i][k] / pivot);
        b[i] -= a[i][k] * right;
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      double sum = b[k];
      for (int j = k + 1; j < n; j++) {
        sum -= a[k][j] * b[j];
      }
      b[k] = sum / a[k][k];
    }
    return Double.isFinite(b[0]);
  }

  private static void reduce(double[] of, double[] by, int from, double factor) {
    of[from] = factor;
    if (factor != 0.0) {
      for (int j = from + 1; j < of.length; j++) {
        of[j] -= factor * by[j];
      }
    }
  }
}
